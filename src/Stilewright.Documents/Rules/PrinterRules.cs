using Stilewright.Shop;

namespace Stilewright.Documents.Rules;

internal static class PrinterRules
{
    public static IEnumerable<RuleFault> PrintsWereNotFitted(PrintMeasurement print, DocumentPath path)
    {
        if (print.Nominal.Value.IsPositive && print.Across.Value.IsPositive && print.Along.Value.IsPositive && !print.IsPlausible)
            yield return new(path.Field("across"), "the rules are more than 2 % off", "print at 100 %, not fitted to the paper, and measure again");
    }
}
