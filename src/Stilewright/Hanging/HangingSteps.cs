using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Hanging;

/// <summary>How a leaf is bored and hung, step by step, with its figures.</summary>
public static class HangingSteps
{
    private static readonly Source Practice = Source.CommonPractice;

    private static readonly Length UsualTravel = Length.FromInches(new(1, 8));

    private static readonly Source Machinery = Source.Published("29 CFR 1910.213, woodworking machinery: general requirements; the machine's manual and the instructor come first");

    public static IReadOnlyList<HangingStep> Of(HungLeaf leaf)
    {
        var hinge = leaf.Hinge;
        List<HangingStep> steps = [];
        if (leaf.Sheet is { } sheet)
        {
            steps.Add(new("Before boring", $"Boring is machine work: read the manual, keep guards in place and hands away from the bit, and clamp small work. Unplug before the bit is changed.", null, Machinery, IsCaution: true));
            steps.Add(new("Mark", leaf.Hand.HasTop ? (FormattableString)$"Mark the top and the hinge edge on the back: seen from the back it is the {Words(sheet.Edge)} edge." : $"Either way round will do. Choose a top and mark it, and mark the hinge edge on the back: seen from the back it is the {Words(sheet.Edge)} edge.", null, Practice, IsOfHand: true));
            steps.Add(new("Bore", $"Set the depth stop to {hinge.Cup!.Depth.WithUnit} on scrap as thick as the leaf. Bore cups of {hinge.Cup.Diameter.WithUnit}, their near edge {sheet.Distance} from the edge, their centre {sheet.CupCentre}.", sheet.CupCentre, Practice));
            if (hinge.Cup is { ScrewSpacing: { } spacing })
                steps.Add(new("Screw holes beside the cup", hinge.Cup.ScrewOffset is { } behind ? (FormattableString)$"Their centres are {spacing.WithUnit} apart, {behind.WithUnit} behind the cup's centre." : $"Their centres are {spacing.WithUnit} apart.", null, HingeSheet(hinge)));
        }

        var screws = hinge.Screws is { } words ? words : "the screws that came with the hinge";
        steps.Add(new("Screws in the leaf", hinge.Pilot is { } pilot
            ? (FormattableString)$"Drill pilot holes of {pilot.WithUnit} with a stop, then drive {screws} until they seat, and no further: a stripped hole holds nothing."
            : $"Drill pilot holes by the screw's own table, with a stop, then drive {screws} until they seat, and no further: a stripped hole holds nothing.", null, hinge.Pilot is null ? Practice : HingeSheet(hinge)));
        if (Support(leaf) is { } support)
            steps.Add(support);
        steps.Add(leaf.Leaf.Hinge is HingeSide.Left or HingeSide.Right
            ? new("Hang", $"Top hinge first, with one screw; then the bottom one, then those between. See that the door swings before the other screws go in.", null, Practice)
            : new("Hang", $"One end first, with one screw, then the other, then those between. Have someone hold the leaf.", null, Practice));
        if (leaf.Fit is { Plate: { } plate })
            steps.Add(new("Plates", $"Use plates {plate} high.", plate, HingeSheet(hinge)));
        steps.Add(new("Adjust", leaf.Fit is { } fit && !leaf.IsAsWanted
            ? (FormattableString)$"The hinge gives {fit.Comes} where {fit.Wanted} is wanted; the side screw makes good {Length.Abs(fit.Error)}. A screw usually moves a leaf {UsualTravel} at most, so it hides no more than that."
            : $"Even the gaps with the screws. A screw usually moves a leaf {UsualTravel} at most, so it hides no more than that.", null, Source.Published("up to 1/8 in in any one direction: cabinet field installation and service manual, 2017")));
        if (leaf.Front.Mount is Mount.Overlay)
            steps.Add(new("Bumpers", $"Put bumpers of {Length.FromInches(new(1, 16))} to {Length.FromInches(new(1, 8))} on the pull side, and set the hinges' depth to match, or the leaf stands proud there.", null, Practice));
        return steps;
    }

    /// <summary>What holds the leaf up while it is hung: a ledger under an overlay front, shims under an inset one. Null where no frame is below it.</summary>
    public static HangingStep? Support(HungLeaf leaf)
    {
        if (leaf.Front.Edges.FirstOrDefault(edge => edge.Side == Side.Bottom) is null || leaf.Front.Mount is not { } mount)
            return null;
        var (bottom, top) = (Reaches.Left(leaf.Front, leaf.Leaf, Side.Bottom), Reaches.Left(leaf.Front, leaf.Leaf, Side.Top));
        var isEven = bottom.Length == top.Length;
        if (mount == Mount.Inset)
        {
            return new("Shims", isEven ? (FormattableString)$"Set the leaf in the opening on shims {bottom} thick: the gap at the top is then the same."
                : $"Set the leaf in the opening on shims {bottom} thick; the gap at the top comes to {top}.", bottom.As("shim", "hanging/shim"), Practice);
        }

        return new("Ledger", isEven ? (FormattableString)$"Clamp a straight ledger to the frame, its upper edge {bottom} below the opening, and stand the leaf on it: the overlap at the bottom then equals that at the top."
            : $"Clamp a straight ledger to the frame, its upper edge {bottom} below the opening, and stand the leaf on it; the overlap at the top comes to {top}.", bottom.As("ledger below the opening", "hanging/ledger"), Practice);
    }

    private static Source HingeSheet(HingeKind hinge) => hinge.Source is { } text ? Source.Published(text) : Source.Shop;

    private static string Words(Side side) => side.ToString().ToLowerInvariant();
}
