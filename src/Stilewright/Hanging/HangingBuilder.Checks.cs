using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Hanging;

// What stands against a hinge on its leaf and its frame.
internal sealed partial class HangingBuilder
{
    private void Check(Hanging one)
    {
        CheckNumber(one);
        CheckFrame(one);
        CheckLeaf(one);
        CheckSwing(one);
    }

    private void Report(Hanging one, Rule rule, FormattableString problem, FormattableString advice, Setting? setting = null) =>
        findings.Add(new(rule, new(one.Leaf.Path, setting is null ? null : $"overrides/{setting.Key}"), problem, advice));

    private void CheckNumber(Hanging one)
    {
        var number = one.Number;
        if (number.ByTable is null)
        {
            Report(one, Rules.HingeNumberUnknown, $"The table of hinge numbers goes by weight, and nothing tells this leaf's; {(int)number.Count.Amount} hinges are planned.",
                $"Choose a table by height, or weigh the leaf.", Settings.HingeCountTable);
        }
        else if (number.IsBeyond)
        {
            Report(one, Rules.HingeNumberUnknown, $"The hinge edge is {one.Along} long, and the leaf is beyond the last row of its table; the {(int)number.ByTable.Amount} of that row are taken.",
                $"Try a hanging with the real leaf, or divide it.", Settings.HingeCountTable);
        }

        if (number.ByTable is { } asked && number.Count.Amount < asked.Amount)
            Report(one, Rules.HingeTooFew, $"It gets {(int)number.Count.Amount} hinges; its table says {(int)asked.Amount}.", $"Give it {(int)asked.Amount}, or try a hanging with the real leaf.", Settings.HingeNumber);

        var spacing = one.Last!.FromStart.Length - one.First!.FromStart.Length;
        if (one.IsUpright && spacing <= one.Leaf.Width.Length)
        {
            Report(one, Rules.HingeSpacing, $"Its outer hinges stand {spacing} apart, and it is {one.Leaf.Width} wide.",
                $"Set them nearer to the ends, or expect it to sag; a pair hangs better.", Settings.HingeFromEnd);
        }
    }

    private void CheckFrame(Hanging one)
    {
        var hinge = one.Hinge;
        if (one.Front.Mount is { } mount && mount != hinge.Mount)
        {
            Report(one, Rules.HingeWrongMount, $"'{hinge.Name}' is for {Words(hinge.Mount)} fronts; this one is {Words(mount)}.", $"Choose a hinge for {Words(mount)} fronts.", Settings.UsualHinge);
        }
        else if (one.Fit is { } fit && !IsMadeGood(one, fit.Error))
        {
            var what = hinge.KeepsGap ? "gap" : "overlay";
            Report(one, Rules.HingeOverlay, fit.Distance is null
                    ? (FormattableString)$"The {what} on its hinge side is {fit.Wanted}; '{hinge.Name}' gives {fit.Comes}."
                    : $"The {what} on its hinge side is {fit.Wanted}; '{hinge.Name}' bored at {fit.Distance} gives {fit.Comes}.",
                $"Let the {what} be {fit.Comes.Length.OnStep(one.Standard[Settings.Step].Length, StepDirection.Nearest)} on that side, or choose another hinge{(fit.Distance is null ? "" : ", plate or boring distance")}.", Settings.UsualHinge);
        }

        if (hinge.Cup is { } cup && one.Standard.LengthOrWord(Settings.BoringDistance) is { } set && (set.Length < cup.LeastDistance.Value || set.Length > cup.GreatestDistance.Value))
        {
            Report(one, Rules.HingeDistance, $"It is to be bored at {set}; '{hinge.Name}' takes {cup.LeastDistance.Value} to {cup.GreatestDistance.Value}.",
                $"Bore between {cup.LeastDistance.Value} and {cup.GreatestDistance.Value}, or choose another hinge.", Settings.BoringDistance);
        }

        if (one.Fit is not null && hinge.LeastMember is { } least && EdgeAt(one)?.Member is { } member && member < least.Value)
        {
            Report(one, Rules.HingeMember, $"The frame member on its hinge side is {member} wide; '{hinge.Name}' needs {least.Value}.",
                $"Choose a hinge for a narrower member, or widen the member by {least.Value - member}.", Settings.UsualHinge);
        }
    }

