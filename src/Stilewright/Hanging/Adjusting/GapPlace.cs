using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Hanging.Adjusting;

/// <summary>A place where a gap is to be read.</summary>
/// <param name="Leaf">Label of the leaf whose edge it is beside.</param>
/// <param name="Beyond">Label of the hinged leaf on the other side; null for what does not move.</param>
/// <param name="Target">What the gap should be; null where nothing tells.</param>
public sealed record GapPlace(string Leaf, Side Edge, EdgeEnd At, string? Beyond, Length? Target)
{
    public GapReading Read(Length gap) => new(Leaf, Edge, At, Beyond, gap, Target);
}
