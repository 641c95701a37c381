using Stilewright.Shop;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Features.Standard;

/// <summary>A record of the standard on a page, or a part of one.</summary>
/// <param name="Name">Its path; of a row with its place in the list.</param>
/// <param name="Title">What people call it.</param>
public sealed record RecordPart(string Name, string Title, IReadOnlyList<Field<HouseStandard>> Fields)
{
    public IReadOnlyList<WordChoice> Choices { get; init; } = [];
    public IReadOnlyList<RecordPart> Parts { get; init; } = [];

    /// <summary>What can be added to it, each with its words.</summary>
    public IReadOnlyList<PartEdit> Adds { get; init; } = [];

    /// <summary>Takes it out; null for what stays.</summary>
    public PartEdit? Removal { get; init; }
}
