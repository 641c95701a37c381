using System.ComponentModel;
using System.Globalization;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Pages;
using Stilewright.Doors;
using Stilewright.Drawing.Packets;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Teaching.Worksheets;
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

        [CommandOption("--no-wood")]
        [Description("Leave out panels through the year, glue-ups and weights.")]
        public bool NoWood { get; init; }

        [CommandOption("--no-labels")]
        [Description("Leave the sheets of labels out.")]
        public bool NoLabels { get; init; }

        [CommandOption("--worksheet <LEVEL>")]
        [Description("Add a worksheet of each bench's own first door: 1 first door, 2 frame and panel, up to 6 advanced.")]
        public string? WorksheetLevel { get; init; }

        [CommandOption("--worksheet-key")]
        [Description("With --worksheet, end the packet with the key of all worksheets.")]
        public bool WorksheetKey { get; init; }

        public PacketWorksheets? Worksheets => WorksheetLevel is null ? null : new(int.Parse(WorksheetLevel, CultureInfo.InvariantCulture), WorksheetKey);

        public override ValidationResult Validate()
        {
            var most = Levels.Inch.Count;
            if (WorksheetLevel is not null && !(int.TryParse(WorksheetLevel, NumberStyles.None, CultureInfo.InvariantCulture, out var level) && level >= 1 && level <= most))
                return ValidationResult.Error($"--worksheet takes a level from 1 to {most}, not \"{WorksheetLevel}\".");
            return WorksheetKey && WorksheetLevel is null
                ? ValidationResult.Error("--worksheet-key is the key of worksheets: ask for them with --worksheet and a level.") : base.Validate();
        }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var breakdown = CourseFile.Open(settings.File);
        var selection = Selection.Of(breakdown, settings.BenchNumber, null).OrRefuse();
        ProjectBreakdown[] projects = [.. breakdown.Projects.Where(project => settings.BenchNumber is null || project.Project.Bench == settings.BenchNumber)];
        var format = settings.FormatFor(breakdown, projects);
        var paper = settings.PaperFor(format.Unit);
        var record = HandedOutFile.Beside(settings.Out!);
        OutputFile.RefuseExisting(settings.Out!, settings.Replace);
        OutputFile.RefuseExisting(record, settings.Replace);

        LengthUnit? unit = settings.Inches ? LengthUnit.Inch : settings.Millimetres ? LengthUnit.Millimetre : null;
        var packet = new PacketSettings(paper == PaperKind.A4 ? Paper.A4 : Paper.Letter, unit, settings.StorySticks)
        {
            Finest = settings.Finest is null ? null : format.FinestDenominator,
            PartDrawings = !settings.NoPartDrawings,
            Working = !settings.NoWorking,
            Wood = !settings.NoWood,
            Labels = settings.NoLabels ? null : new(settings.LabelSheetFor(paper), settings.LabelPrint),
            Worksheets = settings.Worksheets,
        };
        var print = PacketPrint.Of(breakdown, selection.IsWhole ? null : projects, packet, ProgramVersion.Text, clock.GetLocalNow());
        var count = PdfFile.Write(settings.Out!, print.Facts, print.Pages, settings.Replace, screen, cancellationToken);
        HandedOutFile.Write(record, print.HandedOut, settings.Replace);

        screen.Error.WriteLine($"{settings.Out}: {print.HandedOut.What}, {TradeWords.Count(count, "sheet", "sheets")}. Print at full size, without fitting to the page.");
        screen.Error.WriteLine($"{record}: what was handed out; `stilewright changes` tells later what no longer holds.");
        if (selection.Withheld is { Count: > 0 } withheld)
            screen.Error.WriteLine($"Without parts because they cannot be built: {string.Join(", ", withheld)}. The packet says why.");
        return ExitCode.Good;
    }
}
