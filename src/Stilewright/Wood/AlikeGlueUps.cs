using Stilewright.Doors;
using Stilewright.Shop;

namespace Stilewright.Wood;

/// <summary>Panels and slabs that are glued up from the same staves, told once; left and right ones are alike until they are shaped.</summary>
/// <param name="Part">The first of them.</param>
/// <param name="Standard">What holds at it.</param>
/// <param name="Labels">Of all of them.</param>
public sealed record AlikeGlueUps(Part Part, StandardInForce Standard, IReadOnlyList<string> Labels)
{
    /// <summary>In the order of the leaves.</summary>
    public static IReadOnlyList<AlikeGlueUps> Of(IEnumerable<SizedLeaf> leaves) =>
    [
        .. leaves.SelectMany(leaf => leaf.Parts.Where(part => part.Work.Contains(EdgeWork.JoinStaves)).Select(part => (Part: part, leaf.Standard))).GroupBy(each => Key(each.Part))
            .Select(alike => new AlikeGlueUps(alike.First().Part, alike.First().Standard, [.. alike.Select(each => each.Part.Label)])),
    ];

    private static object Key(Part part) => (
        part.Name, part.Material, part.Stock, (part.Rough?.Width.Amount, part.Rough?.Length.Amount, part.GlueUp.Width.Amount, part.GlueUp.Length.Amount),
        (part.Thickness?.Rough?.Amount, part.Thickness?.Planed.Amount, part.Thickness?.Final.Amount));
}
