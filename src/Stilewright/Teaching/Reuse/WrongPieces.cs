using Stilewright.Doors;
using Stilewright.Teaching.Checking;

namespace Stilewright.Teaching.Reuse;

/// <summary>What the pieces of a wrong list can still become, were they cut as it says.</summary>
public static class WrongPieces
{
    /// <param name="course">All that is built, where a use is looked for.</param>
    /// <param name="isWorked">Whether joints are cut and edges moulded or raised already.</param>
    /// <returns>For every line of the list that has a wrong width or length, and both; a piece of another thickness is of another stock, for which no use is known.</returns>
    public static IReadOnlyList<(ListLine Line, ReuseAdvice Advice)> Of(CheckedList found, Breakdown course, bool isWorked)
    {
        bool IsWrong(CheckedLine line) => line.Numbers.Any(number => number.Standing != NumberStanding.Right);
        var served = found.Lines.Where(line => !IsWrong(line)).SelectMany(line => line.Items).Where(item => item.Part is not null).Select(item => item.Path).ToHashSet();
        var advice = new List<(ListLine, ReuseAdvice)>();
        foreach (var line in found.Lines.Where(line => IsWrong(line) && !line.Numbers.Any(number => number is { Measure: ListMeasure.Thickness, Standing: not NumberStanding.Right })))
        {
            var number = line.Numbers.First(number => number.Standing != NumberStanding.Right);
            var told = line.Numbers.Where(other => other.Item == number.Item).ToDictionary(other => other.Measure, other => other.Told.Value);
            if (number.Item.Part is { } part && told.TryGetValue(ListMeasure.Width, out var width) && told.TryGetValue(ListMeasure.Length, out var length))
                advice.Add((line.Line, ReuseFinder.Of(new(part, found.List.Stage, width, length, isWorked), course, served)));
        }

        return advice;
    }
}
