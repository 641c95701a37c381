using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

[Meaning("How far one screw or slot moves the leaf"), Label("travel")]
public sealed record ScrewTravel(
    [Between(0, 2)] LengthEntry Minus,
    [Between(0, 2)] LengthEntry Plus,
    [Meaning("How far one turn moves the leaf; absent for a slot, or where it is not known"), Label("one turn", Absent = "not known"), Between(0, 1, Above = true)] LengthEntry? Pitch = null);
