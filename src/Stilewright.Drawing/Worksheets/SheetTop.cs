using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Worksheets;

/// <summary>The head of a sheet that a maker fills in, and lines to write on.</summary>
internal static class SheetTop
{
    /// <summary>The least height for one line of handwriting.</summary>
    public const double WritingHeight = 9;

    private const double Gap = 4;
    private static readonly TextStyle Caption = TextStyle.Body;

    /// <summary>Title, then lines for name, date and marks.</summary>
    public static IEnumerable<Strip> Of(string title, string marks, double width, params IReadOnlyList<Writing.Bookmark> bookmarks)
    {
        foreach (var strip in Prose.Title(title, width, bookmarks))
            yield return strip;
        List<SceneNode> nodes = [];
        var left = 0.0;
        foreach (var (caption, share) in new[] { ("Name", 0.5), ("Date", 0.25), ("Marks", 0.25) })
        {
            var words = Typesetter.Set(caption, Caption);
            var after = caption == "Marks" ? Typesetter.Set(marks, Caption) : null;
            var end = left + width * share;
            nodes.Add(Strip.Put(words, left, WritingHeight - words.Height));
            var lineEnd = share == 0.25 && after is not null ? end - after.Width - Gap / 2 : end - Gap;
            nodes.Add(Line(left + words.Width + Gap / 2, lineEnd, WritingHeight));
            if (after is not null)
                nodes.Add(Strip.Put(after, end - after.Width, WritingHeight - after.Height));
            left = end;
        }

        yield return new(WritingHeight + 1, nodes) { KeepWithNext = true };
    }

    /// <summary>A line to write on.</summary>
    public static Shape Line(double from, double to, double down) => Strip.Rule(from, down, to, down, LineStyle.Edge);
}
