using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;
using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

internal sealed class CheckCommand(Screen screen) : Command<CheckCommand.Settings>
{
    internal sealed class Settings : CourseSettings;

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var kind = DocumentReader.FormatOf(InputFile.Read(settings.File));
        if (kind == DocumentFormat.HandedOut)
        {
            PageWriter.Write(new Page().Line($"{settings.File} is a sound record of what was handed out: {HandedOutFile.Read(settings.File).What}."), screen);
            return ExitCode.Good;
        }

        if (kind == DocumentFormat.LabelSheet)
        {
            var sheet = CourseFile.Use(settings.File, DocumentReader.ReadLabelSheet(InputFile.Read(settings.File)));
            PageWriter.Write(new Page().Line($"{settings.File} is a sound label sheet: {sheet.Name}, {sheet.Count} labels."), screen);
            return ExitCode.Good;
        }

        if (kind == DocumentFormat.Printer)
        {
            var printer = CourseFile.Use(settings.File, DocumentReader.ReadPrinter(InputFile.Read(settings.File)));
            PageWriter.Write(new Page().Line($"{settings.File} is a sound printer file: {printer.Name}, {TradeWords.Count(printer.Measured.Count, "print", "prints")} measured."), screen);
            return ExitCode.Good;
        }

        if (kind == DocumentFormat.MakersList)
        {
            var list = CourseFile.Use(settings.File, DocumentReader.ReadWrittenList(InputFile.Read(settings.File)));
            PageWriter.Write(new Page().Line($"{settings.File} is a sound cut list of a maker: {TradeWords.Count(list.Lines.Count, "line", "lines")}. `stilewright mark` says whether it is right."), screen);
            return ExitCode.Good;
        }

        if (kind == DocumentFormat.Standard)
        {
            var standard = CourseFile.Use(settings.File, DocumentReader.ReadStandard(InputFile.Read(settings.File)));
            PageWriter.Write(new Page().Line($"{settings.File} is a sound house standard: {standard.Name}."), screen);
            return ExitCode.Good;
        }

        var breakdown = CourseFile.Open(settings.File);
        PageWriter.Write(CheckPage.Of(breakdown, settings.FormatFor(breakdown, breakdown.Projects)), screen);
        return CodeOf(breakdown);
    }

    /// <summary>The exit code that the worst finding asks for.</summary>
    public static int CodeOf(Breakdown breakdown)
    {
        if (breakdown.Findings.Any(finding => finding.Severity == Severity.CannotBuild))
            return ExitCode.CannotBuild;
        return breakdown.Findings.Any(finding => finding is { Severity: Severity.Hazard, AcceptedBecause: null })
            ? ExitCode.HazardsOpen : ExitCode.Good;
    }
}
