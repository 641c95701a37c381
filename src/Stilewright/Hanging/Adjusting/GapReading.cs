using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Hanging.Adjusting;

/// <summary>Where along an edge a gap is read: of an upright edge start is the bottom, of a level one the left end, seen from the front.</summary>
public enum EdgeEnd
{
    Start,
    Middle,
    End,
}

/// <summary>A gap as it is read now.</summary>
/// <param name="Leaf">The leaf whose edge it is beside.</param>
/// <param name="Beyond">The leaf on the other side of the gap; null for the frame, which does not move.</param>
/// <param name="Gap">The air, or the visible frame of an overlay front; below zero where the two run over one another.</param>
/// <param name="Target">What it should be; null where it is only to be as even as others of its direction.</param>
public sealed record GapReading(string Leaf, Side Edge, EdgeEnd At, string? Beyond, Length Gap, Length? Target)
{
    public bool IsUpright => Edge is Side.Left or Side.Right;
}
