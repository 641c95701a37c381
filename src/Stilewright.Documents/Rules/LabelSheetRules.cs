using Stilewright.Shop;

namespace Stilewright.Documents.Rules;

internal static class LabelSheetRules
{
    public static IEnumerable<RuleFault> LabelsFitOnThePaper(LabelSheet sheet, DocumentPath path)
    {
        if (sheet.LeftMargin.IsNegative || sheet.LeftMargin + sheet.LabelsWidth > sheet.Paper.Width)
            yield return new(path.Field("width"), "the labels of a row are wider than the paper", "measure a label, the gap beside it and the left margin, and count the columns");
        if (sheet.TopMargin.IsNegative || sheet.TopMargin + sheet.LabelsHeight > sheet.Paper.Height)
            yield return new(path.Field("height"), "the labels of a column are higher than the paper", "measure a label, the gap below it and the top margin, and count the rows");
    }
}
