using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Drawing.Figures;

/// <summary>A member of a frame as it stands in a chain across or up the leaf.</summary>
internal readonly record struct Crossing(Length From, Length To, string Path);

/// <summary>One row of lights between two rails.</summary>
/// <param name="Members">The stiles and mid stiles that bound its lights, from left to right.</param>
internal sealed record LightRow(Length Bottom, Length Top, IReadOnlyList<Crossing> Members)
{
    /// <summary>The clear lights, from left to right.</summary>
    public IEnumerable<Rectangle> Lights
    {
        get
        {
            for (var i = 0; i + 1 < Members.Count; i++)
                yield return new(Members[i].To, Bottom, Members[i + 1].From - Members[i].To, Top - Bottom);
        }
    }
}

/// <summary>Where the members of a frame leave its lights, read off the visible faces of its parts.</summary>
/// <param name="Rails">All rails from the bottom up.</param>
/// <param name="Rows">The rows of lights from the bottom up.</param>
internal sealed record LightGrid(IReadOnlyList<Crossing> Rails, IReadOnlyList<LightRow> Rows)
{
    public IEnumerable<Rectangle> Lights => Rows.SelectMany(row => row.Lights);

    /// <summary>The grid of a framed leaf; null for a slab or a leaf without parts.</summary>
    public static LightGrid? Of(SizedLeaf leaf)
    {
        Crossing[] stiles = [.. Of(PartKind.Stile).Select(Across).OrderBy(stile => stile.From)];
        Crossing[] rails = [.. Of(PartKind.Rail).Concat(Of(PartKind.MidRail)).Select(Upwards).OrderBy(rail => rail.From)];
        if (stiles.Length != 2 || rails.Length < 2)
            return null;
        List<LightRow> rows = [];
        for (var i = 0; i + 1 < rails.Length; i++)
        {
            var (bottom, top) = (rails[i].To, rails[i + 1].From);
            rows.Add(new(bottom, top,
            [
                stiles[0],
                .. Of(PartKind.MidStile).Where(part => part.VisibleBounds is var box && box.Y < top && box.Top > bottom)
                    .Select(Across).OrderBy(stile => stile.From),
                stiles[1],
            ]));
        }

        return new(rails, rows);

        IEnumerable<Part> Of(PartKind kind) => leaf.Parts.Where(part => part.Kind == kind);
    }

    private static Crossing Across(Part part) => part.VisibleBounds is var box ? new(box.X, box.Right, part.Path) : default;

    private static Crossing Upwards(Part part) => part.VisibleBounds is var box ? new(box.Y, box.Top, part.Path) : default;
}

internal static class PartShapes
{
    extension(Part part)
    {
        public bool IsMitred => part.Work.Contains(EdgeWork.MitreBothEnds);

        /// <summary>The end of the label that tells parts of one leaf apart, such as <c>TR</c>.</summary>
        public string ShortLabel => part.Label[(part.Label.LastIndexOf('·') + 1)..];

        public bool StandsUpright => part.Kind is PartKind.Stile or PartKind.MidStile;
    }
}
