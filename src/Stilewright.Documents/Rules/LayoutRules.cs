using Stilewright.Projects;

namespace Stilewright.Documents.Rules;

internal static class LayoutRules
{
    public static IEnumerable<RuleFault> OutermostSpaceHasNoSize(FaceLayout layout, DocumentPath path)
    {
        if (layout.Space.Size is not null)
            yield return new(path.Field("space").Field("size"), "the outermost space has a size, but it is what the outer members leave", "leave \"size\" out");
    }

    public static IEnumerable<RuleFault> SpaceIsOneThing(Space space, DocumentPath path)
    {
        var held = new[] { space.Opening is null ? null : "opening", space.Columns is null ? null : "columns", space.Rows is null ? null : "rows" }
            .OfType<string>().ToList();
        foreach (var extra in held.Skip(1))
            yield return new(path.Field(extra), $"a space holds both {held[0]} and {extra}", "keep one; divide a space again inside one of its own spaces");
    }

    public static IEnumerable<RuleFault> LayoutTellsTheNeighbours(Space space, DocumentPath path)
    {
        if (space.Opening?.Beside is not null)
            yield return new(path.Field("opening").Field("beside"), "an opening of a layout says what is beside it, which the layout tells", "leave \"beside\" out");
    }

    public static IEnumerable<RuleFault> MembersAreOneWidthOrListed(Division division, DocumentPath path)
    {
        var between = division.Spaces.Count - 1;
        if (division.Member is null && division.Members.Count == 0)
            yield return new(path.Field("member"), "the members between the spaces have no width", "add \"member\" for one width, or \"members\" with each in order");
        else if (division.Member is not null && division.Members.Count > 0)
            yield return new(path.Field("members"), "the members have both one width and listed widths", "keep \"member\" or \"members\"");
        else if (division.Members.Count > 0 && division.Members.Count != between)
            yield return new(path.Field("members"), $"{division.Members.Count} members are listed, but {division.Spaces.Count} spaces have {between} between them", $"list {between}");

        for (var index = 0; index < division.Members.Count; index++)
        {
            if (!division.Members[index].Value.IsPositive)
                yield return new(path.Field("members").Item(index), "a member has no width", "write a length above zero");
        }
    }
}
