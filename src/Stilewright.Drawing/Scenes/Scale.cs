using Stilewright.Measure;

namespace Stilewright.Drawing.Scenes;

/// <summary>How large a thing is drawn: <see cref="Enlargement"/> : <see cref="Reduction"/>, one of which is 1.</summary>
/// <param name="Reduction">How many times smaller than the thing the drawing is; 1 is full size.</param>
/// <param name="Enlargement">How many times larger than the thing the drawing is; 1 is full size.</param>
public readonly record struct Scale(int Reduction, int Enlargement = 1)
{
    private const double MillimetresPerInch = 25.4;

    /// <summary>Standard scales of inch drawings from large to small: full size, half, quarter, then inch fractions to the foot.</summary>
    /// <remarks>1:1, 1:2, 1:4, 1:8 (1 1/2 in = 1 ft), 1:12 (1 in = 1 ft), 1:16, 1:24, 1:32, 1:48, 1:96, as drawing scales of the inch system.</remarks>
    public static IReadOnlyList<Scale> Inch { get; } = [.. new[] { 1, 2, 4, 8, 12, 16, 24, 32, 48, 96 }.Select(reduction => new Scale(reduction))];

    /// <summary>Standard scales of metric drawings from large to small (ISO 5455).</summary>
    public static IReadOnlyList<Scale> Metric { get; } = [.. new[] { 1, 2, 5, 10, 20, 50, 100 }.Select(reduction => new Scale(reduction))];

    /// <summary>Standard scales that enlarge, from large to small, then full size: 4:1 and 2:1, or 5:1 and 2:1 (ISO 5455).</summary>
    public static IReadOnlyList<Scale> EnlargedOf(LengthUnit unit) => unit == LengthUnit.Inch ? [new(1, 4), new(1, 2), FullSize] : [new(1, 5), new(1, 2), FullSize];

    public static Scale FullSize { get; } = new(1);

    /// <summary>The standard scales that readers of a unit know.</summary>
    public static IReadOnlyList<Scale> Of(LengthUnit unit) => unit == LengthUnit.Inch ? Inch : Metric;

    /// <summary>How long a length is on paper, in millimetres: the one place where exact lengths become paper.</summary>
    public double OnPaper(Length length) => (double)length.Inches.Numerator / (double)length.Inches.Denominator * MillimetresPerInch * Enlargement / Reduction;

    /// <summary>How long so many inches along a curve are on paper, in millimetres.</summary>
    public double InchesOnPaper(double inches) => inches * MillimetresPerInch * Enlargement / Reduction;

    public override string ToString() => Enlargement > 1 ? $"{Enlargement}:1" : Reduction == 1 ? "1:1 (full size)" : $"1:{Reduction}";
}
