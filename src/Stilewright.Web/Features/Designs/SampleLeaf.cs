using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Drawings;

namespace Stilewright.Web.Features.Designs;

/// <summary>A design made up as a leaf of some size, or as a pair where its arch runs across one.</summary>
/// <param name="Errors">What makes the design unsound; empty where there is a drawing.</param>
/// <param name="Findings">Of the leaf and its parts, not of how it sits.</param>
public sealed record SampleLeaf(Scene? Scene, Func<string, string?> ClassOf, IReadOnlyList<Finding> Findings, IReadOnlyList<string> Errors)
{
    private const string FrontId = "sample-front";

    /// <summary>Makes the sample up.</summary>
    /// <param name="course">Its standard's overrides hold for the sample.</param>
    /// <param name="isSmall">For a list: the drawing alone, without dimensions.</param>
    public static SampleLeaf Of(Course course, DoorDesign design, HouseStandard standard, SampleSize size, LengthFormat format, bool isSmall = false)
    {
        var made = With(course, design, standard, size);
        // What is being typed may be unsound; it is read as a file would be before anything is worked out from it.
        if (DocumentReader.ReadCourse(DocumentWriter.Write(made)) is DocumentResult<Course>.Refused refused)
            return Unsound(refused.Errors);
        if (References.Check(made, standard) is { Count: > 0 } errors)
            return Unsound(errors);
        var breakdown = Breakdown.Of(made, standard);
        var project = breakdown.Projects[0];
        return new(
            Draw(breakdown, project, size, format, isSmall), PartClasses.Of(project),
            [.. breakdown.Findings.Where(finding => finding.Place.Path.StartsWith($"{FrontId}/", StringComparison.Ordinal))
                // The leaves of a pair have the same faults.
                .DistinctBy(finding => (finding.Rule.Code, finding.ProblemText(format)))], []);
    }

    /// <summary>For a list: at the first of some sizes at which the design can be made.</summary>
    public static SampleLeaf Small(Course course, DoorDesign design, HouseStandard standard, LengthFormat format)
    {
        SampleLeaf? first = null;
        foreach (var size in SampleSize.Common(course.Unit))
        {
            var sample = Of(course, design, standard, size, format, isSmall: true);
            if (sample.Scene is not null)
                return sample;
            first ??= sample;
        }

        return first!;
    }

    private static SampleLeaf Unsound(IReadOnlyList<DocumentError> errors) => new(null, _ => null, [], [.. errors.Select(error => $"{error.Problem}; {error.Fix}.")]);

    private static Scene? Draw(Breakdown breakdown, ProjectBreakdown project, SampleSize size, LengthFormat format, bool isSmall)
    {
        var leaf = project.Fronts.SelectMany(front => front.Leaves).FirstOrDefault(each => each.Parts.Count > 0);
        if (leaf is null)
            return null;
        if (project.Fronts.First().Leaves.Count == 1 && !isSmall)
            return LeafDrawings.Of(breakdown, project, leaf, isBack: false, format);
        var room = isSmall ? 60.0 : 190.0;
        return Fit.Largest(format.Unit, room, isSmall ? 60 : 200,
            scale => FaceElevation.Draw("Sample", project.Faces.First(), scale, format, room, isPlain: isSmall), (size.Width.Value, size.Height.Value)).Scene;
    }

    private static Course With(Course course, DoorDesign design, HouseStandard standard, SampleSize size)
    {
        var isPair = design.TopArch?.AcrossPair is not null || design.BottomArch?.AcrossPair is not null;
        var face = isPair
            ? new Face("sample-face", FaceSide.Front, null, [Pair(design, standard, size)], [])
            : new Face("sample-face", FaceSide.Front, null, [],
                [new StatedFront(FrontId, size.Width, size.Height, design.Id, null, null, SettingValues.None, HingeSide.Left)]);
        var project = new Project("sample-bench", 1, "Sample", [new("sample-piece", "Sample", [face])], course.Unit, [], [], [], SettingValues.None);
        return course with { Projects = [project], Designs = [design] };
    }

    // An opening so wide that each leaf of the pair has the size, without overlay.
    private static Opening Pair(DoorDesign design, HouseStandard standard, SampleSize size)
    {
        var gap = new StandardInForce(standard)[Settings.GapOfPair].Length;
        var width = size.Width.Value + size.Width.Value + gap;
        var nothing = new FixedOverlay(new("0", Length.Zero));
        LeafEntry Leaf(HingeSide side) => new(side, null, null, null, SettingValues.None);
        return new(
            FrontId, new DoorFilling(Mount.Overlay, [Leaf(HingeSide.Left), Leaf(HingeSide.Right)], design.Id, new(nothing, nothing, nothing, nothing)),
            null, null, new(new(new LengthFormat(LengthUnit.Inch, 64).PrintWithUnit(width), width), HeightLeft: size.Height), null, null, null, SettingValues.None);
    }
}
