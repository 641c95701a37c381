using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Projects;

[Meaning("A clear hole in a face frame and what closes it")]
public sealed record Opening(
    [Id] string Id,
    [Meaning("What closes it"), Label("filling", IsSilent = true)] Filling Filling,
    [Meaning("The number chalked on its parts; absent, its place among the fronts of the bench"), Between(1, 999), UniqueWithin(typeof(Project), "front")] int? Number,
    string? Name,
    [Meaning("Tape readings; where none of a kind was taken, the layout's figure holds"), Label("readings", IsSilent = true)] Readings? Readings,
    [Meaning("What lies beyond each edge, where no layout tells"), Label("neighbours", IsSilent = true)] Surroundings? Beside,
    [Meaning("Fronts of one name are kept in line: one width, one centre")] string? Column,
    [Meaning("A bead round the inside of this opening, which makes it smaller on each edge"), Between(0, 2)] LengthEntry? Bead,
    [Meaning("Settings that differ at this opening"), Label("overrides", IsSilent = true)] SettingValues Overrides,
    [Meaning("Shelves behind it, which hinges keep clear of"), Label("shelves")] IReadOnlyList<Shelf>? Shelves = null)
{
    public IReadOnlyList<Shelf> Shelves { get; init; } = Shelves ?? [];
}

[Meaning("Tape readings of an opening, seen from the front, each entered when it is taken; an end that is not read is taken as the nearest reading of its kind")]
public sealed record Readings(
    [Meaning("Width at the top"), Label("width at the top"), Between(0, 120, Above = true)] LengthEntry? WidthTop = null,
    [Meaning("Width in the middle; tells a bow where both ends are read too"), Label("width in the middle"), Between(0, 120, Above = true)] LengthEntry? WidthMiddle = null,
    [Meaning("Width at the bottom"), Label("width at the bottom"), Between(0, 120, Above = true)] LengthEntry? WidthBottom = null,
    [Meaning("Height at the left"), Label("height at the left"), Between(0, 120, Above = true)] LengthEntry? HeightLeft = null,
    [Meaning("Height in the middle; tells a bow where both ends are read too"), Label("height in the middle"), Between(0, 120, Above = true)] LengthEntry? HeightMiddle = null,
    [Meaning("Height at the right"), Label("height at the right"), Between(0, 120, Above = true)] LengthEntry? HeightRight = null,
    [Meaning("Diagonal from bottom left to top right"), Label("diagonal from bottom left to top right"), Between(0, 680, Above = true)] LengthEntry? Rising = null,
    [Meaning("Diagonal from bottom right to top left"), Label("diagonal from bottom right to top left"), Between(0, 680, Above = true)] LengthEntry? Falling = null,
    [Meaning("How an inset front meets an opening that is out of square")] OutOfSquareFit Fit = OutOfSquareFit.Upright);

public enum OutOfSquareFit
{
    [Meaning("An upright rectangle: inside the figure for inset, round it for overlay")]
    Upright,

    [Meaning("Inset only: made to the largest reading and planed to the opening, each edge with its taper")]
    PlaneToFit,
}

[Meaning("What lies beyond the edges of a measured opening")]
public sealed record Surroundings(
    [Label("beyond the left edge", Absent = "not told")] Beyond? Left = null,
    [Label("beyond the right edge", Absent = "not told")] Beyond? Right = null,
    [Label("above the top edge", Absent = "not told")] Beyond? Top = null,
    [Label("below the bottom edge", Absent = "not told")] Beyond? Bottom = null);

[Meaning("What lies beyond one edge")]
[Case("opening", typeof(NextOpening))]
[Case("frame-edge", typeof(FrameEdge))]
[Case("wall", typeof(WallBeyond))]
public abstract record Beyond
{
    /// <summary>Width of the frame member on that edge.</summary>
    public abstract LengthEntry Member { get; init; }
}

[Meaning("Another opening behind one member of the frame"), Label("another opening")]
public sealed record NextOpening(
    [RefersTo(typeof(Opening))] string Opening,
    [Meaning("Width of the frame member between the two"), Between(0, 24, Above = true)] LengthEntry Member) : Beyond
{
    public override LengthEntry Member { get; init; } = Member;
}

[Meaning("The outer edge of the frame"), Label("edge of the frame")]
public sealed record FrameEdge(
    [Meaning("Width of the frame member on that edge"), Between(0, 24, Above = true)] LengthEntry Member) : Beyond
{
    public override LengthEntry Member { get; init; } = Member;
}

[Meaning("A wall or another thing to clear, beyond the frame"), Label("wall")]
public sealed record WallBeyond(
    [Meaning("Width of the frame member on that edge"), Between(0, 24, Above = true)] LengthEntry Member) : Beyond
{
    public override LengthEntry Member { get; init; } = Member;
}
