using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>What all sections of a packet are laid out from.</summary>
internal sealed class PacketContents
{
    private readonly Dictionary<ProjectBreakdown, List<Finding>> findings = new(ReferenceEqualityComparer.Instance);

    public PacketContents(Breakdown breakdown, PacketFacts facts, PacketSettings settings)
    {
        (Breakdown, Facts, Settings) = (breakdown, facts, settings);
        Words = new(breakdown);
        Room = TitleBlock.Room(settings.Paper);
        Owners = CutListGroup.Owners(breakdown.Projects);
        // One walk over the findings, not one for every project.
        var owners = ProjectPaths.ById(breakdown.Projects);
        foreach (var finding in breakdown.Findings)
        {
            var concerned = finding.AlsoAt.Prepend(finding.Place).Select(place => owners.GetValueOrDefault(ProjectPaths.IdOf(place)));
            foreach (var project in concerned.OfType<ProjectBreakdown>().Distinct())
                (findings.TryGetValue(project, out var own) ? own : findings[project] = []).Add(finding);
        }
    }

    public Breakdown Breakdown { get; }
    public PacketFacts Facts { get; }
    public PacketSettings Settings { get; }
    public FindingWords Words { get; }
    public Scenes.PaperBox Room { get; }
    public IReadOnlyDictionary<string, ProjectBreakdown> Owners { get; }

    /// <summary>The leaves of a project that are hung.</summary>
    public HangingPlan HangingOf(ProjectBreakdown project) => HangingPlan.Of(Breakdown with { Projects = [project] });

    public IReadOnlyList<Finding> FindingsOf(ProjectBreakdown project) => findings.GetValueOrDefault(project) ?? [];

    /// <summary>How lengths of a project are printed; those of the whole course where there is none.</summary>
    public LengthFormat Format(ProjectBreakdown? project)
    {
        var own = new StandardInForce(Breakdown.Standard).Format;
        return new(Settings.Unit ?? project?.Project.Unit ?? Breakdown.Course.Unit, Settings.Finest ?? own.FinestDenominator);
    }

    /// <summary>Puts numbers and title blocks to the sheets of a section.</summary>
    public IEnumerable<Sheet> Number(IReadOnlyList<LaidSheet> sheets, ProjectBreakdown? project)
    {
        // A bench may be kept on an older revision of the house standard than the course.
        var standard = project?.Standard.Standard ?? Breakdown.Standard;
        var block = new TitleBlock(Settings.Paper, new SectionFacts(
            Breakdown.Course.Name, project?.Project.Bench, project?.Project.Name ?? "",
            project is null ? "on each project's sheets" : Facts.Revisions.Projects[project.Project.Id],
            standard.Name, ReferenceEquals(standard, Breakdown.Standard) ? Facts.Revisions.Standard : Fingerprint.Of(standard), Format(project).Unit, Facts));
        for (var i = 0; i < sheets.Count; i++)
            yield return block.Finish(sheets[i], i + 1, sheets.Count);
    }
}
