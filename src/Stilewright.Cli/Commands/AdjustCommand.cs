using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;
using Stilewright.Documents.Lists;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Writing;
using Stilewright.Hanging;
using Stilewright.Hanging.Adjusting;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

internal sealed class AdjustCommand(Screen screen) : Command<AdjustCommand.Settings>
{
    private const double SheetMargin = 5;
    private const double DrawingRoom = 180;

    internal sealed class Settings : BenchSettings
    {
        [CommandArgument(1, "[READINGS]")]
        [Description("The sheet of readings (CSV), filled in at the cabinet.")]
        public string? Readings { get; init; }

        [CommandOption("--blank <FILE>")]
        [Description("Write a sheet with every place to be read, as CSV, and stop.")]
        public string? Blank { get; init; }

        [CommandOption("--within <LENGTH>")]
        [Description("How far a gap or a corner may be off and still pass; 1/32 in or 0.8 mm when absent.")]
        public string? Within { get; init; }

        [CommandOption("--draw <FILE>")]
        [Description("Write SVGs of the row before and after; the name of the file gets -before and -after.")]
        public string? Draw { get; init; }

        [CommandOption("--replace")]
        [Description("Write over files that are there.")]
        public bool Replace { get; init; }

        [CommandOption("--json")]
        [Description("Write JSON.")]
        public bool Json { get; init; }

        public override ValidationResult Validate()
        {
            if (Readings is null == Blank is null)
                return ValidationResult.Error("Name the filled-in sheet of readings, or write an empty one with --blank readings.csv.");
            if (Blank is not null && (Draw is not null || Json || Within is not null))
                return ValidationResult.Error("--blank writes the empty sheet only.");
            return base.Validate();
        }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var breakdown = CourseFile.Open(settings.File);
        var selection = Selection.Of(breakdown, settings.BenchNumber, null).OrRefuse();
        var format = Fine(settings.FormatFor(breakdown, selection.Projects));
        HungRow[] rows = [.. HungRow.Of(selection, HangingPlan.Of(breakdown))];
        if (rows.Length == 0)
            throw new RefusalException(ExitCode.WrongUse, "No door here has hinges on a side: name its hinge with the setting hinge.usual, or another bench.");
        if (settings.Blank is { } blank)
        {
            OutputFile.Write(blank, GapSheet.Blank(rows, format.Unit), settings.Replace);
            screen.Error.WriteLine($"{blank}: {TradeWords.Count(rows.Sum(row => row.Places.Count + 4 * row.Leaves.Count), "place", "places")} to be read. Write what is there into the last column; what you do not read may stay empty.");
            return ExitCode.Good;
        }

        var (gaps, corners) = CourseFile.Use(settings.Readings!, GapSheet.Read(InputFile.Read(settings.Readings!, "the sheet"), rows, format.Unit));
        var within = settings.Within is { } text ? TypedLength.Read("--within", text, format.Unit) : AdjustingTask.UsualTolerance(format.Unit);
        AdjustedRow[] adjusted = [.. rows.Select(row => new AdjustedRow(row, row.With(gaps, corners, AdjustingTask.UsualStep(format.Unit), within)))
            .Where(row => row.Task.Gaps.Count + row.Task.Corners.Count > 0)];
        TaskProblem[] problems = [.. adjusted.SelectMany(row => row.Task.Problems())];
        if (problems.Length > 0)
            throw new RefusalException(ExitCode.FileFailed, [$"{settings.Readings} cannot be used.", .. problems.Select(problem => $"  {problem.Place}: {problem.Problem}; {problem.Fix}")]);
        if (settings.Draw is { } drawing)
            WriteDrawings(drawing, adjusted, format, settings.Replace);
        if (settings.Json)
            screen.Plain.Write(AdjustJson.Of(breakdown, adjusted, format));
        else
            PageWriter.Write(AdjustPage.Of(breakdown, adjusted, format), screen);
        return adjusted.All(row => row.Plan.IsWithin) ? ExitCode.Good : ExitCode.NotEven;
    }

    // Screws move leaves by less than is cut.
    private static LengthFormat Fine(LengthFormat format) => new(format.Unit, 64);

    private void WriteDrawings(string path, AdjustedRow[] rows, LengthFormat format, bool replace)
    {
        foreach (var (row, index) in rows.Select((row, index) => (row, index)))
        {
            foreach (var (hang, word) in new[] { (row.Plan.Before, "before"), (row.Plan.After, "after") })
            {
                var number = rows.Length == 1 ? "" : $"-{index + 1}";
                var file = Path.Combine(Path.GetDirectoryName(path) ?? "", $"{Path.GetFileNameWithoutExtension(path)}{number}-{word}.svg");
                var scene = AdjustingFigure.Draw($"{row.Row.Name}, {word}", row.Plan, hang, format, DrawingRoom, DrawingRoom).Scene;
                OutputFile.Write(file, SvgWriter.Text(scene.OnSheet(SheetMargin)), replace);
                screen.Error.WriteLine($"{file}: {row.Row.Name}, {word}.");
            }
        }
    }
}
