using Stilewright.Measure;
using static Stilewright.Teaching.Worksheets.ProblemFeature;
using static Stilewright.Teaching.Worksheets.SizeKind;

namespace Stilewright.Teaching.Worksheets;

/// <summary>The levels that ship, in inches and in millimetres. Their order and numbers are common practice, no source.</summary>
public static class Levels
{
    private static readonly SizeKind[] First = [Front, Leaf, Clear, Rail];
    private static readonly SizeKind[] WithPanel = [.. First, Panel];
    private static readonly SizeKind[] WithTrim = [.. WithPanel, IntoClamps];
    private static readonly SizeKind[] WithLights = [.. WithPanel, Light, ArchedBlank];
    private static readonly SizeKind[] All = Enum.GetValues<SizeKind>();

    public static IReadOnlyList<Level> Inch { get; } = Make(LengthUnit.Inch, LimitsInInches());

    public static IReadOnlyList<Level> Millimetre { get; } = Make(LengthUnit.Millimetre, LimitsInMillimetres());

    public static IReadOnlyList<Level> For(LengthUnit unit) => unit == LengthUnit.Inch ? Inch : Millimetre;

    private static Level[] Make(LengthUnit unit, ProblemLimits[] limits)
    {
        var steps = unit == LengthUnit.Inch
            ? (First: "whole inches", Second: "halves and quarters", Third: "quarters, halved once more", Fourth: "eighths")
            : (First: "whole centimetres", Second: "every fifth millimetre", Third: "whole millimetres, halved", Fourth: "half millimetres");
        return
        [
            new(1, "First door", $"One door over its opening, in {steps.First}: front, space inside the frame, rails.", unit, BlankStyle.Results, First, limits[0]),
            new(2, "Frame and panel", $"One door with its panel, in {steps.Second}.", unit, BlankStyle.Results, WithPanel, limits[1]),
            new(3, "A pair", $"Two doors on one opening with a gap between them, in {steps.Third}; every figure is put in its place.", unit, BlankStyle.Figures, WithPanel, limits[2]),
            new(4, "Inset, with trim", $"Doors in the opening, glued up larger and trimmed, in {steps.Fourth}.", unit, BlankStyle.Figures, WithTrim, limits[3]),
            new(5, "Arches and mid rails", "Arched top rails and their blanks, equal lights over and under mid rails.", unit, BlankStyle.Figures, WithLights, limits[4]),
            new(6, "Advanced", "Pairs with all of it, down to rough sizes and thicknesses; only the question is asked.", unit, BlankStyle.Question, All, limits[5]),
        ];
    }

    private static ProblemLimits[] LimitsInInches()
    {
        var first = new ProblemLimits(In("1"), In("1/4"), (In("10"), In("16")), (In("20"), In("36")))
        {
            Overlays = [In("1/2")],
            PairGaps = [In("1/8")],
            InsetGaps = [In("1/8")],
            Members = [In("2"), In("2 1/2")],
            GrooveDepths = [In("1/2")],
            Clearances = [In("1/8")],
            Trims = [In("1/8"), In("1/4")],
            Rises = [In("1"), In("1 1/2"), In("2")],
        };
        var second = first with
        {
            Reading = In("1/4"),
            Finest = In("1/8"),
            Overlays = [In("3/8"), In("1/2")],
            Members = [In("2"), In("2 1/4"), In("2 1/2")],
            GrooveDepths = [In("3/8"), In("1/2")],
        };
        var third = second with { Finest = In("1/16"), Always = [Pair], PairGaps = [In("1/8"), In("1/4")], Clearances = [In("1/16"), In("1/8")] };
        var fourth = third with
        {
            Reading = In("1/8"),
            Finest = In("1/32"),
            Always = [Inset, TrimAllowance],
            Sometimes = [Pair],
            InsetGaps = [In("1/16"), In("3/32"), In("1/8")],
            GrooveDepths = [In("3/8"), In("7/16")],
        };
        var fifth = fourth with { Reading = In("1/8"), Always = [Arch], Sometimes = [MidRails, Pair], LeastLeaf = (In("12"), In("24")), MostLeaf = (In("20"), In("46")) };
        var sixth = fifth with
        {
            Reading = In("1/16"),
            Always = [Pair, TrimAllowance, MidRails],
            Sometimes = [Inset, Arch],
            LeastLeaf = (In("12"), In("30")),
            MostLeaf = (In("20"), In("56")),
        };
        return [first, second, third, fourth, fifth, sixth];

        static Length In(string text) => LengthReader.ReadOwn(text, LengthUnit.Inch);
    }

    private static ProblemLimits[] LimitsInMillimetres()
    {
        var first = new ProblemLimits(Mm("10"), Mm("1"), (Mm("250"), Mm("400")), (Mm("500"), Mm("900")))
        {
            Overlays = [Mm("10"), Mm("15")],
            PairGaps = [Mm("3")],
            InsetGaps = [Mm("2")],
            Members = [Mm("50"), Mm("60")],
            GrooveDepths = [Mm("10")],
            Clearances = [Mm("2")],
            Trims = [Mm("4"), Mm("6")],
            Rises = [Mm("30"), Mm("40"), Mm("50")],
        };
        var second = first with { Reading = Mm("5"), Overlays = [Mm("10"), Mm("12"), Mm("16")], Members = [Mm("50"), Mm("55"), Mm("57")], Clearances = [Mm("1"), Mm("2"), Mm("3")] };
        var third = second with { Reading = Mm("1"), Finest = Mm("0.5"), Always = [Pair], PairGaps = [Mm("3"), Mm("4")] };
        var fourth = third with
        {
            Reading = Mm("0.5"),
            Always = [Inset, TrimAllowance],
            Sometimes = [Pair],
            InsetGaps = [Mm("1.5"), Mm("2"), Mm("2.5")],
            GrooveDepths = [Mm("10"), Mm("11")],
            Clearances = [Mm("1.5"), Mm("2"), Mm("3")],
        };
        var fifth = fourth with { Always = [Arch], Sometimes = [MidRails, Pair], LeastLeaf = (Mm("300"), Mm("600")), MostLeaf = (Mm("500"), Mm("1150")) };
        var sixth = fifth with { Always = [Pair, TrimAllowance, MidRails], Sometimes = [Inset, Arch], LeastLeaf = (Mm("300"), Mm("750")), MostLeaf = (Mm("500"), Mm("1400")) };
        return [first, second, third, fourth, fifth, sixth];

        static Length Mm(string text) => LengthReader.ReadOwn(text, LengthUnit.Millimetre);
    }
}
