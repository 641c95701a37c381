using System.ComponentModel;
using System.Globalization;
using Fractions;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Pages;
using Stilewright.Documents;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

internal sealed class CalibrateCommand(Screen screen) : Command<CalibrateCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<PRINTER>")]
        [Description("The printer file; it is made when it is not there.")]
        public required string Printer { get; init; }

        [CommandOption("--feed <EDGE>")]
        [Description("short or long: the edge of the paper that went in first.")]
        public string? Feed { get; init; }

        [CommandOption("--across <LENGTH>")]
        [Description("How long the rule along the shorter edge of the paper came out, such as 149.2 mm.")]
        public string? Across { get; init; }

        [CommandOption("--along <LENGTH>")]
        [Description("How long the rule along the longer edge came out.")]
        public string? Along { get; init; }

        [CommandOption("--rule <LENGTH>")]
        [Description("What the rules on the sheet say: 6 in or 150 mm. Absent, 150 mm where --across is in millimetres and 6 in where it is in inches.")]
        public string? Rule { get; init; }

        [CommandOption("--name <NAME>")]
        [Description("What the shop calls the printer, for a new file.")]
        public string? Name { get; init; }

        public override ValidationResult Validate()
        {
            if (Feed is null || PatternCommand.Settings.FeedOf(Feed) is null)
                return ValidationResult.Error($"--feed takes short or long: which edge of the paper went in first{(Feed is null ? "" : $", not \"{Feed}\"")}.");
            foreach (var (option, text) in new[] { ("--across", Across), ("--along", Along) })
            {
                if (text is null)
                    return ValidationResult.Error($"Give what was measured on the last print with {option}, such as {option} \"149.2 mm\".");
            }

            return base.Validate();
        }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var isThere = File.Exists(settings.Printer);
        var isMetric = settings.Across!.TrimEnd().EndsWith("mm", StringComparison.OrdinalIgnoreCase);
        var printer = isThere
            ? CourseFile.Use(settings.Printer, DocumentReader.ReadPrinter(InputFile.Read(settings.Printer)))
            : new Printer(IdOf(settings.Printer), settings.Name ?? Path.GetFileNameWithoutExtension(settings.Printer), isMetric ? LengthUnit.Millimetre : LengthUnit.Inch, []);
        var unit = printer.Unit;
        isMetric |= unit == LengthUnit.Millimetre && !settings.Across!.Any(char.IsLetter) && !settings.Across!.Contains('"', StringComparison.Ordinal);
        var feed = PatternCommand.Settings.FeedOf(settings.Feed!)!.Value;
        var print = new PrintMeasurement(feed,
            Entry("--rule", settings.Rule ?? (isMetric ? "150 mm" : "6 in")), Entry("--across", settings.Across!), Entry("--along", settings.Along!));
        if (!print.Nominal.Value.IsPositive || !print.IsPlausible)
        {
            throw new RefusalException(ExitCode.WrongUse,
                $"A rule of {print.Nominal.Text} that came out {print.Across.Text} across and {print.Along.Text} along is more than 2 % off: the page was fitted to the paper. Print at 100 % and measure again.");
        }

        var more = printer with { Measured = [.. printer.Measured, print] };
        OutputFile.Write(settings.Printer, DocumentWriter.Write(more), replace: isThere);
        var (across, along) = more.Correction(feed);
        screen.Error.WriteLine($"{settings.Printer}: {TradeWords.Count(more.Count(feed), "print", "prints")} measured that went in by the {settings.Feed} edge; "
            + $"the next is stretched by {Percent(across)} across and {Percent(along)} along.");
        return ExitCode.Good;

        LengthEntry Entry(string option, string text) => new(text, TypedLength.Read(option, text, unit));
    }

    private static string Percent(Fraction factor) =>
        (factor - 1).ToDouble().ToString("+0.00 %;−0.00 %;0 %", CultureInfo.InvariantCulture);

    // Small letters, figures and hyphens, as ids are written.
    private static string IdOf(string path)
    {
        var letters = Path.GetFileNameWithoutExtension(path).ToLowerInvariant().Select(letter => char.IsAsciiLetterLower(letter) || char.IsAsciiDigit(letter) ? letter : '-');
        var id = string.Concat(letters).Trim('-');
        return id.Length > 0 && char.IsAsciiLetterLower(id[0]) ? id : $"printer-{id}".TrimEnd('-');
    }
}
