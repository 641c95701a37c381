using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Drawing.Tests.Figures;

internal static class Examples
{
    public static LengthEntry In(string text) => new(text, LengthReader.ReadOwn(text, LengthUnit.Inch));

    /// <summary>The pair 24 1/2 × 30 1/4 with deep-groove cutters and 1/16 of clearance round the panel: leaves 12 3/16 × 30 1/4.</summary>
    public static Course Pair() => new(
        "course", "Course", "inch", LengthUnit.Inch,
        [new("plain", "Plain door", Construction.CopeAndStick, "red oak", "four-quarter", "deep-groove", null, null, null, null, [], null, null,
            new(PanelKind.Raised, Stock: "panel"), [], null, null)],
        [
            new("project", 7, "Cupboard",
            [
                new("piece", "Cupboard",
                [
                    new("face", FaceSide.Front, null,
                    [
                        new("hole", new DoorFilling(Mount.Overlay,
                            [new(HingeSide.Left, null, null, null, SettingValues.None), new(HingeSide.Right, null, null, null, SettingValues.None)], "plain"),
                            null, null, new(In("24 1/2"), HeightLeft: In("30 1/4")), null, null, null, SettingValues.None),
                    ], []),
                ]),
            ], null, [], [], [], SettingValues.None),
        ],
        new(new Dictionary<Setting, SettingValue>
        {
            [Settings.Overlay] = new("0", default),
            [Settings.ClearanceAcross] = new("1/16", In("1/16").Value),
        }));
}
