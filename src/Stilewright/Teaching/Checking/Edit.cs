namespace Stilewright.Teaching.Checking;

/// <summary>One change to one node of the working, as a slip makes it.</summary>
/// <param name="Target">The node whose value changes.</param>
/// <param name="Other">A node whose value is taken; −1 where none is.</param>
/// <param name="Factor">A factor or a value, as the kind says.</param>
internal readonly record struct Edit(int Target, EditKind Kind, int Other = -1, double Factor = 1);

internal enum EditKind
{
    /// <summary>The right side of a sum or difference is left out.</summary>
    KeepLeft,

    /// <summary>Plus for minus, or minus for plus.</summary>
    TurnSign,

    /// <summary>The right side counts Factor times.</summary>
    ScaleRight,

    /// <summary>The right side becomes Factor × Other.</summary>
    ReplaceRight,

    /// <summary>The left side becomes Other.</summary>
    ReplaceLeft,

    /// <summary>A quotient is not divided.</summary>
    NotDivided,

    /// <summary>Of a sum or difference over a number, only its left side is divided.</summary>
    DividedEarly,

    /// <summary>The result counts Factor times.</summary>
    Scale,

    /// <summary>The node becomes the value of Other, which lies under it.</summary>
    Become,

    /// <summary>Factor × Other is added.</summary>
    Add,

    /// <summary>The node becomes the value Factor, in inches.</summary>
    Set,
}
