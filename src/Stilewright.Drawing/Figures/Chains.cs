using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Measure;

namespace Stilewright.Drawing.Figures;

/// <summary>
/// The dimensions of an elevation: leaves and what shows between them below and at the left, frame and openings above and at the right,
/// overall sizes outermost.
/// </summary>
internal static class Chains
{
    /// <summary>Chains of a frame with leaves on it.</summary>
    /// <param name="faceId">The path of the frame's own width and height.</param>
    public static IEnumerable<DimensionRow> Of(string faceId, FrameFigure frame, IReadOnlyList<SizedLeaf> leaves, View view)
    {
        Interval width = new(default, frame.Width, faceId), height = new(default, frame.Height, faceId);
        Interval[] clearAcross = [], clearUp = [];
        if (frame.Openings.Count > 0)
        {
            // Across the top row of openings, and up the openings furthest to the right.
            var highest = frame.Openings.MaxBy(opening => opening.Clear.Top)!.Clear;
            var rightmost = frame.Openings.MaxBy(opening => opening.Clear.Right)!.Clear;
            clearAcross = [.. frame.Openings.Where(opening => Crosses(opening.Clear.Y, opening.Clear.Top, Middle(highest.Y, highest.Top)))
                .Select(opening => new Interval(opening.Clear.X, opening.Clear.Right, opening.Path))];
            clearUp = [.. frame.Openings.Where(opening => Crosses(opening.Clear.X, opening.Clear.Right, Middle(rightmost.X, rightmost.Right)))
                .Select(opening => new Interval(opening.Clear.Y, opening.Clear.Top, opening.Path))];
        }

        Interval[] leavesAcross = [], leavesUp = [];
        if (leaves.Count > 0)
        {
            var lowest = leaves.MinBy(leaf => leaf.Place.Y)!.Place;
            var leftmost = leaves.MinBy(leaf => leaf.Place.X)!.Place;
            leavesAcross = [.. leaves.Where(leaf => Crosses(leaf.Place.Y, leaf.Place.Top, Middle(lowest.Y, lowest.Top))).Select(Across)];
            leavesUp = [.. leaves.Where(leaf => Crosses(leaf.Place.X, leaf.Place.Right, Middle(leftmost.X, leftmost.Right))).Select(Up)];
        }

        yield return new(Side.Bottom, Spans(Chain(leavesAcross, width), view.X));
        yield return new(Side.Bottom, Spans([width], view.X));
        yield return new(Side.Left, Spans(Chain(leavesUp, height), view.Y));
        yield return new(Side.Left, Spans(Standing(frame, height), view.Y));
        yield return new(Side.Top, Spans(Chain(clearAcross, width), view.X));
        yield return new(Side.Right, Spans(Chain(clearUp, height), view.Y));
    }

    /// <summary>Chains of one front by itself.</summary>
    public static IEnumerable<DimensionRow> Of(SizedFront front, IReadOnlyList<SizedLeaf> leaves, IReadOnlyList<Point> opening, View view)
    {
        Interval[] across = Chain([.. leaves.Select(Across)], null), up = Chain([.. leaves.Select(Up).DistinctBy(leaf => (leaf.From, leaf.To))], null);
        yield return new(Side.Bottom, Spans(across, view.X));
        if (leaves.DistinctBy(leaf => leaf.Place.X).Count() > 1)
            yield return new(Side.Bottom, Spans([new(leaves.Min(leaf => leaf.Place.X), leaves.Max(leaf => leaf.Place.Right), front.Path)], view.X));
        yield return new(Side.Left, Spans(up, view.Y));
        if (leaves.DistinctBy(leaf => leaf.Place.Y).Count() > 1)
            yield return new(Side.Left, Spans([new(leaves.Min(leaf => leaf.Place.Y), leaves.Max(leaf => leaf.Place.Top), front.Path)], view.Y));
        if (opening.Count == 0)
            yield break;
        // The rectangle that was used; the tape's own readings are told in words.
        var (left, bottom) = (front.Figure!.Width.Length, front.Figure.Height.Length);
        var corner = new Point(opening[0].X + front.Figure.Offset.X, opening[0].Y + front.Figure.Offset.Y);
        yield return new(Side.Top, Spans([new(corner.X, corner.X + left, front.Path)], view.X, "opening"));
        yield return new(Side.Right, Spans([new(corner.Y, corner.Y + bottom, front.Path)], view.Y, "opening"));
    }

    private static Interval Across(SizedLeaf leaf) => new(leaf.Place.X, leaf.Place.Right, leaf.Path);

    private static Interval Up(SizedLeaf leaf) => new(leaf.Place.Y, leaf.Place.Top, leaf.Path);

    // The height of the frame, with what stands above and below it.
    private static Interval[] Standing(FrameFigure frame, Interval height)
    {
        var all = Extents.Of(frame);
        return
        [
            .. all.Y < height.From ? [new Interval(all.Y, height.From, null)] : Array.Empty<Interval>(),
            height,
            .. all.Top > height.To ? [new Interval(height.To, all.Top, null)] : Array.Empty<Interval>(),
        ];
    }

    /// <summary>Things in a row, and the distances between and beside them; only the things themselves where some lie over others.</summary>
    private static Interval[] Chain(IReadOnlyList<Interval> things, Interval? whole)
    {
        if (things.Count == 0)
            return [];
        List<Interval> chain = [];
        var reached = whole?.From;
        foreach (var thing in things.OrderBy(thing => thing.From))
        {
            if (reached is { } end && end > thing.From)
            {
                // A thing over another, or past the frame: a chain cannot tell it.
                if (chain.Count > 0)
                    continue;
            }
            else if (reached is { } start && start < thing.From)
            {
                chain.Add(new(start, thing.From, null));
            }

            chain.Add(thing);
            reached = thing.To;
        }

        if (whole is { } all && reached is { } last && last < all.To)
            chain.Add(new(last, all.To, null));
        return [.. chain];
    }

    private static Span[] Spans(IEnumerable<Interval> intervals, Func<Length, double> onPaper, string? word = null) =>
        [.. intervals.Select(one => new Span(onPaper(one.From), onPaper(one.To), one.To - one.From) { Path = one.Path, Word = word })];

    private static bool Crosses(Length low, Length high, Length line) => low < line && line < high;

    private static Length Middle(Length low, Length high) => (low + high) * new Fractions.Fraction(1, 2);

    private readonly record struct Interval(Length From, Length To, string? Path);
}
