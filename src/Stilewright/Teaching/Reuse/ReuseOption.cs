using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;

namespace Stilewright.Teaching.Reuse;

/// <summary>The rungs of the repair ladder, the one that saves most first; common practice, no source.</summary>
public enum ReuseRung
{
    AsItIs,
    CutSmaller,
    AddEdging,
    Remake,
}

/// <summary>One thing that a piece can become.</summary>
/// <param name="Parts">The parts it can be, all alike; one of them.</param>
/// <param name="Steps">What to do, in sentences with their arithmetic.</param>
/// <param name="Limits">Rules about machines that the work meets, with advice and source.</param>
public sealed record ReuseOption(ReuseRung Rung, IReadOnlyList<Part> Parts, IReadOnlyList<FormattableString> Steps, IReadOnlyList<Finding> Limits)
{
    /// <summary>What comes off the width.</summary>
    public Length OffWidth { get; init; }

    /// <summary>What comes off the length.</summary>
    public Length OffLength { get; init; }

    /// <summary>Whether it may be done: no hazard stands in the way that the instructor has not accepted for that part.</summary>
    public bool IsSafe => Limits.All(limit => limit.Severity < Severity.Hazard || limit.AcceptedBecause is not null);
}
