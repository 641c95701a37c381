namespace Stilewright.Curves;

/// <summary>The smallest upright rectangle round a curve, in.</summary>
public readonly record struct CurveBox(double Left, double Bottom, double Right, double Top)
{
    public double Width => Right - Left;
    public double Height => Top - Bottom;

    public static CurveBox Round(CurvePoint one, CurvePoint other) =>
        new(Math.Min(one.X, other.X), Math.Min(one.Y, other.Y), Math.Max(one.X, other.X), Math.Max(one.Y, other.Y));

    public CurveBox With(CurvePoint point) =>
        new(Math.Min(Left, point.X), Math.Min(Bottom, point.Y), Math.Max(Right, point.X), Math.Max(Top, point.Y));

    public CurveBox With(CurveBox other) =>
        new(Math.Min(Left, other.Left), Math.Min(Bottom, other.Bottom), Math.Max(Right, other.Right), Math.Max(Top, other.Top));

    /// <summary>Whether every place in the box is at least so far from a point, in.</summary>
    public bool KeepsOff(CurvePoint point, double distanceInches)
    {
        var (x, y) = (Math.Max(0, Math.Max(Left - point.X, point.X - Right)), Math.Max(0, Math.Max(Bottom - point.Y, point.Y - Top)));
        return (x * x) + (y * y) >= distanceInches * distanceInches;
    }

    /// <summary>Whether the boxes come within <paramref name="nearInches"/> of each other.</summary>
    public bool Touches(CurveBox other, double nearInches) =>
        Left <= other.Right + nearInches && other.Left <= Right + nearInches
        && Bottom <= other.Top + nearInches && other.Bottom <= Top + nearInches;
}
