using Spectre.Console;
using Spectre.Console.Cli;
using Spectre.Console.Cli.Help;
using Spectre.Console.Rendering;

namespace Stilewright.Cli;

/// <summary>The usual help, followed by the exit codes.</summary>
internal sealed class Help(ICommandAppSettings settings) : HelpProvider(settings)
{
    private static readonly string[] Lines =
    [
        "",
        "EXIT CODES:",
        "    0   nothing worse than notes, cautions and accepted hazards",
        "    1   check: a hazard is not accepted",
        "    2   check: a leaf cannot be built",
        "    3   a file cannot be read, used or written",
        "    4   changes: something is no longer as it was handed out",
        "    5   mark: the list is not right",
        "    64  wrong use of the command line",
        "    70  a fault of the program",
        "    130 stopped with Ctrl+C",
        "",
    ];

    public override IEnumerable<IRenderable> GetFooter(ICommandModel model, ICommandInfo? command) =>
        [new Text(string.Join('\n', Lines))];
}
