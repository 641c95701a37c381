using System.Globalization;
using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Writing;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>Lays the sheets of leaves: drawings, parts, findings where the work is, part drawings and working.</summary>
internal sealed class LeafSheets(PacketContents contents, ProjectBreakdown project, Flow flow, LengthFormat format)
{
    private readonly TradeWords figures = new(format);
    private readonly FindingStrips findings = new(contents.Words, format);

    // Drawings smaller than 1:16 are hard to work from.
    private const int LeastClear = 16;

    private double Width => flow.Width;
    private double Most => flow.Height / 2;

    public void Lay(PieceBreakdown piece, SizedFront front, SizedLeaf leaf)
    {
        Finding[] own = [.. contents.FindingsOf(project).Where(finding => finding.Concerns(leaf.Path))];
        flow.Begin(new(piece.Piece.Name, $"leaf {leaf.Label}, {leaf.Name}", true));
        var title = $"Leaf {leaf.Label}, {leaf.Name}";
        flow.Add(Prose.Title(title, Width, new Bookmark(title, 2)));
        flow.Add(Prose.Paragraph($"{FrontWords.Describe(leaf, figures)}. Front {FrontWords.Name(front)}: {FrontWords.Size(front, figures)}.", Width));
        // What can hurt someone comes before anything that is worked from.
        flow.Add(findings.Of(own.Where(finding => finding.Severity == Severity.Hazard), Width));
        if (leaf.IsWithheld)
        {
            flow.Add(findings.Framed(Remarks.Withheld, [.. contents.FindingsOf(project).Where(finding => Withholds(finding, front, leaf))], Width));
            LayRest(own);
            LayWorking(leaf, [leaf.Width, leaf.Height]);
            return;
        }

        var detail = LeafDetail.Of(contents.Breakdown.Course, project, leaf);
        LayViews(leaf, detail);
        CutListLine[] alike = [.. CutList.Of(leaf.Parts).OrderBy(line => leaf.Parts.TakeWhile(part => part != line.Part).Count())];
        LayParts(leaf, alike);
        LayRest(own);
        LayPartDrawings(alike, detail);
        LayWorking(leaf, [leaf.Width, leaf.Height, .. leaf.Parts.SelectMany(NamedFigures.Of).Select(figure => figure.Quantity)]);
        LayStick(piece, leaf, detail);
    }

    // What stops a front stops each of its leaves.
    private static bool Withholds(Finding finding, SizedFront front, SizedLeaf leaf) => finding.Severity == Severity.CannotBuild
        && (finding.Concerns(leaf.Path) || (finding.Concerns(front.Path) && !front.Leaves.Any(other => finding.Concerns(other.Path))));

    private void LayRest(Finding[] own)
    {
        Finding[] rest = [.. own.Where(finding => finding.Severity < Severity.Hazard)];
        if (rest.Length == 0)
            return;
        flow.Add(Prose.Heading("Findings", Width));
        flow.Add(findings.Of(rest, Width));
    }

    private void LayViews(SizedLeaf leaf, LeafDetail detail)
    {
        Figure[] views =
        [
            new("Front view", leaf.Width.Length, leaf.Height.Length, scale => LeafFigure.Front(leaf, detail, scale, format)),
            new("Back view", leaf.Width.Length, leaf.Height.Length, scale => LeafFigure.Back(leaf, detail, scale, format)),
        ];
        // A tall door is worth most of a sheet; its parts then begin the next.
        var height = flow.Height * 0.58;
        if (views[0].Within(format.Unit, Width / 2, height)?.Scale is not { Reduction: <= LeastClear })
            height = flow.Height * 0.85;
        flow.Add(FigureStrips.Beside(views, format.Unit, Width, height));
    }

