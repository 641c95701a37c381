using System.ComponentModel;
using System.Globalization;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;
using Stilewright.Drawing.Worksheets;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Teaching.Worksheets;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

internal sealed class WorksheetCommand(Screen screen, TimeProvider clock) : Command<WorksheetCommand.Settings>
{
    internal sealed class Settings : TeachingSettings
    {
        private static readonly Dictionary<string, ProblemFeature?> FeatureNames = new(StringComparer.Ordinal)
        {
            ["single"] = null,
            ["pair"] = ProblemFeature.Pair,
            ["inset"] = ProblemFeature.Inset,
            ["trim"] = ProblemFeature.TrimAllowance,
            ["arch"] = ProblemFeature.Arch,
            ["mid-rails"] = ProblemFeature.MidRails,
        };

        [CommandArgument(0, "[FILE]")]
        [Description("A course file, to ask the sizes of its own doors; without one problems are drawn at random.")]
        public string? File { get; init; }

        [CommandOption("--level <NUMBER>")]
        [Description("1 first door, 2 frame and panel, 3 a pair, 4 inset with trim, 5 arches and mid rails, 6 advanced; 1 when absent.")]
        public string? LevelText { get; init; }

        [CommandOption("--blanks <STYLE>")]
        [Description("results, figures or question: how much of each line is left to the maker; as the level says when absent.")]
        public string? Blanks { get; init; }

        [CommandOption("--readings <STEP>")]
        [Description("The step of the openings of random problems, such as 1, 1/2, 1/4 or 1/8; as the level says when absent.")]
        public string? Readings { get; init; }

        [CommandOption("--with <FEATURES>")]
        [Description("What every random problem has: single, or some of pair, inset, trim, arch and mid-rails with commas between them; as the level says when absent.")]
        public string? With { get; init; }

        [CommandOption("--leaf <LABEL>")]
        [Description("With a course file, this leaf, by label such as 7.2L or by path; the first door of each bench when absent.")]
        public string? Leaf { get; init; }

        public override ValidationResult Validate()
        {
            var most = Levels.Inch.Count;
            if (LevelText is not null && !(int.TryParse(LevelText, NumberStyles.None, CultureInfo.InvariantCulture, out var level) && level >= 1 && level <= most))
                return ValidationResult.Error($"--level takes a number from 1 to {most}, not \"{LevelText}\".");
            if (Blanks is not (null or "results" or "figures" or "question"))
                return ValidationResult.Error($"--blanks takes results, figures or question, not \"{Blanks}\".");
            if (With is not null && With.Split(',').FirstOrDefault(name => !FeatureNames.ContainsKey(name.Trim())) is { } unknown)
                return ValidationResult.Error($"--with takes {string.Join(", ", FeatureNames.Keys)}, not \"{unknown.Trim()}\".");
            if (With is not null && With.Contains("single", StringComparison.Ordinal) && With.Contains("pair", StringComparison.Ordinal))
                return ValidationResult.Error("--with takes single or pair, not both.");
            if (File is null && Leaf is not null)
                return ValidationResult.Error("--leaf names a leaf of a course file: name the file before it.");
            if (File is not null && (Readings ?? With ?? SeedText) is not null)
                return ValidationResult.Error("--readings, --with and --seed are for random problems; with a course file the doors are as they are.");
            if (File is not null && BenchesText is not null)
                return ValidationResult.Error("A course has its own benches: leave --benches out, or name one with --bench.");
            return base.Validate();
        }

