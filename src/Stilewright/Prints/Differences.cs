using Stilewright.Doors;

namespace Stilewright.Prints;

/// <summary>How a course differs from what was handed out of it.</summary>
/// <param name="OnPaper">What makes the paper wrong: parts and benches, in the order of what was handed out, then what is new.</param>
/// <param name="Origins">What else is of another revision or version, whether or not it changed a part.</param>
public sealed record Differences(IReadOnlyList<Change> OnPaper, IReadOnlyList<Change> Origins)
{
    /// <summary>Whether everything on the paper still holds.</summary>
    public bool PaperHolds => OnPaper.Count == 0;

    /// <param name="then">Handed out of this course.</param>
    /// <param name="revisions">Those of <paramref name="now"/>, with every project.</param>
    /// <param name="program">The version that worked out <paramref name="now"/>.</param>
    /// <exception cref="ArgumentException">It was handed out of another course.</exception>
    public static Differences Since(HandedOut then, Breakdown now, Revisions revisions, string program)
    {
        ArgumentNullException.ThrowIfNull(then);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(revisions);
        if (then.Course != now.Course.Id)
            throw new ArgumentException($"It was handed out of the course {then.Course}, not of {now.Course.Id}.", nameof(then));

        var current = now.Projects.ToDictionary(project => project.Project.Id);
        List<Change> onPaper = [];
        List<Change> origins = [];
        if (then.Program != program)
            origins.Add(new ProgramChange(then.Program, program));
        if (then.StandardRevision != revisions.Standard)
            origins.Add(new StandardChange(then.Standard, then.StandardRevision, now.Standard.Name, revisions.Standard));

        foreach (var was in then.Projects)
        {
            if (!current.TryGetValue(was.Id, out var project))
            {
                onPaper.Add(new ProjectGone(was));
                continue;
            }

            var revision = revisions.Projects[was.Id];
            if (was.Revision != revision)
                origins.Add(new ProjectEdited(was, revision));
            onPaper.AddRange(Between(was, project, revision).Where(change => then.Extent != HandedOutExtent.Parts || change is not PartAdded));
        }

        if (then.Extent == HandedOutExtent.WholeCourse)
        {
            var known = then.Projects.Select(project => project.Id).ToHashSet();
            onPaper.AddRange(now.Projects.Where(project => !known.Contains(project.Project.Id))
                .Select(project => new ProjectAdded(HandedOutProject.Of(project, revisions.Projects[project.Project.Id]))));
        }

        return new(onPaper, origins);
    }

    private static IEnumerable<Change> Between(HandedOutProject was, ProjectBreakdown project, string revision)
    {
        var now = HandedOutProject.Of(project, revision);
        if (was.Bench != now.Bench)
            yield return new BenchChange(was, now.Bench);

        var parts = now.Parts.ToDictionary(part => part.Path);
        // A front without a leaf could not be sized, so all that it had is withheld.
        string[] withheld = [.. project.Fronts.SelectMany(front => front.Leaves.Count == 0 ? [front.Path + "/"]
            : front.Leaves.Where(leaf => leaf.IsWithheld).Select(leaf => leaf.Path + "/"))];
        foreach (var part in was.Parts)
        {
            if (!parts.Remove(part.Path, out var today))
            {
                yield return new PartGone(part, withheld.Any(path => part.Path.StartsWith(path, StringComparison.Ordinal)));
                continue;
            }

            foreach (var change in Between(part, today))
                yield return change;
        }

        foreach (var part in now.Parts.Where(part => parts.ContainsKey(part.Path)))
            yield return new PartAdded(part);
    }

    private static IEnumerable<Change> Between(HandedOutPart was, HandedOutPart now)
    {
        if (was.Finished != now.Finished)
            yield return new SizeChange(was, SizeStage.Finished, was.Finished, now.Finished);
        if (was.GlueUp != now.GlueUp)
            yield return new SizeChange(was, SizeStage.GlueUp, was.GlueUp, now.GlueUp);
        if (was.Rough != now.Rough)
            yield return new SizeChange(was, SizeStage.Rough, was.Rough, now.Rough);
        if (was.Thickness?.Rough != now.Thickness?.Rough)
            yield return new ThicknessChange(was, ThicknessStage.Rough, was.Thickness?.Rough, now.Thickness?.Rough);
        if (was.Thickness?.Planed != now.Thickness?.Planed)
            yield return new ThicknessChange(was, ThicknessStage.Planed, was.Thickness?.Planed, now.Thickness?.Planed);
        if (was.Thickness?.Final != now.Thickness?.Final)
            yield return new ThicknessChange(was, ThicknessStage.Sanded, was.Thickness?.Final, now.Thickness?.Final);
        if (was.Material != now.Material)
            yield return new MaterialChange(was, now.Material);
        if (WithoutBench(was.Label) != WithoutBench(now.Label) || was.Name != now.Name)
            yield return new Renaming(was, now.Label, now.Name);
    }

    private static string WithoutBench(string label) => label[(label.IndexOf('·', StringComparison.Ordinal) + 1)..];
}
