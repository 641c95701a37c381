using Stilewright.Shop;

namespace Stilewright.Web.Features.Standard;

/// <summary>One word of a few.</summary>
/// <param name="Name">The path of what is chosen.</param>
/// <param name="Options">Each word, and what people call it.</param>
public sealed record WordChoice(
    string Name, string Label, IReadOnlyList<(string Word, string Words)> Options, string Chosen, Func<HouseStandard, string, HouseStandard> Choose);
