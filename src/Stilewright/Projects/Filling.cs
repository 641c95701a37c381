using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Projects;

[Meaning("What closes an opening")]
[Case("doors", typeof(DoorFilling))]
[Case("drawers", typeof(DrawerFilling))]
public abstract record Filling
{
    /// <summary>How the front sits on or in the frame.</summary>
    public abstract Mount Mount { get; init; }

    /// <summary>What each edge of an overlay front does.</summary>
    public abstract EdgeRules? Edges { get; init; }
}

public enum Mount
{
    [Meaning("Laps over the frame")]
    Overlay,

    [Meaning("Sits in the opening, flush with the frame")]
    Inset,

    [Meaning("Rabbeted round the back, partly in the opening")]
    Lipped,
}

[Meaning("One or more doors on one opening"), Label("doors")]
public sealed record DoorFilling(
    Mount Mount,
    [Meaning("The leaves from left to right"), Between(1, 12)] IReadOnlyList<LeafEntry> Leaves,
    [RefersTo(typeof(DoorDesign)), Meaning("The design of every leaf that names no other")] string Design,
    [Meaning("Edges that do not simply take the standard's overlay"), Label("edges", IsSilent = true)] EdgeRules? Edges = null,
    [Meaning("Whether the meeting edges of a pair are rabbeted to lap"), Label("meeting edges lap")] bool Lapped = false) : Filling
{
    public override Mount Mount { get; init; } = Mount;
    public override EdgeRules? Edges { get; init; } = Edges;
}

public enum HingeSide
{
    Left,
    Right,

    [Meaning("Lifts up")]
    Top,

    [Meaning("A flap or tilt-out")]
    Bottom,

    [Meaning("Fixed, not hinged"), Label("fixed")]
    None,
}

[Meaning("One leaf of a filling"), Label("leaf")]
public sealed record LeafEntry(
    [Meaning("Where it is hinged, seen from the front"), Label("hinge side")] HingeSide Hinge,
    [Meaning("The leaf it is hinged to: left, middle, right or its number; absent where it is hinged to the frame"), Label("hinged to", Absent = "the frame")] string? HingedTo,
    [Meaning("Its width, where the leaves are not equal; the others share the rest"), Label("width", Absent = "its share"), Between(0, 120, Above = true)] LengthEntry? Width,
    [RefersTo(typeof(DoorDesign)), Label("design", Absent = "that of the other leaves")] string? Design,
    [Meaning("Settings that differ on this leaf"), Label("overrides", IsSilent = true)] SettingValues Overrides);

[Meaning("One or more drawer fronts on one opening, from top to bottom"), Label("drawers")]
public sealed record DrawerFilling(
    Mount Mount,
    [RefersTo(typeof(DoorDesign))] string Design,
    [Meaning("How many fronts"), Label("number of fronts"), Between(1, 26)] int Count = 1,
    [Meaning("How their heights divide the front; equal when absent"), Label("heights", Absent = "equal")] BankHeights? Heights = null,
    [Meaning("Edges that do not simply take the standard's overlay"), Label("edges", IsSilent = true)] EdgeRules? Edges = null,
    [Meaning("The front that takes what the cutting step leaves over, from the top; absent, as the standard says"), Label("front that takes the remainder"), Between(1, 26)] int? RemainderIn = null,
    [Meaning("Whether the grain runs through all fronts, cut one after the other from one panel")] bool GrainRunsThrough = false) : Filling
{
    public override Mount Mount { get; init; } = Mount;
    public override EdgeRules? Edges { get; init; } = Edges;
}

[Meaning("How the heights of a bank are found")]
[Case("proportional", typeof(ProportionalHeights))]
[Case("given", typeof(GivenHeights))]
public abstract record BankHeights;

[Meaning("Heights in proportion, top to bottom"), Label("in proportion")]
public sealed record ProportionalHeights([Between(2, 26)] IReadOnlyList<int> Shares) : BankHeights;

[Meaning("Heights given for all fronts but one, which takes the rest"), Label("as given")]
public sealed record GivenHeights([Between(2, 26)] IReadOnlyList<GivenHeight> Fronts) : BankHeights;

[Label("front")]
public sealed record GivenHeight(
    [Meaning("Absent for the one front that takes the rest"), Label("height", Absent = "the rest"), Between(0, 120, Above = true)] LengthEntry? Height = null);

