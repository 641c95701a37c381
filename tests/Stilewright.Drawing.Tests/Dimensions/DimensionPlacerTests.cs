using CsCheck;
using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Tests.Figures;
using Stilewright.Measure;

namespace Stilewright.Drawing.Tests.Dimensions;

public sealed class DimensionPlacerTests
{
    private const int Sixteenths = 16;

    [Fact]
    public void A_letter_narrower_than_the_air_round_it_is_tied_to_its_distance()
    {
        // Too short for its letter, which goes further out with a leader.
        Span span = new(20, 20.4, Of(1)) { Letter = "i" };
        var mark = Assert.Single(new DimensionPlacer(Scale.FullSize, LengthFormat.InchesTo32, TextStyle.Figure).Place(new(0, 0, 40, 40), [new(Side.Bottom, [span])]).Marks);
        Assert.Equal("i", mark.Text.Line.Text);
        Assert.Contains(mark.Strokes, stroke => stroke.Segments.Count == 2);
    }

    [Fact]
    public void Dimensions_of_any_rows_are_readable_and_true() => Gen.Int.Sample(
        seed =>
        {
            var random = new Random(seed);
            var unit = random.Next(2) == 0 ? LengthUnit.Inch : LengthUnit.Millimetre;
            var format = new LengthFormat(unit, 32);
            var scale = Scale.Of(unit)[random.Next(7)];
            int width = random.Next(2, 90 * Sixteenths), height = random.Next(2, 90 * Sixteenths);
            var figure = new PaperBox(random.Next(-50, 50), random.Next(-50, 50), scale.OnPaper(Of(width)), scale.OnPaper(Of(height)));
            PaperBox? bounds = random.Next(3) == 0
                ? figure.With(PaperBox.Between(new(figure.Left - random.Next(20), figure.Top - random.Next(20)), new(figure.Right + random.Next(20), figure.Bottom + random.Next(20)))) : null;
            List<DimensionRow> rows = [];
            foreach (var side in new[] { Side.Bottom, Side.Left, Side.Top, Side.Right })
            {
                var isLevel = side is Side.Top or Side.Bottom;
                var whole = isLevel ? width : height;
                var cuts = Enumerable.Range(0, random.Next(12)).Select(_ => random.Next(1, Math.Max(2, whole))).Where(cut => cut < whole).Distinct().Order().ToList();
                // Each row further out has fewer distances, the last of all often the whole.
                for (var row = random.Next(4); row > 0; row--)
                {
                    int[] places = [0, .. cuts, whole];
                    rows.Add(new(side, [.. places.Zip(places.Skip(1)).Select(pair => Distance(pair.First, pair.Second))]));
                    cuts = row == 2 ? [] : [.. cuts.Where(_ => random.Next(2) == 0)];
                }

                Span Distance(int from, int to)
                {
                    double At(int place) => isLevel ? figure.Left + scale.OnPaper(Of(place)) : figure.Bottom - scale.OnPaper(Of(place));
                    return new(At(from), At(to), Of(to - from)) { Word = random.Next(12) == 0 ? "opening" : null };
                }
            }

            var placed = new DimensionPlacer(scale, format, TextStyle.Figure).Place(figure, rows, bounds);
            var where = $"seed {seed}";
            Assert.Equal(rows.Sum(row => row.Spans.Count), placed.Marks.Count);
            Marks.AreClean(placed.Marks, bounds ?? figure, format, where);
            Marks.ChainsAddUp(placed.Marks, where);
            Assert.All(placed.Marks, mark => Assert.True(placed.Bounds.Holds(mark.Text.Box), $"{where}: '{mark.Text.Line.Text}' leaves the bounds."));
            Assert.All(placed.Marks.SelectMany(mark => mark.Strokes), stroke => Assert.True(placed.Bounds.Holds(stroke.Bounds), $"{where}: a line leaves the bounds."));
            Assert.True(placed.Bounds.Holds(bounds ?? figure));
        },
        iter: 400);

    private static Length Of(int sixteenths) => Length.FromInches(new(sixteenths, Sixteenths));
}
