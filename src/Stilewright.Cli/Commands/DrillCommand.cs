using System.ComponentModel;
using System.Globalization;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;
using Stilewright.Drawing.Worksheets;
using Stilewright.Teaching.Drills;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

internal sealed class DrillCommand(Screen screen, TimeProvider clock) : Command<DrillCommand.Settings>
{
    internal sealed class Settings : TeachingSettings
    {
        private const int UsualCount = 4;
        private const int UsualFinest = 16;

        private static readonly Dictionary<string, DrillKind> KindNames = new(StringComparer.Ordinal)
        {
            ["rule"] = DrillKind.ReadRule,
            ["add"] = DrillKind.Add,
            ["subtract"] = DrillKind.Subtract,
            ["halve"] = DrillKind.Halve,
            ["double"] = DrillKind.Twice,
            ["to-mm"] = DrillKind.InchToMillimetre,
            ["to-in"] = DrillKind.MillimetreToInch,
        };

        [CommandOption("--finest <FRACTION>")]
        [Description("The finest fraction: 2, 4, 8, 16 or 32 of an inch, 16 when absent; with --mm 1 for whole millimetres or 2 for halves.")]
        public string? Finest { get; init; }

        [CommandOption("--kinds <KINDS>")]
        [Description("Some of rule, add, subtract, halve, double, to-mm and to-in with commas between them; all when absent.")]
        public string? Kinds { get; init; }

        [CommandOption("--count <NUMBER>")]
        [Description("How many items of each kind; 4 when absent.")]
        public string? Count { get; init; }

        public override ValidationResult Validate()
        {
            var steps = DrillSettings.FinestOf(Unit);
            if (Finest is not null && !(int.TryParse(Finest, NumberStyles.None, CultureInfo.InvariantCulture, out var finest) && steps.Contains(finest)))
                return ValidationResult.Error($"--finest takes {string.Join(", ", steps)}{(Millimetres ? " in millimetres" : "")}, not \"{Finest}\".");
            if (Count is not null && !(int.TryParse(Count, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= DrillSettings.MostOfKind))
                return ValidationResult.Error($"--count takes a number from 1 to {DrillSettings.MostOfKind}, not \"{Count}\".");
            return Kinds?.Split(',').FirstOrDefault(name => !KindNames.ContainsKey(name.Trim())) is { } unknown
                ? ValidationResult.Error($"--kinds takes {string.Join(", ", KindNames.Keys)}, not \"{unknown.Trim()}\".") : base.Validate();
        }

        public DrillSettings Drill => new(Unit,
            Finest is not null ? int.Parse(Finest, CultureInfo.InvariantCulture) : Millimetres ? 2 : UsualFinest,
            Kinds is null ? [.. KindNames.Values] : [.. Kinds.Split(',').Select(name => KindNames[name.Trim()]).Distinct()],
            Count is null ? UsualCount : int.Parse(Count, CultureInfo.InvariantCulture));
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (settings.Out is not null)
            OutputFile.RefuseExisting(settings.Out, settings.Replace);
        var benches = settings.Bench is { } bench ? [bench] : Enumerable.Range(1, settings.Benches).ToArray();
        Drill[] drills = [.. benches.Select(number => DrillMaker.Of(settings.Drill, settings.Seed, number))];
        if (settings.Out is null)
        {
            PageWriter.Write(DrillPage.Of(drills[0], settings.Key, Marked(drills[0], settings)), screen);
            return ExitCode.Good;
        }

        var print = DrillPrint.Of(drills, settings.PaperFor(settings.Unit), settings.NoKey ? TeachingContents.SheetsOnly : TeachingContents.SheetsAndKey, ProgramVersion.Text, clock.GetLocalNow());
        var count = PdfFile.Write(settings.Out, print.Facts, print.Pages, settings.Replace, screen, cancellationToken);
        screen.Error.WriteLine($"{settings.Out}: {TradeWords.Count(drills.Length, "drill", "drills")}{(settings.NoKey ? "" : " and the key")} on {TradeWords.Count(count, "sheet", "sheets")}. "
            + string.Create(CultureInfo.InvariantCulture, $"Seed {settings.Seed} repeats them. Rules are true at 100 %, not fitted to the page."));
        return ExitCode.Good;
    }

    private static IReadOnlyList<MarkedItem>? Marked(Drill drill, Settings settings)
    {
        if (settings.Answers.Length == 0)
            return null;
        Dictionary<int, string> answers = [];
        foreach (var (text, answer) in settings.AnswersByBlank)
        {
            if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number < 1 || number > drill.Items.Count)
                throw new RefusalException(ExitCode.WrongUse, $"The drill has no item \"{text}\". Its items are numbered from 1 to {drill.Items.Count.ToString(CultureInfo.InvariantCulture)}.");
            answers[number] = answer;
        }

        return drill.Mark(answers);
    }
}
