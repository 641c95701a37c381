using System.ComponentModel;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Pages;
using Stilewright.Documents;
using Stilewright.Drawing.Labels;
using Stilewright.Drawing.Writing;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

internal sealed class LabelsCommand(Screen screen, TimeProvider clock) : Command<LabelsCommand.Settings>
{
    internal sealed class Settings : PrintSettings
    {
        [CommandOption("--leaf <LABEL>")]
        [Description("Only this leaf, by label such as 7.2L or by path.")]
        public string? Leaf { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var breakdown = CourseFile.Open(settings.File);
        var selection = Selection.Of(breakdown, settings.BenchNumber, settings.Leaf).OrRefuse();
        var format = settings.FormatFor(breakdown, selection.Projects);
        var sheet = settings.LabelSheetFor(settings.PaperFor(format.Unit));
        var revisions = Fingerprint.Of(breakdown);
        LabelledPart[] parts =
        [
            .. selection.Fronts.SelectMany(front => front.Leaves.SelectMany(leaf => leaf.Parts),
                (front, part) => new LabelledPart(part, revisions.Projects[front.Project.Project.Id])),
        ];
        if (parts.Length == 0)
            throw new RefusalException(ExitCode.WrongUse, "There is no part to label: the leaves asked for cannot be built. `stilewright check` says why.");

        var pages = LabelPages.Of(parts, sheet, format, settings.LabelPrint).Select(scene => new PdfPage(scene, [new(scene.Title, 1)]));
        var facts = new PdfFacts($"{breakdown.Course.Name}: labels", $"Labels of parts on {sheet.Name}", null, "labels",
            $"Stilewright {ProgramVersion.Text}", clock.GetUtcNow());
        var count = PdfFile.Write(settings.Out!, facts, pages, settings.Replace, screen, cancellationToken);
        screen.Error.WriteLine($"{settings.Out}: {TradeWords.Count(parts.Length, "label", "labels")} on {TradeWords.Count(count, "sheet", "sheets")}, {sheet.Name}. Print at full size, without fitting to the page.");
        if (selection.Withheld is { Count: > 0 } withheld)
            screen.Error.WriteLine($"Left out because they cannot be built: {string.Join(", ", withheld)}. `stilewright check` says why.");
        return ExitCode.Good;
    }
}
