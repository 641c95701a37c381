using Stilewright.Doors;

namespace Stilewright.Drawing.Figures;

/// <summary>The smallest upright rectangles round what is drawn.</summary>
internal static class Extents
{
    /// <summary>The frame with stiles that stand above or below it.</summary>
    public static Rectangle Of(FrameFigure frame) => Round(
        [.. new Rectangle(default, default, frame.Width, frame.Height).Corners, .. frame.Members.SelectMany(member => member.Place.Corners)]);

    /// <summary>The frame and the leaves on it, which may reach past it.</summary>
    public static Rectangle Of(FrameFigure frame, IEnumerable<SizedFront> fronts) => Round(
        [.. Of(frame).Corners, .. fronts.SelectMany(front => front.Leaves).Where(FrontPainter.IsThere).SelectMany(leaf => leaf.Place.Corners)]);

    /// <param name="points">At least one.</param>
    public static Rectangle Round(IReadOnlyList<Point> points)
    {
        var (left, bottom) = (points.Min(point => point.X), points.Min(point => point.Y));
        return new(left, bottom, points.Max(point => point.X) - left, points.Max(point => point.Y) - bottom);
    }
}
