using Stilewright.Measure;

namespace Stilewright.Drawing.Figures;

public enum StickDirection
{
    /// <summary>From the left edge of the leaf to its right, seen from the front.</summary>
    Across,

    /// <summary>From the bottom edge of the leaf to its top.</summary>
    Up,
}

/// <summary>A place on a story stick.</summary>
/// <param name="At">Distance from the zero end.</param>
/// <param name="Names">What lies there, such as "sight line, left stile".</param>
/// <param name="IsHidden">True where all that lies there is inside the finished leaf: tongues, groove bottoms, panel edges.</param>
public sealed record StoryMark(Length At, IReadOnlyList<string> Names, bool IsHidden);
