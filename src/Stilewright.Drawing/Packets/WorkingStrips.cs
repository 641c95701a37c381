using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>Lays the working of sizes: what was entered and where, then every step with its name, words and figures beside one another.</summary>
internal static class WorkingStrips
{
    private const double Gap = 4;
    // The most of the width that names and figures take from the words between them.
    private const double MostNameShare = 0.26;
    private const double MostFiguresShare = 0.32;
    private const double Padding = 0.55;
    private const double TightPadding = 0.2;
    // What is set is not broken for a rounding of its own width.
    private const double Air = 0.05;
    private const int LeastOnSheet = 3;
    private static readonly TextStyle Words = new(3.1);
    private static readonly TextStyle Figures = new(3.3);

    /// <summary>The strips, set tighter where that saves a sheet.</summary>
    /// <param name="most">The greatest height of a step in millimetres; a higher one is broken.</param>
    /// <param name="heading">The height of the heading they are kept with, in millimetres.</param>
    /// <param name="left">What is left of the sheet for heading and strips.</param>
    /// <param name="sheet">The height of the sheets that follow.</param>
    public static IReadOnlyList<Strip> Of(IReadOnlyList<Worked> quantities, LengthFormat format, double width, double most, double heading, double left, double sheet)
    {
        Strip[] strips = [.. Of(quantities, format, width, most, Padding)];
        // What is kept together at the beginning goes on the next sheet where this one is too full for it.
        if (heading + strips.TakeWhile(strip => strip.KeepWithNext).Sum(strip => strip.SpaceBefore + strip.Height) > left)
            left = sheet;
        var over = heading + strips.Sum(strip => strip.SpaceBefore + strip.Height) - left;
        var spared = 2 * (Padding - TightPadding) * strips.Length;
        return over > 0 && Math.Ceiling((over - spared) / sheet) < Math.Ceiling(over / sheet)
            ? [.. Of(quantities, format, width, most, TightPadding)] : strips;
    }

    private static IEnumerable<Strip> Of(IReadOnlyList<Worked> quantities, LengthFormat format, double width, double most, double padding)
    {
        WorkedLine[] lines = [.. WorkedOrder.Of(quantities, format)];
        var givens = lines.SelectMany(line => line.Givens.Where(given => given is not Given { Origin.IsEntered: false }))
            .GroupBy(Source, given => $"{WorkedText.Label(given)} {WorkedText.Figure(given, format)}");
        foreach (var source in givens)
        {
            foreach (var strip in Prose.First(Prose.Led(source.Key, string.Join("; ", source.Distinct()) + ".", Words, width), 0.8))
                yield return strip with { KeepWithNext = true };
        }

        WorkedLine[] worked = [.. lines.Where(line => line.Quantity is not (Given or FromTable))];
        if (worked.Length == 0)
        {
            // Closes what was kept together.
            yield return new(0, []);
            yield break;
        }

        var wordsAt = Math.Min(width * MostNameShare, worked.Max(line => Typesetter.Set(line.Name, Words).Width) + Gap);
        var figuresAt = width - Math.Min(width * MostFiguresShare, worked.Max(line => Typesetter.Set($"= {line.Arithmetic}", Figures).Width) + Air);
        Strip[] steps = [.. worked.SelectMany(line => Step(line, wordsAt, figuresAt, width, most, padding))];
        for (var i = 0; i < steps.Length; i++)
        {
            yield return steps[i] with
            {
                SpaceBefore = i == 0 ? 2 : 0,
                // Neither the first nor the last few stand alone on a sheet.
                KeepWithNext = i < steps.Length - 1 && (i < LeastOnSheet - 1 || i >= steps.Length - LeastOnSheet),
            };
        }
    }

    private static IEnumerable<Strip> Step(WorkedLine step, double wordsAt, double figuresAt, double width, double most, double padding)
    {
        var wordsWidth = figuresAt - wordsAt - Gap;
        List<(SetLine Line, double Left)> words = [.. step.Formula.Length > 0 ? Hanging($"= {step.Formula}", Words, wordsAt, wordsWidth) : []];
        foreach (var reason in step.Reasons)
            words.AddRange(Hanging($"because {reason}", TextStyle.Small, wordsAt, wordsWidth));

        List<(double Height, List<SceneNode> Nodes)> rows = [];
        Fill(rows, [.. Typesetter.Wrap(step.Name, Words, wordsAt - Gap + Air).Select(line => (line, 0.0))], most, padding);
        Fill(rows, words, most, padding);
        Fill(rows, [.. Hanging($"= {step.Arithmetic}", Figures, figuresAt, width - figuresAt)], most, padding);
        for (var i = 0; i < rows.Count; i++)
        {
            var (height, nodes) = rows[i];
            height += 2 * padding;
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

    private static void Fill(List<(double Height, List<SceneNode> Nodes)> rows, List<(SetLine Line, double Left)> lines, double most, double padding)
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
                top = Figures.SizeMillimetres * 0.72 - line.Ascent;
            rows[row].Nodes.Add(Strip.Put(line, left, padding + top));
            top += line.Pitch;
            rows[row] = (Math.Max(rows[row].Height, top), rows[row].Nodes);
        }
    }
}
