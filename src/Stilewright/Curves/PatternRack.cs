using Stilewright.Projects;

namespace Stilewright.Curves;

/// <summary>The shop's hard patterns, and which of them serves a door.</summary>
public sealed record PatternRack(IReadOnlyList<HardPattern> Patterns)
{
    /// <summary>Up to this, in inches or as a plain number, two values are told as one.</summary>
    private const double Same = 1.0 / 1024;

    /// <param name="wanted">The arch as it was designed, over its span from sight line to sight line.</param>
    public PatternChoice Choose(ArchFamily family, ArchSizes wanted)
    {
        var ofFamily = Patterns.Where(pattern => pattern.Family == family).ToList();
        var fitting = ofFamily.Where(pattern => pattern.Fits(wanted.Span)).Select(pattern => Fitted(pattern, wanted))
            .OrderBy(fit => fit.Differences).ThenBy(fit => fit.Pattern.GreatestSpan).ThenBy(fit => fit.Pattern.Name, StringComparer.Ordinal).ToList();
        if (fitting.Count > 0)
            return new PatternChoice.Fitting(fitting);
        var below = ofFamily.Where(pattern => pattern.GreatestSpan < wanted.Span).MaxBy(pattern => pattern.GreatestSpan);
        var above = ofFamily.Where(pattern => pattern.LeastSpan > wanted.Span).MinBy(pattern => pattern.LeastSpan);
        return new PatternChoice.NoneFits(
            [.. ((HardPattern?[])[below, above]).OfType<HardPattern>().Select(pattern => new PatternSpan(pattern, pattern.NearestSpan(wanted.Span)))]);
    }

    private static PatternFit Fitted(HardPattern pattern, ArchSizes wanted)
    {
        var rise = pattern.CurveFor(wanted.Span) is ArchResult.Drawn(var curve) ? curve.Chain.Box.Top : pattern.Rise;
        var shoulder = pattern.ShoulderOver(wanted.Span);
        return new(pattern,
            Math.Abs(rise - wanted.Rise) > Same ? rise : null,
            Math.Abs(shoulder - wanted.Shoulder) > Same ? shoulder : null,
            pattern.ReverseToCrown is { } ratio && Math.Abs(ratio - wanted.ReverseToCrown) > Same ? ratio : null);
    }
}

/// <summary>Which pattern serves.</summary>
public abstract record PatternChoice
{
    private PatternChoice()
    {
    }

    /// <param name="Patterns">All that serve the span: the most alike first, and among like ones the one that loses least of its curve.</param>
    public sealed record Fitting(IReadOnlyList<PatternFit> Patterns) : PatternChoice;

    /// <param name="Nearest">The spans just below and just above that a pattern would serve; empty when the family has none.</param>
    public sealed record NoneFits(IReadOnlyList<PatternSpan> Nearest) : PatternChoice;
}

/// <summary>A pattern that serves a span, with what it leaves otherwise than wanted; null where that is alike.</summary>
/// <param name="Rise">Over that span, in inches.</param>
/// <param name="Shoulder">Over that span, in inches.</param>
/// <param name="ReverseToCrown">Radius of its reverse arcs over the crown's.</param>
public sealed record PatternFit(HardPattern Pattern, double? Rise, double? Shoulder, double? ReverseToCrown)
{
    internal int Differences => (Rise is null ? 0 : 1) + (Shoulder is null ? 0 : 1) + (ReverseToCrown is null ? 0 : 1);
}

/// <summary>A span that a pattern would serve, in inches.</summary>
public sealed record PatternSpan(HardPattern Pattern, double Span);
