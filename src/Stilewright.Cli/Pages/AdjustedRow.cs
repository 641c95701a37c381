using Stilewright.Adjusting;
using Stilewright.Hanging.Adjusting;

namespace Stilewright.Cli.Pages;

/// <summary>A row with what was read on it, and the moves that follow.</summary>
internal sealed record AdjustedRow(HungRow Row, AdjustingTask Task)
{
    public AdjustingPlan Plan { get; } = Adjuster.Plan(Task);
}