    private void LayParts(SizedLeaf leaf, CutListLine[] alike)
    {
        if (alike.Length == 0)
            return;
        flow.Add(Prose.Heading($"Parts, in {figures.Unit}: width × length along the grain", Width));
        flow.Add(Table.Of(
            ["label", "part", Column.Figure("count"), Column.Size("finished"), Column.Size("into the clamps"), Column.Size("rough"), Column.Figure("shoulder to shoulder"), "grain"],
            alike.Select(line => new Row(
            [
                string.Join(" ", line.Parts.Select(part => part.Label)),
                string.Join(" / ", line.Parts.Select(part => part.Name).Distinct()),
                line.Count.ToString(CultureInfo.InvariantCulture),
                figures.Of(line.Part.Finished),
                figures.Of(line.Part.GlueUp),
                figures.Of(line.Part.Rough),
                figures.Of(line.Part.Shoulder),
                line.Part.Grain is { } grain ? TradeWords.Words(grain) : "",
            ])
            {
                Note = figures.Work(line.Part),
            }),
            Width, Most));
        LayThicknesses(leaf);
        if (leaf.CheckSums.Count == 0)
            return;
        flow.Add(Prose.Heading("It adds up", Width));
        foreach (var sum in leaf.CheckSums)
            flow.Add(Prose.Paragraph($"{sum.Name}: {sum.Text(format)}{(sum.Holds ? "" : "  DOES NOT ADD UP")}", Width, sum.Holds ? TextStyle.Figure : TextStyle.Figure.Bold));
    }

    private void LayThicknesses(SizedLeaf leaf)
    {
        var thick = leaf.Parts.GroupBy(part => (
            part.Material, part.Stock, Rough: figures.Of(part.Thickness?.Rough), Planed: figures.Of(part.Thickness?.Planed), Final: figures.Of(part.Thickness?.Final)));
        flow.Add(Table.Of(
            ["material", "stock", Column.Figure("rough"), Column.Figure("planed"), Column.Figure("sanded"), "parts"],
            thick.Select(group => new Row(
            [
                group.Key.Material, group.Key.Stock, group.Key.Rough, group.Key.Planed, group.Key.Final,
                string.Join(" ", group.Select(part => part.Label[(part.Label.LastIndexOf('·') + 1)..])),
            ])),
            Width, Most).Select((strip, i) => i == 0 ? strip with { SpaceBefore = 5 } : strip));
    }

    private void LayPartDrawings(CutListLine[] alike, LeafDetail detail)
    {
        Strip[] drawings = [.. FigureStrips.Many(alike.Select(line => Drawing(line, detail)), format.Unit, Width)];
        if (drawings.Length == 0)
            return;
        flow.Add(Prose.Heading("The parts one by one", Width));
        flow.Add(drawings);
    }

    // A long member lies over the whole width; of panels two stand side by side where they can.
    private (Figure Figure, double Width, double Height) Drawing(CutListLine line, LeafDetail detail)
    {
        var labels = string.Join(", ", line.Parts.Select(part => part.Label));
        var figure = new Figure(
            line.Count > 1 ? $"{labels}: {line.Count.ToString(CultureInfo.InvariantCulture)} alike" : labels,
            Side(line.Part), Side(line.Part), scale => PartFigure.Draw(line.Part, detail, scale, format));
        var isLong = line.Part.Finished.Length.Amount > 2 * line.Part.Finished.Width.Amount;
        return isLong ? (figure, Width, 78) : (figure, (Width - 8) / 2, 84);
    }

    // However a part is turned on the sheet, its shorter side must fit.
    private static Length Side(Part part) =>
        part.Finished.Width.Amount < part.Finished.Length.Amount ? part.Finished.Width.Length : part.Finished.Length.Length;

    private void LayWorking(SizedLeaf leaf, IReadOnlyList<Worked> quantities)
    {
        flow.Add(Prose.Heading($"How the sizes of {leaf.Label} are found", Width));
        flow.Add(WorkingStrips.Of(quantities, format, Width, Most));
    }

    private void LayStick(PieceBreakdown piece, SizedLeaf leaf, LeafDetail detail)
    {
        if (!contents.Settings.StorySticks)
            return;
        flow.Begin(new(piece.Piece.Name, $"story stick of {leaf.Label}", true));
        flow.Add(Prose.Heading($"Story stick of {leaf.Label}, full size", Width));
        foreach (var scene in StoryStick.Strips(leaf, detail, format, Width))
            flow.Add(FigureStrips.Placed(scene.Title, scene, Width));
    }
}
