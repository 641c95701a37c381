using System.Globalization;
using Stilewright.Projects;

namespace Stilewright.Documents.Rules;

internal static class FillingRules
{
    public static IEnumerable<RuleFault> OneLeafTakesTheRest(DoorFilling doors, DocumentPath path)
    {
        if (doors.Leaves.All(leaf => leaf.Width is not null))
            yield return new(path.Field("leaves").Item(doors.Leaves.Count - 1).Field("width"), "every leaf has a width, so none can take what the opening leaves", "leave \"width\" out of one leaf");
    }

    public static IEnumerable<RuleFault> LappedEdgesAreOfAPair(DoorFilling doors, DocumentPath path)
    {
        if (doors.Lapped && doors.Leaves.Count != 2)
            yield return new(path.Field("lapped"), $"lapped meeting edges need a pair, and here the leaves are {doors.Leaves.Count}", "leave \"lapped\" out, or list two leaves");
    }

    public static IEnumerable<RuleFault> LeavesOverrideOnlyWhatIsTheirs(DoorFilling doors, DocumentPath path)
    {
        for (var index = 0; index < doors.Leaves.Count; index++)
        {
            foreach (var setting in doors.Leaves[index].Overrides.Values.Keys.Where(setting => !setting.OfLeaf))
            {
                yield return new(path.Field("leaves").Item(index).Field("overrides").Field(setting.Key),
                    $"the {setting.Label} belongs to the whole front, not to one leaf", "move it to the overrides of the opening");
            }
        }
    }

    /// <summary>A leaf hangs on the frame, or on leaves of which the last hangs on the frame.</summary>
    public static IEnumerable<RuleFault> LeavesHangOnKnownLeaves(DoorFilling doors, DocumentPath path)
    {
        for (var index = 0; index < doors.Leaves.Count; index++)
        {
            if (doors.Leaves[index].HingedTo is not { } name)
                continue;
            var place = path.Field("leaves").Item(index).Field("hingedTo");
            if (Carrier(index) is null)
                yield return new(place, $"no leaf \"{Quote.Shown(name)}\" among {doors.Leaves.Count}", $"write left, right, middle of an odd number, or a number from 1 to {doors.Leaves.Count} counted from the left; leave the key out for the frame");
            else if (!ReachesTheFrame(index))
                yield return new(place, "the leaf is hinged to itself, or round in a circle", "let one of the leaves hang on the frame");
        }

        bool ReachesTheFrame(int leaf)
        {
            int? at = leaf;
            for (var steps = 0; steps <= doors.Leaves.Count && at is not null; steps++)
                at = Carrier(at.Value);
            return at is null;
        }

        int? Carrier(int leaf) => LeafNamed(doors.Leaves[leaf].HingedTo, doors.Leaves.Count);
    }

    public static IEnumerable<RuleFault> EdgesAreOfOverlayFronts(Filling filling, DocumentPath path)
    {
        if (filling.Mount == Mount.Overlay || filling.Edges is not { } edges)
            yield break;
        var given = new[] { edges.Left is null ? null : "left", edges.Right is null ? null : "right", edges.Top is null ? null : "top", edges.Bottom is null ? null : "bottom" };
        foreach (var edge in given.OfType<string>())
            yield return new(path.Field("edges").Field(edge), "only an overlay front laps over the frame", "leave \"edges\" out, or make the mount overlay");
    }

    public static IEnumerable<RuleFault> HeightsMatchTheCount(DrawerFilling drawers, DocumentPath path)
    {
        var (key, listed) = drawers.Heights switch
        {
            ProportionalHeights proportional => ("shares", proportional.Shares.Count),
            GivenHeights given => ("fronts", given.Fronts.Count),
            _ => ("", drawers.Count),
        };
        if (listed != drawers.Count)
            yield return new(path.Field("heights").Field(key), $"{listed} heights are listed for {drawers.Count} fronts", $"list {drawers.Count}, or make \"count\" {listed}");
    }

    public static IEnumerable<RuleFault> RemainderIsInTheBank(DrawerFilling drawers, DocumentPath path)
    {
        if (drawers.RemainderIn > drawers.Count)
            yield return new(path.Field("remainderIn"), $"front {drawers.RemainderIn} is to take the remainder, but there are {drawers.Count}", $"write a number from 1 to {drawers.Count}");
    }

    public static IEnumerable<RuleFault> SharesAreAboveZero(ProportionalHeights heights, DocumentPath path)
    {
        for (var index = 0; index < heights.Shares.Count; index++)
        {
            if (heights.Shares[index] is < 1 or > 1000)
                yield return new(path.Field("shares").Item(index), $"{heights.Shares[index]} is no share", "write a whole number from 1 to 1000");
        }
    }

    public static IEnumerable<RuleFault> OneFrontTakesTheRest(GivenHeights heights, DocumentPath path)
    {
        var open = heights.Fronts.Count(front => front.Height is null);
        if (open != 1)
            yield return new(path.Field("fronts"), open == 0 ? "every front has a height, so none can take the rest" : $"{open} fronts have no height", "give a height to all fronts but one");
    }

    private static int? LeafNamed(string? name, int count) => name switch
    {
        "left" when count > 1 => 0,
        "right" when count > 1 => count - 1,
        "middle" when count > 1 && count % 2 == 1 => count / 2,
        _ when int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= count => number - 1,
        _ => null,
    };
}
