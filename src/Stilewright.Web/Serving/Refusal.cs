using System.Net.Sockets;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Stilewright.Web.Serving;

/// <summary>A reason not to start that the person at the keyboard can mend.</summary>
public sealed class RefusalException(string message) : Exception(message);

/// <summary>Tells why the program stopped, in words.</summary>
internal static class Refusal
{
    private const int WrongUse = 64;
    private const int Fault = 70;
    private const int Failed = 3;

    /// <returns>The exit code.</returns>
    public static int Tell(Exception exception)
    {
        var (code, words) = exception switch
        {
            RefusalException refusal => (Failed, refusal.Message),
            CommandAppException wrong => (WrongUse, wrong.Message),
            IOException { InnerException: SocketException or Microsoft.AspNetCore.Connections.AddressInUseException } => (Failed, exception.Message),
            _ => (Fault, $"This is a fault of the program itself: {exception.Message} Nothing that was saved is lost; start it again."),
        };
        AnsiConsole.Console.WriteLine(words);
        return code;
    }
}
