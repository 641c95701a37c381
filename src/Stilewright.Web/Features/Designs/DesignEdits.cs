using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Features.Designs;

/// <summary>Edits of door designs. Each gives a sound design: what no longer fits the rest goes with the edit.</summary>
public static class DesignEdits
{
    /// <summary>Every design, those of the course first; those that one bench has alone come with its number.</summary>
    public static IEnumerable<(DoorDesign Design, int? Bench)> All(Course course) =>
        course.Designs.Select(design => (design, (int?)null))
            .Concat(course.Projects.SelectMany(project => project.Designs.Select(design => (design, (int?)project.Bench))));

    public static DoorDesign? Find(Course course, string id) => All(course).Select(each => each.Design).FirstOrDefault(design => design.Id == id);

    /// <summary>Edits a design, of the course or of one bench.</summary>
    public static Course With(Course course, string id, Func<DoorDesign, DoorDesign> edit)
    {
        return course with
        {
            Designs = [.. course.Designs.Select(One)],
            Projects = [.. course.Projects.Select(project => project.Designs.Any(design => design.Id == id) ? project with { Designs = [.. project.Designs.Select(One)] } : project)],
        };

        DoorDesign One(DoorDesign design) => design.Id == id ? edit(design) : design;
    }

    /// <summary>Puts a design behind the others of the course.</summary>
    public static Course Add(Course course, DoorDesign design) => course with { Designs = [.. course.Designs, design] };

    public static Course Remove(Course course, string id) => course with
    {
        Designs = [.. course.Designs.Where(design => design.Id != id)],
        Projects = [.. course.Projects.Select(project => project.Designs.Any(design => design.Id == id)
            ? project with { Designs = [.. project.Designs.Where(design => design.Id != id)] } : project)],
    };

    /// <summary>Benches whose leaves use a design, with the number of leaves.</summary>
    public static IReadOnlyList<(Project Project, int Leaves)> Uses(Course course, string id) =>
        [.. course.Projects.Select(project => (Project: project, Leaves: DesignUse.Of(project).GetValueOrDefault(id))).Where(use => use.Leaves > 0)];

    /// <summary>Why a design cannot be removed; null where it can.</summary>
    public static string? WhyKept(Course course, string id)
    {
        var uses = Uses(course, id);
        if (uses.Count > 0)
        {
            return $"It is used by {Leaves(uses.Sum(use => use.Leaves))} of bench {string.Join(", ", uses.Select(use => FormattableString.Invariant($"{use.Project.Bench}")))}. "
                + "Give those another design first.";
        }

        return course.Designs.Count == 1 && course.Designs[0].Id == id ? "A course needs one design at least, since every new opening begins with one." : null;
    }

    /// <summary>"1 leaf", "12 leaves".</summary>
    public static string Leaves(int count) => Wording.TradeWords.Count(count, "leaf", "leaves");

    /// <summary>Another construction. A slab has no frame; a frame begins with the shop's first cutters and a flat panel.</summary>
    public static DoorDesign As(DoorDesign design, Construction construction, HouseStandard standard)
    {
        if (construction == Construction.Slab)
        {
            return new(design.Id, design.Name, construction, design.Species, design.Stock, null, null, null, null, null, [], null, null, null, [], null, null,
                SlabGrain: design.SlabGrain, EdgeWidth: design.EdgeWidth, EdgeDepth: design.EdgeDepth);
        }

        return design with
        {
            Construction = construction,
            Cutters = design.Cutters ?? standard.Cutters[0].Id,
            Panel = design.Panel ?? Filling(PanelKind.FlatSolid, null, standard),
            SlabGrain = null,
        };
    }

    /// <summary>Another kind of panel, with a stock that can be it.</summary>
    /// <param name="there">What fills the light now.</param>
    public static LightFilling Filling(PanelKind kind, LightFilling? there, HouseStandard standard)
    {
        if (kind is PanelKind.Glass or PanelKind.Open)
            return new(kind);
        var needed = StockFor(kind);
        var stock = there?.Stock is { } held && standard.StockOf(held)?.Kind == needed ? held
            : (standard.Stocks.FirstOrDefault(each => each.Kind == needed && each.Id.Contains("panel", StringComparison.Ordinal))
                ?? standard.Stocks.FirstOrDefault(each => each.Kind == needed) ?? standard.Stocks[0]).Id;
        return new(kind, there?.Species, stock, there?.Grain, kind == PanelKind.FlatSheet && there is { GluedIn: true });
    }

