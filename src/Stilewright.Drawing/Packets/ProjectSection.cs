using System.Globalization;
using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Writing;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>The sheets of one project: cover, leaves, boring and hanging, cut list.</summary>
internal sealed class ProjectSection
{
    private const string Withheld = "withheld: it cannot be built as it stands";

    private readonly PacketContents contents;
    private readonly ProjectBreakdown project;
    private readonly LengthFormat format;
    private readonly TradeWords figures;
    private readonly FindingStrips findings;
    private readonly Flow flow;
    private Strip[] legend = [];

    private ProjectSection(PacketContents contents, ProjectBreakdown project)
    {
        (this.contents, this.project) = (contents, project);
        format = contents.Format(project);
        figures = new(format);
        findings = new(contents.Words, format);
        flow = new(contents.Room);
    }

    private double Width => flow.Width;
    private double Most => flow.Height / 2;

    public static IEnumerable<Sheet> Sheets(PacketContents contents, ProjectBreakdown project)
    {
        var section = new ProjectSection(contents, project);
        section.LayCover();
        var leaves = new LeafSheets(contents, project, section.flow, section.format);
        foreach (var piece in project.Pieces)
        {
            foreach (var front in piece.Fronts)
            {
                foreach (var leaf in front.Leaves)
                    leaves.Lay(piece, front, leaf);
            }
        }

        new HangingSheets(contents, project, section.flow, section.format).Lay();
        if (contents.Settings.Wood)
            new WoodSheets(project, section.flow, section.format).Lay();
        section.LayCutList();
        return contents.Number(section.flow.End(), project);
    }

    private void LayCover()
    {
        var own = contents.FindingsOf(project);
        var title = $"Bench {project.Project.Bench.ToString(CultureInfo.InvariantCulture)}, {project.Project.Name}";
        flow.Begin(new("", "cover and fronts", true));
        flow.Add(Prose.Title(title, Width, new Bookmark(title, 1)));
        Finding[] cannot = [.. own.Where(finding => finding.Severity == Severity.CannotBuild)];
        if (cannot.Length > 0)
            flow.Add(findings.Framed("This cannot be built as it stands. What is named here has no parts in this packet.", cannot, Width));
        LayCounts(own);
        LayFigures();
        LayFronts();
        Finding[] general = [.. own.Where(finding => finding.Severity != Severity.CannotBuild && !IsAboutLeaf(finding))];
        if (general.Length > 0)
        {
            flow.Add(Prose.Heading("Findings about fronts and openings", Width));
            flow.Add(findings.Of(general, Width));
        }

        // Where the cover has no room for it, the legend fills what the cut list leaves of the last sheet.
        legend = [.. Legend.Of(Width, format, contents.Breakdown.Standard.Unit)];
        if (flow.Holds(legend))
        {
            flow.Add(legend);
            legend = [];
        }
        else
        {
            flow.Add(Prose.Paragraph("How to read this packet: after the cut list, at the end.", Width, TextStyle.Small, above: 3));
        }
    }

    private bool IsAboutLeaf(Finding finding) =>
        project.Fronts.SelectMany(front => front.Leaves).Any(leaf => finding.Concerns(leaf.Path));

    private void LayCounts(IReadOnlyList<Finding> own)
    {
        SizedLeaf[] leaves = [.. project.Fronts.SelectMany(front => front.Leaves)];
        var parts = leaves.Sum(leaf => leaf.Parts.Count);
        var withheld = leaves.Count(leaf => leaf.IsWithheld);
        var words = $"{TradeWords.Count(project.Fronts.Count(), "front", "fronts")}, {TradeWords.Count(leaves.Length, "leaf", "leaves")}, {TradeWords.Count(parts, "part", "parts")}"
            + (withheld > 0 ? $" ({TradeWords.Count(withheld, "leaf", "leaves")} withheld)" : "") + $"; {FindingWords.Summary(own)}.";
        flow.Add(Prose.Paragraph(words, Width, above: 3));
    }

    private void LayFigures()
    {
        var room = flow.Height * 0.62;
        foreach (var run in project.Runs)
        {
            const string Title = "The faces side by side";
            var height = run.Items.OfType<RunFigureFace>().Select(item => item.Face.Frame!.Height).DefaultIfEmpty().Max();
            flow.Add(FigureStrips.One(
                new(Title, run.Width, height, scale => RunElevation.Draw(Title, run, scale, format)),
                format.Unit, Width, flow.Height * 0.45, flow.Height));
        }

        foreach (var piece in project.Pieces)
        {
            foreach (var face in piece.Faces.Where(face => face.Frame is not null || face.Fronts.Any(front => front.Leaves.Count > 0)))
            {
                var title = piece.Faces.Count > 1 ? $"{piece.Piece.Name}, {TradeWords.Words(face.Face.Side)}" : piece.Piece.Name;
                flow.Add(FigureStrips.One(
                    new(title, face.Frame?.Width ?? default, face.Frame?.Height ?? default, scale => FaceElevation.Draw(title, face, scale, format, Width)),
                    format.Unit, Width, room, flow.Height));
            }
        }
    }

