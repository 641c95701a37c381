using Stilewright.Projects;

namespace Stilewright.Curves;

/// <summary>Whether arched parts can be machined and will hold. All lengths are inches.</summary>
public static class ArchChecks
{
    /// <summary>Remedies are found to this, in, and lie on the side that works.</summary>
    private const double RemedyInches = 1e-6;

    /// <summary>A collar follows an edge only where each hollow has at least the collar's radius; into a hollow corner none goes.</summary>
    /// <param name="family">Family and sizes of the arch, from which other values are tried.</param>
    /// <param name="edgeOf">The edge that the collar follows, with the wood on its left: the rail's sight line, or the panel's edge.</param>
    /// <remarks>Cutter radius less depth of cut is the collar's radius. Follows from the geometry.</remarks>
    public static CurveCheck Collar(ArchFamily family, ArchSizes sizes, Func<ArchCurve, Chain> edgeOf, double collarRadiusInches)
    {
        if (Hollow(sizes) is not { } hollow)
            throw new ArgumentException("This arch cannot be drawn, so it has no edge to follow.", nameof(sizes));
        if (hollow.Radius >= collarRadiusInches - CurveTolerance.MeetingInches)
            return new(CurveCheckKind.HollowForCollar, true, hollow.Radius, collarRadiusInches, hollow.Place, []);

        var remedies = new List<ArchLimit>();
        if (hollow.Radius > 0)
            remedies.Add(new(ArchMeasure.CollarRadius, LimitSide.AtMost, hollow.Radius));
        if (family is not (ArchFamily.HalfRound or ArchFamily.Drawn) && Nearest(sizes.Rise, sizes.Rise / 1024, rise => Fits(sizes with { Rise = rise })) is { } lower)
            remedies.Add(new(ArchMeasure.Rise, LimitSide.AtMost, lower));
        if (family is ArchFamily.Cathedral or ArchFamily.DoubleCurve)
        {
            const double Extreme = 64;
            if (Nearest(sizes.ReverseToCrown, sizes.ReverseToCrown * Extreme, ratio => Fits(sizes with { ReverseToCrown = ratio })) is { } flatter)
                remedies.Add(new(ArchMeasure.ReverseToCrown, LimitSide.AtLeast, flatter));
            else if (Nearest(sizes.ReverseToCrown, sizes.ReverseToCrown / Extreme, ratio => Fits(sizes with { ReverseToCrown = ratio })) is { } rounder)
                remedies.Add(new(ArchMeasure.ReverseToCrown, LimitSide.AtMost, rounder));
        }

        return new(CurveCheckKind.HollowForCollar, false, hollow.Radius, collarRadiusInches, hollow.Place, remedies);

        (double Radius, CurvePoint? Place)? Hollow(ArchSizes tried) =>
            ArchFamilies.Draw(family, tried) is ArchResult.Drawn(var curve) ? LeastHollow(edgeOf(curve)) : null;
        bool Fits(ArchSizes tried) => Hollow(tried) is { } found && found.Radius >= collarRadiusInches;
    }

    // The least inside radius of an edge that has the wood on its left, 0 at a hollow corner, infinite without hollows.
    private static (double Radius, CurvePoint? Place) LeastHollow(Chain edge)
    {
        if (edge.Corners().FirstOrDefault(corner => corner.TurnRadians < 0) is { TurnRadians: < 0 } hollow)
            return (0, hollow.Place);
        var arc = edge.Segments.OfType<ArcSegment>().Where(each => each.SweepRadians < 0).MinBy(each => each.Radius);
        return arc is null ? (double.PositiveInfinity, null) : (arc.Radius, arc.PointAt(arc.Length / 2));
    }

    /// <summary>The ends of an arched rail hang down beside the opening. At the height of the least wood above the spring line the
    /// grain must run at least as far, from the rail's end to the curve; the part below it is then no taller than it is long.</summary>
    /// <param name="tongueInches">How far the rail reaches behind the sight line of the stile: cope or tenon.</param>
    /// <param name="leastInches">3/4 in is common practice, without a source; so is the height at which it is measured.</param>
    /// <remarks>An arch lower than that height has no such end. Both ends are looked at, and the shorter is told.</remarks>
    public static CurveCheck ShortGrain(ArchCurve rail, double shoulderInches, double tongueInches, double leastInches)
    {
        var crossings = rail.Chain.CrossingsWithLine(new(0, leastInches), new(1, 0));
        var ends = new List<(double Run, CurvePoint Place)>();
        if (crossings.Count > 0 && rail.Chain.Start.Y < leastInches)
            ends.Add((crossings[0].Place.X - rail.Chain.Start.X + tongueInches, crossings[0].Place));
        if (crossings.Count > 0 && rail.Chain.End.Y < leastInches)
            ends.Add((rail.Chain.End.X - crossings[^1].Place.X + tongueInches, crossings[^1].Place));
        if (ends.Count == 0)
            return new(CurveCheckKind.ShortGrain, true, double.PositiveInfinity, leastInches, null, []);
        var (run, place) = ends.MinBy(end => end.Run);
        return Checked(CurveCheckKind.ShortGrain, run >= leastInches - CurveTolerance.MeetingInches, run, leastInches, place, () =>
        [
            // The curve beside a longer shoulder is narrower and so no flatter: the shoulder grows by what is missing.
            new(ArchMeasure.Shoulder, LimitSide.AtLeast, shoulderInches + leastInches - run),
            new(ArchMeasure.Rise, LimitSide.AtMost, leastInches),
        ]);
    }

    /// <summary>The raise follows the panel's edge inward; where the edge bulges by a radius below the raise's width its inner line
    /// comes to a point, and where the panel is narrow no field is left.</summary>
    /// <param name="panel">The panel's edge, closed, counter-clockwise.</param>
    /// <param name="leastFieldInches">Least width and height of the field; 1 in is common practice.</param>
    public static CurveCheck Field(Chain panel, double raiseInches, double leastFieldInches)
    {
        var (measured, place) = FieldLeft(raiseInches);
        return Checked(CurveCheckKind.Field, measured >= leastFieldInches - CurveTolerance.MeetingInches, measured, leastFieldInches, place, () =>
            Nearest(raiseInches, 0, raise => FieldLeft(raise).Width >= leastFieldInches) is { } narrower
                ? [new(ArchMeasure.RaiseWidth, LimitSide.AtMost, narrower)] : []);

        (double Width, CurvePoint? Place) FieldLeft(double raise)
        {
            if (raise <= 0)
                return (Math.Min(panel.Box.Width, panel.Box.Height), null);
            var inner = LightCurves.Inward(panel, raise);
            if (inner.Swallowed.FirstOrDefault(each => each.ByRadius) is { } point)
                return (0, point.Middle);
            return inner.Whole is { IsClosed: true } field ? (Math.Min(field.Box.Width, field.Box.Height), null) : (0, null);
        }
    }

    private static CurveCheck Checked(
        CurveCheckKind kind, bool passes, double measured, double limit, CurvePoint? place, Func<IReadOnlyList<ArchLimit>> remedies) =>
        new(kind, passes, measured, limit, place, passes ? [] : remedies());

    // The value nearest to one that fails, on the way to one that works; null where that fails too.
    private static double? Nearest(double fails, double works, Func<double, bool> fits)
    {
        if (!fits(works))
            return null;
        while (Math.Abs(works - fails) > RemedyInches)
        {
            var middle = (fails + works) / 2;
            if (fits(middle))
                works = middle;
            else
                fails = middle;
        }

        return works;
    }
}
