using Spectre.Console.Cli;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;

namespace Stilewright.Cli.Commands;

internal sealed class RulesCommand(Screen screen) : Command<RulesCommand.Settings>
{
    internal sealed class Settings : CommandSettings;

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        PageWriter.Write(RulesPage.Of(), screen);
        return ExitCode.Good;
    }
}
