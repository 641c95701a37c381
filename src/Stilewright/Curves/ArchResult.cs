namespace Stilewright.Curves;

/// <summary>What became of an arch that was asked for.</summary>
public abstract record ArchResult
{
    private ArchResult()
    {
    }

    public sealed record Drawn(ArchCurve Curve) : ArchResult;

    /// <summary>No such arch exists.</summary>
    /// <param name="Problem">A plain sentence with the numbers and the limit.</param>
    /// <param name="Limit">The nearest value that can be drawn, all else unchanged.</param>
    public sealed record Refused(FormattableString Problem, ArchLimit Limit) : ArchResult;
}
