using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Projects;

public enum Construction
{
    [Meaning("Rails coped over the moulded edge of the stiles")]
    CopeAndStick,

    [Meaning("Rails tenoned into mortises of the stiles")]
    MortiseAndTenon,

    [Meaning("Rails butted and held by dowels")]
    Dowelled,

    [Meaning("Rails butted and held by loose tenons")]
    LooseTenon,

    [Meaning("Four members mitred at the corners")]
    Mitred,

    [Meaning("No frame: one panel glued up from staves")]
    Slab,
}

[Meaning("A door or drawer front of one style: its members, joints, panels and woods"), Label("design")]
public sealed record DoorDesign(
    [Id] string Id,
    string Name,
    Construction Construction,
    [Meaning("The species of the frame, or of a slab")] string Species,
    [RefersTo(typeof(Stock)), Meaning("The stock of the frame, or of a slab")] string Stock,
    [RefersTo(typeof(CutterSet)), Meaning("The cutters; a slab needs none")] string? Cutters,
    [Meaning("Stile widths; absent, as the standard says"), Label("stile width")] StileWidths? Stiles,
    [Meaning("Width of the top rail at its narrowest; absent, as the standard says"), Between(0, 24, Above = true)] LengthEntry? TopRail,
    [Meaning("Width of the bottom rail at its narrowest; absent, as the standard says"), Between(0, 24, Above = true)] LengthEntry? BottomRail,
    MidRails? MidRails,
    [Meaning("Mid stiles by row of lights")] IReadOnlyList<MidStileRow> MidStiles,
    Arch? TopArch,
    Arch? BottomArch,
    [Meaning("What fills every light that says nothing else; absent for a slab"), Label("panel")] LightFilling? Panel,
    [Meaning("Lights that are filled otherwise"), Label("lights filled otherwise")] IReadOnlyList<LightChoice> Lights,
    [Meaning("Length of tenons from the sight line; absent, as the standard says"), Label("tenon length"), Between(0, 12, Above = true)] LengthEntry? Tenon,
    [Meaning("Width of moulding cut back at a tenoned or butted joint, which lengthens the shoulder"), Label("moulding cut back"), Between(0, 2)] LengthEntry? CutBack,
    [Meaning("Whether a drawer front too low for the frame is made as a slab instead"), Label("slab when too low for the frame")] bool SlabWhenTooLow = false,
    [Meaning("Grain of a slab; absent, vertical in doors and horizontal in drawer fronts")] GrainDirection? SlabGrain = null,
    [Meaning("How far the moulding round the outside edge comes in over the face; absent where the edge is left square"), Label("edge moulding, width"), Between(0, 3, Above = true)] LengthEntry? EdgeWidth = null,
    [Meaning("How deep that moulding is cut from the face; absent, it is not known"), Label("edge moulding, depth"), Between(0, 3, Above = true)] LengthEntry? EdgeDepth = null);

[Meaning("Stile widths: one for both, or one by the hinges and one at the pull or meeting edge")]
public sealed record StileWidths(
    [Label("both", Absent = "as the standard says"), Between(0, 24, Above = true)] LengthEntry? Both = null,
    [Label("by the hinges", Absent = "as the standard says"), Between(0, 24, Above = true)] LengthEntry? Hinge = null,
    [Meaning("At the pull, or where a pair meets"), Label("at the pull", Absent = "as the standard says"), Between(0, 24, Above = true)] LengthEntry? Pull = null);

[Meaning("Mid rails: a count that makes equal lights, or places")]
public sealed record MidRails(
    [Meaning("How many, evenly spaced"), Label("number"), Between(1, 9)] int? Count,
    [Meaning("Width of each; absent, as the standard says"), Between(0, 24, Above = true)] LengthEntry? Width,
    [Meaning("Places from the bottom up, where they are not even")] IReadOnlyList<MidRailPlace> Places);

public enum MeasuredTo
{
    Centre,
    TopEdge,
    BottomEdge,
}

[Meaning("Where one mid rail lies"), Label("place")]
public sealed record MidRailPlace(
    [Meaning("Height above the bottom of the leaf"), Between(0, 120, Above = true)] LengthEntry Height,
    [Label("measured to the")] MeasuredTo To = MeasuredTo.Centre,
    [Label("width", Absent = "as the standard says"), Between(0, 24, Above = true)] LengthEntry? Width = null);

[Meaning("Mid stiles that divide one row of lights equally"), Label("mid stile row")]
public sealed record MidStileRow(
    [Meaning("The row of lights, counted from the bottom"), Between(1, 10)] int Row,
    [Label("number"), Between(1, 9)] int Count,
    [Meaning("Width of each; absent, as the standard says"), Between(0, 24, Above = true)] LengthEntry? Width = null);

