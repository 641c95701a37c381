using Stilewright.Doors;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Labels;

/// <summary>The label of one part: its code large, its sizes, which way is up, and a code for a reader.</summary>
/// <remarks>
/// A label goes on the face, along the piece: its arrow points to the top of the hung leaf, so on a stile it points along the label.
/// </remarks>
public static class PartLabel
{
    private const double Padding = 2;
    private const double MostCodeShare = 0.42;
    private const double LargestCode = 8.5;
    private const double CodeShare = 0.3;
    private const double MostAir = 1.2;
    private const double LeastCode = 3;
    private const double LeastText = 2.2;
    private const double RoundingMillimetres = 1e-6;

    /// <summary>What the QR code says: the part's label with full stops for dots, a space, and the revision.</summary>
    public static string Code(Part part, string revision) => $"{part.Label.Replace('·', '.')} {revision}".ToUpperInvariant();

    /// <summary>Draws the label, its top left corner at the origin.</summary>
    /// <param name="revision">The project's revision.</param>
    public static SceneGroup Draw(Part part, string revision, LengthFormat format, double widthMillimetres, double heightMillimetres)
    {
        var square = Math.Min(heightMillimetres - 1, widthMillimetres * MostCodeShare);
        var code = new PaperBox(widthMillimetres - square - 0.5, (heightMillimetres - square) / 2, square, square);
        var room = new PaperBox(Padding, Padding, code.Left - Padding - 1, heightMillimetres - 2 * Padding);
        List<SceneNode> nodes = [QrMark.Draw(Code(part, revision), code)];
        nodes.AddRange(Words(part, revision, format, room));
        return new(part.Path, $"label of {part.Label}, {part.Name}", nodes);
    }

    private static IEnumerable<SceneNode> Words(Part part, string revision, LengthFormat format, PaperBox room)
    {
        List<(string Text, TextStyle Style)> lines =
        [
            ($"{Size(part.Finished, format)} finished", new(4.2, Weight.Strong)),
            .. IsTrimmed(part) ? [($"{Size(part.GlueUp, format)} into the clamps", new TextStyle(3.6))] : Array.Empty<(string, TextStyle)>(),
            (part.Name, new(3)),
            (part.Thickness is { } thickness ? $"{WorkedText.Figure(thickness.Planed, format)} planed, {part.Material}" : part.Material, new(2.8)),
            ($"rev. {revision}", new(2.4)),
        ];
        var needed = IsTrimmed(part) ? 2 : 1;
        var marks = Marks(part);
        var marksHeight = marks.Line.Height;
        var codeSize = Math.Min(LargestCode, room.Height * CodeShare);
        SetLine[] set = Set();
        // What the QR code or the parts table also tells gives way first, then the size of the code.
        while (lines.Count > needed && set.Sum(line => line.Height) + marksHeight > room.Height)
        {
            lines.RemoveAt(lines.Count - 1);
            set = Set();
        }

        while (codeSize > LeastCode && set.Sum(line => line.Height) + marksHeight > room.Height)
        {
            codeSize -= 0.25;
            set = Set();
        }

        var down = room.Top;
        var air = Math.Clamp((room.Height - set.Sum(line => line.Height) - marksHeight) / set.Length, 0, MostAir);
        foreach (var line in set)
        {
            yield return new Lettering(new(room.Left, down + line.Ascent), line);
            down += line.Height + air;
        }

        foreach (var node in Draw(marks, new(room.Left, room.Bottom - marks.Line.Descent)))
            yield return node;

        SetLine[] Set() =>
        [
            Fitted(part.Label, new(codeSize, Weight.Strong), room.Width),
            .. lines.Select(line => Fitted(line.Text, line.Style, room.Width)),
        ];
    }

    // A line too wide is set smaller, and at the least size cut off at a word with an ellipsis.
    private static SetLine Fitted(string text, TextStyle style, double width)
    {
        var line = Typesetter.Set(text, style);
        if (line.Width <= width)
            return line;
        line = Typesetter.Set(text, style with { SizeMillimetres = Math.Max(LeastText, style.SizeMillimetres * width / line.Width) });
        // A line set to the width exactly may come out longer by a rounding.
        for (var shown = text; line.Width > width + RoundingMillimetres && shown.Length > 1;)
        {
            shown = shown[..^1].TrimEnd(' ', ',');
            line = Typesetter.Set($"{shown}…", style with { SizeMillimetres = LeastText });
        }

        return line;
    }

    private static (bool PointsAlong, SetLine Line) Marks(Part part)
    {
        var along = part.Kind is PartKind.Stile or PartKind.MidStile;
        var words = part.Kind == PartKind.Glass ? "top" : part.Hand is { } hand ? $"top; face side; {(hand == Side.Left ? "left" : "right")} hand" : "top; face side";
        return (along, Typesetter.Set(words, new(2.8, Weight.Strong)));
    }

    private static IEnumerable<SceneNode> Draw((bool PointsAlong, SetLine Line) marks, PaperPoint at)
    {
        // No longer than the line beside it is high, so that it does not reach into the one above.
        const double Reach = 2.6;
        const double Head = 1.2;
        var middle = new PaperPoint(at.X + Reach / 2, at.Y - (marks.Line.Ascent - marks.Line.Descent) / 2);
        var to = marks.PointsAlong ? new PaperPoint(1, 0) : new PaperPoint(0, -1);
        var aside = new PaperPoint(-to.Y, to.X);
        var tip = middle + to * (Reach / 2);
        yield return new Shape(Outline.Line(middle - to * (Reach / 2), tip - to * Head), LineStyle.Visible);
        yield return new Shape(Outline.Through(true, tip, tip - to * Head + aside * (Head / 2), tip - to * Head - aside * (Head / 2)), null, Tone.Ink);
        yield return new Lettering(new(at.X + Reach + 1, at.Y), marks.Line);
    }

    private static string Size(PartSize size, LengthFormat format) => $"{WorkedText.Figure(size.Width, format)} × {WorkedText.Figure(size.Length, format)}";

    private static bool IsTrimmed(Part part) =>
        part.Finished.Width.Amount != part.GlueUp.Width.Amount || part.Finished.Length.Amount != part.GlueUp.Length.Amount;
}
