using System.Globalization;
using Fractions;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Wood;

namespace Stilewright.Drawing.Figures;

/// <summary>A panel's play and engagement through the twelve months, against what they must not fall under.</summary>
public static class PlayChart
{
    private const double Tick = 1.4;
    private const double Air = 1.2;
    private const double ToWords = 6;
    private const double Dot = 0.7;
    private const int MostTicks = 8;

    private static readonly Length[] InchSteps = [.. new[] { 32, 16, 8, 4, 2, 1 }.Select(part => Length.FromInches(new Fraction(1, part)))];
    private static readonly Length[] MillimetreSteps = [.. new[] { 1, 2, 4, 10, 20, 50 }.Select(half => 1.Millimetres * half / 2)];

    /// <param name="widthMillimetres">Of all of it on paper, at least 100.</param>
    /// <param name="heightMillimetres">Of the space between the axes.</param>
    public static Scene Draw(PanelFit fit, LengthFormat format, double widthMillimetres = 160, double heightMillimetres = 62)
    {
        ArgumentNullException.ThrowIfNull(fit);
        ArgumentNullException.ThrowIfNull(format);
        var months = fit.PlayOverYear();
        var air = fit.IsPinned ? fit.LeastAir.Length : fit.LeastAir.Length * 2;
        var together = fit.IsPinned ? "" : ", both grooves";
        Length[] values = [.. months.SelectMany(month => new[] { month.Play, month.Engagement }), air, fit.LeastEngagement.Length, default];
        var (low, high) = (values.Min(), values.Max());
        var step = (format.Unit == LengthUnit.Inch ? InchSteps : MillimetreSteps).FirstOrDefault(each => (high - low) / each <= MostTicks, high - low);
        low = low.OnStep(step, StepDirection.Down);
        high = high.OnStep(step, StepDirection.Up);

        List<(Length At, SetLine Words)> ticks = [];
        for (var at = low; at <= high; at += step)
            ticks.Add((at, Typesetter.Set(format.Print(at), TextStyle.Small)));
        List<(Length At, string Words, bool IsStrong)> named =
        [
            (months[^1].Play, $"play{together}", true),
            (months[^1].Engagement, "engagement", true),
            (air, $"least air{together} {format.Print(air)}", false),
            (fit.LeastEngagement.Length, $"least engagement {format.Print(fit.LeastEngagement.Length)}", false),
            (default, "0: it bottoms, or is out", false),
        ];
        SetLine Set((Length At, string Words, bool IsStrong) each) => Typesetter.Set(each.Words, each.IsStrong ? TextStyle.Small.Bold : TextStyle.Small);
        var left = ticks.Max(tick => tick.Words.Width) + Tick + Air;
        var right = widthMillimetres - named.Max(each => Set(each).Width) - ToWords - Air;
        var bottom = heightMillimetres;
        double Y(Length value) => bottom - (((value - low) / (high - low)).ToDouble() * heightMillimetres);
        double X(int month) => left + ((month - 0.5) * (right - left) / 12);

        List<SceneNode> nodes = [];
        foreach (var (at, words) in ticks)
        {
            nodes.Add(Line(left - Tick, Y(at), left, Y(at), LineStyle.Dimension));
            nodes.Add(Line(left, Y(at), right, Y(at), LineStyle.Rule));
            nodes.Add(new Lettering(new(left - Tick - Air - words.Width, Y(at) + ((words.Ascent - words.Descent) / 2)), words));
        }

        nodes.Add(Line(left, 0, left, bottom, LineStyle.Dimension));
        nodes.Add(Line(left, bottom, right, bottom, LineStyle.Dimension));
        var below = bottom;
        foreach (var month in months)
        {
            var name = CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(month.Month);
            var set = Typesetter.Set((right - left) / 12 > 7.5 ? name : name[..1], TextStyle.Small);
            nodes.Add(Line(X(month.Month), bottom, X(month.Month), bottom + Tick, LineStyle.Dimension));
            nodes.Add(new Lettering(new(X(month.Month) - (set.Width / 2), bottom + Tick + Air + set.Ascent), set));
            below = bottom + Tick + Air + set.Height;
        }

        foreach (var (limit, style) in new[] { (default, LineStyle.Visible), (air, LineStyle.Hidden), (fit.LeastEngagement.Length, LineStyle.Hidden) })
            nodes.Add(Line(left, Y(limit), right, Y(limit), style));
        foreach (var value in new Func<MonthPlay, Length>[] { month => month.Play, month => month.Engagement })
        {
            PaperPoint[] points = [.. months.Select(month => new PaperPoint(X(month.Month), Y(value(month))))];
            nodes.Add(new Shape(Outline.Through(false, points), LineStyle.Visible));
            foreach (var point in points)
                nodes.Add(new Shape(Outline.Box(new(point.X - Dot, point.Y - Dot, 2 * Dot, 2 * Dot)), null, Tone.Ink));
        }

        nodes.AddRange(Names([.. named.Select(each => (Y(each.At), Set(each)))], X(12), right, heightMillimetres));
        foreach (var line in Typesetter.Wrap(Note(fit, format), TextStyle.Small, widthMillimetres))
        {
            below += line.Pitch;
            nodes.Add(new Lettering(new(0, below), line));
        }

        var parts = months.Select(month => string.Create(CultureInfo.InvariantCulture, $"{CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(month.Month)} {format.Print(month.Play)} and {format.Print(month.Engagement)}"));
        return Drafting.Scene($"{fit.Panel.Label}: play through the year", $"Play and engagement in the middle of each month: {string.Join("; ", parts)}.", Scale.FullSize, fit.Panel.Path, nodes) with { Scale = null };
    }

    private static string Note(PanelFit fit, LengthFormat format)
    {
        var moisture = fit.Wood.Moisture;
        string Percent(Worked each) => each.Amount.ToDecimal().ToString("0.#", CultureInfo.InvariantCulture);
        return $"In {(format.Unit == LengthUnit.Inch ? "inches" : "millimetres")}, mid-month. Made at {Percent(moisture.Making)} %, in service {Percent(moisture.Driest)} to {Percent(moisture.Wettest)} %. {moisture.Assumption}";
    }

    // Names at the ends of their lines, moved apart where they would meet.
    private static IEnumerable<SceneNode> Names(IReadOnlyList<(double Y, SetLine Words)> named, double lastMonth, double right, double height)
    {
        var ordered = named.OrderBy(each => each.Y).ToList();
        var pitch = ordered.Max(each => each.Words.Height) + 0.6;
        var places = ordered.Select(each => each.Y).ToArray();
        for (var i = 1; i < places.Length; i++)
            places[i] = Math.Max(places[i], places[i - 1] + pitch);
        // What ran out below is pushed up again, in the same order.
        places[^1] = Math.Min(places[^1], Math.Max(height, (places.Length - 1) * pitch));
        for (var i = places.Length - 2; i >= 0; i--)
            places[i] = Math.Min(places[i], places[i + 1] - pitch);
        for (var i = 0; i < ordered.Count; i++)
        {
            var (y, words) = ordered[i];
            var from = words.Runs[0].Style.Weight == Weight.Strong ? lastMonth : right;
            yield return new Shape(Outline.Through(false, new(from, y), new(right, y), new(right + ToWords - Air, places[i])), LineStyle.Rule);
            yield return new Lettering(new(right + ToWords, places[i] + ((words.Ascent - words.Descent) / 2)), words);
        }
    }

    private static Shape Line(double fromX, double fromY, double toX, double toY, LineStyle style) => new(Outline.Line(new(fromX, fromY), new(toX, toY)), style);
}