        /// <summary>The level with what differs from it.</summary>
        /// <exception cref="RefusalException">The step of readings is none that can be used.</exception>
        public Level LevelFor(LengthUnit unit)
        {
            var level = Levels.For(unit)[LevelText is null ? 0 : int.Parse(LevelText, CultureInfo.InvariantCulture) - 1];
            if (With is not null)
                level = level.With([.. With.Split(',').Select(name => FeatureNames[name.Trim()]).OfType<ProblemFeature>()]);
            if (Readings is not null)
            {
                try
                {
                    level = level.WithReadings(TypedLength.Read("--readings", Readings, unit));
                }
                catch (ArgumentOutOfRangeException)
                {
                    throw new RefusalException(ExitCode.WrongUse, $"--readings takes a step such as 1, 1/2 or 1/16, of an inch or 25 mm at most, not \"{Readings}\".");
                }
            }

            return Blanks switch
            {
                "results" => level.WithBlanks(BlankStyle.Results),
                "figures" => level.WithBlanks(BlankStyle.Figures),
                "question" => level.WithBlanks(BlankStyle.Question),
                _ => level,
            };
        }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (settings.Out is not null)
            OutputFile.RefuseExisting(settings.Out, settings.Replace);
        var sheets = settings.File is null ? Random(settings) : OfCourse(settings, settings.File);
        if (settings.Out is null)
        {
            PageWriter.Write(WorksheetPage.Of(sheets[0], settings.Key, Answers(sheets[0], settings)), screen);
            return ExitCode.Good;
        }

        var print = WorksheetPrint.Of(sheets, settings.PaperFor(sheets[0].Format.Unit), settings.NoKey ? TeachingContents.SheetsOnly : TeachingContents.SheetsAndKey, ProgramVersion.Text, clock.GetLocalNow());
        var count = PdfFile.Write(settings.Out, print.Facts, print.Pages, settings.Replace, screen, cancellationToken);
        screen.Error.WriteLine($"{settings.Out}: {TradeWords.Count(sheets.Length, "worksheet", "worksheets")}{(settings.NoKey ? "" : " and the key")} on {TradeWords.Count(count, "sheet", "sheets")}."
            + (sheets[0].Seed is { } seed ? string.Create(CultureInfo.InvariantCulture, $" Seed {seed} repeats them.") : ""));
        return ExitCode.Good;
    }

    private static Worksheet[] Random(Settings settings)
    {
        try
        {
            var level = settings.LevelFor(settings.Unit);
            return settings.Bench is { } bench ? [RandomWorksheets.Of(level, settings.Seed, bench)] : [.. RandomWorksheets.Of(level, settings.Seed).Take(settings.Benches)];
        }
        catch (InvalidOperationException fault)
        {
            throw new RefusalException(ExitCode.WrongUse, fault.Message);
        }
    }

    private Worksheet[] OfCourse(Settings settings, string file)
    {
        var breakdown = CourseFile.Open(file);
        var selection = Selection.Of(breakdown, settings.Bench, settings.Leaf).OrRefuse();
        List<Worksheet> sheets = [];
        List<string> missing = [];
        foreach (var bench in selection.Fronts.GroupBy(front => front.Project))
        {
            var unit = settings.Inches ? LengthUnit.Inch : settings.Millimetres ? LengthUnit.Millimetre : bench.Key.Project.Unit ?? breakdown.Course.Unit;
            var format = new LengthFormat(unit, new StandardInForce(breakdown.Standard).Format.FinestDenominator);
            var level = settings.LevelFor(unit);
            // A leaf that is named is asked about, whatever lies before it.
            var found = settings.Leaf is null ? WorksheetMaker.OfBench(breakdown, bench.Key, level, format)
                : WorksheetMaker.OfLeaf(breakdown, bench.Key, bench.First().Front, bench.First().Leaves[0], level, format);
            switch (found)
            {
                case Found<Worksheet>.There(var sheet):
                    sheets.Add(sheet);
                    break;
                case Found<Worksheet>.Missing(var problem):
                    missing.Add(problem);
                    break;
            }
        }

        if (sheets.Count == 0)
            throw new RefusalException(ExitCode.WrongUse, missing.Count == 0 ? "There is no door to ask about in this course." : string.Join(' ', missing));
        foreach (var problem in missing)
            screen.Error.WriteLine(problem);
        return [.. sheets];
    }

    private static MarkedSheet? Answers(Worksheet sheet, Settings settings)
    {
        if (settings.Answers.Length == 0)
            return null;
        var answers = settings.AnswersByBlank;
        if (answers.Keys.FirstOrDefault(id => sheet.Blanks.All(blank => blank.Id != id)) is { } unknown)
            throw new RefusalException(ExitCode.WrongUse, $"The sheet has no blank \"{unknown}\". It has: {string.Join(", ", sheet.Blanks.Select(blank => blank.Id))}.");
        return sheet.Mark(answers);
    }
}
