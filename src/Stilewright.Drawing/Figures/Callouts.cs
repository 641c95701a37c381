using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Figures;

/// <summary>Labels that found no room inside a figure: level ones above it and to its left, tied to what they name by leaders.</summary>
internal sealed class Callouts(PaperBox figure)
{
    private const double Away = 4;
    private const double Air = 1;
    private const double Dot = 0.4;

    private readonly List<(string Text, PaperPoint Anchor, List<SceneNode> Into)> above = [];
    private readonly List<(string Text, PaperPoint Anchor, List<SceneNode> Into)> beside = [];

    /// <param name="into">Where label and leader are put when all are placed.</param>
    public void Above(string text, PaperBox named, List<SceneNode> into) =>
        above.Add((text, new(named.Centre.X, named.Top + Math.Min(named.Height / 2, 3)), into));

    public void Beside(string text, PaperBox named, List<SceneNode> into) =>
        beside.Add((text, new(named.Left + Math.Min(named.Width / 2, 3), named.Centre.Y), into));

    /// <summary>Places all labels and returns what the figure now covers with them.</summary>
    public PaperBox Place()
    {
        var bounds = figure;
        var ordered = above.OrderBy(one => one.Anchor.X).Select(one => (one.Anchor, one.Into, Line: Typesetter.Set(one.Text, Drafting.Outside))).ToList();
        var places = Spread([.. ordered.Select(one => (one.Anchor.X, one.Line.Width + Air))], figure.Left, figure.Right);
        for (var i = 0; i < ordered.Count; i++)
        {
            var (anchor, into, line) = ordered[i];
            var text = Drafting.Centred(line, new(places[i], figure.Top - Away - line.Height / 2));
            Add(text, anchor, new(places[i], text.Box.Bottom + 0.2), into);
            bounds = bounds.With(text.Box);
        }

        ordered = [.. beside.OrderBy(one => one.Anchor.Y).Select(one => (one.Anchor, one.Into, Line: Typesetter.Set(one.Text, Drafting.Outside)))];
        places = Spread([.. ordered.Select(one => (one.Anchor.Y, one.Line.Height + Air / 2))], figure.Top, figure.Bottom);
        for (var i = 0; i < ordered.Count; i++)
        {
            var (anchor, into, line) = ordered[i];
            var text = Drafting.Centred(line, new(figure.Left - Away - line.Width / 2, places[i]));
            Add(text, anchor, new(text.Box.Right + 0.3, places[i]), into);
            bounds = bounds.With(text.Box);
        }

        return bounds;
    }

    /// <summary>Middles for things in order along a line, as near to their wishes as they get without touching.</summary>
    /// <param name="wishes">The wished middle and the width of each, by growing wish.</param>
    /// <param name="from">None begins before this.</param>
    /// <param name="to">None ends after this unless they are too many.</param>
    public static double[] Spread(IReadOnlyList<(double Middle, double Width)> wishes, double from, double to)
    {
        // Things that push one another stand as one block about the mean of their wishes.
        List<(int First, int Count, double Sum, double Width)> blocks = [];
        double Start((int First, int Count, double Sum, double Width) block) =>
            Math.Max(from, Math.Min(block.Sum / block.Count, to - block.Width));

        for (var i = 0; i < wishes.Count; i++)
        {
            var block = (First: i, Count: 1, Sum: wishes[i].Middle - wishes[i].Width / 2, wishes[i].Width);
            while (blocks.Count > 0 && Start(blocks[^1]) + blocks[^1].Width > Start(block))
            {
                var before = blocks[^1];
                blocks.RemoveAt(blocks.Count - 1);
                block = (before.First, before.Count + block.Count, before.Sum + block.Sum - block.Count * before.Width, before.Width + block.Width);
            }

            blocks.Add(block);
        }

        var middles = new double[wishes.Count];
        foreach (var block in blocks)
        {
            var at = Start(block);
            for (var i = block.First; i < block.First + block.Count; i++)
            {
                middles[i] = at + wishes[i].Width / 2;
                at += wishes[i].Width;
            }
        }

        return middles;
    }

    private static void Add(Lettering text, PaperPoint anchor, PaperPoint end, List<SceneNode> into)
    {
        into.Add(new Shape(Outline.Line(anchor, end), LineStyle.Dimension));
        PaperPoint left = new(anchor.X - Dot, anchor.Y);
        PaperPoint right = new(anchor.X + Dot, anchor.Y);
        into.Add(new Shape(new(left, [new ArcTo(right, anchor, true), new ArcTo(left, anchor, true)], true), null, Tone.Ink));
        into.Add(text);
    }
}
