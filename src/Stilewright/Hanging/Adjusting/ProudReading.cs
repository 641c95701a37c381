using Stilewright.Measure;

namespace Stilewright.Hanging.Adjusting;

public enum LeafCorner
{
    HingeTop,
    HingeBottom,
    FreeTop,
    FreeBottom,
}

/// <summary>How far a corner of the closed leaf stands out of the plane it should lie in.</summary>
/// <param name="Proud">Out towards the reader where positive, in where negative.</param>
public sealed record ProudReading(string Leaf, LeafCorner Corner, Length Proud)
{
    public bool IsFree => Corner is LeafCorner.FreeTop or LeafCorner.FreeBottom;
    public bool IsTop => Corner is LeafCorner.HingeTop or LeafCorner.FreeTop;
}
