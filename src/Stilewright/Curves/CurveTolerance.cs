namespace Stilewright.Curves;

/// <summary>Below these differences two places, or two directions, count as one.</summary>
internal static class CurveTolerance
{
    /// <summary>Ends of neighbours in a chain meet within this, in.</summary>
    public const double MeetingInches = 1e-9;

    /// <summary>An end closer than this to another curve lies on it, in.</summary>
    public const double TouchInches = 1e-11;

    /// <summary>Crossings closer than this along a curve are one crossing, in: two circles that touch are found no closer than
    /// the root of a double's precision.</summary>
    public const double SamePlaceInches = 1e-7;

    /// <summary>What is left of a trimmed curve and is shorter than this is the rounding of a touch, in.</summary>
    public const double CrumbInches = 1e-5;

    /// <summary>Directions that differ by more than this make a corner.</summary>
    public const double CornerRadians = 1e-6;

    /// <summary>How exactly the distance from a curve is known, in, where its greatest radius is <paramref name="radiusInches"/>.</summary>
    public static double Distance(double radiusInches) => 1e-11 + (1e-14 * radiusInches);
}