    // What the side screw takes; without one, less than a cutting step does not show.
    private static bool IsMadeGood(Hanging one, Length error)
    {
        var step = one.Standard[Settings.Step].Length;
        var sideways = one.Hinge.Adjustment?.Sideways;
        // Too much overlay is taken back by minus; too wide a gap is closed by plus.
        var towards = one.Hinge.KeepsGap ? !error.IsNegative : error.IsNegative;
        var travel = sideways is null ? step : Length.Greatest(step, towards ? sideways.Plus.Value : sideways.Minus.Value);
        return Length.Abs(error) <= travel;
    }

    private static EdgeReach? EdgeAt(Hanging one) => one.Front.Edges.FirstOrDefault(edge => edge.Side == BoringSheet.EdgeOf(one.Leaf.Hinge));

    private static string Words(Mount mount) => mount.ToString().ToLowerInvariant();

    private void CheckLeaf(Hanging one)
    {
        var (hinge, leaf) = (one.Hinge, one.Leaf);
        var edge = BoringSheet.EdgeOf(leaf.Hinge);
        var member = leaf.Parts.FirstOrDefault(part => part.Path.EndsWith(edge switch
        {
            Side.Left => "/stile.left",
            Side.Right => "/stile.right",
            Side.Top => "/rail.top",
            _ => "/rail.bottom",
        }, StringComparison.Ordinal));
        var wood = member ?? leaf.Parts[0];
        if (wood.Thickness is { } stages)
            CheckThickness(one, stages.Final.Length);
        if (hinge.Cup is { } cup && leaf.Rabbeted.Contains(edge))
        {
            Report(one, Rules.HingeCupInRabbet, $"Its hinge edge is rabbeted on the back, where a cup of {cup.Diameter.Value} would be bored.", $"Use a hinge for lipped fronts, or do not lip that edge.", Settings.UsualHinge);
        }

        if (member is null)
            return;
        var width = member.VisibleBounds is var box && edge is Side.Left or Side.Right ? box.Width : box.Height;
        var what = edge is Side.Left or Side.Right ? "stile" : "rail";
        if (hinge.LeastStile is { } asked && width < asked.Value)
        {
            Report(one, Rules.HingeStile, $"Its hinge {what} is {width} wide; '{hinge.Name}' needs {asked.Value}.", $"Make it {asked.Value - width} wider, or choose another hinge.");
        }
        else if (hinge.Cup is { } bored && one.Design?.Cutters is { } id && one.Standard.Standard.Cutter(id) is { } cutters
            && (one.Fit?.Distance?.Length ?? bored.LeastDistance.Value) is var distance && distance + bored.Diameter.Value + cutters.GrooveDepth.Value is var needed && width < needed)
        {
            Report(one, Rules.HingeStile,
                $"Its hinge {what} is {width} wide; a cup of {bored.Diameter.Value} bored at {distance} ahead of a groove {cutters.GrooveDepth.Value} deep needs {needed}.",
                $"Make it {needed.OnStep(one.Standard[Settings.Step].Length, StepDirection.Up)}{(needed - width <= distance - bored.LeastDistance.Value ? $" or bore nearer to the edge" : "")}: the cup would cut into groove and panel.");
        }
    }

