using System.Globalization;

namespace Stilewright.Curves;

/// <summary>A place on a part's face, or a step between two such places: X to the right, Y up, both in inches (in).</summary>
public readonly record struct CurvePoint(double X, double Y)
{
    public static CurvePoint operator +(CurvePoint place, CurvePoint step) => new(place.X + step.X, place.Y + step.Y);
    public static CurvePoint operator -(CurvePoint place, CurvePoint from) => new(place.X - from.X, place.Y - from.Y);
    public static CurvePoint operator *(CurvePoint step, double factor) => new(step.X * factor, step.Y * factor);

    /// <summary>Distance from the origin, in.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>This step turned a quarter to the left.</summary>
    public CurvePoint TurnedLeft() => new(-Y, X);

    public double DistanceTo(CurvePoint other) => (other - this).Length;
    public double Dot(CurvePoint other) => (X * other.X) + (Y * other.Y);

    /// <summary>Positive when <paramref name="other"/> lies to the left of this step.</summary>
    public double Cross(CurvePoint other) => (X * other.Y) - (Y * other.X);

    /// <summary>The point at an angle, counter-clockwise from the X axis, on the circle of radius 1 in.</summary>
    public static CurvePoint AtAngle(double angleRadians) => new(Math.Cos(angleRadians), Math.Sin(angleRadians));

    /// <exception cref="InvalidOperationException">The step has no length.</exception>
    internal CurvePoint Unit() => Length is > 0 and var length
        ? new(X / length, Y / length) : throw new InvalidOperationException("A step without length has no direction.");

    public CurvePoint MirroredIn(double verticalLineX) => new((2 * verticalLineX) - X, Y);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"({X}, {Y})");
}
