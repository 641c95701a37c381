using System.Globalization;
using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
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

    // Drawings smaller than 1:12 are hard to work from.
    private const int LeastClear = 12;

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
            flow.Add(Reasons([.. contents.FindingsOf(project).Where(finding => Withholds(finding, front, leaf))], leaf));
            LayRest(own);
            LayWorking(leaf, [leaf.Width, leaf.Height]);
            return;
        }

        var detail = LeafDetail.Of(contents.Breakdown.Course, project, leaf);
        CutListLine[] alike = [.. CutList.Of(leaf.Parts).OrderBy(line => leaf.Parts.TakeWhile(part => part != line.Part).Count())];
        Strip[] parts = [.. Parts(leaf, alike)];
        LayViews(leaf, detail, parts.Sum(strip => strip.SpaceBefore + strip.Height));
        flow.Add(parts);
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

    private IReadOnlyList<Strip> Reasons(IReadOnlyList<Finding> reasons, SizedLeaf leaf)
    {
        const double ShareOfOutline = 0.34;
        const double HighestOutline = 90;
        const double Gap = 6;
        if (!FrontPainter.IsThere(leaf))
            return [.. findings.Framed(Remarks.Withheld, reasons, Width)];
        var detail = LeafDetail.Of(contents.Breakdown.Course, project, leaf);
        var outline = new Figure("Outline as asked for", leaf.Width.Length, leaf.Height.Length, scale => LeafFigure.Front(leaf, detail, scale, format));
        var outlineWidth = Width * ShareOfOutline;
        Strip[] drawing = [.. FigureStrips.One(outline, format.Unit, outlineWidth, HighestOutline)];
        Strip[] framed = [.. findings.Framed(Remarks.Withheld, reasons, Width - outlineWidth - Gap)];
        return framed.Sum(strip => strip.SpaceBefore + strip.Height) <= Most
            ? [Strip.Beside((0, framed), (Width - outlineWidth, drawing)) with { SpaceBefore = 3 }]
            : [.. findings.Framed(Remarks.Withheld, reasons, Width), .. drawing];
    }

    private void LayViews(SizedLeaf leaf, LeafDetail detail, double partsHeight)
    {
        var front = new Figure("Front view", leaf.Width.Length, leaf.Height.Length, DrawnOnce(scale => LeafFigure.Front(leaf, detail, scale, format)));
        var back = new Figure("Back view", leaf.Width.Length, leaf.Height.Length, DrawnOnce(scale => LeafFigure.Back(leaf, detail, scale, format)));
        // Best with the parts on this sheet; a tall door is worth a sheet of its own.
        (Scale Scale, IReadOnlyList<Strip> Strips)? best = null;
        foreach (var room in new[] { flow.Left - partsHeight, flow.Left, flow.Height - partsHeight, flow.Height })
        {
            if (FigureStrips.FrontAndBack(front, back, format.Unit, Width, room) is not { } found || best?.Scale.Reduction <= found.Scale.Reduction)
                continue;
            best = found;
            if (found.Scale.Reduction <= LeastClear)
                break;
        }

        flow.Add(best?.Strips ?? FigureStrips.Beside([front, back], format.Unit, Width, flow.Height));
    }

    // Every room that is tried asks for the same scales.
    private static Func<Scale, Scene> DrawnOnce(Func<Scale, Scene> draw)
    {
        Dictionary<Scale, Scene> drawn = [];
        return scale => drawn.TryGetValue(scale, out var scene) ? scene : drawn[scale] = draw(scale);
    }

    private IEnumerable<Strip> Parts(SizedLeaf leaf, CutListLine[] alike)
    {
        if (alike.Length == 0)
            return [];
        return
        [
            .. Prose.Heading($"Parts, in {figures.Unit}: width × length along the grain", Width),
            .. Table.Of(
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
                Width, Most),
            .. ThicknessesAndSums(leaf),
        ];
    }

    // Beside one another; below one another where they are too many for that.
    private IEnumerable<Strip> ThicknessesAndSums(SizedLeaf leaf)
    {
        const double ThicknessShare = 0.6;
        const double Gap = 8;
        const double Above = 5;
        var sumsAt = Width * ThicknessShare + Gap;
        Strip[] thicknesses = [.. Thicknesses(leaf, Width * ThicknessShare)];
        Strip[] sums = [.. Sums(leaf, Width - sumsAt)];
        if (sums.Length > 0 && Math.Max(Height(thicknesses), Height(sums)) <= Most)
            return [Strip.Beside((0, thicknesses), (sumsAt, sums)) with { SpaceBefore = Above }];
        return [.. Prose.First(Thicknesses(leaf, Width), Above), .. Prose.First(Sums(leaf, Width), Above)];

        static double Height(Strip[] strips) => strips.Sum(strip => strip.SpaceBefore + strip.Height);
    }

    private IEnumerable<Strip> Thicknesses(SizedLeaf leaf, double width)
    {
        var thick = leaf.Parts.GroupBy(part => (
            part.Material, part.Stock, Rough: figures.Of(part.Thickness?.Rough), Planed: figures.Of(part.Thickness?.Planed), Final: figures.Of(part.Thickness?.Final)));
        return Table.Of(
            ["material", "stock", Column.Figure("rough"), Column.Figure("planed"), Column.Figure("sanded"), "parts"],
            thick.Select(group => new Row(
            [
                group.Key.Material, group.Key.Stock, group.Key.Rough, group.Key.Planed, group.Key.Final,
                string.Join(" ", group.Select(part => part.Label[(part.Label.LastIndexOf('·') + 1)..])),
            ])),
            width, Most);
    }

    private IEnumerable<Strip> Sums(SizedLeaf leaf, double width)
    {
        if (leaf.CheckSums.Count == 0)
            yield break;
        foreach (var strip in Prose.Wrapped("It adds up", TextStyle.Body.Bold, width, 0, 0.4))
            yield return strip with { KeepWithNext = true };
        foreach (var sum in leaf.CheckSums)
        {
            var style = sum.Holds ? TextStyle.Body : TextStyle.Body.Bold;
            foreach (var strip in Prose.Paragraph($"{sum.Name}: {sum.Text(format)}{(sum.Holds ? "" : "  DOES NOT ADD UP")}", width, style, above: 0.4))
                yield return strip;
        }
    }

    private void LayPartDrawings(CutListLine[] alike, LeafDetail detail)
    {
        if (!contents.Settings.PartDrawings)
            return;
        const double HighestDrawing = 118;
        Strip[] drawings = [.. FigureStrips.Many(alike.Select(line => Drawing(line, detail)), format.Unit, Width, HighestDrawing)];
        if (drawings.Length == 0)
            return;
        flow.Add(Prose.Heading("The parts one by one", Width));
        flow.Add(drawings);
    }

    // Clear enough when lengths stand over their lines and the label within the part.
    private (Figure Figure, Func<Scale, bool> IsClear) Drawing(CutListLine line, LeafDetail detail)
    {
        const double Shortest = 40;
        const double Narrowest = 4.2;
        var labels = string.Join(", ", line.Parts.Select(part => part.Label));
        var part = line.Part;
        var figure = new Figure(
            line.Count > 1 ? $"{labels}: {line.Count.ToString(CultureInfo.InvariantCulture)} alike" : labels,
            Side(part), Side(part), scale => PartFigure.Draw(part, detail, scale, format));
        var least = Math.Max(Shortest, PartDrawing.LeastLength(part, format));
        return (figure, scale => scale.OnPaper(part.Finished.Length.Length) >= least && scale.OnPaper(part.Finished.Width.Length) >= Narrowest);
    }

    // However a part is turned on the sheet, its shorter side must fit.
    private static Length Side(Part part) =>
        part.Finished.Width.Amount < part.Finished.Length.Amount ? part.Finished.Width.Length : part.Finished.Length.Length;

    private void LayWorking(SizedLeaf leaf, IReadOnlyList<Worked> quantities)
    {
        if (!contents.Settings.Working)
            return;
        Strip[] heading = [.. Prose.Heading($"How the sizes of {leaf.Label} are found", Width)];
        flow.Add(heading);
        flow.Add(WorkingStrips.Of(quantities, format, Width, Most, heading.Sum(strip => strip.SpaceBefore + strip.Height), flow.Left, flow.Height));
    }

    private void LayStick(PieceBreakdown piece, SizedLeaf leaf, LeafDetail detail)
    {
        if (!contents.Settings.StorySticks)
            return;
        flow.Begin(new(piece.Piece.Name, $"story stick of {leaf.Label}", true));
        flow.Add(Prose.Heading($"Story stick of {leaf.Label}, full size", Width));
        var rule = StickStrips.CheckRule(format, Width);
        flow.Add(rule);
        foreach (var scene in StoryStick.Strips(leaf, detail, format, Width))
            flow.Add(StickStrips.Of(scene, Width) with { Repeated = [rule with { KeepWithNext = false }] });
    }
}
