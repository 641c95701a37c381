using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Web.Drawings;

/// <summary>A small drawing for every constant of a house standard: what it is, to the value that the standard has, which is picked out
/// and named.</summary>
/// <remarks>The constant's own dimension or words have its key as their path. Lengths are inches, X to the right and Y up. Level sections
/// are seen from above, the face at the bottom. What could not be seen at its size is drawn larger, and the description says so.</remarks>
public sealed partial class StandardFigures(HouseStandard standard, LengthFormat format)
{
    /// <summary>The plate that every drawing stands on, in millimetres, so that letters are equally large on all.</summary>
    private const double PlateWidth = 88, PlateHeight = 56;

    private const double Member = 1.5;
    private const double Thickness = 0.75;
    private const double Seen = 2;
    private const double Air = 0.02;

    private static readonly Dictionary<Setting, Figure> Drawn = new()
    {
        [Settings.Overlay] = new("A front that laps over the frame, cut level", (it, on) => it.Lapping(on)),
        [Settings.LeastOverlay] = new("The corner of an opening that leans, with the front over it, seen from its face", (it, on) => it.LeastLap(on)),
        [Settings.Reveal] = new("A front that runs to the edge of the frame, cut level: a little of the frame stays visible beside it", (it, on) => it.Reveal(on)),
        [Settings.GapBetweenNeighbours] = new("Two overlay fronts that share a member of the frame, cut level", (it, on) => it.Neighbours(on)),
        [Settings.GapOfPair] = new("The meeting edges of a pair before the frame, cut level", (it, on) => it.Meeting(on)),
        [Settings.GapInBank] = new("A bank of drawer fronts, seen from its face", (it, on) => it.Bank(on)),
        [Settings.InsetGap] = new("A front that sits in the opening, flush with the frame, cut level", (it, on) => it.Inset(on)),
        [Settings.InsetGapOfPair] = new("A pair that sits in its opening, between two members of the frame, cut level", (it, on) => it.InsetMeeting(on)),
        [Settings.LipRabbet] = new("A lipped front, cut level: the rabbet round its back, and the lip that is left", (it, on) => it.Lipped(on, Settings.LipRabbet)),
        [Settings.LipClearance] = new("A lipped front, cut level: the air between its rabbet and the opening", (it, on) => it.Lipped(on, Settings.LipClearance)),
        [Settings.Lap] = new("A pair whose meeting edges are rabbeted over one another, cut level", (it, on) => it.Lap(on)),
        [Settings.Step] = new("A rule divided by the step, drawn larger than it is: a size that is worked out lies between two marks and is put on one", (it, on) => it.Step(on)),
        [Settings.BankRemainder] = new("A bank of three equal fronts whose height is no three whole numbers of steps, seen from its face: one front differs", (it, on) => it.BankRemainder(on)),
        [Settings.LightRemainder] = new("A door of three equal lights whose height is no three whole numbers of steps: one light differs", (it, on) => it.LightRemainder(on)),
        [Settings.Stile] = new("A door seen from its face", (it, on) => it.Leaf(on, Settings.Stile)),
        [Settings.Rail] = new("A door seen from its face", (it, on) => it.Leaf(on, Settings.Rail)),
        [Settings.MidRail] = new("A door with a mid rail, seen from its face", (it, on) => it.Leaf(on, Settings.MidRail)),
        [Settings.MidStile] = new("A door with a mid stile, seen from its face", (it, on) => it.Leaf(on, Settings.MidStile)),
        [Settings.Tenon] = new("A stile and a rail seen from their face, the tenon hidden in the stile", (it, on) => it.Tenon(on)),
        [Settings.TrimWidth] = new("A door as it leaves the clamps; half of the allowance comes off each edge. Drawn wider than it is", (it, on) => it.Trim(on, Settings.TrimWidth)),
        [Settings.TrimHeight] = new("A door as it leaves the clamps; half of the allowance comes off each end. Drawn wider than it is", (it, on) => it.Trim(on, Settings.TrimHeight)),
        [Settings.ClearanceAcross] = new("A solid panel in the groove of a stile, cut level across its grain", (it, on) => it.InStile(on, Settings.ClearanceAcross)),
        [Settings.ClearanceAlong] = new("A solid panel in the groove of the bottom rail, cut upright along its grain", (it, on) => it.InRail(on)),
        [Settings.ClearanceAtArch] = new("The crown of an arched rail from its face, the bottom of its groove and the panel's edge hidden", (it, on) => it.ArchClearance(on)),
        [Settings.SheetClearance] = new("A sheet panel in the groove of a stile, cut level", (it, on) => it.InStile(on, Settings.SheetClearance)),
        [Settings.PanelPolicy] = new("A solid panel's edge in its groove: what its play is made by", (it, on) => it.PanelPolicy(on)),
        [Settings.PanelRings] = new("The end of a board of the panel, with its growth rings", (it, on) => it.PanelRings(on)),
        [Settings.PanelHeld] = new("A panel between two stiles, cut level: held in its middle, or free to lie against one of them", (it, on) => it.PanelHeld(on)),
        [Settings.PanelEngagement] = new("A panel's edge in its groove at the driest, cut level across its grain", (it, on) => it.PanelEngagement(on)),
        [Settings.PanelAir] = new("A panel's edge in its groove at the wettest, cut level across its grain", (it, on) => it.PanelAir(on)),
        [Settings.Moisture] = new("Moisture content from 0 to 30 %", (it, on) => it.Moisture(on)),
        [Settings.Climate] = new("Moisture content from 0 to 30 %, with what wood goes through in a year there", (it, on) => it.Climate(on)),
        [Settings.Driest] = new("Moisture content from 0 to 30 %", (it, on) => it.Driest(on)),
        [Settings.Wettest] = new("Moisture content from 0 to 30 %", (it, on) => it.Wettest(on)),
        [Settings.FinishBuild] = new("Two edges with the gap between them, cut level. The finish is drawn thicker than it is", (it, on) => it.FinishBuild(on)),
        [Settings.GlassThickness] = new("A pane, cut across", (it, on) => it.GlassThickness(on)),
        [Settings.GlassClearance] = new("A pane in the rabbets of two stiles, pushed to one side, cut level", (it, on) => it.Pane(on)),
        [Settings.RoughLength] = new("A rough rail; the line is where it is cut to its length into the clamps", (it, on) => it.Rough(on, Settings.RoughLength)),
        [Settings.RoughWidth] = new("A rough rail; the line is where it is ripped to its width into the clamps", (it, on) => it.Rough(on, Settings.RoughWidth)),
        [Settings.FinestFraction] = new("An inch on a rule, drawn larger than it is, with the finest mark that figures are printed to", (it, on) => it.Finest(on)),
        [Settings.LeastField] = new("A raised panel seen from its face, with the least field between its raises", (it, on) => it.Field(on)),
        [Settings.LeastLight] = new("A door so narrow that this is all that stays clear between its stiles", (it, on) => it.Light(on)),
        [Settings.WidestPanel] = new("A solid panel seen from its face, its grain upright", (it, on) => it.WidestPanel(on)),
        [Settings.WidestDoor] = new("The widest door that is not divided, seen from its face", (it, on) => it.WidestDoor(on)),
        [Settings.TallestUndivided] = new("The tallest door that needs no mid rail, seen from its face", (it, on) => it.Tallest(on)),
        [Settings.LeastCrown] = new("The crown of an arched rail from its face: wood between the bottom of its groove and its outer edge", (it, on) => it.Crown(on)),
        [Settings.LeastShortGrain] = new("The end of an arched rail from its face: the grain is level, and runs out at the curve", (it, on) => it.ShortGrain(on)),
        [Settings.LeastEngagement] = new("The crown of an arched rail from its face: how deep the panel's edge must stand in the groove", (it, on) => it.Engagement(on)),
        [Settings.LineTolerance] = new("Two fronts of one column from their face, out of line. Drawn larger than it is", (it, on) => it.OutOfLine(on)),
        [Settings.ReadingTolerance] = new("An opening with a diagonal that does not end where the other readings have the corner. Drawn larger than it is", (it, on) => it.Contradicting(on)),
        [Settings.UsualHinge] = new("The back of a door with its hinges", (it, on) => it.UsualHinge(on)),
        [Settings.HingeFromEnd] = new("The back of a door, the hinge nearest to its end", (it, on) => it.HingeFromEnd(on)),
        [Settings.HingeFrom] = new("The back of a door before its opening: from where the outer hinge is measured", (it, on) => it.HingeFrom(on)),
        [Settings.HingeNumber] = new("The back of a door with its hinges, evenly spaced", (it, on) => it.HingeNumber(on)),
        [Settings.HingeCountTable] = new("A leaf for each row of the table, with its number of hinges", (it, on) => it.HingeCountTable(on)),
        [Settings.BoringDistance] = new("The back of a stile with the cup of a hinge: from its edge to the edge of the cup", (it, on) => it.BoringDistance(on)),
        [Settings.HingeClear] = new("The back of a door with a shelf behind it, hidden, and the nearest hinge", (it, on) => it.HingeClear(on)),
        [Settings.LeastUnderCup] = new("A stile cut through its cup, the face at the bottom", (it, on) => it.UnderCup(on)),
    };

