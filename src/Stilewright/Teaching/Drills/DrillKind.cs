namespace Stilewright.Teaching.Drills;

/// <summary>What one item of a drill asks.</summary>
public enum DrillKind
{
    /// <summary>Where a pointer stands on a drawn rule.</summary>
    ReadRule,

    Add,
    Subtract,
    Halve,
    Twice,

    /// <summary>Inches, to be told in millimetres to the nearest half.</summary>
    InchToMillimetre,

    /// <summary>Millimetres, to be told in inches to the nearest 1/32.</summary>
    MillimetreToInch,
}
