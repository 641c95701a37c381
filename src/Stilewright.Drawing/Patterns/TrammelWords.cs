using Stilewright.Curves;

namespace Stilewright.Drawing.Patterns;

/// <summary>What the marks of trammel tables are called.</summary>
public static class TrammelWords
{
    /// <summary>Letters for places on the curve, numbers for centres, in the order of the tables.</summary>
    public static string NameOf(IReadOnlyList<TrammelTable> tables, int table, int index)
    {
        ArgumentNullException.ThrowIfNull(tables);
        var isCentre = tables[table].Points[index].Mark == TrammelMark.Centre;
        var before = tables.Take(table).SelectMany(each => each.Points).Concat(tables[table].Points.Take(index)).Count(point => point.Mark == TrammelMark.Centre == isCentre);
        return isCentre ? FormattableString.Invariant($"{before + 1}") : Tiling.Letters(before);
    }

    public static string Of(TrammelMark mark) => mark switch
    {
        TrammelMark.End => "end of the curve",
        TrammelMark.Tangent => "tangent point",
        TrammelMark.Corner => "corner",
        _ => "centre",
    };
}
