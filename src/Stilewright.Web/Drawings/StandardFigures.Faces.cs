using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Web.Drawings;

// Fronts, doors and their parts seen from their face.
public sealed partial class StandardFigures
{
    // The opening's left edge leans away from its top corner, where the front laps least.
    private void LeastLap(Sketch on)
    {
        const double High = 2.6, Long = 3.2, Lean = 0.3, Above = 0.9;
        var least = Size(Settings.LeastOverlay);
        var corner = Math.Max(Member, least + 0.5);
        var over = Math.Min(Math.Max(least, 0.1), Above - 0.2);
        on.Wood(Shape(on, (0, 0), (corner + Lean, 0), (corner, High), (corner + Long, High), (corner + Long, High + Above), (0, High + Above)));
        on.Wood(on.Box(corner - least, 0, Long + least, High + over));
        on.Draw(Outline.Through(false, on.At(corner + Lean, 0), on.At(corner, High), on.At(corner + Long, High)), LineStyle.Hidden);
        on.Dimensions(on.Box(0, 0, corner + Long, High + Above), new DimensionRow(Side.Top, [Named(on, Settings.LeastOverlay, corner - least, corner, "least overlay")]));
    }

    private void Bank(Sketch on)
    {
        const double Wide = 3.4, High = 0.85;
        var gap = Size(Settings.GapInBank);
        for (var front = 0; front < 3; front++)
            on.Wood(on.Box(0, front * (High + gap), Wide, High));
        on.Dimensions(on.Box(0, 0, Wide, 3 * High + 2 * gap), new DimensionRow(Side.Right, [NamedUpright(on, Settings.GapInBank, High, High + gap, "gap in the bank")]));
    }

    // Three fronts of a whole that leaves one step over.
    private void BankRemainder(Sketch on)
    {
        const double Wide = 11;
        var (gap, isTop) = (Size(Settings.GapInBank), inForce.Word(Settings.BankRemainder) == "top");
        var (each, other) = Thirds();
        List<Span> heights = [];
        var bottom = 0.0;
        for (var front = 0; front < 3; front++)
        {
            var differs = front == (isTop ? 2 : 0);
            var height = differs ? other : each;
            on.Wood(on.Box(0, bottom, Wide, Inches(height)));
            if (differs)
                on.Named(Settings.BankRemainder.Key, "takes the remainder", on.At(Wide / 2, bottom + Inches(height) / 2));
            heights.Add(Upright(on, bottom, bottom + Inches(height), height, null));
            bottom += Inches(height) + gap;
        }

        on.Dimensions(on.Box(0, 0, Wide, bottom - gap), new DimensionRow(Side.Right, heights));
    }

    private void LightRemainder(Sketch on)
    {
        const double Clear = 15;
        var (stile, rail, mid, isTop) = (Size(Settings.Stile), Size(Settings.Rail), Size(Settings.MidRail), inForce.Word(Settings.LightRemainder) == "top");
        var (each, other) = Thirds();
        var high = 2 * rail + 2 * mid + 2 * Inches(each) + Inches(other);
        on.Wood(on.Box(0, 0, Clear + 2 * stile, high));
        on.Line(on.At(stile, 0), on.At(stile, high)).Line(on.At(stile + Clear, 0), on.At(stile + Clear, high));
        List<Span> heights = [];
        var bottom = rail;
        for (var light = 0; light < 3; light++)
        {
            var differs = light == (isTop ? 2 : 0);
            var height = differs ? other : each;
            on.Panel(Box(on, stile, bottom, Clear, Inches(height)));
            if (differs)
                on.Named(Settings.LightRemainder.Key, "the remainder", on.At(stile + Clear / 2, bottom + Inches(height) / 2));
            heights.Add(Upright(on, bottom, bottom + Inches(height), height, null));
            bottom += Inches(height) + mid;
        }

        on.Dimensions(on.Box(0, 0, Clear + 2 * stile, high), new DimensionRow(Side.Right, heights));
    }

    // Two equal heights on the step, and the third with the step that is over.
    private (Length Each, Length Other) Thirds()
    {
        var step = Value(Settings.Step);
        var each = format.Unit == LengthUnit.Inch ? Length.FromInches(5) : Length.FromMillimetres(130);
        return (each, each + step);
    }

