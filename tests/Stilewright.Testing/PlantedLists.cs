using Fractions;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Teaching.Checking;

namespace Stilewright.Testing;

/// <summary>A maker's list of one leaf of a random project, right or with slips planted in it.</summary>
/// <param name="Planted">The causes planted; empty in a right list.</param>
/// <param name="Changed">How many numbers are off by more than the cutting step.</param>
public sealed record PlantedList(Course Course, ProjectBreakdown Project, ListKey Key, LengthUnit Unit, MakersList List, IReadOnlyList<Cause> Planted, int Changed)
{
    public CheckedList Check() => ListCheck.Check(List, Key, Unit);
}

/// <summary>Lists of random projects: the same seed gives the same list. A list of so many lines is about the first parts of a project.</summary>
public static class PlantedLists
{
    private sealed record Subject(Course Course, ProjectBreakdown Project, ListKey Key, LengthUnit Unit, IReadOnlyList<KeyItem> Items, IReadOnlyList<int> Counts);

    // Every size of every part, like parts on one line, at each stage in turn; of one leaf, or of as many as give so many lines.
    private static IEnumerable<Subject> Subjects(int projects, int seed, int? lines)
    {
        for (var i = seed; i < seed + projects; i++)
        {
            var course = RandomCourse.WithBenches(i, 1, null);
            var project = Breakdown.Of(course, ShippedStandards.For(course.Unit)).Projects[0];
            if (project.Fronts.SelectMany(front => front.Leaves).FirstOrDefault(leaf => !leaf.IsWithheld && leaf.Parts.Count > 0) is not { } leaf)
                continue;
            var stage = (CutStage)(i % 3);
            var key = lines is null ? ListKey.Of(project, leaf, stage) : ListKey.Of(project, stage);
            var subject = SubjectOf(course, project, key, lines);
            if (lines is null || subject.Items.Count == lines)
                yield return subject;
        }
    }

    private static Subject SubjectOf(Course course, ProjectBreakdown project, ListKey key, int? lines)
    {
        var alike = key.Items.Where(item => item.Part is not null).GroupBy(item => (item.Leaf, item.Kind, item.Width, item.Length)).Take(lines ?? int.MaxValue).ToList();
        return new(course, project, key, course.Unit, [.. alike.Select(items => items.First())], [.. alike.Select(items => items.Count())]);
    }

    /// <summary>Right lists of every leaf of random projects, at every stage, rounded to the cutting step.</summary>
    public static IEnumerable<PlantedList> Right(int projects, int seed = 0)
    {
        for (var i = seed; i < seed + projects; i++)
        {
            var course = RandomCourse.WithBenches(i, 1, null);
            var project = Breakdown.Of(course, ShippedStandards.For(course.Unit)).Projects[0];
            foreach (var leaf in project.Fronts.SelectMany(front => front.Leaves).Where(leaf => !leaf.IsWithheld && leaf.Parts.Count > 0))
            {
                foreach (var stage in Enum.GetValues<CutStage>())
                {
                    var subject = SubjectOf(course, project, ListKey.Of(project, leaf, stage), null);
                    yield return ListOf(subject, [], RightSizes(subject));
                }
            }
        }
    }

    /// <summary>Lists with one slip, common ones more often than rare ones.</summary>
    public static IEnumerable<PlantedList> OneSlip(int projects, int seed = 0, int? lines = null)
    {
        foreach (var subject in Subjects(projects, seed, lines))
        {
            var random = new Random(seed++);
            if (Plants(subject) is { Count: > 0 } plants && Drawn(plants, random) is var plant)
                yield return ListOf(subject, plant.Causes, plant.Sizes);
        }
    }

    /// <summary>Lists with two slips of different causes, each of which shows.</summary>
    public static IEnumerable<PlantedList> TwoSlips(int projects, int seed = 0, int? lines = null)
    {
        foreach (var subject in Subjects(projects, seed, lines))
        {
            var random = new Random(seed++);
            if (Plants(subject) is not { Count: > 1 } plants)
                continue;
            for (var tries = 0; tries < 20; tries++)
            {
                var (one, other) = (Drawn(plants, random), Drawn(plants, random));
                if (one.Causes[0] == other.Causes[0])
                    continue;
                var both = Planting.Both(subject.Key, subject.Items, subject.Unit, one, other);
                if (!IsLikely(both) || Off(subject, both.Sizes, one.Sizes) == 0 || Off(subject, both.Sizes, other.Sizes) == 0)
                    continue;
                yield return ListOf(subject, both.Causes, both.Sizes);
                break;
            }
        }
    }

    private static List<PlantedSizes> Plants(Subject subject) =>
        [.. Planting.Of(subject.Key, subject.Items, subject.Unit).Where(plant => IsLikely(plant) && Off(subject, plant.Sizes, RightSizes(subject)) > 0)];

    private static (double Width, double Length)[] RightSizes(Subject subject) =>
        [.. subject.Items.Select(item => (item.Width.Amount.ToDouble(), item.Length.Amount.ToDouble()))];

    // Nobody writes down a size of nothing or of twenty feet.
    private static bool IsLikely(PlantedSizes plant) => plant.Sizes.All(size => size is { Width: > 0.25 and < 240, Length: > 0.25 and < 240 });

    private static int Off(Subject subject, IReadOnlyList<(double Width, double Length)> one, IReadOnlyList<(double Width, double Length)> other)
    {
        var step = subject.Key.Step.Amount.ToDouble();
        return one.Zip(other).Sum(pair => (Math.Abs(pair.First.Width - pair.Second.Width) > step ? 1 : 0) + (Math.Abs(pair.First.Length - pair.Second.Length) > step ? 1 : 0));
    }

    private static PlantedSizes Drawn(IReadOnlyList<PlantedSizes> plants, Random random)
    {
        static double Weight(PlantedSizes plant) => Math.Pow(10, -plant.Rareness);
        var at = random.NextDouble() * plants.Sum(Weight);
        return plants.First(plant => (at -= Weight(plant)) <= 0 || ReferenceEquals(plant, plants[^1]));
    }

    private static PlantedList ListOf(Subject subject, IReadOnlyList<Cause> causes, IReadOnlyList<(double Width, double Length)> sizes)
    {
        LengthEntry Entry(double inches)
        {
            var value = Length.FromInches(Fraction.FromDoubleRounded(inches)).OnStep(subject.Key.Step.Length, StepDirection.Nearest);
            return new($"{value.Inches} in", value);
        }

        var lines = subject.Items.Select((item, i) => new ListLine(i + 1, item.Name, subject.Counts[i], Entry(sizes[i].Width), Entry(sizes[i].Length))).ToList();
        return new(subject.Course, subject.Project, subject.Key, subject.Unit, new(subject.Key.Stage, lines), causes, Off(subject, sizes, RightSizes(subject)));
    }
}
