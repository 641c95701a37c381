namespace Stilewright.Web.Shell;

/// <summary>A step of the work on one project, in the order in which wood is worked.</summary>
public enum WorkStep
{
    Measure,
    Size,
    BreakDown,
    Wood,
    Patterns,
    Hang,
    Packet,
    History,
}

/// <summary>Names and addresses of the steps.</summary>
public static class WorkSteps
{
    extension(WorkStep step)
    {
        public string Name => step switch
        {
            WorkStep.BreakDown => "Break down",
            WorkStep.Hang => "Bore and hang",
            _ => step.ToString(),
        };

        public string Slug => step switch
        {
            WorkStep.BreakDown => "break-down",
            _ => step.ToString().ToLowerInvariant(),
        };

        public string AddressFor(string courseId, int bench) =>
            FormattableString.Invariant($"/courses/{Uri.EscapeDataString(courseId)}/bench/{bench}/{step.Slug}");
    }
}
