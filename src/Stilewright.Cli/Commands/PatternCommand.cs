using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;
using Stilewright.Documents;
using Stilewright.Drawing.Patterns;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

internal sealed class PatternCommand(Screen screen, TimeProvider clock) : Command<PatternCommand.Settings>
{
    private const double SheetMargin = 5;

    internal sealed class Settings : CourseSettings
    {
        // Margins, the band of the rule and room to print on.
        private static readonly Length NarrowestRoll = Length.FromMillimetres(100);

        [CommandArgument(1, "[PLACE]")]
        [Description("An arched leaf or part, by label such as 7.2L or 7.2L.TR or by path; without one, all arched parts are listed.")]
        public string? Place { get; init; }

        [CommandOption("--out <FILE>")]
        [Description("The PDF to print, or the SVG of one part, at full size.")]
        public string? Out { get; init; }

        [CommandOption("--paper <PAPER>")]
        [Description("letter, legal, a4 or a3; when absent, letter for inches and a4 for millimetres.")]
        public string? PaperName { get; init; }

        [CommandOption("--roll <WIDTH>")]
        [Description("Print on a roll of this width, such as 24 or 610 mm.")]
        public string? Roll { get; init; }

        [CommandOption("--printer <FILE>")]
        [Description("Correct for this printer, as `stilewright calibrate` recorded it.")]
        public string? Printer { get; init; }

        [CommandOption("--feed <EDGE>")]
        [Description("short or long: the edge of the paper that goes in first.")]
        public string? Feed { get; init; }

        [CommandOption("--bearing <RADIUS>")]
        [Description("Draw the line that a bearing of this radius follows.")]
        public string? Bearing { get; init; }

        [CommandOption("--cutter <RADIUS>")]
        [Description("The radius of the cutter under that bearing, where it leaves the edge.")]
        public string? Cutter { get; init; }

        [CommandOption("--one-pattern")]
        [Description("Tell on panels' patterns how far the rail's own pattern is set down on the panel, also where no hard pattern of the rack serves.")]
        public bool OnePattern { get; init; }

        [CommandOption("--whole")]
        [Description("Draw the pattern of a tall panel whole; without it, it ends below the curve.")]
        public bool Whole { get; init; }

        [CommandOption("--points <FILE>")]
        [Description("Write points of every curve, with straight lines between them within 0.001 in, as CSV.")]
        public string? Points { get; init; }

        [CommandOption("--arcs <FILE>")]
        [Description("Write the lines and arcs of every curve as CSV.")]
        public string? Arcs { get; init; }

        [CommandOption("--replace")]
        [Description("Write over files that are there.")]
        public bool Replace { get; init; }

        public bool IsSvg => Out?.EndsWith(".svg", StringComparison.OrdinalIgnoreCase) == true;

        public override ValidationResult Validate()
        {
            if (Place is not null && Out is null && Points is null && Arcs is null)
                return ValidationResult.Error("Name what to write: --out pattern.pdf, --out pattern.svg, --points points.csv or --arcs arcs.csv.");
            if (Place is null && (Out ?? Points ?? Arcs) is not null)
                return ValidationResult.Error("Name the leaf or the part whose pattern is wanted; without files to write, all arched parts are listed.");
            if (Out is not null && !IsSvg && !Out.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase))
                return ValidationResult.Error($"--out takes a file that ends in .pdf or .svg, not \"{Out}\".");
            if (PaperName is not null && PatternPaper.All.All(paper => paper.Name != PaperName))
                return ValidationResult.Error($"--paper takes letter, legal, a4 or a3, not \"{PaperName}\".");
            if (PaperName is not null && Roll is not null)
                return ValidationResult.Error("Give --paper or --roll, not both.");
            if (Printer is null != Feed is null)
                return ValidationResult.Error("--printer and --feed go together: a printer is corrected for one way of feeding, such as --printer office.json --feed short.");
            if (FeedOf(Feed ?? "short") is null)
                return ValidationResult.Error($"--feed takes short or long, not \"{Feed}\".");
            if (Bearing is null != Cutter is null)
                return ValidationResult.Error("--bearing and --cutter go together: both radii decide where the pattern lies.");
            return base.Validate();
        }

        public static PaperFeed? FeedOf(string text) => text switch
        {
            "short" => PaperFeed.ShortEdge,
            "long" => PaperFeed.LongEdge,
            _ => null,
        };

        /// <exception cref="RefusalException">A radius is no length.</exception>
        public GuideBearing? GuideFor(LengthUnit unit) =>
            Bearing is null ? null : new(TypedLength.Read("--bearing", Bearing, unit), TypedLength.Read("--cutter", Cutter!, unit));

