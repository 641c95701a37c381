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

    public IEnumerable<SizedFront> Fronts => Projects.SelectMany(project => project.Fronts);
    public IEnumerable<SizedLeaf> Leaves => Fronts.SelectMany(front => front.Leaves);
    public IEnumerable<Part> Parts => Leaves.SelectMany(leaf => leaf.Parts);

    /// <summary>Findings about a path or anything under it.</summary>
    public IEnumerable<Finding> FindingsAt(string path) => Findings.Where(finding => finding.Concerns(path));
}

/// <summary>One bench's project, worked out.</summary>
public sealed record ProjectBreakdown(Project Project, StandardInForce Standard, IReadOnlyList<PieceBreakdown> Pieces)
{
    public IEnumerable<FaceBreakdown> Faces => Pieces.SelectMany(piece => piece.Faces);
    public IEnumerable<SizedFront> Fronts => Faces.SelectMany(face => face.Fronts);

    /// <summary>The runs as they stand; a run with a face that has no frame figure is left out, as nothing tells how wide it is.</summary>
    public IEnumerable<RunFigure> Runs => Project.Runs.Select(run => RunFigure.Of(run, Faces)).OfType<RunFigure>();
}

/// <summary>One piece, worked out.</summary>
public sealed record PieceBreakdown(Piece Piece, IReadOnlyList<FaceBreakdown> Faces)
{
    public IEnumerable<SizedFront> Fronts => Faces.SelectMany(face => face.Fronts);
}

/// <summary>One face, worked out.</summary>
/// <param name="Frame">Null where the face has no layout, or the layout leaves no room for some space of it, which a finding tells.</param>
/// <param name="Fronts">Fronts of the layout, then of the measured openings, then loose ones.</param>
public sealed record FaceBreakdown(Face Face, FrameFigure? Frame, IReadOnlyList<SizedFront> Fronts);
