using Stilewright.Doors;
using Stilewright.Drawing.Scenes;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Wood;
using Stilewright.Wording;

namespace Stilewright.Drawing.Figures;

/// <summary>Something that can be drawn by its name.</summary>
/// <param name="Draw">Makes the drawing at a scale.</param>
/// <param name="IsFullSize">True for what makes sense at full size only.</param>
public sealed record Drawable(ProjectBreakdown Project, Func<Scale, LengthFormat, Scene> Draw, bool IsFullSize = false)
{
    /// <summary>The scales at which it is tried from large to small; null for those that reduce.</summary>
    public IReadOnlyList<Scale>? Scales { get; init; }

    /// <param name="view">One of <see cref="LeafViews"/>, for a leaf, or for its panel where the view is of one.</param>
    public static Found<Drawable> Find(Breakdown breakdown, string typed, string view, double widthMillimetres)
    {
        if (view is LeafViews.PanelFit or LeafViews.PanelPlay or LeafViews.GlueUp)
            return OfPanel(breakdown, typed, view);
        foreach (var project in breakdown.Projects)
        {
            foreach (var leaf in project.Fronts.SelectMany(front => front.Leaves))
            {
                if (!PlaceName.Means(typed, leaf.Path, leaf.Label))
                    continue;
                if (view == LeafViews.Boring)
                    return Boring(breakdown, project, leaf);
                return There(OfLeaf(breakdown, project, leaf, view));
            }
        }

        if (view != LeafViews.Front)
        {
            return new Found<Drawable>.Missing(
                $"The view {view} is of a leaf, and {typed} is none. {PlaceName.Suggest(typed, breakdown.Leaves.SelectMany(leaf => new[] { leaf.Label, leaf.Path }))}".TrimEnd());
        }

        foreach (var project in breakdown.Projects)
        {
            foreach (var face in project.Faces.Where(face => PlaceName.Means(typed, face.Face.Id, face.Face.Id)))
            {
                var piece = project.Pieces.First(piece => piece.Faces.Contains(face)).Piece;
                return There(new(project, (scale, format) => FaceElevation.Draw(FormattableString.Invariant($"Bench {project.Project.Bench}, {piece.Name}: {face.Face.Id}"), face, scale, format, widthMillimetres)));
            }

            foreach (var run in project.Runs.Where(run => PlaceName.Means(typed, run.Run.Id, run.Run.Id)))
                return There(new(project, (scale, format) => RunElevation.Draw(FormattableString.Invariant($"Bench {project.Project.Bench}: run {run.Run.Id}"), run, scale, format)));
            foreach (var leaf in project.Fronts.SelectMany(front => front.Leaves))
            {
                if (leaf.Parts.FirstOrDefault(part => PlaceName.Means(typed, part.Path, part.Label)) is { } part)
                    return There(new(project, (scale, format) => PartFigure.Draw(part, LeafDetail.Of(breakdown.Course, project, leaf), scale, format)));
            }
        }

        return new Found<Drawable>.Missing(
            $"There is no face, run, leaf or part {typed} in this course. {PlaceName.Suggest(typed, Names(breakdown))}".TrimEnd());
    }

    // Of a leaf the first panel that has such a view.
    private static Found<Drawable> OfPanel(Breakdown breakdown, string typed, string view)
    {
        foreach (var project in breakdown.Projects)
        {
            var unit = project.Project.Unit ?? breakdown.Course.Unit;
            foreach (var leaf in project.Fronts.SelectMany(front => front.Leaves))
            {
                var isLeaf = PlaceName.Means(typed, leaf.Path, leaf.Label);
                foreach (var part in leaf.Parts.Where(part => isLeaf || PlaceName.Means(typed, part.Path, part.Label)))
                {
                    if (view == LeafViews.GlueUp)
                    {
                        if (part.Work.Contains(EdgeWork.JoinStaves) && Wood.GlueUp.Of(part, leaf.Standard, GlueUpOrder.Usual) is GlueUpResult.Planned { GlueUp: var glueUp })
                            return There(new(project, (scale, format) => GlueUpFigure.Draw(glueUp, scale, format)));
                    }
                    else if (Wood.PanelFit.Of(part, leaf.Standard) is { } fit)
                    {
                        return There(view == LeafViews.PanelPlay ? new(project, (_, format) => PlayChart.Draw(fit, format), IsFullSize: true)
                            : new(project, (scale, format) => PanelFitFigure.Draw(fit, leaf, scale, format)) { Scales = [.. Scale.EnlargedOf(unit), .. Scale.Of(unit).Skip(1)] });
                    }
                }
            }
        }

        var some = breakdown.Leaves.SelectMany(leaf => leaf.Parts).Where(part => part.Groove is not null || part.Work.Contains(EdgeWork.JoinStaves)).SelectMany(part => new[] { part.Label, part.Path });
        return new Found<Drawable>.Missing($"The view {view} is of a solid panel{(view == LeafViews.GlueUp ? " or slab" : " whose wood is known")}, and {typed} has none. {PlaceName.Suggest(typed, some)}".TrimEnd());
    }

    private static Found<Drawable> There(Drawable thing) => new Found<Drawable>.There(thing);

    private static Drawable OfLeaf(Breakdown breakdown, ProjectBreakdown project, SizedLeaf leaf, string view)
    {
        var detail = LeafDetail.Of(breakdown.Course, project, leaf);
        return view switch
        {
            LeafViews.Back => new(project, (scale, format) => LeafFigure.Back(leaf, detail, scale, format)),
            LeafViews.StickAcross => new(project, (_, format) => StoryStick.Draw(leaf, detail, format)[0], IsFullSize: true),
            LeafViews.StickUp => new(project, (_, format) => StoryStick.Draw(leaf, detail, format)[1], IsFullSize: true),
            _ => new(project, (scale, format) => LeafFigure.Front(leaf, detail, scale, format)),
        };
    }

    private static Found<Drawable> Boring(Breakdown breakdown, ProjectBreakdown project, SizedLeaf leaf) =>
        HangingPlan.Of(breakdown).Leaves.FirstOrDefault(hung => hung.Leaf.Path == leaf.Path) is { } hung
            ? There(new(project, (scale, format) => BoringFigure.Draw([hung], scale, format, isBeside: !hung.IsUpright)))
            : new Found<Drawable>.Missing($"Leaf {leaf.Label} has no hinges: it is a drawer front or fixed, it cannot be built, or the setting hinge.usual names none for it.");

    private static IEnumerable<string> Names(Breakdown breakdown) =>
    [
        .. breakdown.Projects.SelectMany(project => project.Faces).Select(face => face.Face.Id),
        .. breakdown.Projects.SelectMany(project => project.Runs).Select(run => run.Run.Id),
        .. breakdown.Leaves.SelectMany(leaf => new[] { leaf.Label, leaf.Path }),
        .. breakdown.Parts.SelectMany(part => new[] { part.Label, part.Path }),
    ];
}
