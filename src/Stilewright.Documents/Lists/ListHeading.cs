using Stilewright.Measure;
using Stilewright.Teaching.Checking;

namespace Stilewright.Documents.Lists;

/// <summary>What a column of a maker's list holds.</summary>
internal enum ListColumn
{
    Part,
    Count,
    Width,
    Length,
    Size,
    Thickness,
    Leaf,
    Stage,
    Unit,
}

/// <summary>The heading of a column, understood.</summary>
/// <param name="Rank">How plainly it says so: of two such columns the lower rank is read.</param>
/// <param name="Unit">The unit that the heading names, as in <c>width (mm)</c>.</param>
/// <param name="Stage">The stage that it names, as in <c>rough length</c>.</param>
/// <param name="IsDecimal">Whether it repeats a size in decimal inches.</param>
internal sealed record ListHeading(ListColumn Column, int Rank, LengthUnit? Unit, CutStage? Stage, bool IsDecimal)
{
    // As people head their columns, the plainest words first; common practice, no source.
    private static readonly (ListColumn Column, string[] Words)[] Known =
    [
        (ListColumn.Part, ["part", "part name", "piece", "name", "member", "component", "parts", "item", "description", "what"]),
        (ListColumn.Count, ["count", "qty", "quantity", "how many", "pieces", "pcs", "number of pieces", "number", "no", "nr", "amount"]),
        (ListColumn.Width, ["width", "w", "wide", "breadth"]),
        (ListColumn.Length, ["length", "l", "len", "long", "height", "h", "high"]),
        (ListColumn.Size, ["size", "sizes", "width x length", "w x l", "width length", "w l", "dimensions", "dimension", "cut size", "width x height", "w x h", "width height", "w h"]),
        (ListColumn.Thickness, ["thickness", "t", "thick", "thk"]),
        (ListColumn.Leaf, ["leaf", "leaf labels", "door", "opening", "front"]),
        (ListColumn.Stage, ["stage"]),
        (ListColumn.Unit, ["unit", "units"]),
    ];

    /// <summary>Null where the heading means nothing that a cut list needs.</summary>
    public static ListHeading? Of(string text)
    {
        var words = new string([.. text.ToLowerInvariant().Select(letter => char.IsLetterOrDigit(letter) ? letter : ' ')])
            .Split(' ', StringSplitOptions.RemoveEmptyEntries).ToList();
        LengthUnit? unit = null;
        CutStage? stage = null;
        List<string> rest = [];
        foreach (var word in words)
        {
            if (word is "mm" or "millimetres" or "millimeters")
                unit = LengthUnit.Millimetre;
            else if (word is "inch" or "inches" || word == "in" && words.Count > 1)
                unit = LengthUnit.Inch;
            else if (word is "finished" or "clamps" or "rough")
                stage = word == "finished" ? CutStage.Finished : word == "clamps" ? CutStage.IntoClamps : CutStage.Rough;
            else
                rest.Add(word);
        }

        var isDecimal = rest.Remove("decimal");
        // Thickness has words of its own for its stages.
        CutStage? ofThickness = rest.Remove("planed") ? CutStage.IntoClamps : rest.Remove("final") ? CutStage.Finished : null;
        var plain = string.Join(' ', rest);
        foreach (var (column, known) in Known)
        {
            var rank = Array.IndexOf(known, plain);
            if (rank >= 0 && (ofThickness is null || column == ListColumn.Thickness && stage is null))
                return new(column, rank, unit, stage ?? ofThickness, isDecimal);
        }

        return null;
    }
}
