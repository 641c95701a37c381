namespace Stilewright.Teaching.Worksheets;

/// <summary>How much of a worked line is left to the maker.</summary>
public enum BlankStyle
{
    /// <summary>The formula and the given figures stand there; the maker carries earlier results over and writes the result.</summary>
    Results,

    /// <summary>The formula stands there in words; the maker puts every figure in its place and writes the result.</summary>
    Figures,

    /// <summary>Only the size asked for stands there.</summary>
    Question,
}
