using System.ComponentModel;
using System.Globalization;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Documents;
using Stilewright.Drawing.Labels;
using Stilewright.Shop;

namespace Stilewright.Cli.Commands;

/// <summary>A verb that prints labels on sheets.</summary>
internal abstract class PrintSettings : BenchSettings
{
    private const double MostShift = 50;

    [CommandOption("--out <FILE>")]
    [Description("The PDF to write.")]
    public string? Out { get; init; }

    [CommandOption("--replace")]
    [Description("Write over files that are there.")]
    public bool Replace { get; init; }

    [CommandOption("--paper <PAPER>")]
    [Description("letter or a4; when absent, letter for inches and a4 for millimetres.")]
    public string? PaperName { get; init; }

    [CommandOption("--label-sheet <SHEET>")]
    [Description("How sheets of labels are divided: plain-letter or plain-a4 to cut apart; letter-30, letter-20, letter-14, letter-10, a4-24, a4-21, a4-16 or a4-14 for bought sheets with so many labels; or a file of your own. Plain paper when absent.")]
    public string? LabelSheetName { get; init; }

    [CommandOption("--first-label <NUMBER>")]
    [Description("The first free label of a sheet that was begun, counted along the rows.")]
    public string? FirstLabel { get; init; }

    [CommandOption("--right <MM>")]
    [Description("Move labels right by so many millimetres, left when below zero, to suit the printer.")]
    public string? Right { get; init; }

    [CommandOption("--down <MM>")]
    [Description("Move labels down by so many millimetres, up when below zero.")]
    public string? Down { get; init; }

    public override ValidationResult Validate()
    {
        if (Out is null)
            return ValidationResult.Error("Name the PDF to write with --out, such as --out bench-3.pdf.");
        if (PaperName is not (null or "letter" or "a4"))
            return ValidationResult.Error($"--paper takes letter or a4, not \"{PaperName}\".");
        if (FirstLabel is not null && (!int.TryParse(FirstLabel, NumberStyles.None, CultureInfo.InvariantCulture, out var first) || first < 1))
            return ValidationResult.Error($"--first-label takes a number from 1, not \"{FirstLabel}\".");
        foreach (var (option, text) in new[] { ("--right", Right), ("--down", Down) })
        {
            if (text is not null && !(Shift(text) is { } shift && Math.Abs(shift) <= MostShift))
                return ValidationResult.Error($"{option} takes millimetres from -{MostShift} to {MostShift}, such as 1.5, not \"{text}\".");
        }

        return base.Validate();
    }

    public PaperKind PaperFor(Measure.LengthUnit unit) => PaperName switch
    {
        "letter" => PaperKind.Letter,
        "a4" => PaperKind.A4,
        _ => unit == Measure.LengthUnit.Inch ? PaperKind.Letter : PaperKind.A4,
    };

    /// <exception cref="RefusalException">There is no such sheet, its file cannot be read, or the first label is not on it.</exception>
    public LabelSheet LabelSheetFor(PaperKind paper)
    {
        var sheet = LabelSheetName is null ? ShippedLabelSheets.Plain(paper)
            : ShippedLabelSheets.All.FirstOrDefault(each => each.Id == LabelSheetName)
            ?? (System.IO.File.Exists(LabelSheetName) ? CourseFile.Use(LabelSheetName, DocumentReader.ReadLabelSheet(InputFile.Read(LabelSheetName)))
            : throw new RefusalException(ExitCode.WrongUse,
                $"There is no label sheet and no file {LabelSheetName}. Sheets that ship: {string.Join(", ", ShippedLabelSheets.All.Select(each => each.Id))}."));
        if (LabelPrint.FirstLabel > sheet.Count)
            throw new RefusalException(ExitCode.WrongUse, $"--first-label {FirstLabel} is not on the sheet {sheet.Id}: it has {sheet.Count} labels.");
        return sheet;
    }

    public LabelPrint LabelPrint => new(Shift(Right) ?? 0, Shift(Down) ?? 0,
        FirstLabel is null ? 1 : int.Parse(FirstLabel, NumberStyles.None, CultureInfo.InvariantCulture));

    private static double? Shift(string? text) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;
}
