using System.Text;
using Spectre.Console;

namespace Stilewright.Cli;

/// <summary>Where a run writes. A terminal gets tables and colour; a pipe or a file gets plain text that is not wrapped.</summary>
internal sealed class Screen
{
    /// <summary>Wide enough that help is not wrapped where nobody looks at a window.</summary>
    private const int PlainWidth = 1000;

    private Screen(IAnsiConsole console, TextWriter plain, TextWriter error, bool isTerminal)
    {
        Console = console;
        Plain = plain;
        Error = error;
        IsTerminal = isTerminal;
    }

    public IAnsiConsole Console { get; }
    public TextWriter Plain { get; }
    public TextWriter Error { get; }
    public bool IsTerminal { get; }

    /// <summary>The screen of this process.</summary>
    public static Screen OfProcess()
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        var error = new StreamWriter(System.Console.OpenStandardError(), utf8) { AutoFlush = true };
        if (System.Console.IsOutputRedirected)
            return To(new StreamWriter(System.Console.OpenStandardOutput(), utf8), error);
        System.Console.OutputEncoding = utf8;
        return new(AnsiConsole.Console, System.Console.Out, error, isTerminal: true);
    }

    /// <summary>Plain text to the given writers.</summary>
    public static Screen To(TextWriter plain, TextWriter error)
    {
        var console = AnsiConsole.Create(new()
        {
            Ansi = AnsiSupport.No,
            ColorSystem = ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(plain),
        });
        console.Profile.Width = PlainWidth;
        return new(console, plain, error, isTerminal: false);
    }
}
