using Stilewright.Doors;
using Stilewright.Drawing.Scenes;
using Stilewright.Projects;
using Stilewright.Web.Desk;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Drawings;

/// <summary>Finds which dimensions of an elevation were entered, so that they can be typed where they are drawn.</summary>
public static class DrawnEntries
{
    /// <summary>The fields of a face's drawing: the frame over all, spaces that have a size, and openings read at one place only.</summary>
    public static IReadOnlyList<DrawnEntry> Of(Scene scene, FaceBreakdown face)
    {
        List<DrawnEntry> entries = [];
        HashSet<string> taken = [];
        foreach (var (node, at) in scene.Drawn)
        {
            if (node is not DimensionMark { Path: { } path } mark || FieldOf(face, path, mark) is not { } field || !taken.Add(field.Name))
                continue;
            var box = mark.Text.Box;
            entries.Add(new(mark, (at.X + box.Left + (box.Width / 2)) / scene.WidthMillimetres, (at.Y + box.Top + (box.Height / 2)) / scene.HeightMillimetres, field));
        }

        return entries;
    }

    private static bool IsAcross(DimensionMark mark) => Math.Abs(mark.From.Y - mark.To.Y) < Math.Abs(mark.From.X - mark.To.X);

    private static LengthField? FieldOf(FaceBreakdown face, string path, DimensionMark mark)
    {
        var isAcross = IsAcross(mark);
        if (path == face.Face.Id)
            return LayoutFields.Frame(path)[isAcross ? 0 : 1];
        if (face.Face.Layout is { } frame && SpaceOf(frame.Space, path, []) is { } place)
            return Divided(frame, place, isAcross) is { } sized ? LayoutFields.Size(face.Face.Id, sized, isAcross ? "clear width" : "clear height") : null;
        if (face.Face.Openings.FirstOrDefault(opening => opening.Id == path) is not { } measured)
            return null;

        // Several readings cannot be typed in one place; they are typed beside the drawing.
        var readings = measured.Readings ?? new Readings();
        LengthEntryAt[] read = isAcross
            ? [new(0, readings.WidthTop), new(1, readings.WidthMiddle), new(2, readings.WidthBottom)]
            : [new(0, readings.HeightLeft), new(1, readings.HeightMiddle), new(2, readings.HeightRight)];
        return read.Where(each => each.Entry is not null).ToList() switch
        {
            [] => null,
            // The front over the opening has its path too; it is as wide only where it is flush.
            [var one] when one.Entry!.Value.Value == mark.Value => isAcross
                ? Named("width", ReadingFields.Widths(path)[one.Index]) : Named("height", ReadingFields.Heights(path)[one.Index]),
            _ => null,
        };
    }

    // Beside the drawing the group says which reading it is; on it the field must.
    private static LengthField Named(string what, LengthField reading) => reading with { Label = $"{what} {reading.Label}" };

    // The nearest space round the opening that is one of several in that direction and has a size of its own.
    private static int[]? Divided(FaceLayout frame, int[] place, bool isAcross)
    {
        for (var depth = place.Length; depth > 0; depth--)
        {
            var around = ProjectEdits.SpaceAt(frame, place[..(depth - 1)]);
            if (around is not null && (isAcross ? around.Columns : around.Rows) is not null)
                return ProjectEdits.SpaceAt(frame, place[..depth])?.Size is null ? null : place[..depth];
        }

        return null;
    }

    private static int[]? SpaceOf(Space space, string openingId, int[] place)
    {
        if (space.Opening?.Id == openingId)
            return place;
        var spaces = (space.Columns ?? space.Rows)?.Spaces;
        for (var i = 0; i < spaces?.Count; i++)
        {
            if (SpaceOf(spaces[i], openingId, [.. place, i]) is { } found)
                return found;
        }

        return null;
    }

    private readonly record struct LengthEntryAt(int Index, Measure.LengthEntry? Entry);
}
