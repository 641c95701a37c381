using Stilewright.Measure;

namespace Stilewright.Doors;

/// <summary>What is known of an opening that cannot be sized yet, since neither the tape nor a layout gives its width, its height or both.</summary>
/// <param name="Read">The readings that were taken.</param>
/// <param name="LacksWidth">Whether nothing gives its width.</param>
/// <param name="LacksHeight">Whether nothing gives its height.</param>
public sealed record UnmeasuredOpening(IReadOnlyList<Given> Read, bool LacksWidth, bool LacksHeight);
