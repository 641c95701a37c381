using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Teaching.Checking;

namespace Stilewright.Documents.Lists;

/// <summary>The words by which a list says its stage; in the order of <see cref="CutStage"/>.</summary>
public enum ListStage
{
    [Meaning("As the parts are in the finished leaf")]
    Finished,

    [Meaning("As the parts go into the clamps, with the trim allowance")]
    Clamps,

    [Meaning("As rough blanks")]
    Rough,
}

[Meaning("A maker's own cut list, for one leaf or one project")]
public sealed record WrittenList(
    [Meaning("The unit of sizes that name none")] LengthUnit Unit,
    [Between(1, MakersListReader.MostLines)] IReadOnlyList<WrittenLine> Lines,
    [Meaning("The state of the wood whose sizes are stated; absent, it is asked for or the finished one")] ListStage? Stage = null)
{
    public MakersList ToMakersList(CutStage stage) => new(stage,
        [.. Lines.Select((line, index) => new ListLine(index + 1, line.Part, line.Count, line.Width, line.Length, line.Leaf, line.Thickness))]);
}

[Meaning("One line of a maker's cut list")]
public sealed record WrittenLine(
    [Meaning("What the maker calls it, such as top rail")] string Part,
    [Meaning("How many; absent where the maker did not say"), Between(1, MakersListReader.MostPieces)] int? Count = null,
    [Meaning("Across the grain; of a door or front its width"), Between(0, 120, Above = true)] LengthEntry? Width = null,
    [Meaning("Along the grain; of a door or front its height"), Between(0, 120, Above = true)] LengthEntry? Length = null,
    [Meaning("The leaf it is for, by label such as 7.2L or by path")] string? Leaf = null,
    [Meaning("How thick it is at the stage of the list; absent where that is not to be checked"), Between(0, 12, Above = true)] LengthEntry? Thickness = null);
