using Stilewright.Cli.Layout;
using Stilewright.Doors;
using Stilewright.Findings;

namespace Stilewright.Cli.Pages;

/// <summary>Findings as pages tell them: severity, place, problem, advice, source.</summary>
internal sealed class FindingBlocks
{
    private readonly Figures figures;
    private readonly Dictionary<string, string> labels;

    public FindingBlocks(Breakdown breakdown, Figures figures)
    {
        this.figures = figures;
        labels = [];
        foreach (var front in breakdown.Fronts)
        {
            labels.TryAdd(front.Path, front.Label);
            foreach (var leaf in front.Leaves)
            {
                labels.TryAdd(leaf.Path, leaf.Label);
                foreach (var part in leaf.Parts)
                    labels.TryAdd(part.Path, part.Label);
            }
        }
    }

    /// <summary>Worst first, otherwise in the order given.</summary>
    public void AddTo(Page page, IEnumerable<Finding> findings)
    {
        foreach (var finding in findings.OrderByDescending(finding => finding.Severity))
        {
            var format = figures.Format;
            page.Line($"{Word(finding)}: {PlaceOf(finding.Place)}. {finding.ProblemText(format)}", ToneOf(finding), 2);
            page.Line($"Do: {finding.AdviceText(format)}", Tone.Plain, 6);
            if (finding.AcceptedBecause is { } reason)
                page.Line($"Accepted by the instructor: {reason}", Tone.Plain, 6);
            if (finding.AlsoAt.Count > 0)
                page.Line($"Also at: {string.Join("; ", finding.AlsoAt.Select(PlaceOf))}", Tone.Plain, 6);
            page.Line($"Rule {finding.Rule.Code}; source: {finding.Rule.Source}", Tone.Quiet, 6);
        }
    }

    /// <summary>"1 cannot be built, 2 hazards (1 accepted), 3 cautions, 1 note", or "no findings".</summary>
    public static string Summary(IReadOnlyCollection<Finding> findings)
    {
        int Of(Severity severity) => findings.Count(finding => finding.Severity == severity);
        List<string> words = [];
        if (Of(Severity.CannotBuild) is > 0 and var cannot)
            words.Add($"{cannot} cannot be built");
        if (Of(Severity.Hazard) is > 0 and var hazards)
        {
            var accepted = findings.Count(finding => finding is { Severity: Severity.Hazard, AcceptedBecause: not null });
            words.Add(Figures.Count(hazards, "hazard", "hazards") + (accepted > 0 ? $" ({accepted} accepted)" : ""));
        }

        if (Of(Severity.Caution) is > 0 and var cautions)
            words.Add(Figures.Count(cautions, "caution", "cautions"));
        if (Of(Severity.Note) is > 0 and var notes)
            words.Add(Figures.Count(notes, "note", "notes"));
        return words.Count == 0 ? "no findings" : string.Join(", ", words);
    }

    private string PlaceOf(Place place)
    {
        var known = labels.TryGetValue(place.Path, out var label) ? $"{label} ({place.Path})" : place.Path;
        return place.Field is { } field ? $"{known}, {field}" : known;
    }

    private static string Word(Finding finding) => finding switch
    {
        { Severity: Severity.CannotBuild } => "CANNOT BE BUILT",
        { Severity: Severity.Hazard, AcceptedBecause: not null } => "HAZARD, accepted",
        { Severity: Severity.Hazard } => "HAZARD",
        { Severity: Severity.Caution } => "Caution",
        _ => "Note",
    };

    private static Tone ToneOf(Finding finding) => finding.Severity switch
    {
        Severity.CannotBuild or Severity.Hazard => Tone.Danger,
        Severity.Caution => Tone.Caution,
        _ => Tone.Plain,
    };
}
