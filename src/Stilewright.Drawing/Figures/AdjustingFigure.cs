using Stilewright.Doors;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Hanging.Adjusting;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Drawing.Figures;

/// <summary>A row of hung leaves with its gaps, before its screws are turned or after.</summary>
/// <remarks>Leaves are to scale. Narrow gaps, and what wide reveals are off, are drawn larger by a number that the drawing states, so that one that
/// is not even is seen. A gap that was not read is drawn as it should be. Figures that are out of tolerance are set strong.</remarks>
public static class AdjustingFigure
{
    /// <summary>The widest gap may take no more than this share of the narrowest leaf.</summary>
    private const double MostOfLeaf = 0.12;

    /// <summary>Wider, it is a reveal: visible frame rather than air.</summary>
    private static readonly Length Narrow = Length.FromInches(new(3, 8));

    private const double InsideEdge = 1;
    private const double HingeLong = 5;
    private const double HingeWide = 1.4;
    private static readonly int[] Steps = [1, 2, 4, 8, 16, 32];
    private static readonly double[] Sizes = [4, 3.5, 2.8, 2.2];

    /// <param name="title">Names the row.</param>
    public static Scene Draw(string title, AdjustingPlan plan, Hang hang, Scale scale, LengthFormat format)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(hang);
        return new Drawing(plan, hang, scale, format).Draw(title);
    }

    /// <summary>The drawing at the largest standard scale at which it fits.</summary>
    public static FittedScene Draw(string title, AdjustingPlan plan, Hang hang, LengthFormat format, double widthMillimetres, double heightMillimetres)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(format);
        var leaves = plan.Task.Leaves;
        return Fit.Largest(format.Unit, widthMillimetres, heightMillimetres, scale => Draw(title, plan, hang, scale, format),
            (leaves.Max(leaf => leaf.Place.Right) - leaves.Min(leaf => leaf.Place.X), leaves.Max(leaf => leaf.Place.Top) - leaves.Min(leaf => leaf.Place.Y)));
    }

    private sealed class Drawing(AdjustingPlan plan, Hang hang, Scale scale, LengthFormat format)
    {
        private readonly View view = new(scale, plan.Task.Leaves.Min(leaf => leaf.Place.X), plan.Task.Leaves.Max(leaf => leaf.Place.Top));
        private readonly LabelFit labels = new();
        private readonly int times = Times(plan);

        public Scene Draw(string title)
        {
            List<SceneNode> nodes = [];
            foreach (var leaf in plan.Task.Leaves)
                nodes.Add(new SceneGroup(null, leaf.Label, [.. FrameLines(leaf), .. Leaf(leaf)]));
            var bounds = Drafting.BoundsOf(nodes)!.Value;
            var wide = plan.Task.Gaps.Any(gap => !IsNarrow(gap.Target));
            var note = Typesetter.Set(times == 1 ? "To scale." : wide ? $"Gaps, and what reveals are off, are drawn {times} times as large." : $"Gaps are drawn {times} times as wide as they are.", TextStyle.Small);
            nodes.Add(new Lettering(new(bounds.Left, bounds.Bottom + 2 + note.Ascent), note));
            var parts = hang.Gaps.Select(gap => $"{AdjustingWords.Place(gap.Reading)} {format.Print(gap.After)}")
                .Concat(hang.Corners.Select(corner => $"{AdjustingWords.Corner(corner.Reading.Corner)} of {corner.Reading.Leaf} {AdjustingWords.Proud(corner.After, format)}"));
            return Drafting.Scene(title, $"Seen from the front. Gaps: {string.Join("; ", parts)}.", scale, plan.Task.Leaves[0].Label, nodes);
        }

        private static int Times(AdjustingPlan plan)
        {
            var widest = plan.Before.Gaps.Concat(plan.After.Gaps).Select(gap => IsNarrow(gap.Target) ? Length.Greatest(Length.Abs(gap.After), gap.Target) : gap.Miss).Append(default).Max();
            var room = plan.Task.Leaves.Min(leaf => Length.Least(leaf.Place.Width, leaf.Place.Height)).Inches.ToDouble() * MostOfLeaf;
            return Steps.LastOrDefault(step => step * widest.Inches.ToDouble() <= room, 1);
        }

        private static bool IsNarrow(Length? target) => target is null || target <= Narrow;

        // On paper; a wide reveal keeps to scale what it should be.
        private double Drawn(GapAfter gap) => IsNarrow(gap.Target) ? times * scale.OnPaper(gap.After) : scale.OnPaper(gap.Target) + times * scale.OnPaper(gap.After - gap.Target);

        private IEnumerable<SceneNode> Leaf(RowLeaf leaf)
        {
            var corners = Corners(leaf);
            yield return new Shape(Outline.Through(true, corners), LineStyle.Visible, Tone.Paper);
            foreach (var at in leaf.Hinges)
            {
                var share = (at / leaf.Place.Height).ToDouble();
                var (bottom, top) = leaf.HingedLeft ? (corners[0], corners[3]) : (corners[1], corners[2]);
                var middle = bottom + (top - bottom) * share;
                yield return new Shape(Outline.Box(new(middle.X - HingeWide / 2, middle.Y - HingeLong / 2, HingeWide, HingeLong)), LineStyle.Edge, Tone.Tint);
            }

            List<(string Text, bool Strong, bool Left, bool Top, int Row)> texts = [];
            foreach (var gap in hang.Gaps.Where(gap => gap.Reading.Leaf == leaf.Label && gap.Reading.At != EdgeEnd.Middle))
            {
                var end = gap.Reading.At == EdgeEnd.End;
                var (left, top) = gap.Reading.IsUpright ? (gap.Reading.Edge == Side.Left, end) : (!end, gap.Reading.Edge == Side.Top);
                texts.Add((format.Print(gap.After), gap.Miss > plan.Task.Tolerance, left, top, gap.Reading.IsUpright ? 1 : 0));
            }

            foreach (var corner in hang.Corners.Where(corner => corner.Reading.Leaf == leaf.Label))
                texts.Add((AdjustingWords.Proud(corner.After, format), corner.Miss > plan.Task.Tolerance, corner.Reading.IsFree != leaf.HingedLeft, corner.Reading.IsTop, 2));

            var inner = PaperBox.Between(new(Math.Max(corners[0].X, corners[3].X), Math.Max(corners[2].Y, corners[3].Y)), new(Math.Min(corners[1].X, corners[2].X), Math.Min(corners[0].Y, corners[1].Y))).Grown(-InsideEdge - HingeWide / 2);
            foreach (var lettering in Place(texts, inner))
                yield return lettering;
            var room = inner.Grown(-1) is var box && box.Height > 40 ? box with { Top = box.Top + 16, Height = box.Height - 32 } : box;
            foreach (var node in labels.Place([room], leaf.Label, null))
                yield return node;
        }

        // A gap above or below stands a step in from the corner, one beside it at the edge, a corner below that.
        private static IEnumerable<SceneNode> Place(List<(string Text, bool Strong, bool Left, bool Top, int Row)> texts, PaperBox inner)
        {
            if (texts.Count == 0)
                yield break;
            var widest = texts.Max(text => Typesetter.Set(text.Text, new(1, Weight.Strong)).Width);
            var size = Sizes.FirstOrDefault(size => 2 * widest * size + 2 <= inner.Width && 6 * 1.3 * size + 6 <= inner.Height);
            if (size == 0)
                yield break;
            foreach (var (text, strong, left, top, row) in texts)
            {
                var line = Typesetter.Set(text, new(size, strong ? Weight.Strong : Weight.Regular));
                var inset = row == 0 ? Math.Max(0, Math.Min(inner.Width * 0.18, inner.Width / 2 - line.Width - 1)) : 0;
                var x = left ? inner.Left + inset : inner.Right - inset - line.Width;
                var y = top ? inner.Top + row * 1.3 * size + line.Ascent : inner.Bottom - row * 1.3 * size - line.Descent;
                yield return new Lettering(new(x, y), line);
            }
        }

        private IEnumerable<SceneNode> FrameLines(RowLeaf leaf)
        {
            foreach (var edge in new[] { Side.Left, Side.Right, Side.Top, Side.Bottom })
            {
                if (hang.Gaps.FirstOrDefault(gap => gap.Reading.Leaf == leaf.Label && gap.Reading.Edge == edge && gap.Reading.Beyond is null) is not { } gap)
                    continue;
                var reach = scale.OnPaper(gap.Target);
                var box = view.Box(leaf.Place).Grown(reach);
                yield return new Shape(edge switch
                {
                    Side.Left => Outline.Line(new(box.Left, box.Top), new(box.Left, box.Bottom)),
                    Side.Right => Outline.Line(new(box.Right, box.Top), new(box.Right, box.Bottom)),
                    Side.Top => Outline.Line(new(box.Left, box.Top), new(box.Right, box.Top)),
                    _ => Outline.Line(new(box.Left, box.Bottom), new(box.Right, box.Bottom)),
                }, LineStyle.Edge);
            }
        }

        // From the bottom left, anticlockwise: where the drawn edges cross.
        private PaperPoint[] Corners(RowLeaf leaf)
        {
            var box = view.Box(leaf.Place);
            var (left, right, top, bottom) = (Ends(leaf, Side.Left), Ends(leaf, Side.Right), Ends(leaf, Side.Top), Ends(leaf, Side.Bottom));
            return
            [
                new(box.Left + left.Start, box.Bottom - bottom.Start), new(box.Right - right.Start, box.Bottom - bottom.End),
                new(box.Right - right.End, box.Top + top.End), new(box.Left + left.End, box.Top + top.Start),
            ];
        }

        /// <summary>How far the drawn edge lies inside its place on paper, at its start and end.</summary>
        private (double Start, double End) Ends(RowLeaf leaf, Side edge)
        {
            double? start = null, end = null;
            foreach (var gap in hang.Gaps)
            {
                var own = gap.Reading.Leaf == leaf.Label && gap.Reading.Edge == edge;
                if (!own && !(gap.Reading.Beyond == leaf.Label && GapModel.Opposite(gap.Reading.Edge) == edge))
                    continue;
                // The frame stays in its place; two leaves share the gap between them.
                var shared = gap.Reading.Beyond is not null;
                var drawn = Drawn(gap) - scale.OnPaper(gap.Target);
                var inside = shared ? drawn / 2 : drawn;
                if (gap.Reading.At != EdgeEnd.End)
                    start = inside;
                if (gap.Reading.At != EdgeEnd.Start)
                    end = inside;
            }

            return (start ?? end ?? 0, end ?? start ?? 0);
        }
    }
}
