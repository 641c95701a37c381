namespace Stilewright.Drawing.Patterns;

/// <summary>A pattern, or why there is none.</summary>
public abstract record PatternResult
{
    private PatternResult()
    {
    }

    public sealed record Drawn(FullSizePattern Pattern) : PatternResult;

    /// <param name="Problem">With the number that would do.</param>
    public sealed record Refused(string Problem) : PatternResult;
}
