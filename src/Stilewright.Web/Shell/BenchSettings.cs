namespace Stilewright.Web.Shell;

/// <summary>Where the settings of a bench are: its name and number, and what differs from the standard there.</summary>
public static class BenchSettings
{
    public static string AddressFor(string courseId, int bench) =>
        FormattableString.Invariant($"/courses/{Uri.EscapeDataString(courseId)}/bench/{bench}/settings");
}
