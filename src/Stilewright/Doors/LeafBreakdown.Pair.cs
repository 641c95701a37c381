using Fractions;
using Stilewright.Curves;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Doors;

internal sealed partial class LeafBreakdown
{
    /// <summary>What an arch across the pair leaves to this leaf.</summary>
    /// <param name="Span">From hinge-stile sight line to hinge-stile sight line; with a crown at each meeting stile, twice the leaf's clear width.</param>
    /// <param name="Rise">From the spring line to the highest place in this leaf.</param>
    /// <param name="Lower">How much lower that is than the highest place in the other leaf; null where it is not.</param>
    private sealed record PairStretch(Worked Span, Worked Rise, Worked? Lower, PairPart Part)
    {
        public Worked Width => Part.Width;
    }

    // Both leaves spring at one height, so that the curve runs on across the gap: a leaf in which it stays lower has the wider rail.
    private static Worked Narrowest(Worked rail, PairStretch? stretch, string end) =>
        stretch?.Lower is { } lower ? (rail + lower).As($"{end} rail width at its narrowest", $"leaf/rail.{end}.width.narrowest") : rail;

    // False where a finding says that no such arch can be built; no stretch where each leaf has its own arch.
    private bool AcrossPair(Arch? arch, string end, Members members, Worked clearWidth, out PairStretch? stretch)
    {
        stretch = null;
        if (arch?.AcrossPair is not { } crown)
            return true;
        if (plan.LeavesOfFront == 1)
        {
            Report(Rules.ArchOnOneLeaf, $"The {end} arch is meant to run across a pair, and this front has one leaf, which takes a whole arch of its own.",
                $"Look whether its rise suits the narrower span; if not, give this leaf a design of its own.", $"{end}Arch/acrossPair");
            return true;
        }

        if (plan.Mate is not { } mate || (plan.Hinge, mate.Leaf.Hinge) != (IsLeftOfPair ? (HingeSide.Left, HingeSide.Right) : (HingeSide.Right, HingeSide.Left)))
        {
            Report(Rules.ArchNeedsPair, plan.LeavesOfFront == 2
                    ? (FormattableString)$"The {end} arch runs across a pair, which is hinged on its outer sides; these two leaves are not."
                    : $"The {end} arch runs across a pair, and this front has {plan.LeavesOfFront} leaves.",
                $"Leave \"acrossPair\" out, so that each leaf has its own arch, or make a pair of them.", $"{end}Arch/acrossPair");
            return false;
        }

        if (mate.Leaf.Design != plan.Design)
        {
            Report(Rules.ArchNeedsPair, $"The {end} arch runs across the pair, and its leaves have two designs, {plan.Design} and {mate.Leaf.Design}.",
                $"Give both leaves one design, or leave \"acrossPair\" out.", $"{end}Arch/acrossPair");
            return false;
        }

        var others = new LeafBreakdown(mate.Leaf, design, []).FrameMembers();
        var otherClear = mate.Leaf.Width.LessBoth(others.Left, others.Right).As("clear width of the other leaf", "leaf/pair.clear.width");
        if (!otherClear.Amount.IsPositive)
        {
            Report(Rules.ArchNeedsPair, $"The {end} arch runs across the pair, and the stiles of the other leaf leave nothing clear.",
                $"Use narrower stiles, or leave \"acrossPair\" out.", $"{end}Arch/acrossPair");
            return false;
        }

        var span = crown == PairCrown.EachMeetingStile
            ? (2 * clearWidth).As("span of the whole curve", $"leaf/arch.{end}.span")
            : SpanOfPair(members, others, mate).As("span across the pair", $"leaf/arch.{end}.span");
        if (!CurveIsSound(arch, end) || Rise(arch, end, span) is not { } rise || !SingleArcFits(arch, rise, span, end))
            return false;
        var whole = Shape(arch, span, rise, end);
        if (!ArchDraws(whole, end))
            return false;

        var curve = ((ArchResult.Drawn)Drawn(whole)).Curve;
        var meeting = mate.Side;
        var own = RiseIn(arch, end, whole, curve, clearWidth, meeting, "this leaf");
        if (own is null)
            return false;
        var other = otherClear.Amount == clearWidth.Amount && arch.Family != ArchFamily.Drawn ? own
            // A half-round over a leaf's own width rises as far as that is.
            : crown == PairCrown.EachMeetingStile ? Rise(arch, end, 2 * otherClear)
            : RiseIn(arch, end, whole, curve, otherClear, IsLeftOfPair ? Side.Left : Side.Right, "the other leaf");
        if (other is null)
            return false;
        var isMirrored = otherClear.Amount == clearWidth.Amount && (whole.Drawn is not { } drawn || DrawnCurve.IsSymmetric(drawn));
        stretch = new(span, own, own.Amount < other.Amount ? other - own : null, new(rise, clearWidth, meeting, isMirrored));
        return true;
    }

    private bool IsLeftOfPair => plan.Mate?.Side == Side.Right;

    private Worked SpanOfPair(Members members, Members others, PairMate mate)
    {
        var (left, right) = IsLeftOfPair ? (Width, mate.Leaf.Width) : (mate.Leaf.Width, Width);
        var (leftStile, rightStile) = IsLeftOfPair ? (members.Left, others.Right) : (others.Left, members.Right);
        var both = Worked.Both(left, right);
        return (mate.IsLapped ? both - mate.Between : both + mate.Between).LessBoth(leftStile, rightStile);
    }

