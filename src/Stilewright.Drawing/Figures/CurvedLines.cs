using Stilewright.Curves;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Figures;

/// <summary>Curves of leaves as outlines on paper.</summary>
/// <param name="at">Where a place of the leaf, in inches, lies on paper.</param>
/// <param name="isMirrored">Whether left and right change places on paper, so that arcs turn the other way.</param>
internal sealed class CurvedLines(Func<CurvePoint, PaperPoint> at, bool isMirrored = false)
{
    /// <summary>The chain with its arcs as arcs.</summary>
    public Outline Of(Chain chain)
    {
        // A closed outline draws its last straight line by itself.
        var drawn = chain is { IsClosed: true, Segments: [.., LineSegment] } ? chain.Segments.SkipLast(1) : chain.Segments;
        return new(at(chain.Start), [.. drawn.Select(Of)], chain.IsClosed);
    }

    /// <summary>Lines from the corners of one closed chain to the corners of a parallel one, as far as a third that lies between.</summary>
    /// <param name="until">Where the lines end; absent, at the corners they run to.</param>
    public IEnumerable<SceneNode> Mitres(Chain from, Chain to, Chain? until = null)
    {
        // Parallels meet at their corners' bisectors: none that belongs to a corner is further off than this share of the mean distance.
        const double Furthest = 3;
        var ends = to.Corners();
        foreach (var corner in from.Corners())
        {
            if (ends.Count == 0)
                yield break;
            var end = ends.MinBy(each => each.Place.DistanceTo(corner.Place)).Place;
            if (end.DistanceTo(corner.Place) > Furthest * to.ClosestTo(corner.Place).Distance || end.DistanceTo(corner.Place) == 0)
                continue;
            if (until is not null)
            {
                var crossings = new Chain([new LineSegment(corner.Place, end)], isClosed: false).CrossingsWith(until);
                if (crossings.Count > 0)
                    end = crossings[0].Place;
            }

            yield return new Shape(Outline.Line(at(corner.Place), at(end)), LineStyle.Edge);
        }
    }

    private Segment Of(CurveSegment segment) => segment is ArcSegment arc
        ? new ArcTo(at(arc.End), at(arc.Centre), arc.SweepRadians < 0 != isMirrored)
        : new LineTo(at(segment.End));
}
