using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>Lays the working of sizes: name, words and figures in line below one another, and where the givens were entered.</summary>
internal static class WorkingStrips
{
    private const double Gap = 4;
    private const double NameShare = 0.24;
    private const double SourceShare = 0.24;
    private const double Padding = 1.1;

    /// <param name="most">The greatest height of a step in millimetres; a higher one is broken.</param>
    public static IEnumerable<Strip> Of(IReadOnlyList<Worked> quantities, LengthFormat format, double width, double most)
    {
        var (nameWidth, sourceWidth) = (width * NameShare - Gap, width * SourceShare - Gap);
        var middle = nameWidth + Gap;
        var middleWidth = width - nameWidth - sourceWidth - 2 * Gap;
        HashSet<Worked> told = [];
        foreach (var step in WorkedOrder.Of(quantities, format))
        {
            var names = Typesetter.Wrap(step.Name, TextStyle.Body, nameWidth);
            List<(SetLine Line, double Left)> body = [];
            if (step.Formula.Length > 0)
                body.AddRange(Hanging($"= {step.Formula}", TextStyle.Body, middle, middleWidth));
            body.AddRange(Hanging($"= {step.Arithmetic}", TextStyle.Figure, middle, middleWidth));
            foreach (var reason in step.Reasons)
                body.AddRange(Hanging($"because {reason}", TextStyle.Small, middle, middleWidth));
            List<SetLine> sources = [];
            foreach (var given in step.Givens.Where(told.Add))
                sources.AddRange(Typesetter.Wrap(Source(given), TextStyle.Small, sourceWidth));

            List<(double Height, List<SceneNode> Nodes)> rows = [];
            Fill(rows, body, most);
            Fill(rows, [.. names.Select(line => (line, 0.0))], most);
            Fill(rows, [.. sources.Select(line => (line, width - sourceWidth))], most);
            for (var i = 0; i < rows.Count; i++)
            {
                var (height, nodes) = rows[i];
                height += 2 * Padding;
                if (i == rows.Count - 1)
                    nodes.Add(Strip.Rule(0, height, width, height));
                yield return new(height, nodes);
            }
        }
    }

    private static string Source(Worked given) => given switch
    {
        Given { Label: var label, Origin: var origin } => $"{label}: {origin.Words}",
        FromTable looked => $"{looked.Label}: {looked.Table}, {looked.Row}",
        _ => WorkedText.Label(given),
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
            rows[row].Nodes.Add(Strip.Put(line, left, Padding + top));
            top += line.Pitch;
            rows[row] = (Math.Max(rows[row].Height, top), rows[row].Nodes);
        }
    }
}
