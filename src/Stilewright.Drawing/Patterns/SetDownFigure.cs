using Stilewright.Curves;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Patterns;

/// <summary>Draws what one hard pattern for rail and panel leaves in the groove: the whole arch small, and the places of least and
/// greatest engagement enlarged.</summary>
internal sealed class SetDownFigure
{
    private const double Width = 165;
    private const double MostOverview = 55;
    private const double Between = 9;
    private const double DetailHeight = 58;
    private const double ArrowLength = 2.2;
    private const double ArrowHalf = 0.55;
    private const double MillimetresPerInch = 25.4;
    private static readonly double[] Enlargements = [4, 2, 1];

    private readonly OnePattern shop;
    private readonly Length engagement;
    private readonly FineWords words;
    private readonly string end;
    private readonly string pattern;
    private readonly Length depth;
    private readonly SetDown balanced;
    private readonly (Chain Chain, LineStyle Style, string Name)[] lines;
    private readonly Chain sight;

    /// <param name="arch">The rail's sight line at the panel, springing at Y = 0 and rising.</param>
    /// <param name="engagement">d − ca, of a panel cut by its own pattern.</param>
    /// <param name="end">"" or "upper" or "lower", where a panel has two arches.</param>
    /// <param name="pattern">What the rail is sawn by.</param>
    public SetDownFigure(ArchCurve arch, OnePattern shop, Length engagement, string end, string pattern, LengthFormat format)
    {
        (this.shop, this.engagement, this.end, this.pattern) = (shop, engagement, end, pattern);
        words = new(format);
        var (d, clearance) = (shop.GrooveDepth, shop.GrooveDepth - engagement);
        balanced = SetDown.Balanced(arch, CurveLength.Inches(d), CurveLength.Inches(clearance));
        depth = SetDown.Settable(arch, d, clearance, shop.Step);
        Found = SetDown.Of(arch, CurveLength.Inches(d - depth), CurveLength.Inches(d), CurveLength.Inches(clearance));
        sight = arch.Chain;
        lines =
        [
            (sight, LineStyle.Edge, "sight line"),
            (LightCurves.Into(arch, CurveLength.Inches(d)), LineStyle.Hidden, "bottom of the groove"),
            (TrueEdge(arch, CurveLength.Inches(engagement)), LineStyle.Centre, "true panel edge"),
            (sight.Translated(new(0, Found.Lift)), LineStyle.Visible, "edge by the one pattern"),
        ];
    }

    /// <summary>What the set-down that can be set leaves.</summary>
    public SetDown Found { get; }

    /// <summary>Why the panel should have a pattern of its own; null where nothing speaks against one.</summary>
    public string? Caution =>
        Found.Bottoms ? "The panel's edge reaches the bottom of the groove: give the panel a pattern of its own."
        : Found.Least < CurveLength.Inches(shop.LeastEngagement) - 1e-9
            ? $"{words.Of(Found.Least)} in the groove is less than the {words.Of(shop.LeastEngagement)} that the shop asks for: give the panel a pattern of its own."
            : null;

    /// <param name="height">From the panel's straight end to the sight line's spring line, with the engagement at that end; null where the other end is arched as well.</param>
    public PatternBlock Draw(Length? height)
    {
        List<SceneNode> nodes = [];
        var heading = Typesetter.Set($"One pattern for rail and panel{(end.Length > 0 ? $", {end} end" : "")}: set it down {words.WithUnit(depth)}", TextStyle.Body.Bold);
        nodes.Add(Strip.Put(heading, 0, 0));
        var top = heading.Pitch + 2;
        top = Overview(nodes, top) + 4;
        top = Details(nodes, top) + 4;
        top = Legend(nodes, top) + 2;
        foreach (var (text, style) in Sentences(height))
        {
            foreach (var line in Typesetter.Wrap(text, style, Width))
            {
                nodes.Add(Strip.Put(line, 0, top));
                top += line.Pitch;
            }
        }

        return new(Width, top, nodes);
    }

