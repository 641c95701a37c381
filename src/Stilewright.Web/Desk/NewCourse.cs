using Stilewright.Documents;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Web.Desk;

/// <summary>What a new course, bench or opening begins with.</summary>
public static class NewCourse
{
    /// <summary>A course with three door designs to begin with, and no bench.</summary>
    public static Course Named(string name, LengthUnit unit)
    {
        var shipped = ShippedStandards.For(unit);
        return new(
            new FreshIds([], Random.Shared).Next(), name, unit == LengthUnit.Inch ? "inch" : "millimetre", unit,
            Designs(shipped), [], SettingValues.None);
    }

    /// <summary>A bench with one cabinet whose front is still to be measured.</summary>
    /// <param name="fresh">Ids that nothing in the course has.</param>
    public static Project Bench(int number, string name, FreshIds fresh) => new(
        fresh.Next(), number, name, [new(fresh.Next(), name, [new(fresh.Next(), FaceSide.Front, null, [], [])])], null, [], [], [], SettingValues.None);

    private static DoorDesign[] Designs(HouseStandard standard)
    {
        var cutters = standard.Cutters[0].Id;
        return
        [
            Framed("flat-panel", "Flat panel", new(PanelKind.FlatSolid, null, "thin-panel"), cutters),
            Framed("raised-panel", "Raised panel", new(PanelKind.Raised, null, "panel"), cutters),
            new("slab", "Slab", Construction.Slab, "red oak", "four-quarter", null, null, null, null, null, [], null, null, null, [], null, null,
                SlabGrain: GrainDirection.Horizontal),
        ];
    }

    private static DoorDesign Framed(string id, string name, LightFilling panel, string cutters) => new(
        id, name, Construction.CopeAndStick, "red oak", "four-quarter", cutters, null, null, null, null, [], null, null, panel, [], null, null);
}
