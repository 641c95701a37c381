using System.Globalization;
using CsvHelper;
using Fractions;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Documents.Lists;

/// <summary>The cut list as comma-separated values (RFC 4180: CRLF, quotes where needed, a header).</summary>
/// <remarks>Sizes stand twice: as text in the reader's unit, and in decimal inches to six places for programs that calculate.</remarks>
public static class CutListCsv
{
    private const int Places = 6;

    private static readonly string[] Sizes =
    [
        "finished width", "finished length", "clamps width", "clamps length", "rough width", "rough length", "planed thickness", "final thickness",
    ];

    public static string Of(IReadOnlyList<CutListGroup> groups, LengthFormat format)
    {
        var figures = new TradeWords(format);
        using var writer = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(writer, CsvWriterOptions.Default, leaveOpen: true))
        {
            csv.WriteRecord(["bench", "project", "leaf labels", "part labels", "part", "count", "material", "stock", .. Sizes, "grain", "unit", .. Sizes.Select(size => $"{size} decimal inches")]);
            foreach (var row in groups.SelectMany(group => group.Rows))
            {
                var sizes = SizesOf(row);
                csv.WriteRecord(
                [
                    string.Join(" ", row.Benches),
                    string.Join("; ", row.Projects),
                    string.Join(" ", row.Line.Leaves),
                    row.Labels,
                    row.Name,
                    row.Line.Count.ToString(CultureInfo.InvariantCulture),
                    row.Part.Material,
                    row.Part.Stock,
                    .. sizes.Select(figures.Of),
                    row.Part.Grain is { } grain ? TradeWords.Words(grain) : "",
                    format.Unit == LengthUnit.Inch ? "in" : "mm",
                    .. sizes.Select(DecimalInches),
                ]);
            }
        }

        return writer.ToString();
    }

    private static Worked?[] SizesOf(CutListRow row)
    {
        var part = row.Part;
        return
        [
            part.Finished.Width, part.Finished.Length, part.GlueUp.Width, part.GlueUp.Length,
            part.Rough?.Width, part.Rough?.Length, part.Thickness?.Planed, part.Thickness?.Final,
        ];
    }

    private static string DecimalInches(Worked? size) => size is null
        ? "" : Fraction.Round(size.Amount, Places, MidpointRounding.AwayFromZero).ToDecimal().ToString("0.######", CultureInfo.InvariantCulture);
}
