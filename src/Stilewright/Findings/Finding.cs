using Stilewright.Measure;

namespace Stilewright.Findings;

/// <summary>A rule of the trade that is checked.</summary>
/// <param name="Code">Short and stable, such as <c>front.neighbours-collide</c>.</param>
/// <param name="Condition">When it speaks, in one phrase.</param>
/// <param name="Advice">What it advises, in one phrase.</param>
public sealed record Rule(string Code, Severity Severity, string Condition, string Advice, Source Source);

/// <summary>Where a finding belongs.</summary>
/// <param name="Path">The path of the opening, leaf or part.</param>
/// <param name="Field">The field that would change it, where one field would.</param>
public sealed record Place(string Path, string? Field = null)
{
    /// <summary>Whether the place is the given path or lies under it.</summary>
    public bool IsWithin(string path) =>
        Path.StartsWith(path, StringComparison.Ordinal) && (Path.Length == path.Length || Path[path.Length] == '/');
}

/// <summary>A fault, a danger or a remark that a rule found, with its figures.</summary>
/// <param name="Problem">What is wrong; lengths are put in the reader's unit when it is shown.</param>
/// <param name="Advice">The way out.</param>
public sealed record Finding(Rule Rule, Place Place, FormattableString Problem, FormattableString Advice)
{
    /// <summary>Other leaves that the finding is about in the same way.</summary>
    public IReadOnlyList<Place> AlsoAt { get; init; } = [];

    /// <summary>The instructor's reason, where a hazard was accepted.</summary>
    public string? AcceptedBecause { get; init; }

    public Severity Severity => Rule.Severity;

    /// <summary>Whether the finding is about the given leaf, opening or part, or something under it.</summary>
    public bool Concerns(string path) => Place.IsWithin(path) || AlsoAt.Any(place => place.IsWithin(path));

    public string ProblemText(LengthFormat format) => FindingText.Say(Problem, format);
    public string AdviceText(LengthFormat format) => FindingText.Say(Advice, format);
}
