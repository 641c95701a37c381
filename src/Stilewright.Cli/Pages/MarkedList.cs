using Stilewright.Documents.Lists;
using Stilewright.Doors;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Reuse;
using Stilewright.Teaching.Telling;

namespace Stilewright.Cli.Pages;

/// <summary>A maker's list with its answer.</summary>
/// <param name="For">What it is for, such as "leaf 7·2L, left door".</param>
/// <param name="Reuses">What the wrong pieces can still become; empty where they are not cut.</param>
internal sealed record MarkedList(string For, ReadList Read, CheckedList Found, Answer Answer, IReadOnlyList<(ListLine Line, ReuseAdvice Advice)> Reuses)
{
    /// <summary>What the pieces of each wrong line can become, were they cut as the list says.</summary>
    public static IReadOnlyList<(ListLine Line, ReuseAdvice Advice)> ReusesOf(CheckedList found, Breakdown breakdown, bool isWorked)
    {
        bool IsWrong(CheckedLine line) => line.Numbers.Any(number => number.Standing != NumberStanding.Right);
        var served = found.Lines.Where(line => !IsWrong(line)).SelectMany(line => line.Items).Where(item => item.Part is not null).Select(item => item.Path).ToHashSet();
        var advice = new List<(ListLine, ReuseAdvice)>();
        foreach (var line in found.Lines.Where(IsWrong))
        {
            var number = line.Numbers.First(number => number.Standing != NumberStanding.Right);
            var told = line.Numbers.Where(other => other.Item == number.Item).ToDictionary(other => other.Measure, other => other.Told.Value);
            if (number.Item.Part is { } part && told.TryGetValue(ListMeasure.Width, out var width) && told.TryGetValue(ListMeasure.Length, out var length))
                advice.Add((line.Line, ReuseFinder.Of(new(part, found.List.Stage, width, length, isWorked), breakdown, served)));
        }

        return advice;
    }
}
