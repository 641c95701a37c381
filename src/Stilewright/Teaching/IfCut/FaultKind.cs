namespace Stilewright.Teaching.IfCut;

/// <summary>What a strip of a leaf is that should not be there.</summary>
public enum FaultKind
{
    /// <summary>Nothing where two things should meet.</summary>
    Open,

    /// <summary>Wood beyond where it should end.</summary>
    TooMuch,

    /// <summary>No wood where there should be some.</summary>
    Missing,
}
