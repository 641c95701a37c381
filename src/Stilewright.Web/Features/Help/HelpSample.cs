using Stilewright.Doors;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Web.Features.Help;

/// <summary>Small courses that the help is worked out and drawn from, with the shipped inch standard; nothing in it is typed by hand.</summary>
public static class HelpSample
{
    private static readonly Lazy<ProjectBreakdown> Square = new(() => Break("raised", Mount.Overlay, isPair: true, new(In("23 3/4"), HeightLeft: In("29 1/2"))));
    private static readonly Lazy<ProjectBreakdown> Leaning = new(() => Break("raised", Mount.Overlay, isPair: false,
        new(In("15 1/4"), In("15 7/32"), In("15 3/16"), In("19 1/2"), In("19 1/2"), In("19 1/2"), In("24 13/16"), In("24 11/16"))));
    private static readonly Lazy<ProjectBreakdown> Inset = new(() => Break("raised", Mount.Inset, isPair: false, Plain));
    private static readonly Lazy<ProjectBreakdown> Lipped = new(() => Break("raised", Mount.Lipped, isPair: false, Plain));
    private static readonly Lazy<ProjectBreakdown> Overlay = new(() => Break("raised", Mount.Overlay, isPair: false, Plain));
    private static readonly Lazy<ProjectBreakdown> Tenoned = new(() => Break("tenoned", Mount.Overlay, isPair: false, Plain));
    private static readonly Lazy<ProjectBreakdown> Arched = new(() => Break("arched", Mount.Overlay, isPair: false, Plain));

    private static readonly Lazy<HungLeaf> HungPair = new(() => HangingPlan.Of(Breakdown.Of(
        Course("raised", Mount.Overlay, isPair: true, new(In("23 3/4"), HeightLeft: In("29 1/2"))) with { Overrides = SettingValues.None.With(Settings.UsualHinge, new("example-cup-compact", default)) },
        ShippedStandards.Inch)).Leaves[0]);

    private static Readings Plain => new(In("15"), HeightLeft: In("20"), Rising: In("25"), Falling: In("25"));

    /// <summary>A pair on an opening of 23 3/4 × 29 1/2 in.</summary>
    public static ProjectBreakdown Pair => Square.Value;

    /// <summary>The left leaf of that pair on cup hinges.</summary>
    public static HungLeaf Hung => HungPair.Value;

    /// <summary>One overlay door on an opening that is out of square.</summary>
    public static ProjectBreakdown OutOfSquare => Leaning.Value;

    /// <summary>One door with mortise-and-tenon joints.</summary>
    public static ProjectBreakdown WithTenons => Tenoned.Value;

    /// <summary>One door whose top rail is an eyebrow.</summary>
    public static ProjectBreakdown WithArch => Arched.Value;

    /// <summary>One door on an opening of 15 × 20 in, by how it sits.</summary>
    public static ProjectBreakdown Of(Mount mount) => mount switch
    {
        Mount.Inset => Inset.Value,
        Mount.Lipped => Lipped.Value,
        _ => Overlay.Value,
    };

    /// <summary>The cutters of the sample's frames.</summary>
    public static CutterSet Cutters => ShippedStandards.Inch.Cutters.Single(set => set.Id == "deep-groove");

    private static ProjectBreakdown Break(string design, Mount mount, bool isPair, Readings readings) => Breakdown.Of(Course(design, mount, isPair, readings), ShippedStandards.Inch).Projects[0];

    private static Course Course(string design, Mount mount, bool isPair, Readings readings)
    {
        IReadOnlyList<LeafEntry> leaves = isPair ? [Leaf(HingeSide.Left), Leaf(HingeSide.Right)] : [Leaf(HingeSide.Left)];
        var member = In("2");
        var opening = new Opening("opening", new DoorFilling(mount, leaves, design), null, null, readings,
            new(new FrameEdge(member), new FrameEdge(member), new FrameEdge(member), new FrameEdge(member)), null, null, SettingValues.None);
        return new("help", "Help", "inch", LengthUnit.Inch,
            [
                Design("raised", "Raised panel", Construction.CopeAndStick),
                Design("tenoned", "Raised panel, tenoned", Construction.MortiseAndTenon),
                Design("arched", "Raised panel under an eyebrow", Construction.CopeAndStick) with { TopArch = new(ArchFamily.Eyebrow, In("1 1/2")) },
            ],
            [new("sample", 1, "Sample", [new("case", "Case", [new("front", FaceSide.Front, null, [opening], [])])], null, [], [], [], SettingValues.None)],
            SettingValues.None);
    }

    private static DoorDesign Design(string id, string name, Construction construction) => new(
        id, name, construction, "red oak", "four-quarter", "deep-groove", null, null, null, null, [], null, null, new(PanelKind.Raised, null, "panel"), [], null, null);

    private static LeafEntry Leaf(HingeSide hinge) => new(hinge, null, null, null, SettingValues.None);

    private static LengthEntry In(string text) => new(text, LengthReader.ReadOwn(text, LengthUnit.Inch));
}
