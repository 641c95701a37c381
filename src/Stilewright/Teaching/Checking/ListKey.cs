using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Prints;
using Stilewright.Wording;

namespace Stilewright.Teaching.Checking;

/// <summary>The right sizes of what a maker's list is about.</summary>
public sealed class ListKey
{
    private readonly IReadOnlyList<Worked> ofProject;
    private readonly Dictionary<string, List<Worked>> byLabel = [];

    private ListKey(CutStage stage, ProjectBreakdown project, IReadOnlyList<SizedFront> fronts, IReadOnlyList<SizedLeaf> leaves, ListKey? earlier, string changed)
    {
        Stage = stage;
        Step = project.Standard[Shop.Settings.Step];
        Earlier = earlier;
        Changed = changed;
        ofProject = [project.Standard[Shop.Settings.Overlay]];
        Items =
        [
            .. fronts.Where(front => front is { Width: not null, Height: not null })
                .Select(front => new KeyItem(front.Path, front.Label, "front", front.Label, ItemKind.Front, front.Width!, front.Height!, null)),
            .. leaves.Select(leaf => new KeyItem(leaf.Path, leaf.Label, leaf.Name, leaf.Label, leaf.IsDrawerFront ? ItemKind.DrawerFront : ItemKind.Leaf, leaf.Width, leaf.Height, null)),
            .. leaves.Where(leaf => !leaf.IsWithheld).SelectMany(leaf => leaf.Parts.Select(part => Item(project, leaf, part, stage))),
        ];
        foreach (var front in fronts)
        {
            Worked[] ofFront = [.. new[] { front.Width, front.Height, front.Gap }.OfType<Worked>(), .. front.Edges.Select(edge => edge.Rule)];
            foreach (var label in front.Leaves.Select(leaf => leaf.Label).Append(front.Label).Distinct())
                byLabel[label] = [.. ofFront];
        }

        foreach (var leaf in leaves)
        {
            if (!byLabel.TryGetValue(leaf.Label, out var own))
                byLabel.Add(leaf.Label, own = []);
            own.AddRange([leaf.Width, leaf.Height, .. leaf.Parts.SelectMany(part => NamedFigures.Of(part).Select(figure => figure.Quantity))]);
        }
    }

    private ListKey(CutStage stage, Worked step, IReadOnlyList<KeyItem> items) =>
        (Stage, Step, Items, Changed, ofProject) = (stage, step, items, "", []);

    public CutStage Stage { get; }
    public IReadOnlyList<KeyItem> Items { get; }

    /// <summary>Every size of some leaves and fronts at every stage: where a maker could have taken a wrong figure from.</summary>
    /// <param name="labels">Labels of leaves and fronts.</param>
    public IEnumerable<Worked> Pool(IEnumerable<string> labels) =>
        labels.Distinct().SelectMany(label => byLabel.GetValueOrDefault(label) ?? []).Concat(ofProject);

    /// <summary>The cutting step.</summary>
    public Worked Step { get; }

    /// <summary>The key of an earlier revision, whose sizes may still be in the list; null where none is known.</summary>
    public ListKey? Earlier { get; }

    /// <summary>When the earlier sizes ceased to hold, such as "on 2026-03-05", or that they were handed out; empty where that is not known.</summary>
    public string Changed { get; }

    /// <summary>What paper told of a project: sizes only, without their working.</summary>
    /// <param name="step">The cutting step that the list is looked at by.</param>
    /// <param name="leafPath">The leaf whose parts are wanted; null for all.</param>
    public static ListKey Of(HandedOutProject told, CutStage stage, Worked step, string? leafPath = null)
    {
        ArgumentNullException.ThrowIfNull(told);
        return new(stage, step, [.. told.Parts.Where(part => leafPath is null || part.Path.StartsWith(leafPath + "/", StringComparison.Ordinal)).Select(part => Item(part, stage))]);
    }

    private static KeyItem Item(HandedOutPart part, CutStage stage)
    {
        var size = stage switch { CutStage.Finished => part.Finished, CutStage.IntoClamps => part.GlueUp, _ => part.Rough ?? part.GlueUp };
        var thickness = stage switch { CutStage.Finished => part.Thickness?.Final, CutStage.IntoClamps => part.Thickness?.Planed, _ => part.Thickness?.Rough ?? part.Thickness?.Planed };
        // Only the path and the sizes of it are looked at.
        return new(part.Path, part.Label, part.Name, "", ItemKind.Slab, Told("width", size.Width), Told("length", size.Length), null)
        {
            Thickness = thickness is { } thick ? Told("thickness", thick) : null,
        };
    }

