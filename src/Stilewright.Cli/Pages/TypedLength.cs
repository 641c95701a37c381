using Stilewright.Measure;

namespace Stilewright.Cli.Pages;

/// <summary>Lengths as options of the command line.</summary>
internal static class TypedLength
{
    /// <exception cref="RefusalException">It is none in that unit.</exception>
    public static Length Read(string option, string text, LengthUnit unit) => LengthReader.Read(text, unit) switch
    {
        ParseResult<Length>.Parsed parsed => parsed.Value,
        ParseResult<Length>.Failed failed => throw new RefusalException(ExitCode.WrongUse, $"{option} takes a length: {failed.Message}"),
        _ => throw new InvalidOperationException(),
    };
}
