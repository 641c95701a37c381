using Stilewright.Measure;

namespace Stilewright.Teaching.Drills;

/// <summary>One item of a drill.</summary>
/// <param name="Number">From 1; its address on the sheet.</param>
/// <param name="Question">As it is printed, such as <c>5 1/4 − 2 1/2</c>, or <c>5 1/4 in</c> to be told in the other unit; empty for a rule, which is drawn.</param>
/// <param name="Answer">The right answer; of a conversion, rounded as <see cref="Tolerance"/> asks.</param>
/// <param name="AnswerUnit">The unit the answer is written in.</param>
/// <param name="Exact">Of a conversion, the value before it is rounded; else the answer.</param>
/// <param name="Tolerance">How far from the exact value an answer may lie: zero, or half the step that is asked for.</param>
/// <param name="Slips">What known slips would have given; none gives the answer.</param>
public sealed record DrillItem(
    int Number, DrillKind Kind, string Question, Length Answer, LengthUnit AnswerUnit, Length Exact, Length Tolerance, IReadOnlyList<DrillSlip> Slips)
{
    /// <summary>The step of the rule to be read; null for other kinds.</summary>
    public Length? RuleStep { get; init; }
}
