using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Patterns;

/// <summary>A pattern at full size, with the curves it shows and where they lie on it.</summary>
/// <param name="Scene">At full size; one millimetre is one millimetre.</param>
/// <param name="Part">What is sawn or shaped by it.</param>
/// <param name="Lines">Every curve of it by name, the one that is followed first; in inches from the middle of the spring line, Y into the arch.</param>
/// <param name="Trammel">How to draw the curve that is followed.</param>
/// <param name="Overall">The distance that is measured between two crosses before the pattern is used.</param>
/// <param name="Crosses">Where these two lie on the scene.</param>
public sealed record FullSizePattern(
    Scene Scene, Part Part, IReadOnlyList<PatternLine> Lines, IReadOnlyList<TrammelPoint> Trammel, Length Overall, (PaperPoint From, PaperPoint To) Crosses)
{
    /// <summary>Where the middle of the spring line lies on the scene.</summary>
    public PaperPoint SpringMiddle { get; init; }

    /// <summary>Whether Y points down on paper: for an arch in a bottom rail.</summary>
    public bool IsTurnedOver { get; init; }

    /// <summary>Where a place of <see cref="Lines"/> lies on the scene.</summary>
    public PaperPoint At(CurvePoint place) => SpringMiddle
        + new PaperPoint(Scale.FullSize.InchesOnPaper(place.X), Scale.FullSize.InchesOnPaper(IsTurnedOver ? place.Y : -place.Y));
}

/// <summary>One curve of a pattern.</summary>
/// <param name="Name">Such as "sight line".</param>
public sealed record PatternLine(string Name, Chain Chain);