    private IEnumerable<(string Text, TextStyle Style)> Sentences(Length? height)
    {
        var lift = shop.GrooveDepth - depth;
        yield return ($"{pattern} is moved on the panel instead of being offset, so that the edge stands deepest in the groove at the crown. The groove is {words.Of(shop.GrooveDepth)} deep. "
            + $"Set the pattern down {words.Of(depth)} from where its crown would touch the bottom of the groove: its spring line then lies {words.Of(lift)} beyond the sight line's.", TextStyle.Body);
        if (height is { } straight)
        {
            var change = lift - engagement;
            var taller = change.IsZero ? "as high as with a pattern of its own"
                : $"{words.Of(Length.Abs(change))} {(change.IsNegative ? "lower" : "higher")} than with a pattern of its own";
            yield return ($"On the panel, square the pattern's spring line across {words.Of(straight + lift)} from its straight end. The panel comes out {taller}.", TextStyle.Body);
        }

        yield return ($"In the groove stand at least {words.Of(Found.Least)} (at a) and at most {words.Of(Found.Greatest)} (at b); by a pattern of its own {words.Of(engagement)} everywhere. "
            + Rounding(), TextStyle.Body);
        if (Caution is { } caution)
            yield return ($"Caution: {caution}", TextStyle.Body.Bold);
    }

    private string Rounding()
    {
        var exact = CurveLength.Inches(depth) - balanced.Inches;
        if (Math.Abs(exact) < 1e-6)
            return "That is balanced: as much less as more than the true curve.";
        var what = balanced.Bottoms ? "No set-down balances the two before the crown bottoms" : $"Balanced exactly it would be set down {words.Of(balanced.Inches)}";
        return $"{what}; it is rounded to the shop's cutting step of {words.Of(shop.Step)}.";
    }

    // The whole arch at a standard scale, with the two places named.
    private double Overview(List<SceneNode> nodes, double top)
    {
        var box = lines.Select(line => line.Chain.Box).Aggregate((one, other) => one.With(other));
        var scale = Scale.Of(words.Unit).First(each => each == Scale.Of(words.Unit)[^1]
            || each.InchesOnPaper(box.Width) <= Width && each.InchesOnPaper(box.Height) <= MostOverview);
        var origin = new PaperPoint(Width / 2 - scale.InchesOnPaper((box.Left + box.Right) / 2), top + 5 + scale.InchesOnPaper(box.Top));
        PaperPoint At(CurvePoint place) => origin + new PaperPoint(scale.InchesOnPaper(place.X), -scale.InchesOnPaper(place.Y));
        var drawn = new CurvedLines(At);
        nodes.AddRange(lines.Select(line => new Shape(drawn.Of(line.Chain), line.Style)));
        foreach (var (name, place) in new[] { ("a", Found.LeastPlace), ("b", Found.GreatestPlace) })
        {
            var at = At(place);
            var ring = new PaperPoint(1.8, 0);
            nodes.Add(new Shape(new Outline(at + ring, [new ArcTo(at - ring, at, true), new ArcTo(at + ring, at, true)], true), LineStyle.Dimension));
            var (foot, inwards) = Inwards(place);
            nodes.Add(Drafting.Centred(Typesetter.Set(name, TextStyle.Small.Bold), At(foot) + new PaperPoint(-inwards.X, inwards.Y) * 3.5));
        }

        var bottom = origin.Y - scale.InchesOnPaper(box.Bottom) + 2;
        var note = Typesetter.Set($"The arch at {scale}", TextStyle.Small);
        nodes.Add(Strip.Put(note, (Width - note.Width) / 2, bottom));
        return bottom + note.Height;
    }

