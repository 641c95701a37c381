using Stilewright.Projects;

namespace Stilewright.Curves;

/// <summary>The shop's hard patterns, and which of them serves a door.</summary>
public sealed record PatternRack(IReadOnlyList<HardPattern> Patterns)
{
    /// <param name="spanInches">Sight line to sight line.</param>
    /// <param name="stilesInches">Both stiles together, which make a span into a width.</param>
    public PatternChoice Choose(ArchFamily family, double spanInches, double stilesInches)
    {
        var ofFamily = Patterns.Where(pattern => pattern.Family == family).ToList();
        var fitting = ofFamily.Where(pattern => pattern.Fits(spanInches)).OrderBy(pattern => pattern.GreatestSpan).ThenBy(pattern => pattern.Name, StringComparer.Ordinal).ToList();
        if (fitting.Count > 0)
            return new PatternChoice.Fitting(fitting);
        var below = ofFamily.Where(pattern => pattern.GreatestSpan < spanInches).MaxBy(pattern => pattern.GreatestSpan);
        var above = ofFamily.Where(pattern => pattern.LeastSpan > spanInches).MinBy(pattern => pattern.LeastSpan);
        return new PatternChoice.NoneFits(
            [.. ((HardPattern?[])[below, above]).OfType<HardPattern>()
                .Select(pattern => new PatternWidth(pattern, pattern.NearestSpan(spanInches), pattern.NearestSpan(spanInches) + stilesInches))]);
    }
}

/// <summary>Which pattern serves.</summary>
public abstract record PatternChoice
{
    private PatternChoice()
    {
    }

    /// <param name="Patterns">All that serve, the one that loses least of its curve first.</param>
    public sealed record Fitting(IReadOnlyList<HardPattern> Patterns) : PatternChoice;

    /// <param name="Nearest">The door widths just below and just above that a pattern would serve; empty when the family has none.</param>
    public sealed record NoneFits(IReadOnlyList<PatternWidth> Nearest) : PatternChoice;
}

/// <summary>A width that a pattern would serve, in inches.</summary>
public sealed record PatternWidth(HardPattern Pattern, double Span, double LeafWidth);
