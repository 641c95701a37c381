using Stilewright.Doors;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Dimensions;

/// <summary>Dimensions placed round a figure.</summary>
/// <param name="Bounds">The figure with everything that was placed round it.</param>
public sealed record PlacedDimensions(IReadOnlyList<DimensionMark> Marks, PaperBox Bounds);

/// <summary>
/// Places rows of dimensions round a figure so that no text covers another text, an extension line or the figure, whatever the sizes.
/// </summary>
/// <remarks>
/// Text stands over its dimension line and parallel to it, read from the bottom or the right of the sheet; lines end in oblique
/// strokes (ISO 129-1). A text that is wider than its distance, or that the extension lines of rows further out would cross, moves
/// to a strip beyond the row and is tied to its distance by a leader.
/// </remarks>
public sealed class DimensionPlacer(Scale scale, LengthFormat format, TextStyle style)
{
    private const double ToFirstRow = 4;
    private const double BetweenRows = 2;
    private const double OverLine = 0.8;
    private const double Air = 1;
    private const double ExtensionGap = 1;
    /// <summary>How far an extension line passes the dimension line, in millimetres.</summary>
    internal const double BeyondLine = 1.6;

    private const double LeaderDrop = 2.6;
    private const double TickReach = 1.1;
    private const double SamePlace = 0.01;

    private readonly double textHeight = Typesetter.Set("8", style).Height;

    /// <summary>The oblique stroke at the end of a dimension line.</summary>
    internal static Outline Tick(PaperPoint end) =>
        Outline.Line(new(end.X - TickReach, end.Y + TickReach), new(end.X + TickReach, end.Y - TickReach));

    /// <summary>Places the rows round the figure.</summary>
    /// <param name="figure">What nothing may cover.</param>
    /// <param name="bounds">Further drawing round the figure that rows must also keep clear of; the figure itself when null.</param>
    public PlacedDimensions Place(PaperBox figure, IReadOnlyList<DimensionRow> rows, PaperBox? bounds = null)
    {
        List<DimensionMark> marks = [];
        var keepClear = bounds ?? figure;
        var all = keepClear;
        foreach (var side in rows.Select(row => row.Side).Distinct())
        {
            DimensionRow[] own = [.. rows.Where(row => row.Side == side && row.Spans.Count > 0)];
            var placed = PlaceSide(own, new Axis(side, keepClear, figure));
            // Texts that stand off the end of their row may reach a corner that another side has taken.
            if (placed.Any(mark => marks.Any(other => Cover(mark, other) || Cover(other, mark))))
                placed = PlaceSide(own, new Axis(side, Reaching(keepClear, side, all.Grown(Air)), figure));
            marks.AddRange(placed);
            all = placed.Aggregate(all, (sum, mark) => mark.Strokes.Aggregate(sum.With(mark.Text.Box), (box, stroke) => box.With(stroke.Bounds)));
        }

        return new(marks, all);
    }

    private List<DimensionMark> PlaceSide(DimensionRow[] own, Axis axis)
    {
        List<DimensionMark> marks = [];
        var beginning = ToFirstRow;
        Dictionary<long, double> drawn = [];
        for (var i = 0; i < own.Length; i++)
        {
            double[] passing = [.. own[(i + 1)..].SelectMany(row => row.Spans).SelectMany(span => new[] { span.From, span.To })];
            beginning = PlaceRow(own[i], axis, beginning, passing, drawn, marks) + BetweenRows;
        }

        return marks;
    }

    private static bool Cover(DimensionMark one, DimensionMark other) =>
        one.Text.Box.Overlaps(other.Text.Box) || other.Strokes.Any(stroke => one.Text.Box.Overlaps(stroke.Bounds));

    // The box moved out on one side alone, as far as the other reaches.
    private static PaperBox Reaching(PaperBox box, Side side, PaperBox other) => side switch
    {
        Side.Left => PaperBox.Between(new(other.Left, box.Top), new(box.Right, box.Bottom)),
        Side.Right => PaperBox.Between(box.TopLeft, new(other.Right, box.Bottom)),
        Side.Top => PaperBox.Between(new(box.Left, other.Top), new(box.Right, box.Bottom)),
        _ => PaperBox.Between(box.TopLeft, new(box.Right, other.Bottom)),
    };

