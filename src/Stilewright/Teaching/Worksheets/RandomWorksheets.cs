using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Teaching.Worksheets;

/// <summary>Random problems within the limits of a level.</summary>
/// <remarks>
/// Each is a real course with one opening, worked out as any other. The same seed, level and bench give the same sheet on every machine; no two
/// benches of one seed and level have the same problem.
/// </remarks>
public static class RandomWorksheets
{
    /// <summary>The greatest number of a bench.</summary>
    public const int MostBenches = 999;

    // Draws after which limits that nothing fits are given up.
    private const int MostDraws = 2000;

    /// <summary>The sheets of benches 1, 2, 3 and so on.</summary>
    /// <exception cref="InvalidOperationException">Within the limits there are no more different problems that can be built with results on the finest step.</exception>
    public static IEnumerable<Worksheet> Of(Level level, ulong seed)
    {
        HashSet<string> seen = [];
        for (var bench = 1; bench <= MostBenches; bench++)
        {
            var random = SplitMix64.Of(seed, (ulong)level.Number, (ulong)level.Unit, (ulong)bench);
            yield return Draw(level, seed, random, bench, seen) ?? throw new InvalidOperationException(FormattableString.Invariant(
                    $"Within these limits there are only {bench - 1} different problems with results on the finest step; widen the limits or ask for fewer benches."));
        }
    }

    private static Worksheet? Draw(Level level, ulong seed, SplitMix64 random, int bench, HashSet<string> seen)
    {
        for (var draw = 0; draw < MostDraws; draw++)
        {
            var problem = new RandomProblem(level, random, bench);
            if (seen.Contains(problem.Words))
                continue;
            if (Made(level, seed, problem) is not { } sheet)
                continue;
            seen.Add(problem.Words);
            return sheet;
        }

        return null;
    }

    private static Worksheet? Made(Level level, ulong seed, RandomProblem problem)
    {
        var breakdown = Breakdown.Of(problem.Course, problem.Standard);
        if (breakdown.Findings.Any(finding => finding.Rule.Severity == Severity.CannotBuild))
            return null;
        var project = breakdown.Projects[0];
        var front = project.Fronts.First();
        var format = new LengthFormat(level.Unit, 64);
        if (front.Leaves.Count == 0 || WorksheetMaker.OfLeaf(breakdown, project, front, front.Leaves[0], level, format, seed) is not Found<Worksheet>.There { Thing: var sheet })
            return null;
        return sheet.Lines.All(line => IsTidy(line.Quantity, level.Limits.Finest) && !line.Expression.Distinct().Any(node => node is Stepped)) ? sheet : null;
    }

    private static bool IsTidy(Worked result, Length finest) =>
        result.IsExact && result.Amount.IsPositive && (result.Length / finest).Reduce().Denominator.IsOne;
}