    private void CheckThickness(Hanging one, Length final)
    {
        var hinge = one.Hinge;
        if (hinge.ThinnestLeaf is { } thin && final < thin.Value)
            Report(one, Rules.HingeThickness, $"The leaf is {final} thick; '{hinge.Name}' takes {thin.Value} and more.", $"Choose another hinge or thicker stock.", Settings.UsualHinge);
        else if (hinge.ThickestLeaf is { } thick && final > thick.Value)
            Report(one, Rules.HingeThickness, $"The leaf is {final} thick; '{hinge.Name}' takes {thick.Value} at most.", $"Choose another hinge or thinner stock.", Settings.UsualHinge);
        var floor = one.Standard[Settings.LeastUnderCup].Length;
        if (hinge.Cup is { } cup && final - cup.Depth.Value < floor)
        {
            var left = final - cup.Depth.Value;
            Report(one, Rules.HingeCupDeep, left.IsPositive
                    ? (FormattableString)$"A cup {cup.Depth.Value} deep leaves {left} of a leaf {final} thick; the least is {floor}."
                    : $"A cup {cup.Depth.Value} deep comes through a leaf {final} thick.",
                $"Use stock that ends at {cup.Depth.Value + floor} or more, or a shallower cup. Set the depth stop on scrap of the same thickness.");
        }
        else if (hinge.Cup is { } bored && one.Design?.EdgeWidth is { } moulded && (one.Fit?.Distance?.Length ?? bored.LeastDistance.Value) is var distance && distance < moulded.Value)
        {
            CheckMoulding(one, final, bored, distance, moulded.Value, floor);
        }
    }

    // The moulding's profile is not known, so that all of it counts as deep as its deepest place.
    private void CheckMoulding(Hanging one, Length final, CupBoring cup, Length distance, Length width, Length floor)
    {
        if (one.Design!.EdgeDepth is not { } depth)
        {
            Report(one, Rules.HingeCupUnderMoulding, $"The moulding of the edge comes in {width} and the cup begins at {distance}; how deep the moulding is nobody said.",
                $"Enter its depth in the design, or bore at {width} or more.");
        }
        else if (final - cup.Depth.Value - depth.Value is var left && left < floor)
        {
            Report(one, Rules.HingeCupUnderMoulding, left.IsPositive
                    ? (FormattableString)$"A cup {cup.Depth.Value} deep under a moulding {depth.Value} deep leaves {left} of a leaf {final} thick; the least is {floor}."
                    : $"A cup {cup.Depth.Value} deep meets a moulding {depth.Value} deep in a leaf {final} thick.",
                $"Bore at {width} or more from the edge, where the hinge allows it, or mould no deeper than {final - cup.Depth.Value - floor}.");
        }
    }

    // Rows are by thickness, then by distance: of the first thickness that is enough, the row of the greatest distance that is reached.
    private void CheckSwing(Hanging one)
    {
        if (one.Hinge.Gaps.Count == 0 || one.Fit is null || EdgeAt(one) is not { } edge
            || one.Leaf.Parts[0].Thickness is not { } stages)
            return;
        var (final, distance) = (stages.Final.Length, one.Fit.Distance?.Length ?? default);
        var thickness = one.Hinge.Gaps.Where(row => row.Thickness.Value >= final).Select(row => (Length?)row.Thickness.Value).Min();
        var row = one.Hinge.Gaps.Where(gap => gap.Thickness.Value == thickness && (gap.BoringDistance is not { } from || from.Value <= distance))
            .MinBy(gap => gap.Gap.Value.Inches);
        if (row is null)
            return;
        var isInset = one.Front.Mount == Mount.Inset;
        var hasDoorBeside = !isInset && hangings.Any(other => edge.Neighbours.Contains(other.Front.Path) && FacesBack(one, other));
        var air = isInset ? Length.Abs(edge.Reach) : edge.Beyond is BeyondKind.Opening or BeyondKind.Wall ? edge.Reveal : null;
        var needed = hasDoorBeside ? row.Gap.Value * 2 : row.Gap.Value;
        if (air is { } left && left < needed)
        {
            Report(one, Rules.HingeSwing,
                hasDoorBeside ? (FormattableString)$"Only {left} is left to the door beside it, which is hinged on the same member; two leaves {final} thick need {needed}."
                    : $"Only {left} is left on its hinge side; a leaf {final} thick needs {needed} to swing.",
                $"Leave {needed.OnStep(one.Standard[Settings.Step].Length, StepDirection.Up)}, bore at a greater distance, or ease the back edge.");
        }
    }

    private static bool FacesBack(Hanging one, Hanging other) => (one.Leaf.Hinge, other.Leaf.Hinge) is (HingeSide.Left, HingeSide.Right) or (HingeSide.Right, HingeSide.Left);
}
