namespace Stilewright.Curves;

/// <summary>What of an arch, its leaf or its tooling a limit is about.</summary>
public enum ArchMeasure
{
    Span,
    Rise,
    Shoulder,
    Step,
    PointRadius,
    ReverseToCrown,
    RaiseWidth,
    CollarRadius,
    StileWidth,
}

public enum LimitSide
{
    AtLeast,
    AtMost,
    Exactly,
}

/// <summary>The nearest value that works, all else unchanged.</summary>
/// <param name="Value">Inches; a plain number for <see cref="ArchMeasure.ReverseToCrown"/>.</param>
public sealed record ArchLimit(ArchMeasure Measure, LimitSide Side, double Value);