    // Returns how far out the row reaches.
    private double PlaceRow(
        DimensionRow row, Axis axis, double beginning, double[] passing, Dictionary<long, double> drawn, List<DimensionMark> marks)
    {
        Waiting[] texts = [.. row.Spans.Select(span => new Waiting(span, Typesetter.Set(Words(span), style)))];
        var line = axis.TextIsInward ? beginning + textHeight + OverLine : beginning;
        var textFrom = axis.TextIsInward ? beginning : line + OverLine;
        var end = axis.TextIsInward ? line + BeyondLine : textFrom + textHeight;

        List<Waiting> moved = [];
        foreach (var text in texts)
        {
            if (FreePlace(text.Middle, text.Line.Width, [], passing, text.Low + Air, text.High - Air) is { } at)
                (text.At, text.Out) = (at, textFrom);
            else
                moved.Add(text);
        }

        if (moved.Count > 0)
        {
            end = Math.Max(end, line + BeyondLine);
            end = Spread(moved, axis, passing, end);
        }

        foreach (var text in texts)
            marks.Add(Draw(text, axis, line, drawn));
        return end;
    }

    // Texts that do not fit over their lines stand in strips further out, in order along the row so that leaders do not cross.
    private double Spread(List<Waiting> moved, Axis axis, double[] passing, double beginning)
    {
        var room = Math.Max(axis.High - axis.Low, moved.Max(text => text.High) - moved.Min(text => text.Low)) + 2 * textHeight;
        var strips = (int)Math.Clamp(Math.Ceiling(moved.Sum(text => text.Line.Width + 2 * Air) / room), 1, moved.Count);
        Waiting[] ordered = [.. moved.OrderBy(text => text.Middle)];
        var end = beginning;
        for (var strip = 0; strip < strips; strip++)
        {
            Waiting[] here = [.. ordered.Where((_, i) => i % strips == strip)];
            double[] leaders = [.. passing, .. ordered.Where((_, i) => i % strips > strip).Select(text => text.Middle)];
            var from = end + LeaderDrop;
            List<(double Low, double High)> taken = [];
            // From the middle outwards: the outer ones have all the room beyond the figure.
            var middle = (axis.Low + axis.High) / 2;
            foreach (var text in here.OrderBy(text => Math.Abs(text.Middle - middle)))
            {
                var at = FreePlace(text.Middle, text.Line.Width, taken, leaders, double.NegativeInfinity, double.PositiveInfinity)!.Value;
                taken.Add((at - text.Line.Width / 2 - Air, at + text.Line.Width / 2 + Air));
                (text.At, text.Out, text.Strip) = (at, from, end);
            }

            end = from + textHeight;
        }

        return end;
    }

    // The middle nearest to the wish at which a text of that width covers nothing; null when the limits leave no such place.
    private static double? FreePlace(
        double wish, double width, List<(double Low, double High)> taken, double[] lines, double least, double most)
    {
        var half = width / 2;
        var slack = 1e-9;
        IEnumerable<double> wishes =
        [
            wish, least + half, most - half,
            .. taken.SelectMany(one => new[] { one.Low - half, one.High + half }),
            .. lines.SelectMany(at => new[] { at - half - Air / 2, at + half + Air / 2 }),
        ];
        double? best = null;
        foreach (var at in wishes)
        {
            if (!double.IsFinite(at) || at - half < least - slack || at + half > most + slack
                || taken.Any(one => at - half < one.High - slack && at + half > one.Low + slack)
                || lines.Any(one => one > at - half - Air / 2 + slack && one < at + half + Air / 2 - slack))
            {
                continue;
            }

            if (best is null || Math.Abs(at - wish) < Math.Abs(best.Value - wish))
                best = at;
        }

        return best;
    }

