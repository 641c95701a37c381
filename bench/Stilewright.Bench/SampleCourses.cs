using System.Globalization;
using Fractions;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Bench;

/// <summary>Courses of any size: no two openings alike, four designs in turn, singles and pairs half and half.</summary>
internal static class SampleCourses
{
    private static readonly IReadOnlyList<DoorDesign> Designs =
    [
        Design("raised", "Raised panel", Construction.CopeAndStick, new(PanelKind.Raised, Stock: "panel")),
        Design("shaker", "Flat panel, one mid rail", Construction.CopeAndStick, new(PanelKind.FlatSheet, Stock: "ply"))
            with { MidRails = new(1, null, []) },
        Design("arched", "Arched top, tenoned", Construction.MortiseAndTenon, new(PanelKind.Raised, Stock: "panel"))
            with { TopArch = new(ArchFamily.Eyebrow, In(new(3, 2))) },
        Design("glazed", "Four lights of glass", Construction.CopeAndStick, new(PanelKind.Glass, SafetyGlazing: "tempered"))
            with { MidRails = new(1, null, []), MidStiles = [new(1, 1), new(2, 1)] },
    ];

    /// <param name="leaves">Leaves in the whole course; at least three for each bench.</param>
    public static Course Of(int benches, int leaves)
    {
        var number = 0;
        List<Project> projects = [];
        for (var bench = 1; bench <= benches; bench++)
        {
            var left = (leaves * bench / benches) - (leaves * (bench - 1) / benches);
            List<Opening> openings = [];
            while (left > 0)
            {
                // One pair after every two singles makes as many leaves in pairs as alone.
                var isPair = number % 3 == 2 && left > 1;
                openings.Add(Opening(number++, isPair));
                left -= isPair ? 2 : 1;
            }

            var name = string.Create(CultureInfo.InvariantCulture, $"bench-{bench}");
            projects.Add(new(name, bench, "Cupboards", [new($"{name}-case", "Case", [new($"{name}-face", FaceSide.Front, null, openings, [])])],
                null, [], [], [], SettingValues.None));
        }

        return new("measured", "Measured course", "inch", LengthUnit.Inch, Designs, projects, SettingValues.None);
    }

    private static DoorDesign Design(string id, string name, Construction construction, LightFilling panel) => new(
        id, name, construction, "red oak", "four-quarter", "cope-and-stick", null, null, null, null, [], null, null, panel, [], null, null);

    private static Opening Opening(int number, bool isPair)
    {
        // Sizes of 14 to 21 in (of a pair twice that) by 22 to 39 in, in thirty-seconds.
        var width = new Fraction((14 * 32) + (number * 37 % 224), 32) * (isPair ? 2 : 1);
        var height = new Fraction((22 * 32) + (number * 53 % 544), 32);
        var diagonal = In(new((long)Math.Round(Math.Sqrt((width * width + height * height).ToDouble()) * 32), 32));
        var design = Designs[number % Designs.Count].Id;
        var member = In(new(3, 2));
        IReadOnlyList<LeafEntry> leaves = isPair ? [Leaf(HingeSide.Left), Leaf(HingeSide.Right)] : [Leaf(number % 2 == 0 ? HingeSide.Left : HingeSide.Right)];
        return new(string.Create(CultureInfo.InvariantCulture, $"opening-{number + 1}"), new DoorFilling(Mount.Overlay, leaves, design), null, null,
            new(In(width), HeightLeft: In(height), Rising: diagonal, Falling: diagonal),
            new(new FrameEdge(member), new FrameEdge(member), new FrameEdge(member), new FrameEdge(member)), null, null, SettingValues.None);
    }

    private static LeafEntry Leaf(HingeSide hinge) => new(hinge, null, null, null, SettingValues.None);

    private static LengthEntry In(Fraction inches) => new(new LengthFormat(LengthUnit.Inch, 64).Print(Length.FromInches(inches)), Length.FromInches(inches));
}
