using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Drawing.Figures;

/// <summary>What a drawing of a leaf shows that the sized leaf does not carry itself.</summary>
/// <param name="Cutters">The cutters of its frame; null for a slab and where they are not known.</param>
/// <param name="Rabbets">Width of the rabbet along the back of each rabbeted edge.</param>
/// <param name="Laps">Width of the rabbet on each meeting edge that laps its neighbour; which of the two lies in front is not known.</param>
public sealed record LeafDetail(
    CutterSet? Cutters, IReadOnlyDictionary<Side, Length> Rabbets, IReadOnlyDictionary<Side, Length> Laps)
{
    /// <summary>The curves of its arched rails and of what lies under and over them.</summary>
    public LeafCurves Curves { get; init; } = LeafCurves.None;

    /// <summary>A leaf of which no more is known.</summary>
    public static LeafDetail Unknown { get; } = new(null, new Dictionary<Side, Length>(), new Dictionary<Side, Length>());

    /// <summary>Looks the detail of one leaf up in its project.</summary>
    public static LeafDetail Of(Course course, ProjectBreakdown project, SizedLeaf leaf)
    {
        var front = project.Fronts.FirstOrDefault(each => each.Leaves.Any(one => one.Path == leaf.Path));
        if (front is null)
            return Unknown;
        var faces = project.Project.Pieces.SelectMany(piece => piece.Faces);
        var opening = faces.SelectMany(Openings).FirstOrDefault(each => each.Id == front.Path);
        var index = front.Leaves.ToList().FindIndex(one => one.Path == leaf.Path);
        var design = opening?.Filling switch
        {
            DoorFilling doors => doors.Leaves[index].Design ?? doors.Design,
            DrawerFilling drawers => drawers.Design,
            _ => faces.SelectMany(face => face.Fronts).FirstOrDefault(loose => loose.Id == front.Path)?.Design,
        };
        var cutters = leaf.Parts.Any(part => part.Kind == PartKind.Stile)
            ? project.Project.Designs.Concat(course.Designs).FirstOrDefault(each => each.Id == design)?.Cutters : null;

        Dictionary<Side, Length> rabbets = [];
        Dictionary<Side, Length> laps = [];
        if (opening is not null && leaf.Rabbeted.Count > 0)
        {
            var standard = project.Standard.With(OriginKind.Opening, opening.Id, opening.Overrides);
            Side? meeting = opening.Filling is DoorFilling { Lapped: true } ? index == 0 ? Side.Right : Side.Left : null;
            foreach (var side in leaf.Rabbeted.Distinct())
            {
                if (side == meeting)
                    laps[side] = standard[Settings.Lap].Length;
                else
                    rabbets[side] = standard[Settings.LipRabbet].Length;
            }
        }

        var set = cutters is null ? null : project.Standard.Standard.Cutter(cutters);
        return new(set, rabbets, laps) { Curves = LeafCurves.Of(leaf, set) };
    }

    private static IEnumerable<Opening> Openings(Face face)
    {
        return [.. face.Layout is null ? [] : In(face.Layout.Space), .. face.Openings];

        static IEnumerable<Opening> In(Space space) =>
        [
            .. space.Opening is null ? Array.Empty<Opening>() : [space.Opening],
            .. (space.Columns?.Spaces ?? space.Rows?.Spaces ?? []).SelectMany(In),
        ];
    }
}