        /// <exception cref="RefusalException">The roll's width is no length, or too narrow.</exception>
        public PatternPaper PaperFor(LengthUnit unit)
        {
            if (Roll is null)
                return PatternPaper.All.Single(paper => paper.Name == (PaperName ?? (unit == LengthUnit.Inch ? "letter" : "a4")));
            var width = TypedLength.Read("--roll", Roll, unit);
            return width >= NarrowestRoll
                ? PatternPaper.Roll(width.Millimetres.ToDouble())
                : throw new RefusalException(ExitCode.WrongUse, $"--roll takes a width of 100 mm or more, not {Roll}: margins and rules need room.");
        }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var breakdown = CourseFile.Open(settings.File);
        if (settings.Place is null)
        {
            PageWriter.Write(ArchedPartsPage.Of(breakdown, settings.FormatFor(breakdown, breakdown.Projects)), screen);
            return ExitCode.Good;
        }

        var parts = ArchedParts.Find(breakdown, settings.Place).OrRefuse();
        var format = settings.FormatFor(breakdown, [parts[0].Project]);
        if (settings.IsSvg && parts.Count > 1)
        {
            throw new RefusalException(ExitCode.WrongUse,
                $"An SVG holds one pattern, and {settings.Place} has {parts.Count}: name one of {string.Join(", ", parts.Select(each => each.Part.Label))}, or give --out a PDF.");
        }

        foreach (var file in new[] { settings.Out, settings.Points, settings.Arcs }.OfType<string>())
            OutputFile.RefuseExisting(file, settings.Replace);
        var revision = Fingerprint.Of(breakdown.Course, parts[0].Project.Project);
        var guide = settings.GuideFor(format.Unit);
        var paper = settings.PaperFor(format.Unit);
        var patterns = Draw(settings.Whole);
        if (settings.IsSvg && patterns.Count > 1)
            throw new RefusalException(ExitCode.WrongUse, $"An SVG holds one pattern, and {settings.Place} has one of each end: give --whole for both in one, or --out a PDF.");
        if (settings.IsSvg)
        {
            var correction = CorrectionOf(settings);
            OutputFile.Write(settings.Out!, SvgWriter.Text(PatternSheet.Of(patterns[0].Scene, correction).OnSheet(SheetMargin)), settings.Replace);
            screen.Error.WriteLine($"{settings.Out}: {patterns[0].Scene.Title}, full size in millimetres, {correction}.");
        }
        else if (settings.Out is not null)
        {
            Print(settings, breakdown.Course.Name, $"bench {parts[0].Project.Project.Bench}, {parts[0].Project.Project.Name}, revision {revision}", patterns, paper, format.Unit, cancellationToken);
        }

        // Other programs get whole outlines.
        var wholes = settings.Points is null && settings.Arcs is null ? [] : Draw(isWhole: true);
        foreach (var (file, text, what) in new[]
        {
            (settings.Points, settings.Points is null ? "" : PatternCsv.Points(wholes, format.Unit), "points"),
            (settings.Arcs, settings.Arcs is null ? "" : PatternCsv.Arcs(wholes, format.Unit), "lines and arcs"),
        })
        {
            if (file is null)
                continue;
            OutputFile.Write(file, text, settings.Replace);
            screen.Error.WriteLine($"{file}: {what} of {TradeWords.Count(wholes.Count, "pattern", "patterns")}, from the middle of the spring line.");
        }

        return ExitCode.Good;

        IReadOnlyList<FullSizePattern> Draw(bool isWhole)
        {
            var (drawn, refusals) = DrawnPatterns.Of(parts, revision, format, isWhole, settings.OnePattern, guide);
            return refusals.Count == 0 ? drawn : throw new RefusalException(ExitCode.WrongUse, [.. refusals]);
        }
    }

    private PrintCorrection CorrectionOf(Settings settings)
    {
        if (settings.Printer is not { } file)
            return PrintCorrection.None;
        var printer = CourseFile.Use(file, DocumentReader.ReadPrinter(InputFile.Read(file)));
        var feed = Settings.FeedOf(settings.Feed!)!.Value;
        if (printer.Count(feed) == 0)
            screen.Error.WriteLine($"{file} has no measured print that went in by its {settings.Feed} edge: this one is not corrected. Measure its rules and record them with `stilewright calibrate`.");
        return PrintCorrection.Of(printer, feed);
    }

    private void Print(Settings settings, string course, string footnote, IReadOnlyList<FullSizePattern> patterns, PatternPaper paper, LengthUnit unit, CancellationToken cancellationToken)
    {
        var pages = new DrawnPatterns(patterns, []).Pages(paper, CorrectionOf(settings), unit, footnote);
        var count = PdfFile.Write(settings.Out!, DrawnPatterns.Facts(course, settings.Place!, ProgramVersion.Text, clock.GetUtcNow()),
            pages, settings.Replace, screen, cancellationToken);
        screen.Error.WriteLine($"{settings.Out}: {TradeWords.Count(patterns.Count, "pattern", "patterns")} on {TradeWords.Count(count, "sheet", "sheets")}. Print at 100 %, not fitted to the page, and measure the rules.");
    }
}
