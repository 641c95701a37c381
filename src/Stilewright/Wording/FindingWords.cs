using Stilewright.Doors;
using Stilewright.Findings;

namespace Stilewright.Wording;

/// <summary>Findings in words: how bad, where, and how many.</summary>
/// <param name="breakdown">Whose labels stand for paths.</param>
public sealed class FindingWords(Breakdown breakdown)
{
    private readonly Dictionary<string, string> labels = Labels(breakdown);

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
            words.Add(TradeWords.Count(hazards, "hazard", "hazards") + (accepted > 0 ? $" ({accepted} accepted)" : ""));
        }

        if (Of(Severity.Caution) is > 0 and var cautions)
            words.Add(TradeWords.Count(cautions, "caution", "cautions"));
        if (Of(Severity.Note) is > 0 and var notes)
            words.Add(TradeWords.Count(notes, "note", "notes"));
        return words.Count == 0 ? "no findings" : string.Join(", ", words);
    }

    /// <summary>The word that a finding begins with, loud for what must not be overlooked.</summary>
    public static string Word(Finding finding) => finding switch
    {
        { Severity: Severity.CannotBuild } => "CANNOT BE BUILT",
        { Severity: Severity.Hazard, AcceptedBecause: not null } => "HAZARD, accepted",
        { Severity: Severity.Hazard } => "HAZARD",
        { Severity: Severity.Caution } => "Caution",
        _ => "Note",
    };

    /// <summary>Label and path, with the field that would change it.</summary>
    public string PlaceOf(Place place)
    {
        var known = labels.TryGetValue(place.Path, out var label) ? $"{label} ({place.Path})" : place.Path;
        return place.Field is { } field ? $"{known}, {field}" : known;
    }

    /// <summary>The label that is chalked on the thing, for readers of paper; its path where it has none.</summary>
    public string LabelOf(Place place) => labels.TryGetValue(place.Path, out var label) ? label : PlaceOf(place);

    private static Dictionary<string, string> Labels(Breakdown breakdown)
    {
        Dictionary<string, string> labels = [];
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

        return labels;
    }
}
