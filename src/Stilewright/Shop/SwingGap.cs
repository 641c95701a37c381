using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

[Meaning("The air that one leaf needs on its hinge side, from the hinge's sheet"), Label("least gap")]
public sealed record SwingGap(
    [Meaning("Leaves up to this thickness"), Between(0, 4, Above = true)] LengthEntry Thickness,
    [Between(0, 2)] LengthEntry Gap,
    [Meaning("Bored at this distance or more; absent, at any"), Label("boring distance", Absent = "any"), Between(0, 2)] LengthEntry? BoringDistance = null);
