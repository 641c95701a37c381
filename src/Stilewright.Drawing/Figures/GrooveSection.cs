using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Teaching.IfCut;

namespace Stilewright.Drawing.Figures;

/// <summary>A groove cut through, with the panel's edge as it would stand in it; the groove opens to the right.</summary>
internal sealed class GrooveSection
{
    private const double MostDepth = 55;
    private const double MostOut = 40;
    private const double LeastSeen = 2;
    private const double Behind = 9;
    private const double Beyond = 16;
    private const double BreakReach = 1.2;

    private readonly GrooveFit fit;
    private readonly int times;
    private readonly LengthFormat format;
    private readonly Length thickness;
    private readonly Length face;
    private readonly Length width;

    private GrooveSection(GrooveFit fit, int times, LengthFormat format, Length thickness, Length face, Length width) =>
        (this.fit, this.times, this.format, this.thickness, this.face, this.width) = (fit, times, format, thickness, face, width);

    /// <summary>The section at a scale at which the fault is seen; null where it is too large for one, and the leaf's own drawing shows it.</summary>
    public static GrooveSection? Of(GrooveFit fit, SizedLeaf leaf, CutterSet? cutters, LengthFormat format)
    {
        var full = Scale.FullSize;
        IReadOnlyList<int> steps = format.Unit == LengthUnit.Inch ? [1, 2, 4, 8] : [1, 2, 5, 10];
        var fault = fit.Open.IsPositive ? fit.Open
            : new[] { Length.Abs(fit.Reach - fit.RightReach), Length.Abs(fit.Reach), fit.Reach.IsPositive ? fit.Depth - fit.Reach : default }.Where(each => each.IsPositive).Min();
        bool Fits(int step) => full.OnPaper(fit.Depth) * step <= MostDepth && full.OnPaper(Length.Greatest(-fit.Reach, fit.Open)) * step <= MostOut;
        if (!Fits(1))
            return null;
        var times = steps.Where(Fits).FirstOrDefault(step => full.OnPaper(fault) * step >= LeastSeen, steps.Last(Fits));
        var member = leaf.Parts.First(part => part.Kind == PartKind.Stile).Thickness!.Final.Length;
        var groove = cutters?.GrooveWidth.Value ?? member / 3;
        var front = cutters?.GrooveFromFace.Value ?? member / 3;
        // Sanding may take the face down to the groove's wall, no further.
        return new(fit, times, format, Length.Greatest(member, front + groove), front, groove);
    }

    /// <summary>Says what the section is.</summary>
    public string Note => FormattableString.Invariant(
        $" Section at A, {(fit.IsAcross ? "seen from above" : "seen from the side")}, {times}:1{(times == 1 ? " (full size)" : "")}; the {Noun} {(fit.Open.IsZero ? "lies against the other side" : "is at the bottom of the groove")}.");

    private string Noun => fit.Filling.Kind == PartKind.Glass ? "pane" : "panel";

    private double On(Length length) => Scale.FullSize.OnPaper(length) * times;

    public IEnumerable<SceneNode> Draw()
    {
        var (depth, reach, open) = (On(fit.Depth), On(fit.Reach), On(fit.Open));
        var (thick, from, groove) = (On(thickness), On(face), On(width));
        var end = Math.Max(Math.Max(-reach, open), 0) + Beyond;
        List<SceneNode> nodes = [];
        static PaperPoint At(double across, double down) => new(across, down);

        var member = Outline.Through(true,
            At(-depth - Behind, 0), At(0, 0), At(0, from), At(-depth, from), At(-depth, from + groove), At(0, from + groove), At(0, thick), At(-depth - Behind, thick),
            At(-depth - Behind + BreakReach, thick * 0.6), At(-depth - Behind - BreakReach, thick * 0.4));
        nodes.Add(new Hatch(member, 45, 2.2));
        nodes.Add(new Shape(member, LineStyle.Visible));
        if (open > 0)
        {
            // What should meet the member here stands off it.
            PaperBox gap = new(0, 0, open, thick);
            nodes.Add(new Shape(Outline.Through(false, At(end, 0), At(open, 0), At(open, thick), At(end, thick)), LineStyle.Edge));
            nodes.Add(new Shape(Outline.Box(gap), LineStyle.Edge, Tone.Tint));
            nodes.Add(new Hatch(Outline.Box(gap), 45, 0.8));
        }

        var panel = Outline.Through(true,
            At(-reach, from), At(end, from), At(end - BreakReach, from + groove * 0.4), At(end + BreakReach, from + groove * 0.6), At(end, from + groove), At(-reach, from + groove));
        nodes.Add(new Shape(panel, null, Tone.Paper));
        nodes.Add(new Hatch(panel, -45, 2.2));
        nodes.Add(new Shape(panel, LineStyle.Visible));
        if (open == 0 && reach < 0)
        {
            PaperBox gap = new(0, from, -reach, groove);
            nodes.Add(new Shape(Outline.Box(gap), LineStyle.Edge, Tone.Tint));
            nodes.Add(new Hatch(Outline.Box(gap), 45, 0.8));
        }

        var box = new PaperBox(-depth - Behind, 0, depth + Behind + end, thick);
        var caption = Typesetter.Set("A", TextStyle.Body.Bold);
        var placed = new DimensionPlacer(Scale.FullSize, format, TextStyle.Figure).Place(box, [.. Rows(depth, reach, open)], Drafting.BoundsOf(nodes));
        nodes.AddRange(placed.Marks);
        nodes.Add(new Lettering(new(placed.Bounds.Left, placed.Bounds.Top - 1 - caption.Descent), caption));
        return nodes;
    }

    private IEnumerable<DimensionRow> Rows(double depth, double reach, double open)
    {
        yield return new(Side.Top, [new(-depth, 0, fit.Depth) { Word = "groove", Exaggeration = times }]);
        if (open > 0)
        {
            yield return new(Side.Bottom, [new(0, open, fit.Open) { Word = fit.IsAcross ? "open" : "out of place", Exaggeration = times }]);
            yield break;
        }

        List<Span> spans = [];
        if (depth - reach > 0 && reach > 0)
            spans.Add(new(-depth, -reach, fit.Depth - fit.Reach) { Word = "play", Exaggeration = times });
        if (reach > 0)
            spans.Add(new(-reach, 0, fit.Reach) { Word = "in", Exaggeration = times });
        else if (reach < 0)
            spans.Add(new(0, -reach, -fit.Reach) { Word = "open", Exaggeration = times });
        yield return new(Side.Bottom, spans);
        if (fit.RightReach.IsPositive)
            yield return new(Side.Bottom, [new(-On(fit.RightReach), 0, fit.RightReach) { Word = "should be", Exaggeration = times }]);
    }
}