    private void LayFronts()
    {
        Dictionary<string, string> labels = [];
        foreach (var front in project.Fronts)
            labels.TryAdd(front.Path, front.Label);
        flow.Add(Prose.Heading("Fronts and leaves", Width));
        flow.Add(Prose.Paragraph("Seen from the front, width × height.", Width, TextStyle.Small).Select(strip => strip with { KeepWithNext = true }));
        flow.Add(Table.Of(
            ["label", "name", Column.Size("opening"), "mount", Column.Size("size"), "hinge", "design"],
            Rows(labels), Width, Most));
    }

    private IEnumerable<Row> Rows(Dictionary<string, string> labels)
    {
        foreach (var front in project.Fronts)
        {
            List<string> notes = [];
            if (front.Figure is { } opening)
                notes.Add($"opening {opening.Reason}");
            if (FrontWords.Unmeasured(front, figures) is { } unmeasured)
                notes.Add($"opening {unmeasured}");
            if (FrontWords.Lean(front, figures) is { } lean)
                notes.Add(lean);
            if (front.Gap is { } gap)
                notes.Add($"{figures.Of(gap)} between its leaves");
            notes.AddRange(front.Edges.Select(edge =>
                $"{TradeWords.Words(edge.Side)} {figures.Reach(edge.Reach, front.Mount)}{(edge.Beyond == BeyondKind.Unknown ? "" : $", then {FrontWords.Beyond(edge, labels)}")}"));
            // One leaf of the front's own label is its front; others are told one by one.
            var single = front.Leaves is [var only] && only.Label == front.Label ? only : null;
            if (single is { IsWithheld: true })
                notes.Insert(0, Withheld);
            yield return new(
            [
                front.Label, front.Name.Length > 0 || single is null ? front.Name : single.Name, front.Figure is { } figure ? figures.Size(figure.Width, figure.Height) : "",
                front.Mount is { } mount ? TradeWords.Words(mount) : "", front is { Width: { } width, Height: { } height } ? figures.Size(width, height) : "",
                single is not null ? Hinge(single) : front.Leaves.Count == 0 ? "" : TradeWords.Count(front.Leaves.Count, "leaf", "leaves"), single?.DesignName ?? "",
            ])
            {
                Note = string.Join("; ", notes),
            };
            foreach (var leaf in front.Leaves.Where(leaf => leaf != single))
            {
                yield return new([leaf.Label, leaf.Name, "", "", figures.Size(leaf.Width, leaf.Height), Hinge(leaf), leaf.DesignName])
                {
                    Note = leaf.IsWithheld ? Withheld : "",
                };
            }
        }
    }

    private static string Hinge(SizedLeaf leaf) => leaf.IsDrawerFront ? "drawer front" : TradeWords.Hinge(leaf.Hinge);

    private void LayCutList()
    {
        SizedLeaf[] leaves = [.. project.Fronts.SelectMany(front => front.Leaves)];
        var group = CutListGroup.Of("Cut list", leaves.SelectMany(leaf => leaf.Parts), contents.Owners);
        flow.Begin(new("", "cut list", true));
        flow.Add(Prose.Title("Cut list", Width, new Bookmark("Cut list", 2)));
        if (group.Rows.Count == 0)
            flow.Add(Prose.Paragraph("Nothing to cut.", Width));
        else
            flow.Add(Prose.Paragraph("Sizes are width × length along the grain. Cut to the sizes into the clamps; the rest is trimmed off the glued leaf.", Width, TextStyle.Small));
        flow.Add(CutListStrips.Of(group, figures, false, Width, Most));
        // A front without a leaf could not be sized.
        string[] withheld = [.. project.Fronts.SelectMany(front => front.Leaves.Count == 0 ? [front.Label]
            : front.Leaves.Where(leaf => leaf.IsWithheld).Select(leaf => leaf.Label))];
        if (withheld.Length > 0)
            flow.Add(Prose.Paragraph($"Left out because they cannot be built: {string.Join(", ", withheld)}.", Width, TextStyle.Body.Bold, above: 3));
        flow.Add(legend);
    }
}
