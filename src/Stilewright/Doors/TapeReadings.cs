using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Doors;

/// <summary>What the tape read of an opening, as quantities that are named by their place and lead to the field they were entered in.</summary>
internal sealed class TapeReadings
{
    public TapeReadings(Opening opening)
    {
        var readings = opening.Readings ?? new();
        Widths = new(
            Read("widthTop", "width at the top", readings.WidthTop),
            Read("widthMiddle", "width in the middle", readings.WidthMiddle),
            Read("widthBottom", "width at the bottom", readings.WidthBottom));
        Heights = new(
            Read("heightLeft", "height at the left", readings.HeightLeft),
            Read("heightMiddle", "height in the middle", readings.HeightMiddle),
            Read("heightRight", "height at the right", readings.HeightRight));
        Rising = Read("rising", "rising diagonal", readings.Rising);
        Falling = Read("falling", "falling diagonal", readings.Falling);

        Given? Read(string key, string label, LengthEntry? entry) => entry is { } typed
            ? new($"opening/{key}", label, typed.Value, new(OriginKind.Opening, $"{opening.Id}/readings/{key}")) : null;
    }

    /// <summary>From the top down.</summary>
    public Kind Widths { get; }

    /// <summary>From left to right.</summary>
    public Kind Heights { get; }

    public Given? Rising { get; }
    public Given? Falling { get; }

    /// <summary>Every reading that was taken.</summary>
    public IReadOnlyList<Given> All => [.. new[]
    {
        Widths.First, Widths.Middle, Widths.Last, Heights.First, Heights.Middle, Heights.Last, Rising, Falling,
    }.OfType<Given>()];

    /// <summary>The readings of one kind: at its two ends and in the middle, each null until it is taken.</summary>
    internal sealed record Kind(Given? First, Given? Middle, Given? Last)
    {
        public bool IsRead => Start is not null;

        /// <summary>What counts at the first end: its own reading, or the nearest there is.</summary>
        public Given? Start => First ?? Middle ?? Last;

        /// <summary>What counts at the last end: its own reading, or the nearest there is.</summary>
        public Given? End => Last ?? Middle ?? First;
    }
}
