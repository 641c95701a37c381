using Stilewright.Measure;

namespace Stilewright.Projects;

[Meaning("A shelf behind an opening")]
public sealed record Shelf(
    [Meaning("Its upper face, from the bottom of the opening"), Between(0, 120, Above = true)] LengthEntry Height,
    [Meaning("Its thickness; absent, its upper face alone is kept clear"), Label("thickness", Absent = "its upper face alone"), Between(0, 4, Above = true)] LengthEntry? Thickness = null);
