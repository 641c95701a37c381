using Stilewright.Projects;

namespace Stilewright.Measure;

/// <summary>The unit a reader works in. One inch is exactly 25.4 mm (international yard and pound agreement, 1959).</summary>
public enum LengthUnit
{
    [Spelled("in"), Meaning("Inches"), Label("inches")]
    Inch,

    [Spelled("mm"), Meaning("Millimetres"), Label("millimetres")]
    Millimetre,
}
