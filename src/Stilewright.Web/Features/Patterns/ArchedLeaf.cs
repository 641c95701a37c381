using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Drawing.Patterns;
using Stilewright.Findings;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Features.Patterns;

/// <summary>A leaf with arched rails, as the page shows it.</summary>
/// <param name="OnRack">What was found of the shop's hard patterns.</param>
/// <param name="Refusals">Why a pattern cannot be drawn as it was asked for.</param>
public sealed record ArchedLeaf(string Path, string Label, string Name, IReadOnlyList<PatternPart> Parts, IReadOnlyList<Finding> OnRack, IReadOnlyList<string> Refusals)
{
    /// <summary>Every one of the project, with what is being typed.</summary>
    /// <param name="order">How the patterns are wanted; its place does not matter.</param>
    public static IReadOnlyList<ArchedLeaf> Of(ProjectDesk desk, PatternOrder order)
    {
        ArgumentNullException.ThrowIfNull(desk);
        var shown = desk.Shown;
        var revision = Fingerprint.Of(shown.Course, desk.Worked.Project);
        return
        [
            .. from part in ArchedParts.Of(shown)
               group part by part.Leaf into parts
               let drawn = parts.Select(each => (Part: each, Drawn: DrawnPatterns.Of([each], revision, desk.Format, order.Whole, order.OnePattern, order.Guide))).ToList()
               select new ArchedLeaf(
                   parts.Key.Path, parts.Key.Label, parts.Key.Name,
                   [.. drawn.Select(each => new PatternPart(each.Part.Part, each.Drawn.Patterns))],
                   [.. shown.FindingsAt(parts.Key.Path).Where(finding => finding.Rule == Rules.PatternFits || finding.Rule == Rules.NoPatternFits)],
                   [.. drawn.SelectMany(each => each.Drawn.Refusals)]),
        ];
    }
}

/// <summary>An arched part with its patterns.</summary>
/// <param name="Patterns">One, or one of each end of a tall panel; none where it cannot be drawn.</param>
public sealed record PatternPart(Part Part, IReadOnlyList<FullSizePattern> Patterns)
{
    /// <summary>The arch that the part is sawn to, or that its edge follows.</summary>
    public ArchShape? Arch => Part.Arch ?? Part.TopArch ?? Part.BottomArch;
}
