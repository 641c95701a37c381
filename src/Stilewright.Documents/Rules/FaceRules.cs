using Stilewright.Projects;

namespace Stilewright.Documents.Rules;

internal static class FaceRules
{
    private static readonly string[] Edges = ["left", "right", "top", "bottom"];

    public static IEnumerable<RuleFault> NeighboursAreOnTheSameFace(Face face, DocumentPath path)
    {
        var all = face.Openings.Select(opening => opening.Id).Concat(OpeningsOf(face.Layout?.Space)).ToHashSet();
        for (var index = 0; index < face.Openings.Count; index++)
        {
            var opening = face.Openings[index];
            var place = path.Field("openings").Item(index).Field("beside");
            foreach (var edge in Edges)
            {
                if (BeyondEdge(opening.Beside, edge) is not NextOpening next)
                    continue;
                if (next.Opening == opening.Id)
                    yield return new(place.Field(edge).Field("opening"), "an opening is its own neighbour", "name the opening on the other side of the member");
                else if (!all.Contains(next.Opening))
                    yield return new(place.Field(edge).Field("opening"), $"the opening \"{Quote.Shown(next.Opening)}\" is not on this face", $"name one of this face: {Quote.List(all)}");
            }
        }
    }

    public static IEnumerable<RuleFault> AppliedEndsAreOnEnds(Face face, DocumentPath path)
    {
        if (face.Side is FaceSide.LeftEnd or FaceSide.RightEnd)
            yield break;
        for (var index = 0; index < face.Fronts.Count; index++)
        {
            if (face.Fronts[index] is AppliedEnd)
                yield return new(path.Field("fronts").Item(index).Field("kind"), "an applied end is on a face that is no end", "put it on a face whose \"side\" is left-end or right-end");
        }
    }

    public static IEnumerable<RuleFault> FacesStandOnceInARun(Run run, DocumentPath path)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        for (var index = 0; index < run.Items.Count; index++)
        {
            if (run.Items[index] is RunFace one && !seen.Add(one.Face))
                yield return new(path.Field("items").Item(index).Field("face"), $"the face \"{Quote.Shown(one.Face)}\" stands twice in the run", "name each face once");
        }
    }

    public static IEnumerable<RuleFault> EndsAtTheToeHaveItsHeight(AppliedEnd end, DocumentPath path)
    {
        if (end is { Reaches: EndReach.Toe, ToeHeight: null })
            yield return new(path.Field("toeHeight"), "the end stops at the toe space, whose height is not given", "add \"toeHeight\"");
    }

    private static Beyond? BeyondEdge(Surroundings? beside, string edge) => edge switch
    {
        "left" => beside?.Left,
        "right" => beside?.Right,
        "top" => beside?.Top,
        _ => beside?.Bottom,
    };

    private static IEnumerable<string> OpeningsOf(Space? space) => space is null ? []
        : (space.Opening is { } opening ? [opening.Id] : Enumerable.Empty<string>())
            .Concat((space.Columns?.Spaces ?? []).Concat(space.Rows?.Spaces ?? []).SelectMany(OpeningsOf));
}
