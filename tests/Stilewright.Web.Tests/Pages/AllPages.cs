using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Pages;

/// <summary>Every page, with enough on it to be looked at.</summary>
internal static class AllPages
{
    // "{course}" stands for the address of the sample course, "{bench}" for that of its bench with the most on it.
    private static readonly Dictionary<string, string> Addresses = new()
    {
        ["courses"] = "/",
        ["course"] = "{course}",
        ["measure"] = "{bench}/measure",
        ["size"] = "{bench}/size?figure=width",
        ["break-down"] = "{bench}/break-down?leaf={leaf}&part={part}&figure=length",
        ["check"] = "{bench}/check?leaf={leaf}",
        ["my-lists"] = "{course}/my-lists",
        ["class"] = "{course}/class",
        ["designs"] = "{course}/designs",
        ["design"] = "{course}/designs?design=cathedral",
        ["standard"] = "{course}/standard",
        ["cut-list"] = "{course}/cut-list",
        ["print"] = "{course}/print",
        ["worksheets"] = "{course}/worksheets?level=3&seed=7",
        ["worksheet"] = "{course}/worksheets/2?level=2&unit=in&seed=7",
        ["drills"] = "{course}/drills?seed=7",
        ["drill"] = "{course}/drills/2?unit=in&seed=7&finest=16&way=sheet",
        ["course-history"] = "{course}/history",
        ["wood"] = "{bench}/wood",
        ["help-wood"] = "/help/wood",
        ["patterns"] = "{bench}/patterns",
        ["adjust"] = "{bench}/adjust",
        ["hang"] = "{bench}/hang",
        ["packet"] = "{bench}/packet",
        ["history"] = "{bench}/history",
        ["settings"] = "{bench}/settings",
        ["import"] = "/import",
        ["me"] = "/me",
        ["back-up"] = "/back-up",
        ["others"] = "/others",
        ["help"] = "/help",
        ["help-size"] = "/help/size",
        ["help-check"] = "/help/check",
        ["help-adjust"] = "/help/adjust",
        ["help-patterns"] = "/help/patterns",
        ["help-hang"] = "/help/hang",
        ["help-worksheets"] = "/help/worksheets",
        ["glossary"] = "/help/glossary",
        ["not-there"] = "/nowhere",
        ["no-such-course"] = "/courses/nowhere",
        ["nobody-there"] = "{course}/bench/999/measure",
    };

    /// <summary>What stands for the parts of a route that vary, in the sample that a new data file begins with.</summary>
    public static IReadOnlyDictionary<string, string> RouteValues { get; } = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase)
    {
        ["CourseId"] = TestServer.SampleId,
        ["Bench"] = "1",
    };

    public static IEnumerable<string> Keys => Addresses.Keys;

    /// <summary>Goes through every page in two browsers side by side, each with half of the pages.</summary>
    public static Task InTwoAsync(Func<IEnumerable<string>, Task> visit) =>
        Task.WhenAll(Enumerable.Range(0, 2).Select(half => visit(Keys.Where((_, index) => index % 2 == half))));

    public static async Task<string> AddressAsync(TestServer server, string name)
    {
        var sample = await server.SampleAsync();
        var course = $"/courses/{sample.Course.Id}";
        var project = sample.Projects.MaxBy(project => project.Breakdown.Findings.Count)!;
        var leaf = project.Worked.Fronts.SelectMany(front => front.Leaves).First(leaf => leaf.Parts.Count > 1);
        return Addresses[name].Replace("{course}", course, StringComparison.Ordinal)
            .Replace("{bench}", FormattableString.Invariant($"{course}/bench/{project.Project.Bench}"), StringComparison.Ordinal)
            .Replace("{leaf}", Uri.EscapeDataString(leaf.Path), StringComparison.Ordinal).Replace("{part}", Uri.EscapeDataString(leaf.Parts[0].Path), StringComparison.Ordinal);
    }
}
