using System.Globalization;
using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Scenes;
using Stilewright.Shop;

namespace Stilewright.Web.Drawings;

// Hinges on the backs of leaves; a hinge is told by its outline.
public sealed partial class StandardFigures
{
    private const double HingeWide = 1.4, HingeHigh = 1.4;

    private void UsualHinge(Sketch on)
    {
        const double Wide = 12, High = 13;
        var id = inForce.Word(Settings.UsualHinge);
        on.Wood(on.Box(0, 0, Wide, High));
        if (id != Settings.NoHinge)
        {
            foreach (var at in new[] { 2.5, High - 2.5 })
                HingeAt(on, Wide, at, standard.Hinge(id)?.Style);
        }

        on.Named(Settings.UsualHinge.Key, id == Settings.NoHinge ? "no hinge" : standard.NameOf(Settings.UsualHinge, id), on.At(Wide / 2, -1));
    }

    // The bored edge of a leaf's back is on the right; what hinges hold lies inside it, a wing wraps over the edge.
    private static void HingeAt(Sketch on, double edge, double middle, HingeStyle? style)
    {
        if (style is null or HingeStyle.Cup)
        {
            Disc(on, edge - 0.15 - HingeWide / 2, middle);
            return;
        }

        var inside = style == HingeStyle.Butt ? 0.3 : HingeWide;
        on.Draw(Box(on, edge - inside, middle - HingeHigh / 2, inside, HingeHigh), LineStyle.Visible);
        on.Draw(Box(on, edge, middle - HingeHigh / 2, 0.5, HingeHigh), LineStyle.Visible);
    }

    private static void Disc(Sketch on, double x, double y)
    {
        const int Corners = 48;
        on.Draw(Outline.Through(true, [.. Enumerable.Range(0, Corners).Select(i => Math.SinCos(Math.Tau * i / Corners)).Select(at => on.At(x + at.Cos * HingeWide / 2, y + at.Sin * HingeHigh / 2))]), LineStyle.Visible);
    }

    private void HingeFromEnd(Sketch on)
    {
        const double Wide = 6;
        var from = Size(Settings.HingeFromEnd);
        var high = from + 3;
        on.Wood(on.Box(0, 0, Wide, high));
        HingeAt(on, Wide, from, HingeStyle.Cup);
        on.Dimensions(on.Box(0, 0, Wide, high), new DimensionRow(Side.Right, [NamedUpright(on, Settings.HingeFromEnd, 0, from, "from the end")]));
    }

    private void HingeFrom(Sketch on)
    {
        const double Wide = 7, High = 5.4, Over = 1, At = 3.6;
        var isOfDoor = inForce.Word(Settings.HingeFrom) == Settings.FromDoor;
        on.Wood(on.Box(0, 0, Wide, High));
        on.Draw(Outline.Through(false, on.At(0, Over), on.At(Wide - Over, Over), on.At(Wide - Over, High)), LineStyle.Hidden);
        HingeAt(on, Wide, At, HingeStyle.Cup);
        on.Measure(on.At(Wide - 3, isOfDoor ? 0 : Over), on.At(Wide - 3, At), "");
        on.Named(Settings.HingeFrom.Key, isOfDoor ? "from the door" : "from the opening", on.At(Wide / 2, -0.5));
    }

    private void HingeNumber(Sketch on)
    {
        const double Wide = 9, High = 14;
        var number = inForce.Word(Settings.HingeNumber);
        var isByTable = number == Settings.ByTable;
        var count = isByTable ? 2 : int.Parse(number, CultureInfo.InvariantCulture);
        on.Wood(on.Box(0, 0, Wide, High));
        for (var i = 0; i < count; i++)
            HingeAt(on, Wide, 1.5 + (High - 3) * i / (count - 1), HingeStyle.Cup);
        on.Named(Settings.HingeNumber.Key, isByTable ? "as its table says" : $"{number} hinges", on.At(Wide / 2 - 0.6, High / 2));
    }

    // A leaf for every row, each higher than the one before, with its number.
    private void HingeCountTable(Sketch on)
    {
        const double Apart = 3.4, Wide = 2.2, Lowest = 3, Rise = 1.2;
        var id = inForce.Word(Settings.HingeCountTable);
        var counts = standard.CountTable(id) is { } table ? table.ByHeight.Count > 0 ? [.. table.ByHeight.Select(row => row.Count)] : table.ByWeight.Select(row => row.Count).ToList() : [];
        for (var i = 0; i < counts.Count; i++)
        {
            on.Wood(on.Box(i * Apart, 0, Wide, Lowest + i * Rise));
            on.Word(counts[i].ToString(CultureInfo.InvariantCulture), on.At(i * Apart + Wide / 2, (Lowest + i * Rise) / 2));
        }

        on.Named(Settings.HingeCountTable.Key, standard.NameOf(Settings.HingeCountTable, id), on.At(Math.Max(1, counts.Count) * Apart / 2 - 0.6, -0.9));
    }

    private void BoringDistance(Sketch on)
    {
        const double Usual = 0.16, High = 2.4;
        var isSet = inForce.LengthOrWord(Settings.BoringDistance) is not null;
        var distance = isSet ? Size(Settings.BoringDistance) : Usual;
        on.Wood(on.Box(-distance - HingeWide - 0.9, 0, distance + HingeWide + 0.9, High));
        Disc(on, -distance - HingeWide / 2, High / 2);
        on.Between(on.At(-distance, High / 2), on.At(0, High / 2), Settings.BoringDistance.Key, isSet ? Said(Settings.BoringDistance, "bored at") : "to suit");
    }

    private void HingeClear(Sketch on)
    {
        const double Wide = 5, Shelf = 0.75, Below = 1.6;
        var clear = Size(Settings.HingeClear);
        var (top, middle) = (Below + Shelf, Below + Shelf + clear);
        var high = middle + 2;
        on.Wood(on.Box(0, 0, Wide, high));
        on.Draw(Box(on, 0.6, Below, Wide - 0.6, Shelf), LineStyle.Hidden);
        HingeAt(on, Wide, middle, HingeStyle.Cup);
        on.Dimensions(on.Box(0, 0, Wide, high), new DimensionRow(Side.Right, [NamedUpright(on, Settings.HingeClear, top, middle, "clear of the shelf")]));
    }

    private void UnderCup(Sketch on)
    {
        const double Wide = 2.6, Deep = 0.5;
        var floor = Size(Settings.LeastUnderCup);
        var (left, right, thick) = (0.6, 0.6 + HingeWide, floor + Deep);
        on.EndGrain(Shape(on, (0, 0), (Wide, 0), (Wide, thick), (right, thick), (right, floor), (left, floor), (left, thick), (0, thick)));
        on.Dimensions(on.Box(0, 0, Wide, thick), new DimensionRow(Side.Right, [NamedUpright(on, Settings.LeastUnderCup, 0, floor, "least wood")]));
    }
}
