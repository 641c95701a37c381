using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

[Meaning("A mounting plate, by its height"), Label("plate")]
public sealed record PlateHeight([Between(0, 2)] LengthEntry Height);
