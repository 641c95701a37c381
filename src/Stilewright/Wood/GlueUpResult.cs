using Stilewright.Measure;

namespace Stilewright.Wood;

/// <summary>A planned glue-up, or why there is none.</summary>
public abstract record GlueUpResult
{
    private GlueUpResult()
    {
    }

    public sealed record Planned(GlueUp GlueUp) : GlueUpResult;

    /// <param name="ShortBy">What the boards lack of the width, jointed.</param>
    public sealed record NotEnough(Length ShortBy) : GlueUpResult;

    /// <param name="Problem">Why no staves can be made of the order.</param>
    public sealed record Refused(FormattableString Problem, FormattableString Advice) : GlueUpResult;
}
