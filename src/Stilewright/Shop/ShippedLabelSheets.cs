using Stilewright.Measure;

namespace Stilewright.Shop;

/// <summary>Label sheets of common sizes, and plain paper to cut apart.</summary>
/// <remarks>
/// Common practice, no source: these are the usual sizes of sheets sold under many names. Check the package of yours, and move the
/// print where it is off, or describe your sheet in a file of its own.
/// </remarks>
public static class ShippedLabelSheets
{
    public static IReadOnlyList<LabelSheet> All { get; } =
    [
        new("plain-letter", "plain Letter paper, cut apart", LengthUnit.Inch, PaperKind.Letter, 2, 8, In("3 3/4"), In("1 1/4"), CutLines: true),
        new("letter-30", "Letter, 30 labels of 2 5/8 × 1 in", LengthUnit.Inch, PaperKind.Letter, 3, 10, In("2 5/8"), In("1"), In("1/8")),
        new("letter-20", "Letter, 20 labels of 4 × 1 in", LengthUnit.Inch, PaperKind.Letter, 2, 10, In("4"), In("1"), In("3/16")),
        new("letter-14", "Letter, 14 labels of 4 × 1 1/3 in", LengthUnit.Inch, PaperKind.Letter, 2, 7, In("4"), In("1 1/3"), In("3/16")),
        new("letter-10", "Letter, 10 labels of 4 × 2 in", LengthUnit.Inch, PaperKind.Letter, 2, 5, In("4"), In("2"), In("3/16")),
        new("plain-a4", "plain A4 paper, cut apart", LengthUnit.Millimetre, PaperKind.A4, 2, 8, Mm("92"), Mm("33"), CutLines: true),
        new("a4-24", "A4, 24 labels of 70 × 37 mm", LengthUnit.Millimetre, PaperKind.A4, 3, 8, Mm("70"), Mm("37")),
        new("a4-21", "A4, 21 labels of 63.5 × 38.1 mm", LengthUnit.Millimetre, PaperKind.A4, 3, 7, Mm("63.5"), Mm("38.1"), Mm("2.5")),
        new("a4-16", "A4, 16 labels of 99.1 × 33.9 mm", LengthUnit.Millimetre, PaperKind.A4, 2, 8, Mm("99.1"), Mm("33.9"), Mm("2.5")),
        new("a4-14", "A4, 14 labels of 99.1 × 38.1 mm", LengthUnit.Millimetre, PaperKind.A4, 2, 7, Mm("99.1"), Mm("38.1"), Mm("2.5")),
    ];

    /// <summary>The sheet that needs no labels to be bought.</summary>
    public static LabelSheet Plain(PaperKind paper) => All.First(sheet => sheet.CutLines && sheet.Paper == paper);

    private static LengthEntry In(string text) => new(text, LengthReader.ReadOwn(text, LengthUnit.Inch));

    private static LengthEntry Mm(string text) => new(text, LengthReader.ReadOwn(text, LengthUnit.Millimetre));
}
