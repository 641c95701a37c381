using System.Diagnostics;
using Stilewright.Testing;

namespace Stilewright.Bench;

/// <summary>How often planted slips are found, how soon, and whether right lists are ever called wrong.</summary>
internal static class TeachingMeasurement
{
    private const int Projects = 1000;
    private const int RightLists = 100_000;
    private const int Lines = 12;

    public static bool Run()
    {
        Time();
        Console.WriteLine($"Makers' lists of one leaf each, common slips planted more often than rare ones, over {Projects:N0} random projects");
        Console.WriteLine("  planted          lists  fewest slips  ranked first  same list by another");
        Tell("one slip", PlantedLists.OneSlip(Projects));
        Tell("one, 2+ figures", PlantedLists.OneSlip(Projects).Where(list => list.Changed > 1));
        Tell("two slips", PlantedLists.TwoSlips(Projects));
        return AreRight();
    }

    private static void Tell(string what, IEnumerable<PlantedList> lists)
    {
        var (all, few, first, other) = (0, 0, 0, 0);
        foreach (var list in lists)
        {
            all++;
            var mistakes = list.Check().Mistakes;
            if (mistakes.Any(mistake => mistake.Explanations.Count == 0))
                continue;
            var told = mistakes.SelectMany(mistake => mistake.Explanations[0].Causes).ToHashSet();
            if (told.Count > list.Planted.Count)
                continue;
            few++;
            // As few slips explain every figure: where these are not the planted ones, the list alone cannot tell the two apart.
            if (told.SetEquals(list.Planted))
                first++;
            else
                other++;
        }

        string Share(int count) => $"{100.0 * count / all:0.0} %";
        Console.WriteLine($"  {what,-15} {all,6} {Share(few),13} {Share(first),13} {Share(other),21}");
    }

    private static void Time()
    {
        var lists = PlantedLists.OneSlip(600, 0, Lines).Concat(PlantedLists.TwoSlips(600, 0, Lines)).ToList();
        foreach (var list in lists.Take(40))
            list.Check();
        var times = new List<double>();
        foreach (var list in lists)
        {
            var watch = Stopwatch.StartNew();
            list.Check();
            times.Add(watch.Elapsed.TotalMilliseconds);
        }

        times.Sort();
        Console.WriteLine($"{lists.Count} makers' lists of {Lines} lines, one or two slips: median {times[times.Count / 2]:0.0} ms, p95 {times[(int)(times.Count * 0.95)]:0.0} ms, longest {times[^1]:0} ms (goal: p95 below 50 ms)");
    }

    private static bool AreRight()
    {
        var (all, wrong) = (0, 0);
        foreach (var list in PlantedLists.Right(int.MaxValue).Take(RightLists))
        {
            all++;
            wrong += list.Check().IsRight ? 0 : 1;
        }

        Console.WriteLine($"  {all:N0} right lists, rounded to the cutting step: {wrong} called wrong");
        return wrong == 0;
    }
}
