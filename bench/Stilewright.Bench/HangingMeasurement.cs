using System.Globalization;
using Fractions;
using Stilewright.Adjusting;
using Stilewright.Doors;
using Stilewright.Hanging;
using Stilewright.Hanging.Adjusting;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Wood;

namespace Stilewright.Bench;

/// <summary>What wood does and how leaves hang, for a course of 100 leaves, and a row of six doors adjusted.</summary>
internal static class HangingMeasurement
{
    private const int Leaves = 100;
    private const int Rows = 40;

    public static void Run()
    {
        var course = SampleCourses.Of(24, Leaves) with
        {
            Overrides = new(new Dictionary<Setting, SettingValue> { [Settings.UsualHinge] = new("example-cup-compact", Length.Zero) }),
        };
        var breakdown = Breakdown.Of(course, ShippedStandards.Inch);
        if (HangingPlan.Of(breakdown).Leaves.Count != Leaves)
            throw new InvalidOperationException("Not every leaf of the course is hung.");

        var wood = Timing.Of(5, 15, () => Wood(breakdown));
        var weights = Timing.Of(5, 15, () => _ = breakdown.Leaves.Sum(leaf => LeafWeight.Of(leaf).Pounds.ToDouble()));
        var hanging = Timing.Of(5, 15, () => _ = HangingPlan.Of(breakdown).SheetsInPairs.Sum(pair => pair.Left.Bores.Count));
        var all = Timing.Of(5, 15, () =>
        {
            Wood(breakdown);
            _ = HangingPlan.Of(breakdown).SheetsInPairs.Sum(pair => pair.Left.Bores.Count + (pair.Left.Leaf.Hand.HasTop ? 1 : 0));
        });
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"hanging: {Leaves} leaves, warm"));
        Console.WriteLine($"  panels, gaps and overlays through the year: {wood}");
        Console.WriteLine($"  weights: {weights}");
        Console.WriteLine($"  hinges with weights, places, boring sheets: {hanging}");
        Console.WriteLine($"  all of it: {all.Against(50)}; {all.Processor}");

        var tasks = Tasks();
        foreach (var task in tasks)
            Adjuster.Plan(task);
        var next = 0;
        var adjusting = Timing.Of(0, Rows, () => Adjuster.Plan(tasks[next++]), settle: false);
        Console.WriteLine($"  a row of six doors adjusted: {adjusting.Against(20)}; {adjusting.Processor}");
    }

    private static int Wood(Breakdown breakdown) =>
        breakdown.Leaves.Sum(leaf => PanelFit.Of(leaf).Count + (LeafMovement.Of(leaf) is null ? 0 : 1)) + breakdown.Fronts.Sum(front => FrontMovement.Of(front).Gaps.Count);

    // Every gap at both ends of every edge, each off by up to 3/32: some rows can be made even, some cannot.
    private static List<AdjustingTask> Tasks()
    {
        var random = new Random(7);
        var eighth = Length.FromInches(new Fraction(1, 8));
        ScrewRange range = new(eighth, eighth);
        List<RowLeaf> leaves = [];
        for (var i = 0; i < 6; i++)
        {
            var left = Length.FromInches(new Fraction(15 * 8 + 1, 8) * i);
            leaves.Add(new(string.Create(CultureInfo.InvariantCulture, $"{i + 1}"), new(left, default, 15.Inches, 30.Inches), i % 2 == 0, [3.Inches, 27.Inches], range, range, range));
        }

        List<AdjustingTask> tasks = [];
        for (var row = 0; row < Rows; row++)
        {
            List<GapReading> gaps = [];
            foreach (var (leaf, index) in leaves.Select((leaf, index) => (leaf, index)))
            {
                foreach (var at in new[] { EdgeEnd.Start, EdgeEnd.End })
                {
                    gaps.Add(new(leaf.Label, Side.Top, at, null, Off(), eighth));
                    gaps.Add(new(leaf.Label, Side.Bottom, at, null, Off(), eighth));
                    gaps.Add(new(leaf.Label, Side.Right, at, index < 5 ? leaves[index + 1].Label : null, Off(), eighth));
                    if (index == 0)
                        gaps.Add(new(leaf.Label, Side.Left, at, null, Off(), eighth));
                }
            }

            tasks.Add(new(leaves, gaps, [], AdjustingTask.UsualStep(LengthUnit.Inch), AdjustingTask.UsualTolerance(LengthUnit.Inch)));
        }

        return tasks;

        Length Off() => eighth + Length.FromInches(new Fraction(random.Next(-6, 7), 64));
    }
}