public enum ArchFamily
{
    [Meaning("One low arc")]
    Eyebrow,

    [Meaning("A half circle; its rise is half the span")]
    HalfRound,

    [Meaning("Two arcs that meet in a point")]
    Pointed,

    [Meaning("A square shoulder, then an eyebrow")]
    Stepped,

    [Meaning("Flat shoulders, reverse arcs and a crown")]
    Cathedral,

    [Meaning("Reverse arcs and a crown without shoulders, as in a bottom rail")]
    DoubleCurve,

    [Meaning("A curve of your own, given step by step; it fits the span it was drawn for and no other")]
    Drawn,
}

[Meaning("How the radius of the reverse arcs is to that of the crown, as two whole numbers")]
public sealed record ArcRatio([Between(1, 1000)] int Reverse, [Between(1, 1000)] int Crown);

[Meaning("One step of a drawn curve, from where the step before ended; lengths from the left sight line and the spring line")]
[Label("step of the curve")]
[Case("line", typeof(LineStep))]
[Case("arc", typeof(ArcStep))]
public abstract record CurveStep;

[Meaning("A straight line"), Label("straight line")]
public sealed record LineStep(
    [Meaning("Where it ends, from the left sight line"), Label("end, across"), Between(0, 240)] LengthEntry X,
    [Meaning("Where it ends, above the spring line"), Label("end, above"), Between(0, 60)] LengthEntry Y) : CurveStep;

[Meaning("A circular arc through a point"), Label("arc")]
public sealed record ArcStep(
    [Meaning("A point it goes through, from the left sight line"), Label("point on the way, across"), Between(0, 240)] LengthEntry ViaX,
    [Meaning("The same point, above the spring line"), Label("point on the way, above"), Between(0, 60)] LengthEntry ViaY,
    [Meaning("Where it ends, from the left sight line"), Label("end, across"), Between(0, 240)] LengthEntry X,
    [Meaning("Where it ends, above the spring line"), Label("end, above"), Between(0, 60)] LengthEntry Y) : CurveStep;

public enum PairCrown
{
    [Meaning("One crown in the middle of the span; where both leaves are of one width, over the gap")]
    MiddleOfPair,

    [Meaning("A crown at the sight line of each meeting stile, so that each leaf shows a whole half")]
    EachMeetingStile,
}

[Meaning("The arch of a rail's inner edge, over the span between sight lines")]
public sealed record Arch(
    ArchFamily Family,
    [Meaning("Rise above the spring line; a half-round has half the span"), Between(0, 60, Above = true)] LengthEntry? Rise = null,
    [Meaning("Straight shoulder at each end"), Between(0, 60)] LengthEntry? Shoulder = null,
    [Meaning("Whether each light has an arch of its own where mid stiles divide the row"), Label("an arch for each light")] bool PerLight = false,
    [Meaning("Radii of a cathedral or double curve; absent, one to one"), Label("reverse arcs to crown")] ArcRatio? ReverseToCrown = null,
    [Label("steps of the curve"), Meaning("Steps of a drawn curve, from the left sight line at the spring line to the right; a leaf hinged on the right has it mirrored")] IReadOnlyList<CurveStep>? Curve = null,
    [Meaning("Makes it one arch across the leaves of a pair, from hinge stile to hinge stile, and says where its crown is; absent, each leaf has its own"), Label("across the pair")] PairCrown? AcrossPair = null)
{
    public IReadOnlyList<CurveStep>? Curve { get; init; } = Curve ?? [];
}

public enum PanelKind
{
    [Meaning("Solid wood with a raised field")]
    Raised,

    [Meaning("Solid wood of one thickness")]
    FlatSolid,

    [Meaning("Plywood or other sheet")]
    FlatSheet,

    Glass,

    [Meaning("Left open")]
    Open,
}

public enum GrainDirection
{
    Vertical,
    Horizontal,
}

[Meaning("What fills a light")]
public sealed record LightFilling(
    PanelKind Kind,
    [Meaning("The species of a solid or sheet panel; absent, the frame's")] string? Species = null,
    [RefersTo(typeof(Stock)), Meaning("The stock of a solid or sheet panel")] string? Stock = null,
    [Meaning("Absent, vertical in doors and horizontal in drawer fronts")] GrainDirection? Grain = null,
    [Meaning("Sheet only: glued into the groove, without clearance")] bool GluedIn = false,
    [Meaning("Glass only: what was decided about safety glazing, such as tempered")] string? SafetyGlazing = null);

[Meaning("One light that is filled otherwise"), Label("choice of light")]
public sealed record LightChoice(
    [Meaning("The light, counted row by row from the bottom left"), Between(1, 100)] int Light,
    [Label("filling", IsSilent = true)] LightFilling Filling);
