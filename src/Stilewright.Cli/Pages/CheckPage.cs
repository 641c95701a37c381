using Stilewright.Cli.Layout;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>All findings of a course, by bench.</summary>
internal static class CheckPage
{
    public static Page Of(Breakdown breakdown, LengthFormat format)
    {
        var figures = new TradeWords(format);
        var blocks = new FindingBlocks(breakdown, figures);
        var page = new Page().Title($"{breakdown.Course.Name}: {FindingWords.Summary([.. breakdown.Findings])}");
        var left = breakdown.Findings.ToList();
        foreach (var project in breakdown.Projects)
        {
            Finding[] own = [.. left.Where(finding => ProjectPaths.Holds(project, finding))];
            if (own.Length == 0)
                continue;
            left.RemoveAll(own.Contains);
            page.Heading($"Bench {project.Project.Bench}, {project.Project.Name}");
            blocks.AddTo(page, own);
        }

        if (left.Count > 0)
        {
            page.Heading("The whole course");
            blocks.AddTo(page, left);
        }

        return page.Footnotes();
    }
}
