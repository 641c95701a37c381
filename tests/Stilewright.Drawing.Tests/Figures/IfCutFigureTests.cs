using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.IfCut;
using Stilewright.Testing;

namespace Stilewright.Drawing.Tests.Figures;

public class IfCutFigureTests
{
    private sealed record Case(Consequence Consequence, LeafDetail Detail, LengthFormat Format);

    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(0, 8)];

    private static IEnumerable<Case> Random(int seed) =>
        from planted in PlantedLists.OneSlip(25, seed * 1000).Concat(PlantedLists.TwoSlips(15, seed * 1000 + 500))
        from one in Consequences.Of(planted.Check(), planted.Project)
        select new Case(one, LeafDetail.Of(planted.Course, planted.Project, one.Leaf), new(planted.Unit, planted.Project.Standard.Format.FinestDenominator));

    private static Scene Fitted(Case each) => IfCutFigure.Draw(each.Consequence, each.Detail, each.Format, 185, 120).Scene;

    [Theory]
    [MemberData(nameof(Seeds))]
    public void No_text_covers_another_and_every_line_is_as_long_as_its_text_says(int seed)
    {
        var (count, larger) = (0, 0);
        foreach (var each in Random(seed))
        {
            foreach (var scene in new[] { Fitted(each), IfCutFigure.Draw(each.Consequence, each.Detail, new Scale(4), each.Format) })
            {
                Drawn.IsClean(scene);
                count++;
                larger += Drawn.Marks(scene).Any(mark => mark.Exaggeration > 1) ? 1 : 0;
                // What is drawn larger is said to be.
                var words = string.Join(" ", Drawn.Texts(scene).Select(text => text.Line.Text));
                foreach (var mark in Drawn.Marks(scene).Where(mark => mark.Exaggeration > 1))
                    Assert.Contains(mark.Scale == Scale.FullSize && scene.Scale != Scale.FullSize || words.Contains($"{mark.Exaggeration}:1") ? $"{mark.Exaggeration}:1" : $"drawn {mark.Exaggeration} times as large", words, StringComparison.Ordinal);
            }
        }

        Assert.True(count > 40 && larger > 20, $"{larger} of {count}");
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Every_fault_can_be_seen_and_lies_on_its_dimension(int seed)
    {
        foreach (var each in Random(seed))
        {
            var scene = Fitted(each);
            var hatched = scene.Drawn.Where(one => one.Node is Hatch { SpacingMillimetres: 0.8 }).Select(one => ((Hatch)one.Node).Outline.Shifted(one.At).Bounds).ToList();
            Assert.True(hatched.Count >= each.Consequence.Faults.Count);
            foreach (var (fault, box) in each.Consequence.Faults.Zip(hatched))
            {
                var drawn = fault.IsAcross ? box.Width : box.Height;
                var mark = Drawn.Marks(scene).First(mark => mark.Scale == scene.Scale && mark.Value == fault.Amount && Math.Abs(mark.From.DistanceTo(mark.To) - drawn) < 1e-6);
                Assert.True(drawn >= 2 - 1e-9 || each.Consequence.Faults.Max(other => other.Amount) is var most && scene.Scale!.Value.OnPaper(most) * mark.Exaggeration * 2.5 > 30
                    || each.Consequence.Kind == ConsequenceKind.CrownWood, $"{each.Consequence.Kind}: {fault.Amount} is drawn {drawn} mm");
            }
        }
    }

    // The rails of the 12 3/16 leaf are 12 3/16 − 4 1/2 + 2 × 7/16 = 8 9/16; made 8 1/2 they leave 1/32 at each joint, 0.79 mm.
    // At 1:4 that is 0.2 mm on paper, so it is drawn 16 times as large: 3.175 mm.
    [Fact]
    public void An_open_joint_of_a_thirty_second_is_drawn_so_large_that_it_is_seen()
    {
        var course = Examples.Pair();
        var project = Breakdown.Of(course, ShippedStandards.Inch).Projects[0];
        var leaf = project.Fronts.First().Leaves[0];
        var found = ListCheck.Check(new(CutStage.Finished, [new(1, "rails", 2, Examples.In("2 1/4"), Examples.In("8 1/2"))]), ListKey.Of(project, leaf, CutStage.Finished), LengthUnit.Inch);
        var scene = IfCutFigure.Draw(Assert.Single(Consequences.Of(found, project)), LeafDetail.Of(course, project, leaf), new(4), LengthFormat.InchesTo32);
        var open = Drawn.Marks(scene).Where(mark => mark.Exaggeration == 16).ToList();
        Assert.Equal(["open 1/32", "open 1/32"], open.Select(mark => mark.Text.Line.Text));
        Assert.All(open, mark => Assert.Equal(25.4 / 32 / 4 * 16, mark.From.DistanceTo(mark.To), 1e-9));
        Assert.Contains(Drawn.Texts(scene), text => text.Line.Text.Contains("Leaf 1:4; what is hatched is drawn 16 times as large.", StringComparison.Ordinal));
        // Undisturbed, the leaf is to scale.
        Assert.Contains(Drawn.Marks(scene), mark => mark.Text.Line.Text == "12 3/16" && mark.Exaggeration == 1);
        Assert.NotNull(IfCutSheet.Draw(Breakdown.Of(course, ShippedStandards.Inch), project, found, LengthFormat.InchesTo32, Assert.Single(found.Mistakes)));
    }

    [Fact]
    public void A_right_list_has_no_drawing()
    {
        var breakdown = Breakdown.Of(Examples.Pair(), ShippedStandards.Inch);
        var project = breakdown.Projects[0];
        var key = ListKey.Of(project, project.Fronts.First().Leaves[0], CutStage.Finished);
        Assert.Null(IfCutSheet.Draw(breakdown, project, ListCheck.Check(new(CutStage.Finished, [new(1, "rails", 2, Examples.In("2 1/4"), Examples.In("8 9/16"))]), key, LengthUnit.Inch), LengthFormat.InchesTo32));
    }
}
