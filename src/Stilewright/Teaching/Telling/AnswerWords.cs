namespace Stilewright.Teaching.Telling;

/// <summary>The answer to a line in the few words of a table.</summary>
public static class AnswerWords
{
    /// <summary>Such as "right", or "length not right".</summary>
    public static string Verdict(LineAnswer line)
    {
        ArgumentNullException.ThrowIfNull(line);
        if (line.What.Length == 0)
            return "goes with nothing";
        if (line.IsRight)
            return "right";
        var wrong = line.Numbers.Where(number => number.Mark != "right").GroupBy(number => number.Mark)
            .Select(group => $"{string.Join(" and ", group.Select(number => number.Number.Measure.ToString().ToLowerInvariant()).Distinct())} {group.Key}").ToList();
        return wrong.Count == 0 ? "count not right" : string.Join("; ", wrong);
    }

    /// <summary>The right sizes; empty where they are not told.</summary>
    public static string RightSize(LineAnswer line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return string.Join("; ", line.Numbers.Where(number => number.Right is not null).GroupBy(number => number.Number.Item)
            .Select(size => string.Join(" × ", size.OrderBy(number => number.Number.Measure).Select(number => number.Right))));
    }
}
