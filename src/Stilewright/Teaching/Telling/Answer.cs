using Stilewright.Teaching.Checking;

namespace Stilewright.Teaching.Telling;

/// <summary>The answer to a maker's list, in words. What the level of telling withholds is null or missing.</summary>
/// <param name="Summary">One sentence about the whole list.</param>
public sealed record Answer(
    Telling Telling, string Summary, IReadOnlyList<LineAnswer> Lines, IReadOnlyList<string> Missing, IReadOnlyList<MistakeAnswer> Mistakes);

/// <summary>The answer to one line.</summary>
/// <param name="What">What the line was taken for, such as "2 stiles"; empty where it goes with nothing.</param>
/// <param name="Remarks">What else is to be said: counts, the order of sizes.</param>
public sealed record LineAnswer(ListLine Line, string What, bool IsRight, IReadOnlyList<NumberAnswer> Numbers, IReadOnlyList<string> Remarks);

/// <summary>The answer to one figure.</summary>
/// <param name="Told">As the maker wrote it.</param>
/// <param name="Mark">Right, not right, or follows from an earlier figure.</param>
/// <param name="Right">The right figure.</param>
/// <param name="Off">How far off, such as "3/4 short".</param>
public sealed record NumberAnswer(CheckedNumber Number, string Told, string Mark, string? Right, string? Off);

/// <summary>What is told of figures that one explanation accounts for.</summary>
/// <param name="About">The figures it made wrong.</param>
/// <param name="Hint">A question that leads to the rule.</param>
/// <param name="Missed">What was missed, such as "The grooves were left out."</param>
/// <param name="Rule">The rule in words.</param>
/// <param name="Formulas">Steps in words, without figures.</param>
/// <param name="Work">The maker's arithmetic beside the right one.</param>
/// <param name="Question">Where several explanations are about as likely: what to ask to tell them apart.</param>
/// <param name="Following">Figures that are wrong only because of these.</param>
public record CauseAnswer(
    string About, string Hint, string? Missed, string? Rule, IReadOnlyList<string> Formulas,
    IReadOnlyList<WorkAnswer> Work, string? Question, string? Following);

/// <summary>The answer about one mistake of a list.</summary>
public sealed record MistakeAnswer(Mistake Mistake, CauseAnswer Told) : CauseAnswer(Told);

/// <summary>One step as it was probably worked, and as it should be.</summary>
public sealed record WorkAnswer(string AsWorked, string Right);
