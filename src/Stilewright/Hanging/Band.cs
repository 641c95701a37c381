using Stilewright.Measure;

namespace Stilewright.Hanging;

/// <summary>A stretch of a hinge edge in which no hinge may be centred, its ends free, from the bottom of the leaf.</summary>
/// <param name="Why">What is there, as the end of "clear of".</param>
internal sealed record Band(Worked Low, Worked High, string Why)
{
    public bool Holds(Length place) => Low.Length < place && place < High.Length;

    /// <summary>The same stretch counted from the other end.</summary>
    public Band Turned(Worked along) => new(along - High, along - Low, Why);
}