    private readonly StandardInForce inForce = new(standard);

    // The cutters that grooves are drawn by: the first that make one.
    private readonly CutterSet cutters = standard.Cutters.FirstOrDefault(CanDraw) ?? ShippedStandards.Inch.Cutters[0];

    /// <summary>The drawing of a constant; null for one that has none.</summary>
    public Scene? Of(Setting setting)
    {
        if (!Drawn.TryGetValue(setting, out var figure))
            return null;
        var title = char.ToUpperInvariant(setting.Label[0]) + setting.Label[1..];
        var fitted = Fit.Largest(format.Unit, PlateWidth, PlateHeight, scale =>
        {
            var sketch = new Sketch(scale, format);
            figure.Draw(this, sketch);
            return sketch.Scene(title, $"{figure.Description}.");
        }).Scene;
        return fitted with
        {
            WidthMillimetres = Math.Max(PlateWidth, fitted.WidthMillimetres),
            Nodes = [new SceneGroup(null, null, fitted.Nodes) { At = new(Math.Max(0, PlateWidth - fitted.WidthMillimetres) / 2, 0) }],
        };
    }

    /// <summary>Whether a set's figures make a groove that can be drawn.</summary>
    public static bool CanDraw(CutterSet set) => set.ThickestStock.Value > set.GrooveFromFace.Value + set.GrooveWidth.Value && set.GrooveDepth.Value.IsPositive && set.GrooveWidth.Value.IsPositive;

