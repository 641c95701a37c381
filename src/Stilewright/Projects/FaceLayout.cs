using Stilewright.Measure;

namespace Stilewright.Projects;

[Meaning("A face frame: its outer members and the spaces they enclose")]
public sealed record FaceLayout(
    [Meaning("Width over the outer stiles"), Between(0, 480, Above = true)] LengthEntry Width,
    [Meaning("Height over the outer rails"), Between(0, 480, Above = true)] LengthEntry Height,
    OuterStile LeftStile,
    OuterStile RightStile,
    [Meaning("Width of the top rail"), Between(0, 24)] LengthEntry TopRail,
    [Meaning("Width of the bottom rail; zero where the case bottom is the edge"), Between(0, 24)] LengthEntry BottomRail,
    [Meaning("What the outer members enclose"), Label("space", IsSilent = true)] Space Space,
    [Meaning("A bead run round the inside of every opening, which it makes smaller on each edge"), Between(0, 2)] LengthEntry? Bead = null);

public enum OuterEdge
{
    [Meaning("The frame ends in the open")]
    Open,

    [Meaning("The frame ends at a wall or another thing a door must clear")]
    Wall,
}

[Meaning("The leftmost or rightmost stile of a face frame")]
public sealed record OuterStile(
    [Between(0, 24, Above = true)] LengthEntry Width,
    OuterEdge Edge = OuterEdge.Open,
    [Meaning("How far it stands above the frame"), Label("length above the frame"), Between(0, 120)] LengthEntry? Above = null,
    [Meaning("How far it stands below the frame, to the floor"), Label("length below the frame"), Between(0, 120)] LengthEntry? Below = null,
    [Meaning("Part of its width that is scribed off at the wall"), Label("scribed off"), Between(0, 24)] LengthEntry? Scribe = null,
    [Meaning("Height of the notch for the toe space, from its foot"), Between(0, 24)] LengthEntry? ToeNotch = null);

[Meaning("A space of a face frame: an opening, or divided again, or left open when it holds neither")]
public sealed record Space(
    [Meaning("Its width among columns or height among rows; spaces without one share the rest equally"), Label("size", Absent = "its share"), Between(0, 480, Above = true)] LengthEntry? Size = null,
    Opening? Opening = null,
    [Meaning("Spaces side by side, left to right, divided by mullions")] Division? Columns = null,
    [Meaning("Spaces one above the other, top to bottom, divided by rails")] Division? Rows = null);

[Meaning("A space divided by members of one width or of listed widths")]
public sealed record Division(
    [Between(2)] IReadOnlyList<Space> Spaces,
    [Meaning("Width of every dividing member"), Label("dividing member"), Between(0, 24, Above = true)] LengthEntry? Member,
    [Meaning("Width of each dividing member in order, where they differ"), Label("dividing members")] IReadOnlyList<LengthEntry> Members);