    /// <summary>A frame whose light is a little larger than its members, with the width of one of them.</summary>
    private void Leaf(Sketch on, Setting named)
    {
        const double Clear = 3.4;
        var (stile, rail, width) = (Size(Settings.Stile), Size(Settings.Rail), Size(named));
        var (isMidStile, isMidRail) = (named == Settings.MidStile, named == Settings.MidRail);
        var (wide, high) = (2 * stile + (isMidStile ? 2 * Clear + width : Clear * 1.6), 2 * rail + (isMidRail ? 1.2 * Clear + width : Clear));
        var (across, up) = (isMidStile ? Clear : wide - 2 * stile, isMidRail ? 0.6 * Clear : high - 2 * rail);
        Frame(on, wide, high, stile, rail);
        for (var x = stile; x < wide - stile - Air; x += across + width)
        {
            for (var y = rail; y < high - rail - Air; y += up + width)
                on.Panel(Box(on, x, y, across, up));
        }

        on.Dimensions(on.Box(0, 0, wide, high), named.Key switch
        {
            _ when named == Settings.Stile => new DimensionRow(Side.Bottom, [Named(on, named, 0, stile, "stile width")]),
            _ when named == Settings.Rail => new DimensionRow(Side.Right, [NamedUpright(on, named, 0, rail, "rail width")]),
            _ when isMidRail => new DimensionRow(Side.Right, [NamedUpright(on, named, rail + up, rail + up + width, "mid rail width")]),
            _ => new DimensionRow(Side.Bottom, [Named(on, named, stile + across, stile + across + width, "mid stile width")]),
        });
    }

    // Stiles run through; the light is left as wood, for panels to be laid on.
    private static void Frame(Sketch on, double wide, double high, double stile, double rail)
    {
        on.Wood(on.Box(0, 0, stile, high)).Wood(on.Box(wide - stile, 0, stile, high));
        on.Wood(on.Box(stile, 0, wide - 2 * stile, high));
        on.Line(on.At(stile, rail), on.At(wide - stile, rail)).Line(on.At(stile, high - rail), on.At(wide - stile, high - rail));
    }

    private void Tenon(Sketch on)
    {
        const double Shoulder = 0.35, Long = 2.4;
        var (tenon, rail) = (Size(Settings.Tenon), Math.Max(Size(Settings.Rail), 1));
        var stile = Math.Max(Size(Settings.Stile), tenon + 0.25);
        on.Wood(on.Box(0, 0, stile, rail + 0.6)).Wood(on.Box(stile, 0.6, Long, rail));
        on.Draw(Box(on, stile - tenon, 0.6 + Shoulder, tenon, rail - 2 * Shoulder), LineStyle.Hidden);
        on.Dimensions(on.Box(0, 0, stile + Long, rail + 0.6), new DimensionRow(Side.Bottom, [Named(on, Settings.Tenon, stile - tenon, stile, "tenon length")]));
    }

    // The allowance is drawn wider than it is, or it could not be seen.
    private void Trim(Sketch on, Setting named)
    {
        const double Drawn = 0.22, Wide = 4.4, High = 2.6;
        var isWidth = named == Settings.TrimWidth;
        on.Wood(on.Box(0, 0, Wide, High));
        var half = Value(named) / 2;
        if (isWidth)
            on.Line(on.At(Drawn, 0), on.At(Drawn, High), LineStyle.Hidden).Line(on.At(Wide - Drawn, 0), on.At(Wide - Drawn, High), LineStyle.Hidden);
        else
            on.Line(on.At(0, Drawn), on.At(Wide, Drawn), LineStyle.Hidden).Line(on.At(0, High - Drawn), on.At(Wide, High - Drawn), LineStyle.Hidden);
        on.Named(named.Key, Said(named, "in all"), on.At(Wide / 2, High / 2));
        on.Dimensions(on.Box(0, 0, Wide, High), isWidth
            ? new DimensionRow(Side.Bottom, [Across(on, 0, Drawn, half, "half") with { Path = named.Key }, Across(on, Wide - Drawn, Wide, half, "half") with { Path = named.Key }])
            : new DimensionRow(Side.Right, [Upright(on, 0, Drawn, half, "half") with { Path = named.Key }, Upright(on, High - Drawn, High, half, "half") with { Path = named.Key }]));
    }

    private void Rough(Sketch on, Setting named)
    {
        const double Long = 5.2, Wide = 1.5;
        var allowance = Size(named);
        var isLength = named == Settings.RoughLength;
        var (length, width) = (isLength ? Long + allowance : Long, isLength ? Wide : Wide + allowance);
        on.Wood(on.Box(0, 0, length, width));
        if (isLength)
            on.Line(on.At(Long, 0), on.At(Long, Wide), LineStyle.Hidden);
        else
            on.Line(on.At(0, Wide), on.At(Long, Wide), LineStyle.Hidden);
        on.Word("into the clamps", on.At(Long / 2, Wide / 2));
        on.Dimensions(on.Box(0, 0, length, width), isLength
            ? new DimensionRow(Side.Bottom, [Named(on, named, Long, length, "rough length")])
            : new DimensionRow(Side.Right, [NamedUpright(on, named, Wide, width, "rough width")]));
    }

