using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Projects;

[Meaning("A clear hole in a face frame and what closes it")]
public sealed record Opening(
    [Id] string Id,
    [Meaning("What closes it")] Filling Filling,
    [Meaning("The number chalked on its parts; absent, its place among the fronts of the bench"), Between(1, 999), UniqueWithin(typeof(Project), "front")] int? Number,
    string? Name,
    [Meaning("Tape readings; absent, the layout's figures hold")] Readings? Readings,
    [Meaning("What lies beyond each edge, where no layout tells")] Surroundings? Beside,
    [Meaning("Fronts of one name are kept in line: one width, one centre")] string? Column,
    [Meaning("A bead round the inside of this opening, which makes it smaller on each edge"), Between(0, 2)] LengthEntry? Bead,
    [Meaning("Settings that differ at this opening")] SettingValues Overrides);

[Meaning("Tape readings of an opening, all seen from the front")]
public sealed record Readings(
    [Meaning("Width: one reading, or top and bottom, or top, middle and bottom"), Between(1, 3)] IReadOnlyList<LengthEntry> Widths,
    [Meaning("Height: one reading, or left and right, or left, middle and right"), Between(1, 3)] IReadOnlyList<LengthEntry> Heights,
    [Meaning("Diagonal from bottom left to top right"), Between(0, 680, Above = true)] LengthEntry? Rising = null,
    [Meaning("Diagonal from bottom right to top left"), Between(0, 680, Above = true)] LengthEntry? Falling = null,
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
    Beyond? Left = null,
    Beyond? Right = null,
    Beyond? Top = null,
    Beyond? Bottom = null);

[Meaning("What lies beyond one edge")]
[Case("opening", typeof(NextOpening))]
[Case("frame-edge", typeof(FrameEdge))]
[Case("wall", typeof(WallBeyond))]
public abstract record Beyond
{
    /// <summary>Width of the frame member on that edge.</summary>
    public abstract LengthEntry Member { get; init; }
}

[Meaning("Another opening behind one member of the frame")]
public sealed record NextOpening(
    [RefersTo(typeof(Opening))] string Opening,
    [Meaning("Width of the frame member between the two"), Between(0, 24, Above = true)] LengthEntry Member) : Beyond
{
    public override LengthEntry Member { get; init; } = Member;
}

[Meaning("The outer edge of the frame")]
public sealed record FrameEdge(
    [Meaning("Width of the frame member on that edge"), Between(0, 24, Above = true)] LengthEntry Member) : Beyond
{
    public override LengthEntry Member { get; init; } = Member;
}

[Meaning("A wall or another thing to clear, beyond the frame")]
public sealed record WallBeyond(
    [Meaning("Width of the frame member on that edge"), Between(0, 24, Above = true)] LengthEntry Member) : Beyond
{
    public override LengthEntry Member { get; init; } = Member;
}
