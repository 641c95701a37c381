using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Teaching.Worksheets;

/// <summary>Random problems within the limits of a level.</summary>
/// <remarks>
/// Each is a real course with one opening, worked out as any other. The same seed, level and bench give the same sheet on every machine, whichever
/// other benches are drawn. Openings are shared out among benches (<see cref="OpeningShare"/>), so that no two of a class have the same problem.
/// </remarks>
public static class RandomWorksheets
{
    /// <summary>The greatest number of a bench.</summary>
    public const int MostBenches = 999;

    /// <summary>So many benches with numbers that follow on each other have different problems of one seed and level.</summary>
    public const int DifferentBenches = OpeningShare.Shares;

    // Draws after which limits that nothing fits are given up.
    private const int MostDraws = 2000;

    /// <summary>The sheets of benches 1, 2, 3 and so on.</summary>
    /// <exception cref="InvalidOperationException">Within the limits there is no problem that can be built with results on the finest step.</exception>
    public static IEnumerable<Worksheet> Of(Level level, ulong seed) => Enumerable.Range(1, MostBenches).Select(bench => Of(level, seed, bench));

    /// <summary>The sheet of one bench.</summary>
    /// <param name="bench">From 1 to <see cref="MostBenches"/>.</param>
    /// <exception cref="InvalidOperationException">Within the limits there is no problem that can be built with results on the finest step.</exception>
    public static Worksheet Of(Level level, ulong seed, int bench)
    {
        ArgumentNullException.ThrowIfNull(level);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(bench);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(bench, MostBenches);
        var random = SplitMix64.Of(seed, (ulong)level.Number, (ulong)level.Unit, (ulong)bench);
        for (var draw = 0; draw < MostDraws; draw++)
        {
            if (RandomProblem.Draw(level, seed, random, bench) is { } problem && Made(level, seed, problem) is { } sheet)
                return sheet;
        }

        throw new InvalidOperationException(FormattableString.Invariant(
            $"Within these limits no problem of bench {bench} has all its results on the finest step; widen the limits or take another seed."));
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
