using Stilewright.Findings;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Doors;

/// <summary>Everything that follows from a course and the house standard: sizes, parts and findings.</summary>
/// <param name="Findings">All findings of the course, in the order of the work within each front.</param>
public sealed record Breakdown(
    Course Course, HouseStandard Standard, IReadOnlyList<ProjectBreakdown> Projects, IReadOnlyList<Finding> Findings)
{
    /// <summary>Works a course out under a standard. A pure function of the two.</summary>
    public static Breakdown Of(Course course, HouseStandard standard) => BreakdownBuilder.Build(course, standard);

    public IEnumerable<SizedFront> Fronts => Projects.SelectMany(project => project.Pieces).SelectMany(piece => piece.Fronts);
    public IEnumerable<SizedLeaf> Leaves => Fronts.SelectMany(front => front.Leaves);
    public IEnumerable<Part> Parts => Leaves.SelectMany(leaf => leaf.Parts);

    /// <summary>Findings about a path or anything under it.</summary>
    public IEnumerable<Finding> FindingsAt(string path) => Findings.Where(finding => finding.Concerns(path));
}

/// <summary>One bench's project, worked out.</summary>
public sealed record ProjectBreakdown(Project Project, StandardInForce Standard, IReadOnlyList<PieceBreakdown> Pieces)
{
    public IEnumerable<SizedFront> Fronts => Pieces.SelectMany(piece => piece.Fronts);
}

/// <summary>One piece, worked out.</summary>
public sealed record PieceBreakdown(Piece Piece, IReadOnlyList<SizedFront> Fronts);
