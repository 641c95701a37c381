using System.Globalization;
using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.IfCut;
using Stilewright.Teaching.Telling;

namespace Stilewright.Drawing.Worksheets;

/// <summary>The answer to a maker's list as it goes to paper: for every leaf its lines with their marks, the mistakes in words and,
/// where everything is told, drawings of what would happen if it were cut so.</summary>
/// <param name="Pages">Laid out while they are taken.</param>
public sealed record AnswerPrint(PdfFacts Facts, IEnumerable<PdfPage> Pages)
{
    private const double Indent = 4;

    /// <param name="project">The breakdown that the list was checked against.</param>
    /// <param name="answer">What is told; right sizes and drawings only where it is <see cref="Telling.All"/>.</param>
    /// <param name="program">The version of the program.</param>
    /// <param name="now">In the time of the place; its day stands on every sheet.</param>
    public static AnswerPrint Of(Breakdown breakdown, ProjectBreakdown project, CheckedList found, Answer answer, LengthFormat format, Paper paper, string program, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(project);
        var bench = project.Project.Bench.ToString(CultureInfo.InvariantCulture);
        return new(
            new($"Bench {bench}: answer to a cut list", "A maker's own cut list, checked", null, "cut list, answer", $"Stilewright {program}", now.ToUniversalTime()),
            Lay(breakdown, project, found, answer, format, paper, new(program, DateOnly.FromDateTime(now.DateTime))).Select(sheet => new PdfPage(sheet.Scene, sheet.Bookmarks)));
    }

    private static IEnumerable<Sheet> Lay(
        Breakdown breakdown, ProjectBreakdown project, CheckedList found, Answer answer, LengthFormat format, Paper paper, TeachingFacts facts)
    {
        var stage = found.List.Stage switch { CutStage.Finished => "finished", CutStage.IntoClamps => "into the clamps", _ => "rough" };
        var block = new AnswerBlock(breakdown.Course.Name, project.Project.Name, stage, project.Project.Bench, format.Unit, facts);
        var flow = new Flow(TitleBlock.Room(paper, hasNote: false));
        var consequences = answer.Telling == Telling.All ? Consequences.Of(found, project) : [];
        var isFirst = true;
        var thick = answer.Lines.Any(line => line.Line.Thickness is not null);
        foreach (var (label, name, leaf) in Subjects(project, found))
        {
            bool IsHere(KeyItem item) => item.Leaf == label;
            var lines = answer.Lines.Where(line => Of(found, line).Items is var items && (items.Count == 0 ? isFirst : items.Any(IsHere))).ToList();
            var mistakes = answer.Mistakes.Where(mistake => mistake.Mistake.Numbers.Any(number => IsHere(number.Item))).ToList();
            flow.Begin(new("", $"{label}, {name}", false));
            flow.Add(
            [
                .. Prose.Title($"{label}, {name}: your list", flow.Width, new Bookmark(label, 1)),
                .. isFirst ? Prose.Paragraph(answer.Summary, flow.Width, TextStyle.Body.Bold) : [],
                .. Prose.First(Table.Of(
                    [Column.Figure("line"), "part", "taken for", Column.Figure("count"), Column.Figure("width"), Column.Figure("length"), .. thick ? [Column.Figure("thickness")] : Array.Empty<Column>(), "answer", "right size"],
                    lines.Select(line => Row(line, thick)), flow.Width, flow.Height / 2), 3),
                .. found.Missing.Where(IsHere).Select(item => item.Name).ToList() is { Count: > 0 } missing ? Prose.Paragraph($"Missing: {string.Join(", ", missing)}.", flow.Width, above: 3) : [],
                .. mistakes.SelectMany((mistake, i) => Told(mistake, mistakes.Count == 1 ? "The mistake" : $"Mistake {(i + 1).ToString(CultureInfo.InvariantCulture)}", flow.Width)),
            ]);
            var drawn = consequences.Where(one => leaf is not null && one.Leaf.Path == leaf.Path).ToList();
            if (drawn.Count > 0)
            {
                flow.Add(
                [
                    .. Prose.Heading("If it were cut so", flow.Width),
                    .. IfCutStrips.Of(drawn.Select(one => (one, LeafDetail.Of(breakdown.Course, project, one.Leaf))), format, flow.Width, flow.Height),
                ]);
            }

            isFirst = false;
        }

        foreach (var sheet in WorksheetPrint.Numbered(flow.End(), paper, block))
            yield return sheet;
    }

    // The leaves that the list is about, then fronts of several leaves; a list that is about nothing has the project's first.
    private static IEnumerable<(string Label, string Name, SizedLeaf? Leaf)> Subjects(ProjectBreakdown project, CheckedList found)
    {
        var labels = found.Lines.SelectMany(line => line.Items).Concat(found.Missing).Select(item => item.Leaf).ToHashSet();
        var leaves = project.Fronts.SelectMany(front => front.Leaves).ToList();
        var all = leaves.Where(leaf => labels.Contains(leaf.Label)).Select(leaf => (leaf.Label, leaf.Name, (SizedLeaf?)leaf))
            .Concat(project.Fronts.Where(front => labels.Contains(front.Label) && !leaves.Exists(leaf => leaf.Label == front.Label)).Select(front => (front.Label, "front", front.Leaves.Count > 0 ? front.Leaves[0] : null))).ToList();
        return all.Count > 0 ? all : leaves.Take(1).Select(leaf => (leaf.Label, leaf.Name, (SizedLeaf?)leaf));
    }

    private static CheckedLine Of(CheckedList found, LineAnswer line) => found.Lines.First(each => ReferenceEquals(each.Line, line.Line));

    private static Row Row(LineAnswer line, bool thick) => new(
    [
        line.Line.Number.ToString(CultureInfo.InvariantCulture), line.Line.Name, line.What, line.Line.Count?.ToString(CultureInfo.InvariantCulture) ?? "",
        line.Line.Width?.Text ?? "", line.Line.Length?.Text ?? "", .. thick ? [line.Line.Thickness?.Text ?? ""] : Array.Empty<string>(), AnswerWords.Verdict(line), AnswerWords.RightSize(line),
    ])
    {
        Note = string.Join(" ", line.Remarks),
    };

    private static IEnumerable<Strip> Told(MistakeAnswer mistake, string heading, double width)
    {
        foreach (var strip in Prose.Heading($"{heading}: {mistake.About}", width))
            yield return strip;
        foreach (var text in ((string?[])[mistake.Missed ?? mistake.Hint, mistake.Rule, .. mistake.Formulas]).Where(text => !string.IsNullOrEmpty(text)))
        {
            foreach (var strip in Prose.Paragraph(text!, width))
                yield return strip;
        }

        foreach (var work in mistake.Work)
        {
            foreach (var strip in new[] { work.AsWorked.Length > 0 ? $"as worked: {work.AsWorked}" : "", $"right: {work.Right}" }.Where(text => text.Length > 0).SelectMany(text => Prose.Paragraph(text, width, indent: Indent)))
                yield return strip;
        }

        foreach (var strip in new[] { mistake.Question, mistake.Following }.OfType<string>().SelectMany(text => Prose.Paragraph(text, width)))
            yield return strip;
    }
}
