using Google.OrTools.LinearSolver;

namespace Stilewright.Adjusting;

/// <summary>A linear programme that brings many residuals as near to nothing as they can be: the worst first, then the next worst, then the least movement.</summary>
/// <remarks>
/// Minimax alone leaves every other residual free up to the worst one. So the residuals that hold the worst up, which are those with a dual
/// price, are held at it, and the worst of the others is brought down next, until none is left.
/// </remarks>
internal sealed class MinimaxProgram : IDisposable
{
    /// <summary>Slack of a held residual, above what the solver takes for feasible (1e-7); in the unit of the residuals.</summary>
    private const double Slack = 1e-6;

    private const double DualOfNone = 1e-9;

    private readonly Solver solver = Solver.CreateSolver("GLOP") ?? throw new InvalidOperationException("The linear solver is missing from this build.");
    private readonly List<(Variable Variable, double Weight)> variables = [];
    private readonly List<Residual> residuals = [];
    private readonly Variable worst;

    public MinimaxProgram() => worst = solver.MakeNumVar(0, double.PositiveInfinity, "worst");

    private sealed record Residual(Constraint Above, Constraint Below, double Constant);

    /// <param name="weight">What an inch of it costs when movement is made least; zero for what is no movement.</param>
    /// <returns>Its index.</returns>
    public int Add(double low, double high, double weight)
    {
        variables.Add((solver.MakeNumVar(low, high, ""), weight));
        return variables.Count - 1;
    }

    /// <summary>A residual: the constant and each variable times its factor.</summary>
    public void Residuals(double constant, IReadOnlyList<(int Variable, double Factor)> terms)
    {
        var above = solver.MakeConstraint(double.NegativeInfinity, -constant, "");
        var below = solver.MakeConstraint(double.NegativeInfinity, constant, "");
        Sum(above, terms, 1);
        Sum(below, terms, -1);
        above.SetCoefficient(worst, -1);
        below.SetCoefficient(worst, -1);
        residuals.Add(new(above, below, constant));
    }

    /// <summary>Holds the constant and each variable times its factor at zero or more.</summary>
    public void AtLeastNothing(double constant, IReadOnlyList<(int Variable, double Factor)> terms) =>
        Sum(solver.MakeConstraint(-constant, double.PositiveInfinity, ""), terms, 1);

    /// <param name="enough">Residuals this small need not become smaller.</param>
    /// <param name="worstOnly">Whether what is better than the worst residual may stay as it comes.</param>
    /// <returns>The values of the variables; null where nothing satisfies the programme.</returns>
    public double[]? Solve(double enough, bool worstOnly)
    {
        worst.SetLb(enough);
        List<Residual> free = [.. residuals];
        while (free.Count > 0)
        {
            solver.Objective().Clear();
            solver.Objective().SetCoefficient(worst, 1);
            solver.Objective().SetMinimization();
            if (solver.Solve() is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE))
                return null;

            var reached = worst.SolutionValue();
            var binding = worstOnly || reached <= enough + Slack ? free
                : free.Where(residual => Math.Abs(residual.Above.DualValue()) > DualOfNone || Math.Abs(residual.Below.DualValue()) > DualOfNone).ToList();
            foreach (var residual in binding.Count == 0 ? [.. free] : binding.ToList())
            {
                Hold(residual, reached + Slack);
                free.Remove(residual);
            }
        }

        return LeastMovement();
    }

    public void Dispose() => solver.Dispose();

    private static void Sum(Constraint constraint, IReadOnlyList<(int Variable, double Factor)> terms, double sign, List<(Variable Variable, double Weight)> variables)
    {
        foreach (var group in terms.GroupBy(term => term.Variable))
            constraint.SetCoefficient(variables[group.Key].Variable, sign * group.Sum(term => term.Factor));
    }

    private void Sum(Constraint constraint, IReadOnlyList<(int Variable, double Factor)> terms, double sign) => Sum(constraint, terms, sign, variables);

    private void Hold(Residual residual, double limit)
    {
        residual.Above.SetCoefficient(worst, 0);
        residual.Below.SetCoefficient(worst, 0);
        residual.Above.SetUb(limit - residual.Constant);
        residual.Below.SetUb(limit + residual.Constant);
    }

    private double[]? LeastMovement()
    {
        solver.Objective().Clear();
        foreach (var (variable, weight) in variables.Where(variable => variable.Weight > 0))
        {
            var size = solver.MakeNumVar(0, double.PositiveInfinity, "");
            foreach (var sign in new[] { 1, -1 })
            {
                var row = solver.MakeConstraint(0, double.PositiveInfinity, "");
                row.SetCoefficient(size, 1);
                row.SetCoefficient(variable, sign);
            }

            solver.Objective().SetCoefficient(size, weight);
        }

        solver.Objective().SetMinimization();
        return solver.Solve() is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE
            ? [.. variables.Select(variable => variable.Variable.SolutionValue())] : null;
    }
}
