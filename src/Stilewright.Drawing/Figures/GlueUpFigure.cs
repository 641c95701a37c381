using System.Globalization;
using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Wood;

namespace Stilewright.Drawing.Figures;

/// <summary>The staves of a glue-up, face up with the grain upright, with their ends, clamps and what is cut from them.</summary>
/// <remarks>Faces are to scale; the ends are drawn thicker by a number that the drawing states, so that the rings are seen.</remarks>
public static class GlueUpFigure
{
    private const double LeastThick = 5;
    private const double ToEnds = 2.5;
    private const int Rings = 3;
    private static readonly int[] Times = [1, 2, 4, 8, 16];

    public static Scene Draw(GlueUp glueUp, Scale scale, LengthFormat format)
    {
        ArgumentNullException.ThrowIfNull(glueUp);
        ArgumentNullException.ThrowIfNull(format);
        var (width, length) = (scale.OnPaper(glueUp.Width), scale.OnPaper(glueUp.Length));
        var thick = scale.OnPaper(glueUp.Part.Thickness!.Planed.Length);
        var times = Times.FirstOrDefault(each => each * thick >= LeastThick, Times[^1]);
        var board = new PaperBox(0, 0, width, length);
        var endTop = -ToEnds - (times * thick);

        List<SceneNode> under = [], over = [];
        List<Span> widths = [];
        var left = 0.0;
        Stave? before = null;
        foreach (var stave in glueUp.Staves)
        {
            var place = new PaperBox(left, 0, scale.OnPaper(stave.Jointed), length);
            under.Add(new Shape(Outline.Box(place), LineStyle.Visible));
            var room = place.Grown(-0.6);
            var label = Drafting.Label(stave.Number.ToString(CultureInfo.InvariantCulture), room, room.Centre);
            over.AddRange(Drafting.GrainArrow(room, label?.Box ?? new(room.Centre.X, room.Centre.Y, 0, 0), isUpright: true));
            over.AddRange(label?.Nodes ?? []);
            var end = new PaperBox(left, endTop, place.Width, times * thick);
            under.Add(new Shape(Outline.Box(end), LineStyle.Visible));
            under.AddRange(RingsOf(end, stave.BarkUp));
            if (before is not null && before.Section != stave.Section)
                over.Add(new Shape(Outline.Line(new(left, endTop), new(left, length)), LineStyle.Heavy));
            widths.Add(new(left, place.Right, stave.Jointed));
            (left, before) = (place.Right, stave);
        }

        for (var i = 0; i < glueUp.Clamps; i++)
        {
            var at = length * (i + 0.5) / glueUp.Clamps;
            under.Add(new Shape(Outline.Line(new(0, at), new(width, at)), LineStyle.Centre));
        }

        var (cutWidth, cutLength) = (glueUp.Part.GlueUp.Width.Length, glueUp.Part.GlueUp.Length.Length);
        var (inX, inY) = (scale.OnPaper(glueUp.Width - cutWidth) / 2, scale.OnPaper(glueUp.Length - cutLength) / 2);
        under.Add(new Shape(Outline.Box(new(inX, inY, scale.OnPaper(cutWidth), scale.OnPaper(cutLength))), LineStyle.Hidden));

        List<SceneNode> nodes = [.. under, .. over];
        var placed = new DimensionPlacer(scale, format, TextStyle.Figure).Place(board,
        [
            new(Side.Bottom, widths),
            new(Side.Bottom, [new(inX, width - inX, cutWidth) { Word = "cut to" }]),
            new(Side.Bottom, [new(0, width, glueUp.Width) { Word = "glued up" }]),
            new(Side.Left, [new(inY, length - inY, cutLength) { Word = "cut to" }]),
            new(Side.Right, [new(0, length, glueUp.Length) { Word = "staves" }]),
        ], new PaperBox(0, endTop, width, length - endTop));
        nodes.AddRange(placed.Marks);
        var top = placed.Bounds.Bottom + 2;
        foreach (var line in Typesetter.Wrap(Note(glueUp, times), TextStyle.Small, Math.Max(placed.Bounds.Width, 70)))
        {
            nodes.Add(new Lettering(new(placed.Bounds.Left, top + line.Ascent), line));
            top += line.Pitch;
        }

        return Drafting.Scene($"Glue-up of {glueUp.Part.Label}",
            $"{glueUp.Staves.Count} staves side by side, {format.Print(glueUp.Width)} wide together and {format.Print(glueUp.Length)} long, with their ends above: {string.Join(", ", glueUp.Staves.Select(stave => $"{stave.Number} {(stave.BarkUp ? "bark side up" : "heart side up")}"))}.",
            scale, glueUp.Part.Path, nodes);
    }

    /// <summary>The drawing at the largest standard scale at which it fits.</summary>
    public static FittedScene Draw(GlueUp glueUp, LengthFormat format, double widthMillimetres, double heightMillimetres)
    {
        ArgumentNullException.ThrowIfNull(glueUp);
        ArgumentNullException.ThrowIfNull(format);
        return Fit.Largest(format.Unit, widthMillimetres, heightMillimetres, scale => Draw(glueUp, scale, format), (glueUp.Width, glueUp.Length));
    }

    private static string Note(GlueUp glueUp, int times)
    {
        var clamps = glueUp.Clamps == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $" Dash-dotted: {glueUp.Clamps} clamps, over and under in turn.");
        return (times == 1 ? "The ends stand above." : $"The ends stand above, drawn {times} times as thick.")
            + $" Dashed: what is cut from it.{clamps}"
            + (glueUp.Sections > 1 ? " The heavy line is the joint that is glued last." : "");
    }

    // Arcs over the whole end, bulging towards the bark.
    private static IEnumerable<SceneNode> RingsOf(PaperBox end, bool barkUp)
    {
        var sag = Math.Min(end.Height * 0.3, end.Width * 0.4);
        var radius = ((end.Width * end.Width / 4) + (sag * sag)) / (2 * sag);
        for (var i = 0; i < Rings; i++)
        {
            var at = (i + 0.5) * (end.Height - sag) / Rings;
            var y = barkUp ? end.Top + sag + at : end.Bottom - sag - at;
            var centre = new PaperPoint(end.Centre.X, barkUp ? y - sag + radius : y + sag - radius);
            yield return new Shape(new(new(end.Left, y), [new ArcTo(new(end.Right, y), centre, barkUp)], false), LineStyle.Rule);
        }
    }
}
