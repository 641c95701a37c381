namespace Stilewright.Curves;

/// <summary>The curves that follow from the sight line of a light. Closed ones run counter-clockwise.</summary>
public static class LightCurves
{
    /// <summary>The edge of what is seen of the panel.</summary>
    public static Chain SightLine(ArchedLight light) => Outline(light, 0, 0, 0);

    /// <summary>The bottom of the grooves in stiles and rails: the sight line offset by d.</summary>
    public static Chain GrooveBottom(ArchedLight light) => Outline(light, light.GrooveDepth, light.GrooveDepth, light.GrooveDepth);

    /// <summary>The panel: the sight line offset by d − c at the sides, d − c of the ends at a straight end, d − ca at an arch.</summary>
    /// <remarks>An arch's curve is carried on along its own line or circle to the panel's side, or cut there; one that cannot
    /// reach it (a half-round with ca above c) is stepped out to it level. Corners of the sight line are mitred.</remarks>
    public static Chain PanelEdge(ArchedLight light) =>
        Outline(light, light.GrooveDepth - light.SideClearance, light.Bottom is null ? light.GrooveDepth - light.EndClearance : light.ArchOffset, light.ArchOffset);

    /// <summary>A line that follows a part's edge inward, such as the edge of a raise or of a field.</summary>
    /// <param name="edge">Closed, counter-clockwise.</param>
    public static OffsetResult Inward(Chain edge, double byInches, CornerJoin join = CornerJoin.Mitre) => edge.Offset(byInches, join);

    /// <summary>The edge of a pattern that guides a cutter along an edge: the bearing rides on the pattern, the cutter leaves the edge,
    /// and both turn about one axis. So the pattern lies bearing radius less cutter radius inside the wood.</summary>
    /// <param name="edge">The edge to be left, with the wood on its left.</param>
    public static OffsetResult PatternLine(Chain edge, double bearingRadiusInches, double cutterRadiusInches) =>
        edge.Offset(bearingRadiusInches - cutterRadiusInches);

    /// <summary>The sight line of an arch moved evenly out into the rail, as far as its sides: the bottom of the groove, or a panel's edge.</summary>
    public static Chain Into(ArchCurve arch, double inches) => FittedArch(arch.Chain, inches, arch.Chain.Start.X, arch.Chain.End.X);

    /// <summary>An arch's edge moved out into the wood and fitted between two uprights, from left to right.</summary>
    internal static Chain FittedArch(Chain arch, double outInches, double leftX, double rightX)
    {
        var moved = arch.Offset(outInches).Chains.MaxBy(chain => chain.Length)
            ?? throw new InvalidOperationException("An arch moved out into its rail keeps a curve.");
        return FitStart(FitStart(moved, leftX).Mirrored(0).Reversed(), -rightX).Mirrored(0).Reversed();
    }

    private static Chain FitStart(Chain chain, double x)
    {
        if (Math.Abs(chain.Start.X - x) <= CurveTolerance.MeetingInches)
            return chain;
        var crossings = chain.CrossingsWithLine(new(x, 0), new(0, 1));
        if (chain.Start.X < x && crossings.Count > 0)
            return chain.Part(crossings[0].OnFirst, chain.Length);

        var first = chain.Segments[0];
        var onward = first.Reversed().Beyond(first is ArcSegment arc ? arc.Radius * Math.PI / 2 : Math.Abs(chain.Start.X - x) * 10);
        var reach = new Chain([onward], isClosed: false).CrossingsWithLine(new(x, 0), new(0, 1));
        if (reach.Count > 0 && reach[0].OnFirst > CurveTolerance.MeetingInches)
            return new Chain([first.Between(reach[0].Place, first.End), .. chain.Segments.Skip(1)], isClosed: false);
        return new([new LineSegment(chain.Start with { X = x }, chain.Start), .. chain.Segments], isClosed: false);
    }

    /// <summary>The sight line moved out by one distance at the sides, one at the bottom and one at the top, arched or not.</summary>
    internal static Chain Outline(ArchedLight light, double side, double bottomOut, double topOut)
    {
        var (left, right) = (light.Top.Chain.Start.X - side, light.Top.Chain.End.X + side);
        var top = FittedArch(light.Top.Chain, topOut, left, right);
        var bottom = light.Bottom is { } hollow
            ? FittedArch(hollow.TurnedOver().Chain, bottomOut, left, right).TurnedOver().Translated(new(0, -light.SideHeight))
            : new Chain([new LineSegment(new(left, -light.SideHeight - bottomOut), new(right, -light.SideHeight - bottomOut))], isClosed: false);
        return new(
            [
                .. bottom.Segments, new LineSegment(bottom.End, top.End), .. top.Reversed().Segments, new LineSegment(top.Start, bottom.Start),
            ], isClosed: true);
    }
}
