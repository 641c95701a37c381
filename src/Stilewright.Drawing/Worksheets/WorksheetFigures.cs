using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Teaching.Worksheets;

namespace Stilewright.Drawing.Worksheets;

/// <summary>The drawings of a worksheet: what is given with its figure, what is asked with the letter of its line, and nothing else dimensioned.</summary>
public static class WorksheetFigures
{
    /// <summary>The front over its opening.</summary>
    public static Scene Front(Worksheet sheet, Scale scale)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return FaceElevation.OfFront("The front over its opening", sheet.Front, scale, sheet.Format, row => Changed(row, span => OfFront(sheet, row, span))) with
        {
            Description = $"{sheet.Problem} Sizes that are asked bear the letters of their lines.",
        };
    }

    /// <summary>The leaf, seen from the front.</summary>
    public static Scene Leaf(Worksheet sheet, Scale scale)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var detail = LeafDetail.Of(sheet.Course, sheet.Project, sheet.Leaf);
        return LeafFigure.Front(sheet.Leaf, detail, scale, sheet.Format, row => Changed(row, span => OfLeaf(sheet, row, span))) with
        {
            Title = "One leaf, seen from the front",
            Description = "The leaf with its parts. Sizes that are asked bear the letters of their lines.",
        };
    }

    private static DimensionRow Changed(DimensionRow row, Func<Span, Span?> change) => row with { Spans = [.. row.Spans.Select(change).OfType<Span>()] };

    private static Span? OfFront(Worksheet sheet, DimensionRow row, Span span)
    {
        if (span.Word is not null)
            return Lettered(sheet, span, IsAcross(row) ? sheet.Front.Figure!.Width : sheet.Front.Figure!.Height) ?? span;
        if (span.Path == sheet.Front.Path)
            return Lettered(sheet, span, IsAcross(row) ? sheet.Front.Width! : sheet.Front.Height!);
        return sheet.Front.Leaves.FirstOrDefault(leaf => leaf.Path == span.Path) is { } leaf
            ? Lettered(sheet, span, IsAcross(row) ? leaf.Width : leaf.Height) : IfGiven(sheet, span);
    }

    private static Span? OfLeaf(Worksheet sheet, DimensionRow row, Span span)
    {
        if (span.Path == sheet.Leaf.Path)
            return Lettered(sheet, span, IsAcross(row) ? sheet.Leaf.Width : sheet.Leaf.Height) ?? IfGiven(sheet, span);
        if (span.Path is not null)
            return IfGiven(sheet, span);
        // A light or the space inside the frame, which has no path of its own.
        var found = sheet.Lines.FirstOrDefault(line => line.Quantity.Amount == span.Value.Inches
            && line.Quantity.Key is var key && (key.StartsWith("leaf/clear.", StringComparison.Ordinal) || key.StartsWith("leaf/light", StringComparison.Ordinal) || key.StartsWith("leaf/row.", StringComparison.Ordinal))
            && key.EndsWith(IsAcross(row) ? "width" : "height", StringComparison.Ordinal));
        return found is null ? null : Lettered(sheet, span, found.Quantity);
    }

    private static bool IsAcross(DimensionRow row) => row.Side is Side.Top or Side.Bottom;

    private static Span? Lettered(Worksheet sheet, Span span, Worked quantity) =>
        sheet.LetterOf(quantity) is { } letter ? span with { Letter = letter } : IfGiven(sheet, span);

    private static Span? IfGiven(Worksheet sheet, Span span) =>
        sheet.Givens.Any(given => given.Quantity.Dimension == Dimension.Length && given.Quantity.Length == span.Value) ? span : null;
}
