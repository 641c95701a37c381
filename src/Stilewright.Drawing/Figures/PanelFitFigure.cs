using System.Globalization;
using Fractions;
using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Wood;

namespace Stilewright.Drawing.Figures;

/// <summary>Both edges of a solid panel in their grooves, cut through across its grain: at the driest, at making and at the wettest.</summary>
/// <remarks>
/// All is to scale, usually an enlarging one; only the middle of the panel is broken out. A panel that is free is drawn pushed to the left, as it may lie.
/// Where a panel is wider than its room, its edge is drawn in the wood that stops it.
/// </remarks>
public static class PanelFitFigure
{
    private const double Behind = 8;
    private const double LeastSeen = 12;
    private const double MostSeen = 34;
    private const double PastFlat = 5;
    private const double BreakReach = 1.2;
    private const double BetweenEdges = 7;
    private const double BetweenStates = 5;
    private const double HatchSpacing = 2.2;

    /// <param name="leaf">The leaf that the panel stands in.</param>
    public static Scene Draw(PanelFit fit, SizedLeaf leaf, Scale scale, LengthFormat format)
    {
        ArgumentNullException.ThrowIfNull(fit);
        ArgumentNullException.ThrowIfNull(leaf);
        ArgumentNullException.ThrowIfNull(format);
        return new Drawing(fit, leaf, scale, format).Draw();
    }

    /// <summary>The drawing at the largest standard scale at which it fits, enlarged where it can be.</summary>
    public static FittedScene Draw(PanelFit fit, SizedLeaf leaf, LengthFormat format, double widthMillimetres, double heightMillimetres)
    {
        ArgumentNullException.ThrowIfNull(format);
        return Fit.Largest(format.Unit, widthMillimetres, heightMillimetres, scale => Draw(fit, leaf, scale, format),
            scales: [.. Scale.EnlargedOf(format.Unit), .. Scale.Of(format.Unit).Skip(1)]);
    }

    private sealed class Drawing
    {
        private readonly PanelFit fit;
        private readonly SizedLeaf leaf;
        private readonly Scale scale;
        private readonly LengthFormat format;
        private readonly double member, face, groove, depth, panel, flat, raise, seen, width;

        public Drawing(PanelFit fit, SizedLeaf leaf, Scale scale, LengthFormat format)
        {
            (this.fit, this.leaf, this.scale, this.format) = (fit, leaf, scale, format);
            var cutters = leaf.Design?.Cutters is { } id ? leaf.Standard.Standard.Cutter(id) : null;
            var thick = leaf.Parts.First(part => part.Kind == PartKind.Stile).Thickness!.Final.Length;
            var from = cutters?.GrooveFromFace.Value ?? thick / 3;
            var wide = cutters?.GrooveWidth.Value ?? thick / 3;
            // Sanding may take the face down to the groove's wall, no further.
            (face, groove, member) = (scale.OnPaper(from), scale.OnPaper(wide), scale.OnPaper(Length.Greatest(thick, from + wide)));
            depth = scale.OnPaper(fit.Depth.Length);
            panel = scale.OnPaper(fit.Panel.Thickness!.Final.Length);
            var isRaised = fit.Panel.Work.Contains(EdgeWork.RaiseFourEdges) && cutters?.RaiseWidth is not null;
            flat = isRaised ? scale.OnPaper((fit.TongueFlat ?? fit.Depth).Length) : 0;
            raise = isRaised ? scale.OnPaper(cutters!.RaiseWidth!.Value.Value) : 0;
            var least = States().Min(state => Length.Least(state.Left, state.Right));
            // From the sight line into the light: some of the raise, and an edge that is out whole.
            seen = Math.Max(LeastSeen - scale.OnPaper(Length.Least(least, default)), Math.Min(MostSeen, flat - scale.OnPaper(least) + PastFlat));
            width = (2 * seen) + BetweenEdges;
        }

        public Scene Draw()
        {
            List<SceneNode> nodes = [];
            var top = 0.0;
            foreach (var state in States())
            {
                var (group, height) = Row(state, top);
                nodes.Add(group);
                top += height + BetweenStates;
            }

            var note = fit.Panel.Grain == GrainDirection.Horizontal
                ? "Seen from the side: the bottom edge on the left, the top edge on the right, the face up."
                : "Seen from above: the left edge on the left, the right edge on the right, the face up.";
            note += fit.IsPinned ? " Pinned in its middle." : " Free, and drawn pushed to the left as it may lie.";
            var widest = Math.Max(Drafting.BoundsOf(nodes)!.Value.Width, 70);
            foreach (var line in Typesetter.Wrap($"{note} The middle of the panel is left out; all else is to scale, {scale}.", TextStyle.Small, widest))
            {
                nodes.Add(new Lettering(new(Drafting.BoundsOf(nodes)!.Value.Left, top + line.Ascent), line));
                top += line.Pitch;
            }

            var words = string.Join("; ", States().Select(state => $"{state.Name}, {format.Print(state.Width)} wide"));
            return Drafting.Scene($"{fit.Panel.Label} in its grooves through the year", $"The panel's edges in their grooves: {words}.", scale, fit.Panel.Path, nodes);
        }

        private sealed record State(string Name, Fraction Moisture, Length Width, Length Left, Length Right);

