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
        value => value.Setting, value => new SettingValue(value.Value, value.Setting.Kind == SettingKind.Length && !value.Setting.IsWord(value.Value) ? In(value.Value).Value : default)));

    public static LightFilling Raised { get; } = new(PanelKind.Raised, Stock: "panel");

    public static DoorDesign Design(string id = "plain") => new(
        id, "Plain door", Construction.CopeAndStick, "red oak", "four-quarter", "cope-and-stick", null, null, null, null, [], null, null, Raised, [], null, null);

    public static LeafEntry Leaf(HingeSide hinge) => new(hinge, null, null, null, SettingValues.None);

    public static DoorFilling Single(HingeSide hinge = HingeSide.Left, Mount mount = Mount.Overlay) => new(mount, [Leaf(hinge)], "plain");

    public static DoorFilling Pair(Mount mount = Mount.Overlay) => new(mount, [Leaf(HingeSide.Left), Leaf(HingeSide.Right)], "plain");

    public static Opening Opening(string width, string height, Filling filling, string id = "hole") => new(
        id, filling, null, null, new(In(width), HeightLeft: In(height)), null, null, null, SettingValues.None);

    public static Course Course(DoorDesign design, SettingValues overrides, params IReadOnlyList<Opening> openings) => new(
        "course", "Course", "inch", LengthUnit.Inch, [design],
        [new("project", 7, "Cupboard", [new("piece", "Cupboard", [new("face", FaceSide.Front, null, openings, [])])], null, [], [], [], SettingValues.None)],
        overrides);

    /// <summary>An opening that has no readings of its own, for layouts.</summary>
    public static Opening Hole(Filling filling, string id = "hole") => new(id, filling, null, null, null, null, null, null, SettingValues.None);

    public static Face Face(string id, FaceLayout? layout, params IReadOnlyList<Opening> openings) => new(id, FaceSide.Front, layout, openings, []);

    /// <summary>A face frame whose outer members are all 1 1/2 in wide.</summary>
    public static FaceLayout Layout(string width, string height, Space space) => new(
        In(width), In(height), new(In("1 1/2")), new(In("1 1/2")), In("1 1/2"), In("1 1/2"), space);

    public static Course Faces(SettingValues overrides, params IReadOnlyList<Face> faces) => new(
        "course", "Course", "inch", LengthUnit.Inch, [Design()],
        [new("project", 7, "Cupboard", [new("piece", "Cupboard", faces)], null, [], [], [], SettingValues.None)],
        overrides);

    public static Course Accepting(Course course, string rule, string place, string reason) => course with
    {
        Projects = [course.Projects[0] with { Accepted = [new(rule, place, reason)] }],
    };

    /// <summary>One door on one opening without any overlay, so that leaf and opening have one size.</summary>
    public static Course DoorOf(string width, string height, DoorDesign design, params (Setting Setting, string Value)[] settings) =>
        Course(design, Set([(Settings.Overlay, "0"), .. settings]), Opening(width, height, Single()));

    public static Breakdown Door(string width, string height, DoorDesign? design = null, params (Setting Setting, string Value)[] settings) =>
        Break(DoorOf(width, height, design ?? Design(), settings));

    public static HouseStandard Cutters(Func<CutterSet, CutterSet> change) => ShippedStandards.Inch with
    {
        Cutters = [.. ShippedStandards.Inch.Cutters.Select(change)],
    };

    public static HouseStandard Stocks(Func<Stock, Stock> change) => ShippedStandards.Inch with
    {
        Stocks = [.. ShippedStandards.Inch.Stocks.Select(change)],
    };

    public static Breakdown Break(Course course) => Breakdown.Of(course, ShippedStandards.Inch);

    public static Part Part(this Breakdown breakdown, string path) =>
        breakdown.Parts.Single(part => part.Path == path);

    public static void IsSize(string width, string length, PartSize size)
    {
        var format = new LengthFormat(LengthUnit.Inch, 64);
        Assert.Equal($"{format.Print(In(width).Value)} × {format.Print(In(length).Value)}", $"{format.Print(size.Width.Length)} × {format.Print(size.Length.Length)}");
    }
}