    private static Given Told(string measure, Length size) => new($"handed-out/{measure}", $"{measure} handed out", size, Origin.Typed);

    /// <summary>Whether a wrong figure of a list would be right by an earlier key.</summary>
    public static bool Explains(ListKey earlier, CheckedList found)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        ArgumentNullException.ThrowIfNull(found);
        var sizes = earlier.Items.ToDictionary(item => item.Path);
        return found.Numbers.Any(number => number.Standing == NumberStanding.Wrong && sizes.GetValueOrDefault(number.Item.Path) is { } before
            && before.Of(number.Measure) is { } size && Length.Abs(size.Length - number.Told.Value) <= earlier.Step.Length / 2);
    }

    /// <summary>The key of one leaf.</summary>
    /// <param name="changed">When the earlier sizes ceased to hold, such as "on 2026-03-05".</param>
    public static ListKey Of(ProjectBreakdown project, SizedLeaf leaf, CutStage stage, ListKey? earlier = null, string changed = "") =>
        new(stage, project, [.. project.Fronts.Where(front => front.Leaves.Contains(leaf))], [leaf], earlier, changed);

    /// <summary>The key of all leaves of a project.</summary>
    /// <param name="changed">When the earlier sizes ceased to hold, such as "on 2026-03-05".</param>
    public static ListKey Of(ProjectBreakdown project, CutStage stage, ListKey? earlier = null, string changed = "") =>
        new(stage, project, [.. project.Fronts], [.. project.Fronts.SelectMany(front => front.Leaves)], earlier, changed);

    /// <summary>Parts of the course besides those of this key, whose sizes may have got into a list.</summary>
    public IReadOnlyList<KeyItem> OthersOf(Breakdown course)
    {
        var own = Items.Select(item => item.Path).ToHashSet();
        return [.. course.Projects.SelectMany(project => Of(project, Stage).Items).Where(item => !own.Contains(item.Path))];
    }

    /// <summary>Lines that name a leaf that is not of this key; a misspelled one would make every figure of it wrong.</summary>
    public IReadOnlyList<ListLine> StrayLines(MakersList list)
    {
        return [.. list.Lines.Where(line => line.Leaf is { } leaf && !Items.Any(item => IsOf(item, leaf)))];

        static bool IsOf(KeyItem item, string leaf) =>
            item.Leaf.StartsWith(leaf.Replace('.', '·').Trim(), StringComparison.OrdinalIgnoreCase) || item.Path.StartsWith(leaf.Trim(), StringComparison.OrdinalIgnoreCase);
    }

    private static KeyItem Item(ProjectBreakdown project, SizedLeaf leaf, Part part, CutStage stage)
    {
        var size = At(part, stage);
        return new(part.Path, part.Label, part.Name, leaf.Label, ItemKinds.Of(part.Kind), size.Width, size.Length, part)
        {
            Thickness = ThicknessAt(part, stage),
            Groove = part.Kind == PartKind.Panel ? GrooveOf(project, leaf) : null,
        };
    }

    private static Given? GrooveOf(ProjectBreakdown project, SizedLeaf leaf) =>
        project.Standard.Standard is var standard && leaf.Design?.Cutters is { } id && standard.Cutter(id) is { } cutters
            ? new("cutters/groove.width", "groove width", cutters.GrooveWidth.Value, new(OriginKind.Standard, $"standard/cutterSets/{id}/grooveWidth")) : null;

    /// <summary>The part's size at a stage; sheet and glass, which have no rough blank, are cut to size.</summary>
    internal static PartSize At(Part part, CutStage stage) => stage switch
    {
        CutStage.Finished => part.Finished,
        CutStage.IntoClamps => part.GlueUp,
        _ => part.Rough ?? part.GlueUp,
    };

    /// <summary>The part's thickness at a stage: as bought, planed, or after sanding; sheet is bought as it is worked. Null for glass.</summary>
    internal static Worked? ThicknessAt(Part part, CutStage stage) => stage switch
    {
        CutStage.Finished => part.Thickness?.Final,
        CutStage.IntoClamps => part.Thickness?.Planed,
        _ => part.Thickness?.Rough ?? part.Thickness?.Planed,
    };
}
