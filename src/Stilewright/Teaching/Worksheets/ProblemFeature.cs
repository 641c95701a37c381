namespace Stilewright.Teaching.Worksheets;

/// <summary>What a random problem may have besides a single overlay door.</summary>
public enum ProblemFeature
{
    /// <summary>Two leaves on the opening.</summary>
    Pair,

    /// <summary>The leaves sit in the opening.</summary>
    Inset,

    /// <summary>The leaf is glued up larger and trimmed.</summary>
    TrimAllowance,

    /// <summary>The top rail is arched.</summary>
    Arch,

    /// <summary>One or two mid rails that make equal lights.</summary>
    MidRails,
}
