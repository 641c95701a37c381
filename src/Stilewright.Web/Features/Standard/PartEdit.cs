using Stilewright.Shop;

namespace Stilewright.Web.Features.Standard;

/// <summary>Adds a part or takes one out.</summary>
/// <param name="List">The path of what it alters, whose fields may stand for other rows after it.</param>
public sealed record PartEdit(string List, string Words, Func<HouseStandard, HouseStandard> Edit);
