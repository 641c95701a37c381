using Stilewright.Doors;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Hanging;

/// <summary>Short ways to hang doors for tests.</summary>
internal static class Hinged
{
    public const string Wrap = "example-wrap-around", Compact = "example-cup-compact", Plated = "example-cup-plate", InsetCup = "example-cup-inset";

    public static LengthEntry Mm(string text) => new(text, LengthReader.ReadOwn(text, LengthUnit.Millimetre));

    public static HouseStandard Changed(string id, Func<HingeKind, HingeKind> change) => ShippedStandards.Inch with
    {
        Hinges = [.. ShippedStandards.Inch.Hinges.Select(hinge => hinge.Id == id ? change(hinge) : hinge)],
    };

    /// <summary>Leaf and opening are of one size, unless settings say otherwise.</summary>
    public static HungLeaf Leaf(string width, string height, DoorDesign? design = null, params (Setting Setting, string Value)[] settings) =>
        Assert.Single(Plan(DoorOf(width, height, design ?? Design(),
            [.. settings.Any(each => each.Setting == Settings.UsualHinge) ? [] : new[] { (Settings.UsualHinge, Compact) }, .. settings])).Leaves);

    public static HangingPlan Plan(Course course, HouseStandard? standard = null, Func<SizedLeaf, Worked?>? weight = null) =>
        HangingPlan.Of(Breakdown.Of(course, standard ?? ShippedStandards.Inch), weight);

    public static Worked Pounds(Fractions.Fraction pounds) => new Given("leaf/weight", "weight", Dimension.Weight, pounds, Origin.Typed);

    public static IReadOnlyList<string> FromStart(HungLeaf leaf) => [.. leaf.Set.Places.Select(place => LengthFormat.InchesTo32.Print(place.FromStart.Length))];

    public static IReadOnlyList<string> FromEnd(HungLeaf leaf) => [.. leaf.Set.Places.Select(place => LengthFormat.InchesTo32.Print(place.FromEnd.Length))];
}
