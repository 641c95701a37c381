using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>What was asked for by name on the command line.</summary>
internal static class FoundOrRefused
{
    /// <exception cref="RefusalException">There is no such thing.</exception>
    public static T OrRefuse<T>(this Found<T> found) => found switch
    {
        Found<T>.There there => there.Thing,
        Found<T>.Missing missing => throw new RefusalException(ExitCode.WrongUse, missing.Problem),
        _ => throw new InvalidOperationException("A thing is there or missing."),
    };
}
