using Stilewright.Projects;

namespace Stilewright.Documents.Rules;

internal static class OpeningRules
{
    public static IEnumerable<RuleFault> PlanedToFitIsInset(Opening opening, DocumentPath path)
    {
        if (opening.Readings is { Fit: OutOfSquareFit.PlaneToFit } && opening.Filling.Mount != Mount.Inset)
            yield return new(path.Field("readings").Field("fit"), "only an inset front is planed to fit its opening", "leave \"fit\" out, or make the mount inset");
    }
}
