using Fractions;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Teaching.Checking;
using Stilewright.Testing;
using Xunit.Abstractions;

namespace Stilewright.Tests.Teaching;

/// <summary>Whether planted slips are found again, over random projects. The bench does the same over more of them.</summary>
public class SoundnessTests(ITestOutputHelper output)
{
    // Different slips can give the very same list; then the commoner is told first, and the planted one is among the others.
    [Fact]
    public void A_planted_slip_is_among_the_causes_with_the_fewest_slips()
    {
        var (lists, one, within, first) = (0, 0, 0, 0);
        foreach (var planted in PlantedLists.OneSlip(300))
        {
            lists++;
            if (planted.Check().Mistakes is not [{ Explanations: [{ Causes: [var top] }, ..] explanations }])
                continue;
            one++;
            first += top == planted.Planted[0] ? 1 : 0;
            within += explanations.Any(other => other.Causes is [var only] && only == planted.Planted[0]) ? 1 : 0;
        }

        output.WriteLine($"{lists} lists: explained by one slip {one}, the planted one among the causes {within}, ranked first {first}");
        Assert.InRange(within, lists * 0.98, lists);
        Assert.InRange(first, lists * 0.6, lists);
    }

    [Fact]
    public void Planted_pairs_are_explained_by_two_slips()
    {
        var (lists, few) = (0, 0);
        foreach (var planted in PlantedLists.TwoSlips(200))
        {
            lists++;
            var mistakes = planted.Check().Mistakes;
            few += mistakes.All(mistake => mistake.Explanations.Count > 0) && mistakes.SelectMany(mistake => mistake.Explanations[0].Causes).Distinct().Count() <= 2 ? 1 : 0;
        }

        output.WriteLine($"{lists} lists: explained by two slips at most {few}");
        Assert.InRange(few, lists * 0.96, lists);
    }

    [Fact]
    public void Right_lists_are_right()
    {
        foreach (var list in PlantedLists.Right(150))
        {
            var found = list.Check();
            Assert.True(found.IsRight, string.Join("; ", found.Numbers.Where(number => number.Standing != NumberStanding.Right).Select(number => $"{number.Item.Name} {number.Right.Length} told {number.Told.Value}")));
        }
    }

    // A slip of reckoning that no rule explains, at each step of each leaf in turn: what comes after is rightly worked from it.
    [Fact]
    public void One_slip_at_any_step_is_one_mistake()
    {
        var (steps, apart) = (0, new List<string>());
        for (var seed = 0; seed < 60; seed++)
        {
            var course = RandomCourse.WithBenches(seed, 1, LengthUnit.Inch);
            var project = Breakdown.Of(course, ShippedStandards.Inch).Projects[0];
            if (project.Fronts.SelectMany(front => front.Leaves).FirstOrDefault(leaf => !leaf.IsWithheld && leaf.Parts.Count > 0) is not { } leaf)
                continue;
            var key = ListKey.Of(project, leaf, CutStage.Finished);
            var items = key.Items.GroupBy(item => (item.Kind, item.Width, item.Length)).Select(alike => (Item: alike.First(), Count: alike.Count())).ToList();
            foreach (var step in items.SelectMany(item => new[] { item.Item.Width, item.Item.Length }).SelectMany(right => right.Distinct()).OfType<Named>().Where(step => step.Dimension == Dimension.Length).Distinct())
            {
                var wrong = new Named(step.Key, step.Label, new Given("wrong", step.Label, Length.FromInches(step.Amount + new Fraction(11, 32)), Origin.Typed));
                LengthEntry Told(Worked right)
                {
                    var value = Length.FromInches(right.Replace(step, wrong).Amount).OnStep(key.Step.Length, StepDirection.Nearest);
                    return new($"{value.Inches} in", value);
                }

                var lines = items.Select((item, i) => new ListLine(i + 1, item.Item.Name, item.Count, Told(item.Item.Width), Told(item.Item.Length))).ToList();
                if (lines.Zip(items).All(pair => pair.First.Width!.Value.Value == pair.Second.Item.Width.Length && pair.First.Length!.Value.Value == pair.Second.Item.Length.Length))
                    continue;
                var found = ListCheck.Check(new(CutStage.Finished, lines), key, LengthUnit.Inch);
                steps++;
                if (found.Mistakes.Count > 1)
                    apart.Add($"{step.Label}: {string.Join("; ", found.Mistakes.Select(mistake => string.Join(", ", mistake.Numbers.Select(number => $"{number.Item.Name} {number.Measure}"))))}");
            }
        }

        output.WriteLine($"{steps} steps; apart: {apart.Count}\n{string.Join('\n', apart.Take(40))}");
        Assert.Empty(apart);
    }
}
