using System.Globalization;
using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Drawing.Labels;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Prints;
using Stilewright.Shop;
using Stilewright.Web.Desk;
using Stilewright.Wording;

namespace Stilewright.Web.Features.Printing;

/// <summary>Which packet is wanted.</summary>
/// <param name="Benches">Numbers of benches; null for the whole course, with its overview.</param>
/// <param name="Unit">Null for the unit that each project is written in.</param>
public sealed record PacketOrder(IReadOnlyList<int>? Benches, LengthUnit? Unit = null)
{
    /// <summary>Null for Letter where inches are read and A4 where millimetres are.</summary>
    public PaperKind? Paper { get; init; }

    public bool StorySticks { get; init; }
    public bool PartDrawings { get; init; } = true;
    public bool Working { get; init; } = true;

    /// <summary>Whether panels through the year, glue-ups and weights are printed.</summary>
    public bool Wood { get; init; } = true;

    /// <summary>Whether sheets of labels follow each project.</summary>
    public bool Labels { get; init; } = true;

    /// <summary>The id of a label sheet; null for plain paper of the packet's size.</summary>
    public string? LabelSheet { get; init; }

    public LabelPrint LabelPrint { get; init; } = new();

    /// <summary>Which worksheet of its own first door every bench is given; null for none.</summary>
    public PacketWorksheets? Worksheets { get; init; }

    /// <summary>The packet, or why there is none.</summary>
    /// <param name="now">In the time of the place.</param>
    public Found<PaperPrint> Packet(OpenCourse course, DateTimeOffset now)
    {
        if (Problem(course) is { } problem)
            return new Found<PaperPrint>.Missing(problem);
        var alone = Benches is [var only] ? course.AtBench(only) : null;
        var breakdown = alone?.Breakdown ?? course.Whole;
        var benches = Benches is null ? null : breakdown.Projects.Where(project => Benches.Contains(project.Project.Bench)).ToList();
        var print = PacketPrint.Of(breakdown, benches, new(PaperFor(course) == PaperKind.A4 ? Drawing.Packets.Paper.A4 : Drawing.Packets.Paper.Letter, Unit, StorySticks)
        {
            PartDrawings = PartDrawings,
            Working = Working,
            Wood = Wood,
            Labels = Labels ? new(SheetFor(course), LabelPrint) : null,
            Worksheets = Worksheets,
        }, ProgramVersion.Text, now);
        return new Found<PaperPrint>.There(new(Capital(print.HandedOut.What), $"{FileStem(course)}-packet.pdf", print.Facts, print.Pages, print.HandedOut));
    }

    /// <summary>Labels alone, or why there are none.</summary>
    /// <param name="leaf">A leaf by label or path; null for all of the benches.</param>
    /// <param name="now">In the time of the place.</param>
    public Found<PaperPrint> LabelsOf(OpenCourse course, string? leaf, DateTimeOffset now)
    {
        if (Problem(course) is { } problem)
            return new Found<PaperPrint>.Missing(problem);
        var whole = course.Whole;
        var chosen = Benches is [var one] ? Selection.Of(whole, one, leaf) : Selection.Of(whole, null, leaf);
        if (chosen is Found<Selection>.Missing missing)
            return new Found<PaperPrint>.Missing(missing.Problem);
        var fronts = ((Found<Selection>.There)chosen).Thing.Fronts.Where(front => Benches is null || Benches.Contains(front.Project.Project.Bench)).ToList();
        Part[] parts = [.. fronts.SelectMany(front => front.Leaves).SelectMany(each => each.Parts)];
        if (parts.Length == 0)
            return new Found<PaperPrint>.Missing("There is no part to label: nothing is measured yet, or the leaves cannot be built.");
        var revisions = Fingerprint.Of(whole);
        var sheet = SheetFor(course);
        var owners = CutListGroup.Owners(whole.Projects);
        var format = FormatFor(course);
        var pages = LabelPages.Of(parts.Select(part => new LabelledPart(part, revisions.Projects[owners[part.Path].Project.Id])), sheet, format, LabelPrint)
            .Select(scene => new PdfPage(scene, [new(scene.Title, 1)]));
        var handedOut = HandedOut.Of(whole, fronts.Select(front => front.Project).Distinct(), HandedOutExtent.Parts, revisions, ProgramVersion.Text, now, parts);
        return new Found<PaperPrint>.There(new(
            $"Labels of {handedOut.PartWords}", $"{FileStem(course)}-labels.pdf",
            new($"{course.Course.Name}: labels", $"Labels of parts on {sheet.Name}", null, "labels", $"Stilewright {ProgramVersion.Text}", now.ToUniversalTime()), pages, handedOut));
    }

    /// <summary>The paper wanted, or the one that goes with the unit.</summary>
    public PaperKind PaperFor(OpenCourse course) => Paper ?? (FormatFor(course).Unit == LengthUnit.Inch ? PaperKind.Letter : PaperKind.A4);

    private LengthFormat FormatFor(OpenCourse course) => new(
        Unit ?? (Benches is [var one] ? course.AtBench(one)?.Project.Unit : null) ?? course.Course.Unit,
        new StandardInForce(course.Standard.Standard).Format.FinestDenominator);

    private LabelSheet SheetFor(OpenCourse course) =>
        ShippedLabelSheets.All.FirstOrDefault(sheet => sheet.Id == LabelSheet) ?? ShippedLabelSheets.Plain(PaperFor(course));

    private string? Problem(OpenCourse course)
    {
        if (course.Projects.Count == 0)
            return "Nobody works at a bench of this course yet, so there is nothing to print.";
        if (Benches is [])
            return "No bench is chosen.";
        if (Benches?.FirstOrDefault(bench => course.AtBench(bench) is null) is { } free and > 0)
            return string.Create(CultureInfo.InvariantCulture, $"There is no bench {free} in this course. Benches: {string.Join(", ", course.Projects.Select(project => project.Project.Bench))}.");
        if (Labels && LabelSheet is { } id && ShippedLabelSheets.All.All(sheet => sheet.Id != id))
            return $"There is no label sheet {id}. Label sheets: {string.Join(", ", ShippedLabelSheets.All.Select(sheet => sheet.Id))}.";
        return Labels && LabelPrint.FirstLabel > SheetFor(course).Count
            ? string.Create(CultureInfo.InvariantCulture, $"Label {LabelPrint.FirstLabel} is not on the sheet {SheetFor(course).Name}: it has {SheetFor(course).Count}.") : null;
    }

    private string FileStem(OpenCourse course) => Benches is [var one]
        ? string.Create(CultureInfo.InvariantCulture, $"{course.Course.Id}-bench-{one}") : course.Course.Id;

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
