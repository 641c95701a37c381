using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Tests.Figures;

/// <summary>What holds of dimensions wherever they stand.</summary>
internal static class Marks
{
    private const double Shrunk = 0.05;
    private const double Tolerance = 1e-6;

    /// <summary>Fails where a dimension does not measure what its text says, or its text lies over another, a line of another or the figure.</summary>
    public static void AreClean(IReadOnlyList<DimensionMark> marks, PaperBox figure, LengthFormat format, string where)
    {
        foreach (var mark in marks)
        {
            var words = mark.Text.Line.Text;
            Assert.Equal(mark.Scale.OnPaper(mark.Value), mark.From.DistanceTo(mark.To), Tolerance);
            Assert.True(words == format.Print(mark.Value) || words.EndsWith($" {format.Print(mark.Value)}", StringComparison.Ordinal), $"{where}: '{words}' is not its size.");
            var box = mark.Text.Box.Grown(-Shrunk);
            Assert.False(box.Overlaps(figure), $"{where}: '{words}' lies over the figure.");
            foreach (var other in marks.Where(other => !ReferenceEquals(other, mark)))
            {
                Assert.False(box.Overlaps(other.Text.Box.Grown(-Shrunk)), $"{where}: '{words}' and '{other.Text.Line.Text}' overlap.");
                Assert.False(other.Strokes.Where(stroke => !IsTick(stroke)).Any(stroke => Crosses(stroke, box)), $"{where}: a line of '{other.Text.Line.Text}' crosses '{words}'.");
            }

            // The line that is measured is drawn, from end to end.
            Assert.Contains(mark.Strokes, stroke => !stroke.IsClosed && stroke.Segments is [LineTo to]
                && stroke.Start.DistanceTo(mark.From) < Tolerance && to.End.DistanceTo(mark.To) < Tolerance);
        }
    }

    /// <summary>Fails where the distances of a row do not follow one another, or do not add up to one over all of them.</summary>
    /// <returns>How many rows of several distances were found to add up to one over all of them.</returns>
    public static int ChainsAddUp(IReadOnlyList<DimensionMark> marks, string where)
    {
        var rows = marks.GroupBy(mark => Math.Abs(mark.From.Y - mark.To.Y) < Tolerance
            ? (true, Math.Round(mark.From.Y, 4)) : (false, Math.Round(mark.From.X, 4))).Select(row => Chain(row, row.Key.Item1)).ToList();
        foreach (var row in rows)
        {
            for (var i = 1; i < row.Parts.Count; i++)
                Assert.True(Math.Abs(row.Parts[i].From - row.Parts[i - 1].To) < Tolerance, $"{where}: distances of a row do not adjoin.");
        }

        var found = 0;
        foreach (var (row, over) in rows.SelectMany(row => rows, (row, over) => (row, over)))
        {
            if (row.Parts.Count < 2 || over.Parts.Count != 1 || row.IsLevel != over.IsLevel
                || Math.Abs(row.Parts[0].From - over.Parts[0].From) > Tolerance || Math.Abs(row.Parts[^1].To - over.Parts[0].To) > Tolerance)
            {
                continue;
            }

            Assert.Equal(over.Parts[0].Value, row.Parts.Aggregate(Length.Zero, (sum, part) => sum + part.Value));
            found++;
        }

        return found;
    }

    public static bool Crosses(Outline outline, PaperBox box)
    {
        var points = outline.Flattened(0.01);
        return points.Zip(points.Skip(1)).Any(pair => Crosses(pair.First, pair.Second, box))
            || (outline.IsClosed && Crosses(points[^1], points[0], box));
    }

    // Oblique strokes at the ends of dimension lines, 2.2 mm across.
    private static bool IsTick(Outline stroke) =>
        stroke.Segments.Count == 1 && stroke.Bounds is var box && Math.Abs(box.Width - box.Height) < Tolerance && box.Width < 3;

    private static (bool IsLevel, List<(double From, double To, Length Value)> Parts) Chain(IEnumerable<DimensionMark> row, bool isLevel) =>
        (isLevel, [.. row.Select(mark => isLevel ? (mark.From.X, mark.To.X, mark.Value) : (mark.From.Y, mark.To.Y, mark.Value))
            .Select(part => (From: Math.Min(part.Item1, part.Item2), To: Math.Max(part.Item1, part.Item2), part.Value)).OrderBy(part => part.From)]);

    // After Liang and Barsky: what of the line is left between the four edges.
    private static bool Crosses(PaperPoint from, PaperPoint to, PaperBox box)
    {
        var (enter, leave) = (0.0, 1.0);
        foreach (var (step, room) in new[]
        {
            (from.X - to.X, from.X - box.Left), (to.X - from.X, box.Right - from.X), (from.Y - to.Y, from.Y - box.Top), (to.Y - from.Y, box.Bottom - from.Y),
        })
        {
            if (step == 0)
            {
                if (room <= 0)
                    return false;
            }
            else if (step < 0)
            {
                enter = Math.Max(enter, room / step);
            }
            else
            {
                leave = Math.Min(leave, room / step);
            }
        }

        return enter < leave;
    }
}