    /// <summary>The kind of stock that a kind of panel is made of.</summary>
    public static StockKind StockFor(PanelKind kind) => kind == PanelKind.FlatSheet ? StockKind.Sheet : StockKind.Solid;

    /// <summary>How many rows of lights there are.</summary>
    public static int Rows(DoorDesign design) => 1 + (design.MidRails is { } rails ? rails.Count ?? rails.Places.Count : 0);

    /// <summary>How many lights there are.</summary>
    public static int Lights(DoorDesign design) => Rows(design) + design.MidStiles.Sum(row => row.Count);

    /// <summary>Other mid rails; rows and lights that are no longer there lose their mid stiles and fillings.</summary>
    /// <param name="rails">Null for none.</param>
    public static DoorDesign WithMidRails(DoorDesign design, MidRails? rails) => Kept(design with { MidRails = rails });

    /// <summary>So many mid stiles in a row of lights.</summary>
    /// <param name="row">Counted from the bottom.</param>
    public static DoorDesign WithMidStiles(DoorDesign design, int row, int count)
    {
        var there = design.MidStiles.FirstOrDefault(each => each.Row == row);
        var others = design.MidStiles.Where(each => each.Row != row);
        return Kept(design with { MidStiles = count == 0 ? [.. others] : [.. others.Append(new(row, count, there?.Width)).OrderBy(each => each.Row)] });
    }

    /// <summary>One width for both stiles, or one by the hinges and one at the pull; null as the standard says.</summary>
    public static DoorDesign WithStiles(DoorDesign design, bool? both, LengthEntry usual) => design with
    {
        Stiles = both switch
        {
            null => null,
            true => new(design.Stiles?.Both ?? design.Stiles?.Hinge ?? usual),
            false => new(null, design.Stiles?.Hinge ?? design.Stiles?.Both ?? usual, design.Stiles?.Pull ?? design.Stiles?.Both ?? usual),
        },
    };

    /// <summary>Another family of arch, with what it needs and without what it does not have.</summary>
    /// <param name="there">The arch now; null where the rail is straight.</param>
    /// <param name="family">Null for a straight rail.</param>
    public static Arch? WithFamily(Arch? there, ArchFamily? family, LengthUnit unit)
    {
        if (family is not { } chosen)
            return null;
        var hasReverse = chosen is ArchFamily.Cathedral or ArchFamily.DoubleCurve;
        var hasRise = chosen is not (ArchFamily.HalfRound or ArchFamily.Drawn);
        return new(chosen,
            hasRise ? there?.Rise ?? Entry(unit, "1 1/2", "40") : null,
            chosen is ArchFamily.DoubleCurve or ArchFamily.Drawn ? null : there?.Shoulder,
            there?.PerLight ?? false,
            hasReverse ? there?.ReverseToCrown : null,
            chosen == ArchFamily.Drawn ? [new ArcStep(Entry(unit, "5 1/4", "133"), Entry(unit, "1 1/2", "40"), Entry(unit, "10 1/2", "266"), Entry(unit, "0", "0"))] : null,
            chosen == ArchFamily.Drawn && there?.AcrossPair == PairCrown.EachMeetingStile ? PairCrown.MiddleOfPair : there?.AcrossPair);
    }

    /// <summary>An entry in the unit of its document.</summary>
    public static LengthEntry Entry(LengthUnit unit, string inches, string millimetres)
    {
        var text = unit == LengthUnit.Inch ? inches : millimetres;
        return new(text, LengthReader.ReadOwn(text, unit));
    }

    private static DoorDesign Kept(DoorDesign design)
    {
        var rows = Rows(design);
        var kept = design with { MidStiles = [.. design.MidStiles.Where(row => row.Row <= rows)] };
        var lights = Lights(kept);
        return kept with { Lights = [.. kept.Lights.Where(light => light.Light <= lights)] };
    }
}
