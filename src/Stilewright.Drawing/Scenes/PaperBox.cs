namespace Stilewright.Drawing.Scenes;

/// <summary>An upright rectangle on paper in millimetres, from its top left corner.</summary>
public readonly record struct PaperBox(double Left, double Top, double Width, double Height)
{
    public double Right => Left + Width;
    public double Bottom => Top + Height;
    public PaperPoint Centre => new(Left + Width / 2, Top + Height / 2);
    public PaperPoint TopLeft => new(Left, Top);

    public static PaperBox Between(PaperPoint one, PaperPoint other) => new(
        Math.Min(one.X, other.X), Math.Min(one.Y, other.Y), Math.Abs(other.X - one.X), Math.Abs(other.Y - one.Y));

    /// <summary>The smallest box round both.</summary>
    public PaperBox With(PaperBox other)
    {
        var (left, top) = (Math.Min(Left, other.Left), Math.Min(Top, other.Top));
        return new(left, top, Math.Max(Right, other.Right) - left, Math.Max(Bottom, other.Bottom) - top);
    }

    public PaperBox Shifted(double right, double down) => this with { Left = Left + right, Top = Top + down };

    /// <summary>Grown by so many millimetres on every side; shrunk when negative.</summary>
    public PaperBox Grown(double by) => new(Left - by, Top - by, Width + 2 * by, Height + 2 * by);

    /// <summary>Whether the two share more than a touching edge.</summary>
    public bool Overlaps(PaperBox other) =>
        Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public bool Holds(PaperBox other, double toleranceMillimetres = 1e-6) =>
        other.Left >= Left - toleranceMillimetres && other.Top >= Top - toleranceMillimetres
        && other.Right <= Right + toleranceMillimetres && other.Bottom <= Bottom + toleranceMillimetres;
}
