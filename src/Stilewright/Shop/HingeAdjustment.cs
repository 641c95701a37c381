using Stilewright.Projects;

namespace Stilewright.Shop;

[Meaning("How far a hinge's screws move the leaf, each way; an axis left out does not move")]
public sealed record HingeAdjustment(
    [Meaning("Plus is more overlay on the hinge side, or less gap there"), Label("sideways", Absent = "does not move")] ScrewTravel? Sideways = null,
    [Meaning("Plus is upwards"), Label("height", Absent = "does not move")] ScrewTravel? Height = null,
    [Meaning("Plus is away from the frame"), Label("depth", Absent = "does not move")] ScrewTravel? Depth = null);
