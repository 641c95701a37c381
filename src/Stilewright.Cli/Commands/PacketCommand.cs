using System.ComponentModel;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Pages;
using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Prints;
using Stilewright.Shop;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

internal sealed class PacketCommand(Screen screen, TimeProvider clock) : Command<PacketCommand.Settings>
{
    internal sealed class Settings : PrintSettings
    {
        [CommandOption("--story-sticks")]
        [Description("Add a story stick of every leaf at full size, in strips to be taped together.")]
        public bool StorySticks { get; init; }

        [CommandOption("--no-part-drawings")]
        [Description("Leave the drawings of single parts out.")]
        public bool NoPartDrawings { get; init; }

        [CommandOption("--no-working")]
        [Description("Leave out how the sizes of each leaf are found.")]
        public bool NoWorking { get; init; }

        [CommandOption("--no-labels")]
        [Description("Leave the sheets of labels out.")]
        public bool NoLabels { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var breakdown = CourseFile.Open(settings.File);
        var selection = Selection.Of(breakdown, settings.BenchNumber, null);
        ProjectBreakdown[] projects = [.. selection.Projects];
        var format = settings.FormatFor(breakdown, projects);
        var paper = settings.PaperFor(format.Unit);
        var record = HandedOutFile.Beside(settings.Out!);
        OutputFile.RefuseExisting(settings.Out!, settings.Replace);
        OutputFile.RefuseExisting(record, settings.Replace);

        var now = clock.GetUtcNow();
        var revisions = Fingerprint.Of(breakdown);
        var facts = new PacketFacts(revisions, ProgramVersion.Text, DateOnly.FromDateTime(clock.GetLocalNow().DateTime));
        LengthUnit? unit = settings.Inches ? LengthUnit.Inch : settings.Millimetres ? LengthUnit.Millimetre : null;
        var packet = new PacketSettings(paper == PaperKind.A4 ? Paper.A4 : Paper.Letter, unit, settings.StorySticks)
        {
            Finest = settings.Finest is null ? null : format.FinestDenominator,
            PartDrawings = !settings.NoPartDrawings,
            Working = !settings.NoWorking,
            Labels = settings.NoLabels ? null : new(settings.LabelSheetFor(paper), settings.LabelPrint),
        };
        var sheets = selection.IsWhole
            ? Packet.OfCourse(breakdown, facts, packet)
            : projects.SelectMany(project => Packet.OfProject(breakdown, project, facts, packet));
        var handedOut = HandedOut.Of(breakdown, projects, selection.IsWhole ? HandedOutExtent.WholeCourse : HandedOutExtent.Benches,
            revisions, ProgramVersion.Text, now);
        var title = selection.IsWhole ? breakdown.Course.Name : $"{breakdown.Course.Name}: bench {projects[0].Project.Bench}, {projects[0].Project.Name}";
        var count = PdfFile.Write(settings.Out!,
            new(title, $"Drawings, parts and working of {handedOut.What}", null, "doors, drawer fronts, parts, cut list", $"Stilewright {ProgramVersion.Text}", now),
            sheets.Select(sheet => new PdfPage(sheet.Scene, sheet.Bookmarks)), settings.Replace, screen, cancellationToken);
        HandedOutFile.Write(record, handedOut, settings.Replace);

        screen.Error.WriteLine($"{settings.Out}: {handedOut.What}, {TradeWords.Count(count, "sheet", "sheets")}. Print at full size, without fitting to the page.");
        screen.Error.WriteLine($"{record}: what was handed out; `stilewright changes` tells later what no longer holds.");
        if (selection.Withheld is { Count: > 0 } withheld)
            screen.Error.WriteLine($"Without parts because they cannot be built: {string.Join(", ", withheld)}. The packet says why.");
        return ExitCode.Good;
    }
}