    // A single arc rises at most half its span; what the other families allow their drawing tells.
    private bool SingleArcFits(Arch arch, Worked rise, Worked span, string end)
    {
        var between = span.Length - ((arch.Shoulder?.Value ?? default) * 2);
        if (between.IsPositive && (arch.Family is not (ArchFamily.Eyebrow or ArchFamily.Stepped or ArchFamily.HalfRound) || rise.Length <= between / 2))
            return true;
        var most = Length.Greatest(default, between / 2).OnStep(standard[Shop.Settings.Step].Length, StepDirection.Down);
        Report(Rules.ArchTooHigh, $"The {end} arch rises {rise.Length} over {between} of the pair.", $"Let it rise at most {most}, or make the pair wider.", $"{end}Arch/rise");
        return false;
    }

    // The rise of the part of the curve over one leaf; null, with a finding, where the curve is level there.
    private Worked? RiseIn(Arch arch, string end, ArchShape whole, ArchCurve curve, Worked clear, Side meeting, string leaf)
    {
        var top = LeafCurves.PartOf(curve, clear, meeting).Chain.Box.Top;
        if (top <= CurveTolerance.CrumbInches)
        {
            Report(Rules.ArchCannotBeDrawn, $"The {end} arch across the pair does not rise in {leaf}, which is clear by {clear.Length}.",
                $"Use shorter shoulders, a narrower meeting stile or a wider leaf.", $"{end}Arch/{(arch.Family == ArchFamily.Drawn ? "curve" : "shoulder")}");
            return null;
        }

        if (arch.Family == ArchFamily.Drawn)
        {
            return new Given($"leaf/arch.{end}.rise", $"rise of the drawn curve in {leaf}", CurveOf(arch, end).HeightAt(top),
                new(OriginKind.Design, $"design/{design.Id}/{end}Arch/curve"));
        }

        var half = (whole.Span / 2).As("half the span", $"leaf/arch.{end}.span.half");
        if (half.Amount <= clear.Amount)
            return whole.Rise;
        var name = leaf == "this leaf" ? "rise at the meeting stile" : "rise at the other leaf's meeting stile";
        return HeightAt(whole, half, half - clear, end).As(name, $"leaf/arch.{end}.{(leaf == "this leaf" ? "meeting" : "meeting.other")}.rise");
    }

    /// <summary>The height of a symmetric arch beside its crown, by the circle that it follows there.</summary>
    /// <remarks>Radii as in <see cref="ArchFamilies"/>: R = (x² + a²) / 2a of an arc with half the chord x and the height a.</remarks>
    private static Worked HeightAt(ArchShape arch, Worked halfSpan, Worked offMiddle, string end)
    {
        var a = arch.Rise;
        var x = arch.Shoulder is { Amount.IsZero: false } shoulder
            ? (halfSpan - shoulder).As("half the width between the shoulders", $"leaf/arch.{end}.half") : halfSpan;
        var m = offMiddle.As("from the crown to the meeting sight line", $"leaf/arch.{end}.off-middle");
        Worked Radius(Worked worked, string name = "radius") => worked.As(name, $"leaf/arch.{end}.{name.Replace(' ', '.')}");
        static Worked Square(Worked side) => side * side;
        switch (arch.Family)
        {
            case ArchFamily.HalfRound:
                return new SquareRoot(Square(x) - Square(m));
            case ArchFamily.Eyebrow:
                return UnderTop(Radius((Square(x) + Square(a)) / (2 * a)));
            case ArchFamily.Stepped:
                var arc = (a / 2).As("rise of the arc over the step", $"leaf/arch.{end}.arc.rise");
                return UnderTop(Radius((Square(x) + Square(arc)) / (2 * arc)));
            case ArchFamily.Pointed when a.Amount > x.Amount:
                // The centre of the arc lies on the spring line, R from the hinge stile.
                var level = Radius((Square(x) + Square(a)) / (2 * x));
                return new SquareRoot(Square(level) - Square(level - x + m));
            case ArchFamily.Pointed:
                // The centre lies q × (a, −x) from the middle of the chord, and R² = (1/4 + q²)(x² + a²).
                var chord = Square(x) + Square(a);
                var flat = Radius(chord / a);
                var q = new SquareRoot((chord / Square(a)) - new Number(new Fraction(1, 4))).As("centre off the chord over chord", $"leaf/arch.{end}.centre");
                return new SquareRoot(Square(flat) - Square((x / 2) - (q * a) - m)) - ((q * x) - (a / 2));
            default:
                var together = Radius((Square(x) + Square(a)) / (2 * a), "both radii together");
                var ofCrown = Fraction.One / (arch.ReverseToCrown + Fraction.One);
                if (m.Amount <= x.Amount * ofCrown)
                    return UnderTop(Radius(together * new Number(ofCrown), "radius of the crown"));
                var reverse = Radius(together * new Number(Fraction.One - ofCrown), "radius of the reverse arc");
                return reverse - new SquareRoot(Square(reverse) - Square(x - m));
        }

        Worked UnderTop(Worked radius) => new SquareRoot(Square(radius) - Square(m)) - (radius - a);
    }
}
