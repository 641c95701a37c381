using System.ComponentModel;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;

namespace Stilewright.Cli.Commands;

internal sealed class WorkCommand(Screen screen) : Command<WorkCommand.Settings>
{
    internal sealed class Settings : CourseSettings
    {
        [CommandArgument(1, "<PLACE>")]
        [Description("A part, leaf or front, by label such as 7.2L.TR or by path such as hall-lower/leaf.left/rail.top.")]
        public required string Place { get; init; }

        [CommandOption("--figure <NAME>")]
        [Description("Only this figure: width, length, clamps-width, clamps-length, rough-width, rough-length, planed-thickness, shoulder and others of the part; width, height or gap of a leaf or front.")]
        public string? Figure { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var breakdown = CourseFile.Open(settings.File);
        var places = WorkPlace.Find(breakdown, settings.Place);
        PageWriter.Write(WorkPage.Of(places, settings.Figure, settings.FormatFor(breakdown, breakdown.Projects.Where(project => project.Fronts.Any(
            front => places.Any(place => place.Path == front.Path || place.Path.StartsWith($"{front.Path}/", StringComparison.Ordinal)))))), screen);
        return ExitCode.Good;
    }
}
