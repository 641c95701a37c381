using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Patterns;

/// <summary>A pattern at full size, with the curves it shows and where they lie on it.</summary>
/// <param name="Scene">At full size; one millimetre is one millimetre.</param>
/// <param name="Part">What is sawn or shaped by it.</param>
/// <param name="Lines">Every curve of it by name, the one that is followed first; in inches from the middle of the spring line, Y into the arch.</param>
/// <param name="Trammels">How to draw the curve that is followed, arch by arch.</param>
/// <param name="Overall">The distance that is measured between two crosses before the pattern is used.</param>
/// <param name="Crosses">Where these two lie on the scene.</param>
public sealed record FullSizePattern(
    Scene Scene, Part Part, IReadOnlyList<PatternLine> Lines, IReadOnlyList<TrammelTable> Trammels, Length Overall, (PaperPoint From, PaperPoint To) Crosses)
{
    /// <summary>The part's label and name, and which end of it this is.</summary>
    public required string Name { get; init; }

    /// <summary>Where the middle of the spring line lies on the scene.</summary>
    public PaperPoint SpringMiddle { get; init; }

    /// <summary>Whether Y points down on paper: for an arch in a bottom rail.</summary>
    public bool IsTurnedOver { get; init; }

    /// <summary>How far below the spring line the pattern of a tall panel ends; null where it is whole.</summary>
    public Length? CutBelow { get; init; }

    /// <summary>The set-down of one pattern for rail and panel at each arch of the panel, the upper one first; none unless it is wanted.</summary>
    public IReadOnlyList<SetDown> SetDowns { get; init; } = [];

    /// <summary>The pattern taken apart, for several sheets.</summary>
    public required PatternLayers Layers { get; init; }

    /// <summary>Where a place of <see cref="Lines"/> lies on the scene.</summary>
    public PaperPoint At(CurvePoint place) => SpringMiddle
        + new PaperPoint(Scale.FullSize.InchesOnPaper(place.X), Scale.FullSize.InchesOnPaper(IsTurnedOver ? place.Y : -place.Y));
}

/// <summary>One curve of a pattern.</summary>
/// <param name="Name">Such as "sight line".</param>
public sealed record PatternLine(string Name, Chain Chain);

/// <summary>How one arch is drawn with a trammel.</summary>
/// <param name="Points">In inches from the middle of the arch's own spring line.</param>
/// <param name="Middles">How far to the right of the pattern's middle each arch that is drawn by it has its own, in inches.</param>
public sealed record TrammelTable(IReadOnlyList<TrammelPoint> Points, IReadOnlyList<double> Middles);
