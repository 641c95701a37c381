using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

/// <remarks>One law holds for all: an overlay is <c>constant + boring distance − plate</c>, an inset gap <c>plate − boring
/// distance − constant</c>. A hinge without plates has its overlay built in, and counts as one with a plate of nothing.</remarks>
[Meaning("What is bored for a cup hinge, and what overlay or gap follows"), Label("cup")]
public sealed record CupBoring(
    [Meaning("Diameter of the cup"), Between(0, 3, Above = true)] LengthEntry Diameter,
    [Meaning("Depth of the boring"), Between(0, 2, Above = true)] LengthEntry Depth,
    [Meaning("The least boring distance, from the leaf's edge to the near edge of the cup"), Between(0, 2)] LengthEntry LeastDistance,
    [Meaning("The greatest boring distance"), Between(0, 2)] LengthEntry GreatestDistance,
    [Meaning("Overlay with a boring distance of nothing and a plate of nothing; for inset the K of plate = K + boring distance + gap"), Label("constant", Absent = "its own least and greatest hold"), Between(0, 4)] LengthEntry? Constant = null,
    [Meaning("Heights of its mounting plates, each in a record of its own; none where the overlay is built in")] IReadOnlyList<PlateHeight>? Plates = null,
    [Meaning("Distance between the two screw or dowel holes beside the cup"), Label("screw spacing"), Between(0, 4, Above = true)] LengthEntry? ScrewSpacing = null,
    [Meaning("How far behind the cup's centre these holes lie, away from the edge"), Label("screw offset"), Between(0, 2)] LengthEntry? ScrewOffset = null)
{
    public IReadOnlyList<PlateHeight> Plates { get; init; } = Plates ?? [];
}
