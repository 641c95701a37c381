using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Documents.Rules;

internal static class OpeningRules
{
    public static IEnumerable<RuleFault> PlanedToFitIsInset(Opening opening, DocumentPath path)
    {
        if (opening.Readings is { Fit: OutOfSquareFit.PlaneToFit } && opening.Filling.Mount != Mount.Inset)
            yield return new(path.Field("readings").Field("fit"), "only an inset front is planed to fit its opening", "leave \"fit\" out, or make the mount inset");
    }

    public static IEnumerable<RuleFault> WidthsAreAboveZero(Readings readings, DocumentPath path) => Zeroes(readings.Widths, path.Field("widths"));

    public static IEnumerable<RuleFault> HeightsAreAboveZero(Readings readings, DocumentPath path) => Zeroes(readings.Heights, path.Field("heights"));

    private static IEnumerable<RuleFault> Zeroes(IReadOnlyList<LengthEntry> readings, DocumentPath path)
    {
        for (var index = 0; index < readings.Count; index++)
        {
            if (!readings[index].Value.IsPositive)
                yield return new(path.Item(index), "a reading is zero", "write what the tape shows, above zero");
        }
    }
}
