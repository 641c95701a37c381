using System.Runtime.CompilerServices;
using System.Text;
using Stilewright.Findings;

namespace Stilewright.Tests.Findings;

/// <summary>Keeps <c>docs/findings.md</c> equal to the rules.</summary>
public class FindingsPageTests
{
    [Fact]
    public void The_page_of_findings_tells_the_rules_as_they_are()
    {
        var path = Path.Combine(Root(), "docs", "findings.md");
        if (Environment.GetEnvironmentVariable("STILEWRIGHT_WRITE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, Page());
        }

        Assert.True(File.Exists(path), "docs/findings.md is missing. Run this test with STILEWRIGHT_WRITE=1 to write it.");
        Assert.True(Page() == File.ReadAllText(path), "docs/findings.md is stale. Run this test with STILEWRIGHT_WRITE=1 to write it anew.");
    }

    private static string Page()
    {
        var page = new StringBuilder();
        page.Append("""
            # Findings

            Every rule that is checked, in the order of the work. This page is made from the rules in the code by the test
            `FindingsPageTests`; to change it, change a rule and run that test with `STILEWRIGHT_WRITE=1`.

            | Severity | What it means |
            |---|---|
            | cannot build | withholds the parts of the leaf it is about |
            | hazard | can hurt someone; only the instructor accepts it, with a reason, and it still prints |
            | caution | can spoil wood |
            | note | worth knowing |

            | Code | Severity | When it speaks | What it advises | Source |
            |---|---|---|---|---|

            """);
        foreach (var rule in Rules.All)
            page.Append(System.Globalization.CultureInfo.InvariantCulture, $"| `{rule.Code}` | {Words(rule.Severity)} | {Cell(rule.Condition)} | {Cell(rule.Advice)} | {Cell(rule.Source.Text)} |\n");
        return page.ToString();
    }

    private static string Words(Severity severity) => severity switch
    {
        Severity.CannotBuild => "cannot build",
        Severity.Hazard => "hazard",
        Severity.Caution => "caution",
        _ => "note",
    };

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);

    private static string Root([CallerFilePath] string thisFile = "")
    {
        var folder = Path.GetDirectoryName(thisFile);
        while (folder is not null && !File.Exists(Path.Combine(folder, "Stilewright.slnx")))
            folder = Path.GetDirectoryName(folder);
        return folder ?? throw new DirectoryNotFoundException($"No folder above {thisFile} holds Stilewright.slnx.");
    }
}
