using System.Globalization;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Packets;
using Stilewright.Measure;
using Stilewright.Teaching.Worksheets;

namespace Stilewright.Drawing.Worksheets;

/// <summary>Lays the key: every step of every sheet with its marks.</summary>
internal static class WorksheetKey
{
    public static IEnumerable<Strip> Scheme(double width) =>
    [
        .. Prose.Title("Key and mark scheme", width, new Writing.Bookmark("Key", 1)),
        .. MarkScheme.Rules.SelectMany(rule => Prose.Paragraph(rule, width)),
    ];

    public static IEnumerable<Strip> Of(Worksheet sheet, double width, double most)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"Bench {sheet.Bench}");
        return
        [
            .. Prose.Heading(string.Create(CultureInfo.InvariantCulture, $"{name}: {sheet.Marks} marks"), width, new Writing.Bookmark($"{name}, key", 2)),
            .. Prose.Paragraph($"{sheet.Problem} {Sentence(string.Join("; ", sheet.Givens.Select(given => $"{given.Label} {WorkedText.Figure(given.Quantity, sheet.Format)}")))}", width, TextStyle.Small)
                .Select(strip => strip with { KeepWithNext = true }),
            .. Table.Of(
                ["", "step", "in figures", Column.Figure("result"), "marks"],
                sheet.Lines.Select(line => new Row(
                [
                    line.Letter, $"{line.Label} = {line.Formula}", line.Pieces.Count == 0 ? "" : Left(line.Arithmetic), WorkedText.Figure(line.Quantity, sheet.Format), MarkScheme.Of(line),
                ])
                {
                    Note = string.Join("; ", line.Reasons.Select(reason => $"because {reason}")),
                }),
                width, most),
        ];
    }

    private static string Sentence(string words) => $"{char.ToUpperInvariant(words[0])}{words[1..]}.";

    // The result has a column of its own.
    private static string Left(string arithmetic) => arithmetic.LastIndexOf(" = ", StringComparison.Ordinal) is > 0 and var at ? arithmetic[..at] : arithmetic;
}
