using Fractions;

namespace Stilewright.Tests.Doors;

/// <summary>
/// The figure of an opening by the rules of docs/architecture.md, worked in plain fractions from lists of readings as version 1 kept them:
/// one reading, or both ends, or both ends with the middle between them.
/// </summary>
internal sealed record ListedReadings(Fraction Width, Fraction Height, Fraction X, Fraction Y, Fraction? Lean, IReadOnlyList<(Fraction X, Fraction Y)> Corners)
{
    /// <param name="diagonals">Rising and falling, where both were read.</param>
    /// <param name="around">Whether the rectangle goes round the opening, not inside it.</param>
    public static ListedReadings Of(IReadOnlyList<Fraction> widths, IReadOnlyList<Fraction> heights, (Fraction Rising, Fraction Falling)? diagonals, bool around)
    {
        var (top, bottom, left, right) = (widths[0], widths[^1], heights[0], heights[^1]);
        Fraction? lean = diagonals is var (rising, falling)
            ? ((rising * rising) - (falling * falling) + (left * left) - (right * right)) / (2 * (top + bottom)) : null;
        var topLeft = ((bottom - top) / 2) + (lean ?? Fraction.Zero);
        var topRight = topLeft + top;
        var (x, end) = around ? (Least(0, topLeft), Most(bottom, topRight)) : (Most(0, topLeft), Least(bottom, topRight));
        var (across, up) = (Bow(widths), Bow(heights));
        return new(end - x + across, (around ? Most(left, right) : Least(left, right)) + up, x - (across / 2), -up / 2, lean,
            [(0, 0), (bottom, 0), (topRight, right), (topLeft, left)]);

        Fraction Bow(IReadOnlyList<Fraction> read)
        {
            var bow = read.Count == 3 ? read[1] - ((read[0] + read[2]) / 2) : Fraction.Zero;
            return bow.IsPositive == around && !bow.IsZero ? bow : Fraction.Zero;
        }
    }

    private static Fraction Least(Fraction one, Fraction other) => one < other ? one : other;

    private static Fraction Most(Fraction one, Fraction other) => one > other ? one : other;
}