    private DimensionMark Draw(Waiting text, Axis axis, double line, Dictionary<long, double> drawn)
    {
        List<Outline> strokes = [];
        foreach (var at in new[] { text.Span.From, text.Span.To })
        {
            // An extension line that a row nearer to the figure has drawn is only made longer.
            var place = (long)Math.Round(at / SamePlace);
            var from = drawn.TryGetValue(place, out var reached) ? reached : axis.FigureAt + ExtensionGap;
            if (line + BeyondLine > from)
            {
                strokes.Add(Outline.Line(axis.At(at, from), axis.At(at, line + BeyondLine)));
                drawn[place] = line + BeyondLine;
            }

            var end = axis.At(at, line);
            strokes.Add(Tick(end));
        }

        strokes.Add(Outline.Line(axis.At(text.Span.From, line), axis.At(text.Span.To, line)));
        if (text.Strip is { } strip)
        {
            // A text as narrow as one letter is met in its middle.
            var play = Math.Max(0, (text.Line.Width - Air) / 2);
            var nearest = Math.Clamp(text.Middle, text.At - play, text.At + play);
            strokes.Add(Outline.Through(false, axis.At(text.Middle, line), axis.At(text.Middle, strip), axis.At(nearest, text.Out - 0.3)));
        }

        return new(text.Span.Value, scale, axis.At(text.Span.From, line), axis.At(text.Span.To, line), strokes, axis.Letter(text, textHeight))
        {
            Path = text.Span.Path,
            Exaggeration = text.Span.Exaggeration,
        };
    }

    private string Words(Span span) => span.Letter is { } letter ? letter : span.Word is { } word ? $"{word} {format.Print(span.Value)}" : format.Print(span.Value);

    private sealed class Waiting(Span span, SetLine line)
    {
        public Span Span => span;
        public SetLine Line => line;
        public double Low => Math.Min(span.From, span.To);
        public double High => Math.Max(span.From, span.To);
        public double Middle => (span.From + span.To) / 2;

        /// <summary>Middle of the text along the row.</summary>
        public double At { get; set; }

        /// <summary>The text's edge nearest to the figure, outwards.</summary>
        public double Out { get; set; }

        /// <summary>Where the leader may leave its straight way; null for a text over its line.</summary>
        public double? Strip { get; set; }
    }

    /// <summary>A side of the figure: positions along it, and distances out from what is kept clear.</summary>
    private readonly record struct Axis(Side Side, PaperBox Clear, PaperBox Figure)
    {
        public bool TextIsInward => Side is Side.Bottom or Side.Right;

        public double Low => Side is Side.Top or Side.Bottom ? Clear.Left : Clear.Top;
        public double High => Side is Side.Top or Side.Bottom ? Clear.Right : Clear.Bottom;

        /// <summary>Where the figure's own edge lies, counted out from what is kept clear: zero or less.</summary>
        public double FigureAt => Side switch
        {
            Side.Left => Clear.Left - Figure.Left,
            Side.Right => Figure.Right - Clear.Right,
            Side.Top => Clear.Top - Figure.Top,
            _ => Figure.Bottom - Clear.Bottom,
        };

        public PaperPoint At(double along, double outwards) => Side switch
        {
            Side.Left => new(Clear.Left - outwards, along),
            Side.Right => new(Clear.Right + outwards, along),
            Side.Top => new(along, Clear.Top - outwards),
            _ => new(along, Clear.Bottom + outwards),
        };

        public Lettering Letter(Waiting text, double height)
        {
            var half = text.Line.Width / 2;
            return Side switch
            {
                Side.Bottom => new(new(text.At - half, Clear.Bottom + text.Out + text.Line.Ascent), text.Line),
                Side.Top => new(new(text.At - half, Clear.Top - text.Out - text.Line.Descent), text.Line),
                Side.Right => new(new(Clear.Right + text.Out + text.Line.Ascent, text.At + half), text.Line, IsUpright: false),
                _ => new(new(Clear.Left - text.Out - height + text.Line.Ascent, text.At + half), text.Line, IsUpright: false),
            };
        }
    }
}
