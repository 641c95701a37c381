using Stilewright.Measure;

namespace Stilewright.Doors;

/// <summary>A point seen from the front: X to the right, Y upwards, from the bottom left of what it lies on.</summary>
public readonly record struct Point(Length X, Length Y);

/// <summary>An upright rectangle seen from the front, from its bottom left corner.</summary>
public readonly record struct Rectangle(Length X, Length Y, Length Width, Length Height)
{
    public Length Right => X + Width;
    public Length Top => Y + Height;

    /// <summary>The corners from the bottom left, anticlockwise.</summary>
    public IReadOnlyList<Point> Corners => [new(X, Y), new(Right, Y), new(Right, Top), new(X, Top)];

    public Rectangle Shifted(Length x, Length y) => this with { X = X + x, Y = Y + y };
}

public enum Side
{
    Left,
    Right,
    Top,
    Bottom,
}
