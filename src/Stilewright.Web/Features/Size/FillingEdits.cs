using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Desk;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Features.Size;

/// <summary>Edits of what closes an opening.</summary>
public static class FillingEdits
{
    public static Course With(Course course, string openingId, Func<Filling, Filling> edit) =>
        ProjectEdits.WithOpening(course, openingId, opening => opening with { Filling = edit(opening.Filling) });

    /// <summary>Doors or drawer fronts; mount, edges and design stay.</summary>
    public static Filling As(Filling filling, bool drawers) => (filling, drawers) switch
    {
        (DoorFilling doors, true) => new DrawerFilling(doors.Mount, doors.Design, Edges: doors.Edges),
        (DrawerFilling fronts, false) => new DoorFilling(fronts.Mount, [Leaf(HingeSide.Left)], fronts.Design, fronts.Edges),
        _ => filling,
    };

    /// <summary>One leaf, or more; a pair hangs on both sides, inner leaves of three or more on the leaf beside them.</summary>
    public static Filling WithLeaves(Filling filling, int count) => filling is not DoorFilling doors || doors.Leaves.Count == count ? filling : doors with
    {
        Leaves = count switch
        {
            1 => [doors.Leaves[0] with { HingedTo = null, Width = null }],
            2 => [Leaf(HingeSide.Left), Leaf(HingeSide.Right)],
            _ => [Leaf(HingeSide.Left), .. Enumerable.Range(1, count - 2).Select(index => Leaf(HingeSide.Left) with { HingedTo = LeafName(index - 1, count) }), Leaf(HingeSide.Right)],
        },
        Lapped = doors.Lapped && count == 2,
    };

    /// <summary>What a leaf is called by others that are hinged to it: left, middle, right, or its number from the left.</summary>
    /// <param name="leaf">Counted from 0.</param>
    public static string LeafName(int leaf, int count) => leaf == 0 ? "left" : leaf == count - 1 ? "right" : count == 3 ? "middle"
        : (leaf + 1).ToString(System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Equal heights, given ones or shares, which begin alike.</summary>
    /// <param name="kind">equal, given or proportional.</param>
    /// <param name="now">Heights as they are, from the top.</param>
    public static DrawerFilling WithHeights(DrawerFilling drawers, string kind, IReadOnlyList<LengthEntry> now) => drawers with
    {
        Heights = kind switch
        {
            "given" => Given(now, drawers.Count - 1),
            "proportional" => new ProportionalHeights([.. Enumerable.Repeat(1, drawers.Count)]),
            _ => null,
        },
    };

    /// <summary>Heights given for all fronts but one, as they are.</summary>
    /// <param name="rest">The front that takes the rest, counted from 0.</param>
    public static GivenHeights Given(IReadOnlyList<LengthEntry> now, int rest) =>
        new([.. now.Select((height, index) => new GivenHeight(index == rest ? null : height))]);

    public static Filling WithHinge(Filling filling, int leaf, HingeSide side) => filling is DoorFilling doors
        ? doors with { Leaves = [.. doors.Leaves.Select((each, index) => index == leaf ? each with { Hinge = side } : each)] } : filling;

    public static Filling WithDesign(Filling filling, string design) => filling switch
    {
        DoorFilling doors => doors with { Design = design },
        DrawerFilling drawers => drawers with { Design = design },
        _ => filling,
    };

    public static Filling WithMount(Filling filling, Mount mount) => filling switch
    {
        DoorFilling doors => doors with { Mount = mount, Edges = mount == Mount.Overlay ? doors.Edges : null },
        DrawerFilling drawers => drawers with { Mount = mount, Edges = mount == Mount.Overlay ? drawers.Edges : null },
        _ => filling,
    };

    /// <summary>How many drawer fronts; heights that were given for another number are equal again.</summary>
    public static Filling WithFronts(Filling filling, int count) => filling is DrawerFilling drawers && drawers.Count != count
        ? drawers with { Count = count, Heights = null, RemainderIn = null } : filling;

    public static EdgeRule? Edge(Filling filling, Side side) => side switch
    {
        Side.Left => filling.Edges?.Left,
        Side.Right => filling.Edges?.Right,
        Side.Top => filling.Edges?.Top,
        _ => filling.Edges?.Bottom,
    };

    /// <param name="rule">Null for the standard's overlay.</param>
    public static Filling WithEdge(Filling filling, Side side, EdgeRule? rule)
    {
        var edges = filling.Edges ?? new EdgeRules();
        edges = side switch
        {
            Side.Left => edges with { Left = rule },
            Side.Right => edges with { Right = rule },
            Side.Top => edges with { Top = rule },
            _ => edges with { Bottom = rule },
        };
        var kept = edges == new EdgeRules() ? null : edges;
        return filling switch
        {
            DoorFilling doors => doors with { Edges = kept },
            DrawerFilling drawers => drawers with { Edges = kept },
            _ => filling,
        };
    }

    /// <summary>The overlay, gap or reveal of one edge as a field; null where the standard's holds.</summary>
    public static LengthField? EdgeField(Filling filling, string openingId, Side side)
    {
        var name = $"{openingId}/filling/edges/{side.ToString().ToLowerInvariant()}";
        return Edge(filling, side) switch
        {
            FixedOverlay => Field("overlay", isOptional: false, rule => (rule as FixedOverlay)?.Overlay, entry => entry is { } length ? new FixedOverlay(length) : null),
            ShareMember => Field("gap left between", isOptional: true, rule => (rule as ShareMember)?.Gap, entry => new ShareMember(entry)),
            ToFrameEdge => Field("frame left visible", isOptional: true, rule => (rule as ToFrameEdge)?.Reveal, entry => new ToFrameEdge(entry)),
            _ => null,
        };

        LengthField Field(string label, bool isOptional, Func<EdgeRule?, LengthEntry?> get, Func<LengthEntry?, EdgeRule?> make) => new(
            name, label,
            course => ProjectEdits.Opening(course, openingId) is { } opening ? get(Edge(opening.Filling, side)) : null,
            (course, entry) => With(course, openingId, there => make(entry) is { } rule ? WithEdge(there, side, rule) : there))
        {
            IsOptional = isOptional,
            Otherwise = "as the standard",
        };
    }

    private static LeafEntry Leaf(HingeSide hinge) => new(hinge, null, null, null, SettingValues.None);
}