    /// <summary>A stile that the cutters made, cut across.</summary>
    /// <param name="set">One that <see cref="CanDraw"/>.</param>
    public Scene Cutters(CutterSet set)
    {
        var groove = new Groove(set);
        var sticking = Inches(set.StickingWidth.Value);
        var stile = Math.Max(Member, Math.Max(groove.Depth, sticking) + 0.6);
        return Fit.Largest(format.Unit, PlateWidth, PlateHeight, scale =>
        {
            var on = new Sketch(scale, format);
            // The moulding is told by a slope at the face.
            var slope = sticking > 0 ? groove.FromFace * 0.65 : 0;
            on.EndGrain(Shape(on, (0, 0), (stile - sticking, 0), (stile, slope), (stile, groove.Low), (stile - groove.Depth, groove.Low), (stile - groove.Depth, groove.High), (stile, groove.High), (stile, groove.Thick), (0, groove.Thick)));
            on.Dimensions(on.Box(0, 0, stile, groove.Thick),
                new DimensionRow(Side.Top, [Across(on, stile - groove.Depth, stile, set.GrooveDepth.Value, "groove")]),
                new DimensionRow(Side.Bottom, [Across(on, stile - sticking, stile, set.StickingWidth.Value, "sticking")]),
                new DimensionRow(Side.Right, [Upright(on, groove.Low, groove.High, set.GrooveWidth.Value, null), Upright(on, 0, groove.Low, set.GrooveFromFace.Value, "face")]));
            return on.Scene(FormattableString.Invariant($"{set.Name}: a stile cut across"), "The groove, its place from the face, and the moulded edge.");
        }).Scene;
    }

    private Length Value(Setting setting) => inForce[setting].Length;

    private double Size(Setting setting) => Inches(Value(setting));

    // A constant's own dimension: its key is the path by which the page picks it out.
    private Span Named(Sketch on, Setting setting, double from, double to, string word) => Across(on, from, to, Value(setting), word) with { Path = setting.Key };

    private Span NamedUpright(Sketch on, Setting setting, double from, double to, string word) => Upright(on, from, to, Value(setting), word) with { Path = setting.Key };

    private string Said(Setting setting, string word) => $"{word} {format.Print(Value(setting))}";

    private static Span Across(Sketch on, double from, double to, Length value, string? word) => new(on.At(from, 0).X, on.At(to, 0).X, value) { Word = word };

    private static Span Upright(Sketch on, double from, double to, Length value, string? word) => new(on.At(0, from).Y, on.At(0, to).Y, value) { Word = word };

    private static Outline Shape(Sketch on, params (double X, double Y)[] inches) => Outline.Through(true, [.. inches.Select(point => on.At(point.X, point.Y))]);

    private static Outline Box(Sketch on, double left, double bottom, double width, double height) => Outline.Box(on.Box(left, bottom, width, height));

    private static double Inches(Length length) => CurveLength.Inches(length);

    private sealed record Figure(string Description, Action<StandardFigures, Sketch> Draw);

    /// <summary>A groove in inches, counted from the face.</summary>
    private sealed record Groove(double Thick, double Depth, double FromFace, double Width)
    {
        public Groove(CutterSet set)
            : this(Inches(set.ThickestStock.Value), Inches(set.GrooveDepth.Value), Inches(set.GrooveFromFace.Value), Inches(set.GrooveWidth.Value))
        {
        }

        public double Low => FromFace;
        public double High => FromFace + Width;
    }
}