        // How far each edge stands in past its sight line; below zero it is out.
        private IEnumerable<State> States()
        {
            var moisture = fit.Wood.Moisture;
            yield return Of("driest", Least(moisture.Driest.Amount, moisture.Making.Amount), fit.WidthAtDriest.Length);
            yield return Of("at making", moisture.Making.Amount, fit.Width.Length);
            yield return Of("wettest", Greatest(moisture.Wettest.Amount, moisture.Making.Amount), fit.WidthAtWettest.Length);
        }

        private static Fraction Least(Fraction one, Fraction other) => one < other ? one : other;

        private static Fraction Greatest(Fraction one, Fraction other) => one > other ? one : other;

        private State Of(string name, Fraction moisture, Length wide)
        {
            var past = wide - fit.Clear.Length;
            var left = fit.IsPinned ? past / 2 : fit.Depth.Length;
            return new(name, moisture, wide, left, past - left);
        }

        private (SceneGroup Group, double Height) Row(State state, double top)
        {
            List<SceneNode> nodes = [];
            nodes.AddRange(Edge(state.Left, x => x, isRight: false));
            nodes.AddRange(Edge(state.Right, x => width - x, isRight: true));
            var box = new PaperBox(-depth - Behind, 0, width + (2 * (depth + Behind)), Math.Max(member, face + groove));
            List<DimensionRow> rows = [];
            if (state.Name == "at making")
                rows.Add(new(Side.Top, [new(-depth, 0, fit.Depth.Length) { Word = "groove" }]));
            if (state.Name == "wettest" && fit.TongueFlat is { } tongue)
                rows.Add(new(Side.Top, [new(-scale.OnPaper(state.Left), flat - scale.OnPaper(state.Left), tongue.Length) { Word = "tongue flat" }]));
            rows.Add(new(Side.Bottom, [.. Spans(state.Left, x => x), .. Spans(state.Right, x => width - x)]));
            var placed = new DimensionPlacer(scale, format, TextStyle.Figure).Place(box, rows, Drafting.BoundsOf(nodes)!.Value.With(box));
            nodes.AddRange(placed.Marks);
            var head = Typesetter.Set(string.Create(CultureInfo.InvariantCulture, $"{char.ToUpperInvariant(state.Name[0])}{state.Name[1..]}, {state.Moisture.ToDecimal():0.#} %: {format.Print(state.Width)} wide"), TextStyle.Body.Bold);
            var upper = placed.Bounds.Top - 1.5 - head.Height;
            nodes.Add(new Lettering(new(box.Left, upper + head.Ascent), head));
            return (new(fit.Panel.Path, state.Name, nodes) { At = new(0, top - upper) }, placed.Bounds.Bottom - upper);
        }

        private IEnumerable<Span> Spans(Length reach, Func<double, double> at)
        {
            var (depthLength, edge) = (fit.Depth.Length, -scale.OnPaper(reach));
            if (reach < depthLength)
                yield return new(at(-depth), at(Math.Min(edge, 0)), depthLength - Length.Greatest(reach, default)) { Word = "play" };
            else if (reach > depthLength)
                yield return new(at(edge), at(-depth), reach - depthLength) { Word = "too wide" };
            if (reach.IsPositive)
                yield return new(at(Math.Max(edge, -depth)), at(0), Length.Least(reach, depthLength)) { Word = "in" };
            else if (reach.IsNegative)
                yield return new(at(0), at(edge), -reach) { Word = "out" };
        }

        // One member with its groove and the panel's edge in it, the light on the right before it is turned.
        private IEnumerable<SceneNode> Edge(Length reach, Func<double, double> turn, bool isRight)
        {
            PaperPoint At(double across, double down) => new(turn(across), down);
            var edge = -scale.OnPaper(reach);
            var thick = Math.Max(member, face + groove);
            var stile = Outline.Through(true,
                At(-depth - Behind, 0), At(0, 0), At(0, face), At(-depth, face), At(-depth, face + groove), At(0, face + groove), At(0, thick), At(-depth - Behind, thick),
                At(-depth - Behind + BreakReach, thick * 0.6), At(-depth - Behind - BreakReach, thick * 0.4));
            yield return new Hatch(stile, isRight ? 135 : 45, HatchSpacing);
            yield return new Shape(stile, LineStyle.Visible);

            var back = face + groove;
            // A panel without a raise stands in the groove as it is, and no thicker than that.
            var front = raise > 0 ? back - panel : back - Math.Min(panel, groove);
            List<PaperPoint> corners = [At(edge, back), At(edge, raise > 0 ? face : front)];
            if (raise > 0)
            {
                var (from, to) = (edge + flat, edge + raise);
                corners.Add(At(Math.Min(from, seen), face));
                if (from < seen)
                    corners.Add(to <= seen ? At(to, front) : At(seen, face + ((front - face) * (seen - from) / (to - from))));
                if (to < seen)
                    corners.Add(At(seen, front));
            }
            else
            {
                corners.Add(At(seen, front));
            }

            var upper = corners[^1].Y;
            corners.AddRange([At(seen - BreakReach, upper + ((back - upper) * 0.4)), At(seen + BreakReach, upper + ((back - upper) * 0.6)), At(seen, back)]);
            var outline = Outline.Through(true, corners);
            yield return new Shape(outline, null, Tone.Paper);
            yield return new Hatch(outline, isRight ? 45 : 135, HatchSpacing);
            yield return new Shape(outline, LineStyle.Visible);
            if (edge < -depth)
                yield return new Shape(Outline.Box(PaperBox.Between(At(edge, face), At(-depth, back))), LineStyle.Edge, Tone.Ink);
        }
    }
}
