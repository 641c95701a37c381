using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Projects;
using Stilewright.Shop;
using static Stilewright.Findings.Severity;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Doors;

internal static class OpeningRuleCases
{
    public static IEnumerable<RuleCase> All =>
    [
        // 20 − 2 × 1 1/2 = 17; less the mullion of 2 and 15 nothing is left.
        new(Rules.NoRoom, CannotBuild, "face", ["leave 0 in of 17 in"], () => Columns("15"), () => Columns("14 31/32")),
        new(Rules.NoRoom, CannotBuild, "face", ["leave 0 in × 17 in"], () => Laid("3", Hole(Single())), () => Laid("3 1/32", Hole(Single())), "outer members"),
        new(Rules.NoRoom, CannotBuild, "hole", ["leave 0 in × 2 in"],
            () => Laid("18", Hole(Single()) with { Bead = In("7 1/2") }), () => Laid("18", Hole(Single()) with { Bead = In("7 15/32") }), "bead"),
        new(Rules.NotMeasured, CannotBuild, "hole", ["Neither its width nor its height is read", "the width at the top and the height at the left"],
            () => Measured(null), () => Laid("18", Hole(Single()))),
        new(Rules.NotMeasured, CannotBuild, "hole", ["Its width is not read", "Measure the width at the top"],
            () => Measured(new(HeightRight: In("20"))), () => Measured(new(WidthMiddle: In("15"), HeightRight: In("20"))), "width"),
        new(Rules.NotMeasured, CannotBuild, "hole", ["Its height is not read", "Measure the height at the left"],
            () => Measured(new(WidthBottom: In("15"))), () => Measured(new(WidthBottom: In("15"), HeightMiddle: In("20"))), "height"),
        new(Rules.NotMeasured, CannotBuild, "hole", ["Diagonals alone make no size"],
            () => Measured(new(Rising: In("25"), Falling: In("25"))), () => Laid("18", Hole(Single()) with { Readings = new(Rising: In("25"), Falling: In("25")) }), "diagonals"),
        // 18 − 3 = 15 by the layout; twice the tolerance of 1/16 is 1/8.
        new(Rules.LayoutDiffers, Caution, "hole", ["Measured 15 5/32 in × 17 in", "layout 15 in × 17 in"],
            () => Laid("18", Opening("15 5/32", "17", Single())), () => Laid("18", Opening("15 1/8", "17", Single()))),
        // 15, 20 and 25 make a right angle.
        new(Rules.ReadingsContradict, Caution, "hole", ["25 3/32 in and 25 3/32 in", "about 25 in: 3/32 in apart"],
            () => Read(Mount.Overlay, "25 3/32"), () => Read(Mount.Overlay, "25 1/16")),
        new(Rules.NoDiagonalsOverlay, Note, "hole", ["No diagonals"], () => Read(Mount.Overlay, null), () => Read(Mount.Overlay, "25")),
        new(Rules.NoDiagonalsInset, Caution, "hole", ["without diagonals", "both diagonals"], () => Read(Mount.Inset, null), () => Read(Mount.Inset, "25")),
        new(Rules.Bowed, Note, "hole", ["width in the middle is 15 3/32 in", "ends make 15 in", "3/32 in outwards"],
            () => Middle("15 3/32"), () => Middle("15 1/16")),
        new(Rules.Bowed, Note, "hole", ["a bow of 3/32 in inwards"], () => Middle("14 29/32"), () => Middle("14 15/16"), "inwards"),
    ];

    private static Breakdown Columns(string first) => Break(Faces(SettingValues.None, Face("face", Layout("20", "20", new(Columns: new(
        [new(In(first), Hole(Single(), "one")), new(Opening: Hole(Single(), "two"))], In("2"), []))))));

    private static Breakdown Laid(string width, Opening opening) =>
        Break(Faces(SettingValues.None, Face("face", Layout(width, "20", new(Opening: opening)))));

    private static Breakdown Read(Mount mount, string? diagonal)
    {
        var opening = Opening("15", "20", Single(mount: mount));
        return Break(Course(Design(), SettingValues.None, diagonal is null ? opening
            : opening with { Readings = opening.Readings! with { Rising = In(diagonal), Falling = In(diagonal) } }));
    }

    private static Breakdown Measured(Readings? readings) =>
        Break(Course(Design(), SettingValues.None, Hole(Single()) with { Readings = readings }));

    private static Breakdown Middle(string width)
    {
        var opening = Opening("15", "20", Single());
        return Break(Course(Design(), SettingValues.None,
            opening with { Readings = opening.Readings! with { WidthMiddle = In(width), WidthBottom = In("15") } }));
    }
}
