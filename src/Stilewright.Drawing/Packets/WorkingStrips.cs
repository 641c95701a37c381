using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>Lays the working of sizes: what was entered and where, then every step with its name, words and figures beside one another.</summary>
internal static class WorkingStrips
{
    private const double Gap = 4;
    private const double NameShare = 0.24;
    private const double WordsShare = 0.42;
    private const double Padding = 1;

    /// <param name="most">The greatest height of a step in millimetres; a higher one is broken.</param>
    public static IEnumerable<Strip> Of(IReadOnlyList<Worked> quantities, LengthFormat format, double width, double most)
    {
        WorkedLine[] lines = [.. WorkedOrder.Of(quantities, format)];
        var givens = lines.SelectMany(line => line.Givens)
            .GroupBy(Source, given => $"{WorkedText.Label(given)} {WorkedText.Figure(given, format)}");
        foreach (var source in givens)
        {
            foreach (var strip in Prose.First(Prose.Led(source.Key, string.Join("; ", source.Distinct()) + ".", TextStyle.Body, width), 0.8))
                yield return strip;
        }

        var isFirst = true;
        foreach (var line in lines.Where(line => line.Quantity is not (Given or FromTable)))
        {
            foreach (var strip in Step(line, width, most))
            {
                yield return isFirst ? strip with { SpaceBefore = 2 } : strip;
                isFirst = false;
            }
        }
    }

    private static IEnumerable<Strip> Step(WorkedLine step, double width, double most)
    {
        var nameWidth = width * NameShare - Gap;
        var wordsAt = width * NameShare;
        var figuresAt = width * (NameShare + WordsShare);
        List<(SetLine Line, double Left)> words = [.. step.Formula.Length > 0 ? Hanging($"= {step.Formula}", TextStyle.Body, wordsAt, width * WordsShare - Gap) : []];
        foreach (var reason in step.Reasons)
            words.AddRange(Hanging($"because {reason}", TextStyle.Small, wordsAt, width * WordsShare - Gap));

        List<(double Height, List<SceneNode> Nodes)> rows = [];
        Fill(rows, [.. Typesetter.Wrap(step.Name, TextStyle.Body, nameWidth).Select(line => (line, 0.0))], most);
        Fill(rows, words, most);
        Fill(rows, [.. Hanging($"= {step.Arithmetic}", TextStyle.Figure, figuresAt, width - figuresAt)], most);
        for (var i = 0; i < rows.Count; i++)
        {
            var (height, nodes) = rows[i];
            height += 2 * Padding;
            nodes.Insert(0, Strip.Rule(0, 0, width, 0));
            yield return new(height, nodes);
        }
    }

    private static string Source(Worked given) => given switch
    {
        Given { Origin.Words: var words } => char.ToUpperInvariant(words[0]) + words[1..],
        FromTable looked => $"Table of {looked.Table}, {looked.Row}",
        _ => throw new ArgumentOutOfRangeException(nameof(given)),
    };

    // Lines after the first stand in from the sign of equality.
    private static IEnumerable<(SetLine, double)> Hanging(string text, TextStyle style, double left, double width)
    {
        var indent = Typesetter.Width("= ", style);
        var lines = Typesetter.Wrap(text, style, width - indent, -indent);
        return lines.Select((line, i) => (line, i == 0 ? left : left + indent));
    }

    private static void Fill(List<(double Height, List<SceneNode> Nodes)> rows, List<(SetLine Line, double Left)> lines, double most)
    {
        var row = 0;
        var top = 0.0;
        foreach (var (line, left) in lines)
        {
            if (top > 0 && top + line.Pitch > most)
                (row, top) = (row + 1, 0);
            if (row == rows.Count)
                rows.Add((0, []));
            // First lines share a baseline, whatever their sizes.
            if (top == 0)
                top = TextStyle.Figure.SizeMillimetres * 0.72 - line.Ascent;
            rows[row].Nodes.Add(Strip.Put(line, left, Padding + top));
            top += line.Pitch;
            rows[row] = (Math.Max(rows[row].Height, top), rows[row].Nodes);
        }
    }
}
