namespace Stilewright.Drawing.Scenes;

/// <summary>A place on paper in millimetres: X to the right and Y downwards from the top left corner of its scene.</summary>
public readonly record struct PaperPoint(double X, double Y)
{
    public static PaperPoint operator +(PaperPoint point, PaperPoint by) => new(point.X + by.X, point.Y + by.Y);
    public static PaperPoint operator -(PaperPoint point, PaperPoint by) => new(point.X - by.X, point.Y - by.Y);
    public static PaperPoint operator *(PaperPoint point, double factor) => new(point.X * factor, point.Y * factor);

    /// <summary>Distance to another place, in millimetres.</summary>
    public double DistanceTo(PaperPoint other) => double.Hypot(other.X - X, other.Y - Y);
}
