using Fractions;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

public enum PaperKind
{
    [Meaning("US Letter, 8 1/2 × 11 in (ANSI/ASME Y14.1)")]
    Letter,

    [Meaning("A4, 210 × 297 mm (ISO 216)")]
    A4,
}

[Meaning("A sheet of labels as it is bought, or plain paper to be cut apart")]
public sealed record LabelSheet(
    [Id] string Id,
    [Meaning("What it is called")] string Name,
    [Meaning("The unit of numbers that name none")] LengthUnit Unit,
    PaperKind Paper,
    [Meaning("Labels side by side"), Between(1, 20)] int Columns,
    [Meaning("Labels one above the other"), Between(1, 60)] int Rows,
    [Meaning("Width of a label"), Between(0.5, 11.7, Above = true)] LengthEntry Width,
    [Meaning("Height of a label"), Between(0.3, 11.7, Above = true)] LengthEntry Height,
    [Meaning("Between labels side by side"), Between(0, 4)] LengthEntry? ColumnGap = null,
    [Meaning("Between labels one above the other"), Between(0, 4)] LengthEntry? RowGap = null,
    [Meaning("From the left edge of the paper to the first label; absent, the labels are centred"), Between(0, 8)] LengthEntry? Left = null,
    [Meaning("From the top edge of the paper to the first label; absent, the labels are centred"), Between(0, 11)] LengthEntry? Top = null,
    [Meaning("Print lines to cut along, for plain paper")] bool CutLines = false)
{
    public int Count => Columns * Rows;

    /// <summary>Over all labels of a row and the gaps between them.</summary>
    public Length LabelsWidth => (Columns * Width.Value) + ((Columns - 1) * (ColumnGap?.Value ?? default));

    /// <summary>Over all labels of a column and the gaps between them.</summary>
    public Length LabelsHeight => (Rows * Height.Value) + ((Rows - 1) * (RowGap?.Value ?? default));

    /// <summary>From the left edge of the paper to the first label.</summary>
    public Length LeftMargin => Left?.Value ?? (Paper.Width - LabelsWidth) * new Fraction(1, 2);

    /// <summary>From the top edge of the paper to the first label.</summary>
    public Length TopMargin => Top?.Value ?? (Paper.Height - LabelsHeight) * new Fraction(1, 2);

    /// <summary>From the paper's top left corner to that of a label.</summary>
    /// <param name="index">Counted from zero along the rows.</param>
    public (Length Right, Length Down) Corner(int index)
    {
        var (row, column) = Math.DivRem(index, Columns);
        return (
            LeftMargin + (column * (Width.Value + (ColumnGap?.Value ?? default))),
            TopMargin + (row * (Height.Value + (RowGap?.Value ?? default))));
    }
}

public static class PaperSizes
{
    extension(PaperKind paper)
    {
        public Length Width => paper == PaperKind.A4 ? Length.FromMillimetres(210) : Length.FromInches(new Fraction(17, 2));

        public Length Height => paper == PaperKind.A4 ? Length.FromMillimetres(297) : Length.FromInches(11);
    }
}
