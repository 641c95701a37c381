using Stilewright.Measure;

namespace Stilewright.Wording;

/// <summary>One line of a working.</summary>
/// <param name="Name">What the quantity is called.</param>
/// <param name="Formula">In words; empty for what was simply entered.</param>
/// <param name="Arithmetic">In figures, with the result.</param>
/// <param name="Givens">What it takes that was entered or looked up.</param>
/// <param name="Reasons">Why a quantity was taken among others.</param>
public sealed record WorkedLine(
    Worked Quantity, string Name, string Formula, string Arithmetic, IReadOnlyList<Worked> Givens, IReadOnlyList<string> Reasons);

/// <summary>The working of several quantities in the order in which it is told.</summary>
public static class WorkedOrder
{
    /// <summary>Every step once, in an order in which it can be worked; what was simply entered comes first, as the steps may lean on it.</summary>
    public static IEnumerable<WorkedLine> Of(IReadOnlyList<Worked> quantities, LengthFormat format)
    {
        HashSet<(string, string, string, string)> told = [];
        foreach (var quantity in quantities)
        {
            if (quantity is Named)
                continue;
            var line = new WorkedLine(quantity, WorkedText.Label(quantity), "", WorkedText.Arithmetic(quantity, format), quantity is Given or FromTable ? [quantity] : [], []);
            if (IsNew(line))
                yield return line;
        }

        foreach (var step in WorkedText.Steps(format, quantities))
        {
            var formula = step.Quantity.Inner.Operands.Count > 0 ? step.Formula : "";
            var line = new WorkedLine(step.Quantity, step.Quantity.Label, formula, step.Arithmetic, step.Givens, step.Reasons);
            if (IsNew(line))
                yield return line;
        }

        bool IsNew(WorkedLine line) => told.Add((line.Name, line.Formula, line.Arithmetic, string.Join('\n', line.Reasons)));
    }
}
