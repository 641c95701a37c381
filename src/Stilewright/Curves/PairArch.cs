namespace Stilewright.Curves;

/// <summary>One arch across a pair, cut at the meeting stiles, behind which the curve runs unseen.</summary>
public static class PairArch
{
    /// <summary>What lies in the left leaf, the middle of its width at X = 0 and the spring line at Y = 0.</summary>
    /// <param name="whole">From hinge-stile sight line to hinge-stile sight line.</param>
    /// <param name="widthInches">Between the sight lines of the leaf; positive, at most the span.</param>
    public static ArchCurve LeftPart(ArchCurve whole, double widthInches)
    {
        // A step straight up at the very sight line is left to the other leaf.
        var to = whole.Chain.Start.X + widthInches;
        var kept = whole.Chain.Segments.TakeWhile(segment => segment.Start.X < to - CurveTolerance.MeetingInches).ToList();
        if (kept[^1] is var last && last.End.X > to + CurveTolerance.MeetingInches)
            kept[^1] = last.Between(last.Start, new Chain([last], isClosed: false).CrossingsWithLine(new(to, 0), new(0, 1))[0].Place);
        var toMiddle = new CurvePoint(whole.Chain.Start.X + (widthInches / 2), 0);
        return new(new Chain(kept, isClosed: false).Translated(default(CurvePoint) - toMiddle),
            [.. whole.Corners.Where(corner => corner.X < to - CurveTolerance.SamePlaceInches).Select(corner => corner - toMiddle)]);
    }

    /// <summary>As <see cref="LeftPart"/>, of the right leaf.</summary>
    public static ArchCurve RightPart(ArchCurve whole, double widthInches) => LeftPart(whole.Mirrored(), widthInches).Mirrored();
}
