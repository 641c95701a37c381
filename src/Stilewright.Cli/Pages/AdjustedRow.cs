using Stilewright.Adjusting;
using Stilewright.Hanging.Adjusting;

namespace Stilewright.Cli.Pages;

/// <summary>A row with what was read on it, and the moves that follow.</summary>
internal sealed record AdjustedRow(HungRow Row, AdjustingTask Task)
{
    private AdjustingPlan? plan;

    /// <exception cref="ArgumentException">The task has <see cref="AdjustingTask.Problems"/>.</exception>
    public AdjustingPlan Plan => plan ??= Adjuster.Plan(Task);
}
