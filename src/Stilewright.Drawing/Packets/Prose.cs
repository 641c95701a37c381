using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Writing;

namespace Stilewright.Drawing.Packets;

/// <summary>Headings and paragraphs.</summary>
internal static class Prose
{
    private const double AboveHeading = 6;
    private const double AboveParagraph = 1.2;
    private const double UnderHeading = 1.2;

    public static IEnumerable<Strip> Title(string text, double width, params IReadOnlyList<Bookmark> bookmarks) =>
        KeptTogether(Wrapped(text, TextStyle.Title, width, 0, UnderHeading + 1), AboveHeading, bookmarks);

    public static IEnumerable<Strip> Heading(string text, double width, params IReadOnlyList<Bookmark> bookmarks) =>
        KeptTogether(Wrapped(text, TextStyle.Heading, width, 0, UnderHeading), AboveHeading, bookmarks);

    public static IEnumerable<Strip> Paragraph(string text, double width, TextStyle? style = null, double indent = 0, double above = AboveParagraph) =>
        First(Wrapped(text, style ?? TextStyle.Body, width, indent, 0), above);

    /// <summary>A line for each line of text, so that any paragraph may be broken between sheets.</summary>
    public static IEnumerable<Strip> Wrapped(string text, TextStyle style, double width, double indent, double below)
    {
        var lines = Typesetter.Wrap(text, style, width - indent);
        for (var i = 0; i < lines.Count; i++)
        {
            var line = lines[i];
            var height = i == lines.Count - 1 ? line.Height + below : line.Pitch;
            yield return new(height, [Strip.Put(line, indent, 0)]);
        }
    }

    /// <summary>A few words in bold that a sentence runs on after.</summary>
    public static IEnumerable<Strip> Led(string words, string sentence, TextStyle style, double width)
    {
        // A space at the end of a run is not set in every reader of SVG, so the sentence keeps its distance by itself.
        var bold = Typesetter.Set($"{words}:", style.Bold);
        var after = Typesetter.Set($"{words}: ", style.Bold).Width;
        var lines = Typesetter.Wrap(sentence, style, width, Math.Min(after, width));
        for (var i = 0; i < lines.Count; i++)
        {
            yield return i == 0
                ? new(lines[i].Pitch, [Strip.Put(bold, 0, 0), Strip.Put(lines[i], after, 0)])
                : new(lines[i].Pitch, [Strip.Put(lines[i], 0, 0)]);
        }
    }

    public static IEnumerable<Strip> First(IEnumerable<Strip> strips, double above)
    {
        foreach (var strip in strips)
        {
            yield return strip with { SpaceBefore = above + strip.SpaceBefore };
            above = 0;
        }
    }

    private static IEnumerable<Strip> KeptTogether(IEnumerable<Strip> strips, double above, IReadOnlyList<Bookmark> bookmarks)
    {
        foreach (var strip in strips)
        {
            yield return strip with { SpaceBefore = above, KeepWithNext = true, Bookmarks = bookmarks };
            (above, bookmarks) = (0, []);
        }
    }
}