[Meaning("What each edge of an overlay front does; an edge not named takes the standard's overlay")]
public sealed record EdgeRules(
    [Label("left edge", Absent = "the standard's overlay")] EdgeRule? Left = null,
    [Label("right edge", Absent = "the standard's overlay")] EdgeRule? Right = null,
    [Label("top edge", Absent = "the standard's overlay")] EdgeRule? Top = null,
    [Label("bottom edge", Absent = "the standard's overlay")] EdgeRule? Bottom = null);

[Meaning("What one edge of an overlay front does")]
[Case("fixed", typeof(FixedOverlay))]
[Case("share", typeof(ShareMember))]
[Case("to-edge", typeof(ToFrameEdge))]
public abstract record EdgeRule;

[Meaning("Laps over the frame by a fixed amount"), Label("fixed")]
public sealed record FixedOverlay([Between(0, 24)] LengthEntry Overlay) : EdgeRule;

[Meaning("Shares the frame member evenly with the neighbour"), Label("shares the member")]
public sealed record ShareMember(
    [Meaning("Air left between the two; absent, as the standard says"), Between(0, 24)] LengthEntry? Gap = null) : EdgeRule;

[Meaning("Runs towards the outer edge of the frame"), Label("to the frame's edge")]
public sealed record ToFrameEdge(
    [Meaning("Frame left visible; absent, as the standard says"), Between(0, 24)] LengthEntry? Reveal = null) : EdgeRule;

[Meaning("A front that closes no opening")]
[Case("stated", typeof(StatedFront))]
[Case("applied-end", typeof(AppliedEnd))]
public abstract record LooseFront
{
    public abstract string Id { get; init; }
    public abstract int? Number { get; init; }
    public abstract string? Name { get; init; }
    public abstract string Design { get; init; }
    public abstract SettingValues Overrides { get; init; }
}

[Meaning("A front of stated size: a replacement, an appliance panel"), Label("front")]
public sealed record StatedFront(
    [Id] string Id,
    [Between(0, 120, Above = true)] LengthEntry Width,
    [Between(0, 120, Above = true)] LengthEntry Height,
    [RefersTo(typeof(DoorDesign))] string Design,
    [Label("number", Absent = "its place among the fronts of the bench"), Between(1, 999), UniqueWithin(typeof(Project), "front")] int? Number,
    string? Name,
    [Label("overrides", IsSilent = true)] SettingValues Overrides,
    [Label("hinge side")] HingeSide Hinge = HingeSide.None) : LooseFront
{
    public override string Id { get; init; } = Id;
    public override int? Number { get; init; } = Number;
    public override string? Name { get; init; } = Name;
    public override string Design { get; init; } = Design;
    public override SettingValues Overrides { get; init; } = Overrides;
}

public enum EndReach
{
    Floor,
    Toe,
}

[Meaning("A frame-and-panel end applied to the side of a case, looking like a door")]
public sealed record AppliedEnd(
    [Id] string Id,
    [Meaning("Width of the finished side, face frame's edge included"), Between(0, 120, Above = true)] LengthEntry SideWidth,
    [Meaning("Height of the finished side down to the floor"), Between(0, 120, Above = true)] LengthEntry SideHeight,
    [Meaning("The face frame's visible edge, which the stile beside it makes up for"), Label("visible edge of the face frame"), Between(0, 4)] LengthEntry FrameEdge,
    [RefersTo(typeof(DoorDesign))] string Design,
    [Label("number", Absent = "its place among the fronts of the bench"), Between(1, 999), UniqueWithin(typeof(Project), "front")] int? Number,
    string? Name,
    [Label("overrides", IsSilent = true)] SettingValues Overrides,
    [Label("reaches to the")] EndReach Reaches = EndReach.Floor,
    [Meaning("Height of the toe space, where the end stops at it or is notched for it"), Between(0, 24)] LengthEntry? ToeHeight = null) : LooseFront
{
    public override string Id { get; init; } = Id;
    public override int? Number { get; init; } = Number;
    public override string? Name { get; init; } = Name;
    public override string Design { get; init; } = Design;
    public override SettingValues Overrides { get; init; } = Overrides;
}
