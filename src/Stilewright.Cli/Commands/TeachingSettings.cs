using System.ComponentModel;
using System.Globalization;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Drawing.Packets;
using Stilewright.Measure;
using Stilewright.Teaching.Worksheets;

namespace Stilewright.Cli.Commands;

/// <summary>A verb that makes exercises from a seed, on the screen or as a PDF for a class.</summary>
internal abstract class TeachingSettings : CommandSettings
{
    private const int LargestOwnSeed = 999_999;

    [CommandOption("--in")]
    [Description("Exercises in inches; so it is when neither is given.")]
    public bool Inches { get; init; }

    [CommandOption("--mm")]
    [Description("Exercises in millimetres.")]
    public bool Millimetres { get; init; }

    [CommandOption("--seed <NUMBER>")]
    [Description("Repeats exercises that were made before; a new one is told when absent.")]
    public string? SeedText { get; init; }

    [CommandOption("--benches <COUNT>")]
    [Description("How many different sheets to print, one for each bench from 1; 1 when absent.")]
    public string? BenchesText { get; init; }

    [CommandOption("--bench <NUMBER>")]
    [Description("Only the sheet of this bench.")]
    public string? BenchText { get; init; }

    [CommandOption("--out <FILE>")]
    [Description("The PDF to write; without it one sheet is shown on the screen.")]
    public string? Out { get; init; }

    [CommandOption("--replace")]
    [Description("Write over a file that is there.")]
    public bool Replace { get; init; }

    [CommandOption("--paper <PAPER>")]
    [Description("letter or a4; when absent, letter for inches and a4 for millimetres.")]
    public string? PaperName { get; init; }

    [CommandOption("--no-key")]
    [Description("Leave the key out of the PDF.")]
    public bool NoKey { get; init; }

    [CommandOption("--key")]
    [Description("Show the key on the screen.")]
    public bool Key { get; init; }

    [CommandOption("--answer <BLANK=FIGURE>")]
    [Description("Mark an answer on the screen, such as --answer \"c=11 1/4\"; may be given for every blank.")]
    public string[] Answers { get; init; } = [];

    public LengthUnit Unit => Millimetres ? LengthUnit.Millimetre : LengthUnit.Inch;
    public int? Bench => BenchText is null ? null : int.Parse(BenchText, CultureInfo.InvariantCulture);
    public int Benches => BenchesText is null ? 1 : int.Parse(BenchesText, CultureInfo.InvariantCulture);

    public ulong Seed => SeedText is null ? chosen ??= (ulong)Random.Shared.Next(1, LargestOwnSeed) : ulong.Parse(SeedText, CultureInfo.InvariantCulture);

    private ulong? chosen;

    public Paper PaperFor(LengthUnit unit) => PaperName switch
    {
        "letter" => Paper.Letter,
        "a4" => Paper.A4,
        _ => unit == LengthUnit.Inch ? Paper.Letter : Paper.A4,
    };

    public override ValidationResult Validate()
    {
        if (Inches && Millimetres)
            return ValidationResult.Error("Give --in or --mm, not both.");
        if (SeedText is not null && !ulong.TryParse(SeedText, NumberStyles.None, CultureInfo.InvariantCulture, out _))
            return ValidationResult.Error($"--seed takes a whole number, such as 7, not \"{SeedText}\".");
        foreach (var (option, text) in new[] { ("--benches", BenchesText), ("--bench", BenchText) })
        {
            if (text is not null && !(int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= RandomWorksheets.MostBenches))
                return ValidationResult.Error($"{option} takes a number from 1 to {RandomWorksheets.MostBenches}, not \"{text}\".");
        }

        if (BenchesText is not null && BenchText is not null)
            return ValidationResult.Error("Give --benches or --bench, not both.");
        if (PaperName is not (null or "letter" or "a4"))
            return ValidationResult.Error($"--paper takes letter or a4, not \"{PaperName}\".");
        if (Out is not null && !Out.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase))
            return ValidationResult.Error($"--out takes a file that ends in .pdf, not \"{Out}\".");
        if (Out is not null && (Key || Answers.Length > 0))
            return ValidationResult.Error("--key and --answer are for the screen; a PDF has its key at the end, or none with --no-key.");
        if (Out is null && BenchesText is not null)
            return ValidationResult.Error("Sheets for several benches are printed: name the PDF with --out.");
        return Answers.FirstOrDefault(answer => answer.IndexOf('=') < 1) is { } wrong
            ? ValidationResult.Error($"--answer takes a blank and a figure, such as \"c=11 1/4\", not \"{wrong}\".") : ValidationResult.Success();
    }

    /// <exception cref="RefusalException">A blank is answered twice.</exception>
    public Dictionary<string, string> AnswersByBlank
    {
        get
        {
            Dictionary<string, string> answers = [];
            foreach (var answer in Answers)
            {
                var at = answer.IndexOf('=');
                if (!answers.TryAdd(answer[..at].Trim(), answer[(at + 1)..].Trim()))
                    throw new RefusalException(ExitCode.WrongUse, $"The blank {answer[..at].Trim()} is answered twice.");
            }

            return answers;
        }
    }
}
