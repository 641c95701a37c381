using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

internal sealed class WoodCommand(Screen screen) : Command<WoodCommand.Settings>
{
    internal sealed class Settings : LeafSettings;

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var breakdown = CourseFile.Open(settings.File);
        var selection = Selection.Of(breakdown, settings.BenchNumber, settings.Leaf).OrRefuse();
        PageWriter.Write(WoodPage.Of(selection, settings.FormatFor(breakdown, selection.Projects)), screen);
        return ExitCode.Good;
    }
}