    private double Details(List<SceneNode> nodes, double top)
    {
        var enlarged = Enlargements.FirstOrDefault(each => CurveLength.Inches(shop.GrooveDepth) * MillimetresPerInch * each <= DetailHeight * 0.6, 1);
        var width = (Width - Between) / 2;
        var bottom = top;
        foreach (var (left, what, place, value) in new[]
        {
            (0.0, "a: least", Found.LeastPlace, Found.Least), (width + Between, "b: greatest", Found.GreatestPlace, Found.Greatest),
        })
        {
            var caption = Typesetter.Set(FormattableString.Invariant($"{what} in the groove, {enlarged:0}:1"), TextStyle.Small.Bold);
            nodes.Add(Strip.Put(caption, left, top));
            var frame = new PaperBox(0, 0, width, DetailHeight);
            nodes.Add(new SceneGroup(null, null, [.. Detail(frame, place, words.Of(value), enlarged * MillimetresPerInch)]) { At = new(left, top + caption.Pitch), Clip = frame });
            nodes.Add(new Shape(Outline.Box(frame.Shifted(left, top + caption.Pitch)), LineStyle.Edge));
            bottom = top + caption.Pitch + DetailHeight;
        }

        return bottom;
    }

    private IEnumerable<SceneNode> Detail(PaperBox frame, CurvePoint place, string value, double perInch)
    {
        var (foot, inwards) = Inwards(place);
        // Sight line and groove about the middle, a little outwards, since the figure stands in the light.
        var centre = foot + inwards * (CurveLength.Inches(shop.GrooveDepth) / 2 - 6 / perInch);
        PaperPoint At(CurvePoint point) => frame.Centre + new PaperPoint((point.X - centre.X) * perInch, -(point.Y - centre.Y) * perInch);
        var drawn = new CurvedLines(At);
        foreach (var line in lines)
            yield return new Shape(drawn.Of(line.Chain), line.Style);
        var (from, to) = (At(foot), At(place));
        var along = new PaperPoint(inwards.X, -inwards.Y);
        var across = new PaperPoint(along.Y, -along.X);
        var text = Typesetter.Set(value, TextStyle.Figure);
        var reach = 6 + (Math.Abs(along.X) * text.Width + Math.Abs(along.Y) * text.Height) / 2;
        var middle = from - along * reach;
        yield return new Shape(Outline.Line(from - along * 5, to), LineStyle.Dimension);
        foreach (var (tip, back) in new[] { (from, along), (to, along * -1) })
        {
            yield return new Shape(
                Outline.Through(true, tip, tip + back * ArrowLength + across * ArrowHalf, tip + back * ArrowLength - across * ArrowHalf), LineStyle.Rule, Tone.Ink);
        }

        var label = Drafting.Centred(text, middle);
        yield return new Shape(Outline.Box(label.Box.Grown(0.5)), null, Tone.Paper);
        yield return label;
    }

    // As the panel is: a tip, whose parallel comes to a point further out, is cut off level.
    private static Chain TrueEdge(ArchCurve arch, double engagement)
    {
        var edge = LightCurves.Into(arch, engagement);
        var level = arch.Chain.Box.Top + engagement;
        return edge.Box.Top > level + 1e-6 && edge.CrossingsWithLine(new(0, level), new(1, 0)) is [var before, var after]
            ? new([.. edge.Part(0, before.OnFirst).Segments, new LineSegment(before.Place, after.Place), .. edge.Part(after.OnFirst, edge.Length).Segments], isClosed: false)
            : edge;
    }

    // From the sight line square into the rail; straight up where the place lies on it.
    private (CurvePoint Foot, CurvePoint Inwards) Inwards(CurvePoint place)
    {
        var foot = sight.ClosestTo(place).Place;
        var distance = place.DistanceTo(foot);
        return (foot, distance < 1e-9 ? new(0, 1) : (place - foot) * (1 / distance));
    }

    private double Legend(List<SceneNode> nodes, double top)
    {
        const double Sample = 14;
        var column = Width / 2;
        for (var i = 0; i < lines.Length; i++)
        {
            var (row, side) = Math.DivRem(i, 2);
            var text = Typesetter.Set(lines[i].Name, TextStyle.Small);
            var y = top + row * text.Pitch;
            nodes.Add(new Shape(Outline.Line(new(side * column, y + text.Height / 2), new(side * column + Sample, y + text.Height / 2)),
                lines[i].Style));
            nodes.Add(Strip.Put(text, side * column + Sample + 2, y));
        }

        return top + (lines.Length + 1) / 2 * Typesetter.Set("x", TextStyle.Small).Pitch;
    }
}
