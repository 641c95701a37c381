using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Doors;

/// <summary>A leaf that has its size and waits for its parts.</summary>
internal sealed record LeafPlan(
    string Path, string Label, string Name, Worked Width, Worked Height, HingeSide Hinge, bool IsDrawerFront,
    string Design, StandardInForce Standard, Rectangle Place, IReadOnlyList<Side> Rabbeted)
{
    public IReadOnlyDictionary<Side, Length> Tapers { get; init; } = new Dictionary<Side, Length>();

    /// <summary>Grain of a slab or panels that follows the bank rather than the design.</summary>
    public bool GrainRunsThrough { get; init; }

    /// <summary>How many leaves its front has.</summary>
    public int LeavesOfFront { get; init; } = 1;

    /// <summary>The other leaf of a pair; null where the front has another number of leaves.</summary>
    public PairMate? Mate { get; init; }

    /// <summary>What the stile on that side loses to a visible frame edge; null on other leaves.</summary>
    public (Side Side, Worked Loss)? NarrowStile { get; init; }
}

/// <summary>The other leaf of a pair.</summary>
/// <param name="Side">Left or right: where it stands.</param>
/// <param name="Between">The gap, or the lap where the meeting edges are lapped.</param>
internal sealed record PairMate(LeafPlan Leaf, Side Side, Worked Between, bool IsLapped);

/// <summary>Names and short codes of the leaves of one front.</summary>
internal static class LeafNames
{
    private static readonly string[] One = ["leaf"];
    private static readonly string[] Two = ["leaf.left", "leaf.right"];
    private static readonly string[] Three = ["leaf.left", "leaf.middle", "leaf.right"];

    /// <summary>Path segments of n leaves from left to right.</summary>
    public static IReadOnlyList<string> Doors(int count) => count switch
    {
        1 => One,
        2 => Two,
        3 => Three,
        _ => [.. Enumerable.Range(1, count).Select(i => $"leaf.{i}")],
    };

    /// <summary>The letter or number chalked for a leaf: nothing for a single one.</summary>
    public static string Code(string segment) => segment switch
    {
        "leaf" => "",
        "leaf.left" => "L",
        "leaf.middle" => "M",
        "leaf.right" => "R",
        _ when segment.StartsWith("front.", StringComparison.Ordinal) => $"{(char)('A' + int.Parse(segment[6..], System.Globalization.CultureInfo.InvariantCulture) - 1)}",
        _ => $"-{segment[5..]}",
    };

    /// <summary>What people call a leaf.</summary>
    public static string Words(string segment, int count, HingeSide hinge) => segment switch
    {
        "leaf" => hinge switch
        {
            HingeSide.Top => "lift-up door",
            HingeSide.Bottom => "flap",
            HingeSide.None => "fixed panel",
            _ => "door",
        },
        "leaf.left" => "left door",
        "leaf.middle" => "middle door",
        "leaf.right" => "right door",
        _ when segment.StartsWith("front.", StringComparison.Ordinal) => count == 1 ? "drawer front" : $"drawer front {segment[6..]} from the top",
        _ => $"door {segment[5..]} from the left",
    };
}
