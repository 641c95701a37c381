using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Tests.Doors;

/// <summary>Short ways to build courses of one opening for tests.</summary>
internal static class Samples
{
    public static LengthEntry In(string text) => new(text, LengthReader.ReadOwn(text, LengthUnit.Inch));

    public static SettingValues Set(params (Setting Setting, string Value)[] values) => new(values.ToDictionary(
        value => value.Setting, value => new SettingValue(value.Value, value.Setting.Kind == SettingKind.Length ? In(value.Value).Value : default)));

    public static LightFilling Raised { get; } = new(PanelKind.Raised, Stock: "panel");

    public static DoorDesign Design(string id = "plain") => new(
        id, "Plain door", Construction.CopeAndStick, "red oak", "four-quarter", "cope-and-stick", null, null, null, null, [], null, null, Raised, [], null, null);

    public static LeafEntry Leaf(HingeSide hinge) => new(hinge, null, null, null, SettingValues.None);

    public static DoorFilling Single(HingeSide hinge = HingeSide.Left, Mount mount = Mount.Overlay) => new(mount, [Leaf(hinge)], "plain");

    public static DoorFilling Pair(Mount mount = Mount.Overlay) => new(mount, [Leaf(HingeSide.Left), Leaf(HingeSide.Right)], "plain");

    public static Opening Opening(string width, string height, Filling filling, string id = "hole") => new(
        id, filling, null, null, new([In(width)], [In(height)]), null, null, null, SettingValues.None);

    public static Course Course(DoorDesign design, SettingValues overrides, params IReadOnlyList<Opening> openings) => new(
        "course", "Course", "inch", LengthUnit.Inch, [design],
        [new("project", 7, "Cupboard", [new("piece", "Cupboard", [new("face", FaceSide.Front, null, openings, [])])], null, [], [], [], SettingValues.None)],
        overrides);

    public static Breakdown Break(Course course) => Breakdown.Of(course, ShippedStandards.Inch);

    public static Part Part(this Breakdown breakdown, string path) =>
        breakdown.Parts.Single(part => part.Path == path);

    public static void IsSize(string width, string length, PartSize size)
    {
        var format = new LengthFormat(LengthUnit.Inch, 64);
        Assert.Equal($"{format.Print(In(width).Value)} × {format.Print(In(length).Value)}", $"{format.Print(size.Width.Length)} × {format.Print(size.Length.Length)}");
    }
}
