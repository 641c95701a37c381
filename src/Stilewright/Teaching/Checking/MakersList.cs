using Stilewright.Measure;

namespace Stilewright.Teaching.Checking;

/// <summary>The state of the wood whose sizes a list states.</summary>
public enum CutStage
{
    Finished,

    /// <summary>With the trim allowance, as the parts go into the clamps.</summary>
    IntoClamps,

    /// <summary>As rough blanks.</summary>
    Rough,
}

/// <summary>One line of a maker's own cut list.</summary>
/// <param name="Number">Its place in the list, from 1.</param>
/// <param name="Name">What the maker calls the part, such as "upright".</param>
/// <param name="Count">How many; null where the maker did not say.</param>
/// <param name="Width">The first size as written: across the grain, or of a door or front its width.</param>
/// <param name="Length">The second size as written: along the grain, or of a door or front its height.</param>
/// <param name="Leaf">The label or path of the leaf it is for; null where the maker did not say.</param>
/// <param name="Thickness">Null where the list states none; it is looked at only beside a width or length.</param>
public sealed record ListLine(int Number, string Name, int? Count, LengthEntry? Width, LengthEntry? Length, string? Leaf = null, LengthEntry? Thickness = null);

/// <summary>A maker's own cut list for one leaf or a project.</summary>
public sealed record MakersList(CutStage Stage, IReadOnlyList<ListLine> Lines);