    private void Field(Sketch on)
    {
        var (field, raise) = (Size(Settings.LeastField), cutters.RaiseWidth is { } width ? Inches(width.Value) : 1);
        var (wide, high) = (field + 2 * raise, field + 2 * raise + 0.6);
        on.Panel(Box(on, 0, 0, wide, high)).Panel(Box(on, raise, raise, field, high - 2 * raise));
        foreach (var (x, inner) in new[] { (0.0, raise), (wide, wide - raise) })
            on.Line(on.At(x, 0), on.At(inner, raise)).Line(on.At(x, high), on.At(inner, high - raise));
        on.Dimensions(on.Box(0, 0, wide, high), new DimensionRow(Side.Bottom, [Named(on, Settings.LeastField, raise, raise + field, "least field")]));
    }

    private void Light(Sketch on)
    {
        var (stile, rail, light) = (Size(Settings.Stile), Size(Settings.Rail), Size(Settings.LeastLight));
        var (wide, high) = (2 * stile + light, 2 * rail + 1.6);
        Frame(on, wide, high, stile, rail);
        on.Panel(Box(on, stile, rail, light, high - 2 * rail));
        on.Dimensions(on.Box(0, 0, wide, high), new DimensionRow(Side.Bottom, [Named(on, Settings.LeastLight, stile, stile + light, "least clear width")]));
    }

    private void WidestPanel(Sketch on)
    {
        const int Lines = 9;
        var wide = Size(Settings.WidestPanel);
        var high = wide * 0.55;
        on.Panel(Box(on, 0, 0, wide, high));
        // Grain, as lines of unlike length.
        for (var line = 1; line < Lines; line++)
            on.Line(on.At(wide * line / Lines, high * (line % 2 == 0 ? 0.06 : 0.2)), on.At(wide * line / Lines, high * (line % 3 == 0 ? 0.75 : 0.94)), LineStyle.Hatch);
        on.Dimensions(on.Box(0, 0, wide, high), new DimensionRow(Side.Bottom, [Named(on, Settings.WidestPanel, 0, wide, "widest panel")]));
    }

    private void WidestDoor(Sketch on)
    {
        var wide = Size(Settings.WidestDoor);
        Undivided(on, wide, wide * 0.6, wide * 0.1);
        on.Dimensions(on.Box(0, 0, wide, wide * 0.6), new DimensionRow(Side.Bottom, [Named(on, Settings.WidestDoor, 0, wide, "widest door")]));
    }

    private void Tallest(Sketch on)
    {
        var high = Size(Settings.TallestUndivided);
        Undivided(on, high * 0.36, high, high * 0.045);
        on.Dimensions(on.Box(0, 0, high * 0.36, high), new DimensionRow(Side.Right, [NamedUpright(on, Settings.TallestUndivided, 0, high, "without a mid rail")]));
    }

    private static void Undivided(Sketch on, double wide, double high, double member)
    {
        Frame(on, wide, high, member, member);
        on.Panel(Box(on, member, member, wide - 2 * member, high - 2 * member));
    }

    private void OutOfLine(Sketch on)
    {
        const double Drawn = 0.14, Wide = 3, High = 0.95, Apart = 0.1;
        on.Wood(on.Box(0, High + Apart, Wide, High)).Wood(on.Box(Drawn, 0, Wide, High));
        on.Line(on.At(0, High + Apart), on.At(0, 0), LineStyle.Centre);
        on.Dimensions(on.Box(0, 0, Wide + Drawn, 2 * High + Apart), new DimensionRow(Side.Bottom, [Named(on, Settings.LineTolerance, 0, Drawn, "out of line")]));
    }

    private void Contradicting(Sketch on)
    {
        const double Wide = 4, High = 2.2, Frame = 0.4, Drawn = 0.2;
        on.Wood(on.Box(-Frame, -Frame, Frame, High + 2 * Frame)).Wood(on.Box(Wide, -Frame, Frame, High + 2 * Frame))
            .Wood(on.Box(0, High, Wide, Frame)).Wood(on.Box(0, -Frame, Wide, Frame));
        var diagonal = Math.Sqrt(Wide * Wide + High * High);
        var (x, y) = (Wide / diagonal, High / diagonal);
        var end = diagonal - Drawn;
        on.Line(on.At(0, 0), on.At(x * end, y * end), LineStyle.Dimension);
        on.Between(on.At(x * end, y * end), on.At(Wide, High), Settings.ReadingTolerance.Key, "");
        on.Named(Settings.ReadingTolerance.Key, Said(Settings.ReadingTolerance, "they differ by"), on.At(Wide / 2 - 0.2, High - 0.45));
        on.Word("diagonal as read", on.At(Wide / 2 + 0.5, 0.4));
    }
}
