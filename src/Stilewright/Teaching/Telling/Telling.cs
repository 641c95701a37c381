namespace Stilewright.Teaching.Telling;

/// <summary>How much a maker is told, from least to most.</summary>
public enum Telling
{
    /// <summary>Which figures are right; nothing that gives away a right size.</summary>
    RightOrWrong,

    /// <summary>A question that leads to the rule.</summary>
    Hint,

    /// <summary>The rule that was missed, in words, without figures.</summary>
    Rule,

    /// <summary>Everything: the maker's own arithmetic as it probably was, and the right line.</summary>
    All,
}
