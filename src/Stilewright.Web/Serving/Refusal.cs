using Spectre.Console.Cli;

namespace Stilewright.Web.Serving;

/// <summary>A reason not to start that the person at the keyboard can mend.</summary>
public sealed class RefusalException(string message) : Exception(message);

/// <summary>Tells on the standard error, in words, why the program stopped.</summary>
internal static class Refusal
{
    /// <summary>The data file, the copy or the port cannot be used.</summary>
    public const int Failed = 3;

    /// <summary>Wrong use of the command line.</summary>
    public const int WrongUse = 64;

    /// <summary>A fault of the program itself.</summary>
    public const int Fault = 70;

    /// <summary>Stopped with Ctrl+C before it was ready.</summary>
    public const int Stopped = 130;

    /// <returns>The exit code.</returns>
    public static int Tell(Exception exception)
    {
        var (code, words) = exception switch
        {
            RefusalException refusal => (Failed, refusal.Message),
            CommandAppException wrong => (WrongUse, $"{wrong.Message.TrimEnd('.')}. See --help."),
            OperationCanceledException => (Stopped, "Stopped."),
            _ => (Fault, $"This is a fault of the program itself: {exception.Message} Nothing that was saved is lost; start it again."),
        };
        Console.Error.WriteLine(words);
        return code;
    }
}
