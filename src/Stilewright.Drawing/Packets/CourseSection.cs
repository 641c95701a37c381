using System.Globalization;
using Stilewright.Doors;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Writing;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>The sheets about the whole course: overview, findings, combined cut list, standard in force.</summary>
internal sealed class CourseSection
{
    private readonly PacketContents contents;
    private readonly LengthFormat format;
    private readonly TradeWords figures;
    private readonly FindingStrips findings;
    private readonly Flow flow;

    private CourseSection(PacketContents contents)
    {
        this.contents = contents;
        format = contents.Format(null);
        figures = new(format);
        findings = new(contents.Words, format);
        flow = new(contents.Room);
    }

    private double Width => flow.Width;
    private double Most => flow.Height / 2;
    private Breakdown Breakdown => contents.Breakdown;

    public static IEnumerable<Sheet> Sheets(PacketContents contents)
    {
        var section = new CourseSection(contents);
        section.LayOverview();
        section.LayCutList();
        new StandardStrips(contents.Breakdown, format: section.format).Lay(section.flow);
        return contents.Number(section.flow.End(), null);
    }

    private void LayOverview()
    {
        flow.Begin(new("", "overview", false));
        flow.Add(Prose.Title(Breakdown.Course.Name, Width, new Bookmark(Breakdown.Course.Name, 1)));
        Finding[] cannot = [.. Breakdown.Findings.Where(finding => finding.Severity == Severity.CannotBuild)];
        if (cannot.Length > 0)
            flow.Add(findings.Framed("Some of this cannot be built as it stands. What is named here has no parts in this packet.", cannot, Width));
        flow.Add(Prose.Paragraph($"House standard: {Breakdown.Standard.Name}. {TradeWords.Count(Breakdown.Projects.Count, "project", "projects")}; {FindingWords.Summary([.. Breakdown.Findings])}.", Width, above: 3));
        flow.Add(Table.Of(
            [Column.Figure("bench"), "project", Column.Figure("fronts"), Column.Figure("leaves"), Column.Figure("parts"), "findings"],
            Breakdown.Projects.Select(project => new Row(
            [
                Text(project.Project.Bench),
                project.Project.Name,
                Text(project.Fronts.Count()),
                Text(project.Fronts.Sum(front => front.Leaves.Count)),
                Text(project.Fronts.SelectMany(front => front.Leaves).Sum(leaf => leaf.Parts.Count)),
                FindingWords.Summary([.. contents.FindingsOf(project)]),
            ])),
            Width, Most));
        if (contents.Settings.Wood && WoodSheets.Total("All leaves", Breakdown.Leaves, format) is { } total)
            flow.Add(Prose.Paragraph(total, Width, above: 3));
        foreach (var severity in new[] { Severity.Hazard, Severity.Caution, Severity.Note })
        {
            Finding[] own = [.. Breakdown.Findings.Where(finding => finding.Severity == severity)];
            if (own.Length == 0)
                continue;
            flow.Add(Prose.Heading(severity switch
            {
                Severity.Hazard => "Hazards: these can hurt someone",
                Severity.Caution => "Cautions: these can spoil wood",
                _ => "Notes",
            }, Width));
            flow.Add(findings.Of(own, Width));
        }
    }

    private void LayCutList()
    {
        flow.Begin(new("", "combined cut list", true));
        flow.Add(Prose.Title("Combined cut list", Width, new Bookmark("Combined cut list", 2)));
        var group = CutListGroup.Of(Breakdown.Course.Name, Breakdown.Parts, contents.Owners);
        if (group.Rows.Count == 0)
            flow.Add(Prose.Paragraph("Nothing to cut.", Width));
        flow.Add(CutListStrips.Of(group, figures, true, Width, Most));
        string[] withheld = [.. Breakdown.Leaves.Where(leaf => leaf.IsWithheld).Select(leaf => leaf.Label)];
        if (withheld.Length > 0)
            flow.Add(Prose.Paragraph($"Left out because they cannot be built: {string.Join(", ", withheld)}.", Width, TextStyle.Body.Bold, above: 3));
    }

    private static string Text(int count) => count.ToString(CultureInfo.InvariantCulture);
}
