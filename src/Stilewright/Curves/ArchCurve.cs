namespace Stilewright.Curves;

/// <summary>The sight line of an arched rail, from the left stile to the right, with the spring line at Y = 0 and the middle at X = 0.</summary>
/// <param name="Corners">The corners its family means it to have; everywhere else its direction is continuous.</param>
public sealed record ArchCurve(Chain Chain, IReadOnlyList<CurvePoint> Corners)
{
    /// <summary>Ends, tangent points and corners from left to right, and between them the centre and radius of each arc.</summary>
    public IReadOnlyList<TrammelPoint> Trammel()
    {
        var corners = Chain.Corners();
        var rows = new List<TrammelPoint> { new(TrammelMark.End, Chain.Start, null) };
        for (var i = 0; i < Chain.Segments.Count; i++)
        {
            if (i > 0)
            {
                var breaks = corners.Any(corner => corner.Along == Chain.StartOf(i));
                rows.Add(new(breaks ? TrammelMark.Corner : TrammelMark.Tangent, Chain.Segments[i].Start, null));
            }

            if (Chain.Segments[i] is ArcSegment arc)
                rows.Add(new(TrammelMark.Centre, arc.Centre, arc.Radius));
        }

        rows.Add(new(TrammelMark.End, Chain.End, null));
        return rows;
    }

    public ArchCurve Mirrored() => new(
        Chain.Mirrored(0).Reversed(), [.. Corners.Select(corner => corner.MirroredIn(0)).Reverse()]);

    /// <summary>The same arch in a bottom rail: it falls below the spring line, and the light lies to its left.</summary>
    public ArchCurve TurnedOver() => new(Chain.TurnedOver(), [.. Corners.Select(corner => corner with { Y = -corner.Y })]);
}
