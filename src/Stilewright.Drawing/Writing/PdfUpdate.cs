using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Stilewright.Drawing.Writing;

/// <summary>
/// Adds the list of contents (outline), the language, the wish to be printed unscaled and pages' exact sizes to a document just
/// written by Skia, which can write none of them and rounds pages to whole points.
/// </summary>
/// <remarks>
/// The addition is an incremental update after ISO 32000-1:2008, 7.5.6: nothing already written is touched. After it follow new
/// versions of the catalogue (7.7.2) and of pages whose size is not in whole points (7.7.3.3), the outline items (12.3.3), a second cross-reference section (7.5.4) and a trailer whose
/// Prev leads to the first (7.5.5). Of Skia's document only the trailer, the cross-reference table, the catalogue and the tree of
/// pages are read, in the one plain form in which Skia writes them; any other form is refused.
/// </remarks>
internal static partial class PdfUpdate
{
    private const int TailBytes = 1024;
    private const int CrossReferenceBytes = 20;

    /// <param name="PageIndex">Counted from zero.</param>
    public sealed record Entry(Bookmark Bookmark, int PageIndex);

    /// <summary>In points.</summary>
    public readonly record struct PageSize(double Width, double Height);

    /// <param name="document">Stands at the end of the document, which began at <paramref name="start"/>.</param>
    /// <exception cref="InvalidDataException">The document is not in the form this reads.</exception>
    public static void Append(Stream document, long start, IReadOnlyList<PageSize> sizes, IReadOnlyList<Entry> entries)
    {
        var skia = new Reader(document, start);
        var pages = skia.Pages();
        if (pages.Count != sizes.Count)
            throw Unexpected("the number of its pages");
        var update = new Section(document.Seek(0, SeekOrigin.End) - start);
        for (var i = 0; i < sizes.Count; i++)
            AddSize(update, pages[i], sizes[i], skia);

        var firstItem = skia.Size + 1;
        var catalog = skia.Catalog[..^">>".Length];
        catalog = PreferencesPattern().Replace(catalog, "");
        catalog += "\n/Lang (en)\n/ViewerPreferences <</DisplayDocTitle true /PrintScaling /None>>";
        if (entries.Count > 0)
            catalog += $"\n/Outlines {skia.Size} 0 R\n/PageMode /UseOutlines";
        update.Add(skia.CatalogNumber, catalog + ">>");
        if (entries.Count > 0)
            AddOutline(update, skia.Size, firstItem, entries, pages, skia);
        update.Finish(skia, document, entries.Count == 0 ? skia.Size : firstItem + entries.Count);
    }

    // Skia draws from the top left corner of the page of whole points it writes, which stays where it is.
    private static void AddSize(Section update, int page, PageSize size, Reader skia)
    {
        const double WholePoints = 0.0005;
        var dictionary = skia.Dictionary(page);
        var height = skia.Height(page);
        var exact = string.Create(CultureInfo.InvariantCulture, $"/MediaBox [0 {height - size.Height:0.####} {size.Width:0.####} {height}]");
        if (Math.Abs(size.Width - Math.Round(size.Width)) > WholePoints || Math.Abs(size.Height - height) > WholePoints)
            update.Add(page, SizePattern().Replace(dictionary, exact));
    }

    private static void AddOutline(Section update, int root, int firstItem, IReadOnlyList<Entry> entries, IReadOnlyList<int> pages, Reader skia)
    {
        var count = entries.Count;
        var parent = new int[count];
        List<int> open = [];
        for (var i = 0; i < count; i++)
        {
            while (open.Count > 0 && entries[open[^1]].Bookmark.Level >= entries[i].Bookmark.Level)
                open.RemoveAt(open.Count - 1);
            parent[i] = open.Count == 0 ? -1 : open[^1];
            open.Add(i);
        }

        var children = Enumerable.Range(0, count).ToLookup(i => parent[i]);
        var place = new int[count];
        foreach (var siblings in children)
        {
            var index = 0;
            foreach (var child in siblings)
                place[child] = index++;
        }

        var families = children.ToDictionary(family => family.Key, family => family.ToArray());
        string Reference(int item) => string.Create(CultureInfo.InvariantCulture, $"{(item < 0 ? root : firstItem + item)} 0 R");
        string Family(int item) => families.TryGetValue(item, out var family)
            ? $"/First {Reference(family[0])} /Last {Reference(family[^1])}" : "";

        // Only the outermost entries are open: a long list of contents is first seen as its chapters.
        update.Add(root, string.Create(CultureInfo.InvariantCulture, $"<</Type /Outlines {Family(-1)} /Count {families[-1].Length}>>"));
        for (var i = 0; i < count; i++)
        {
            var siblings = families[parent[i]];
            var item = new StringBuilder("<</Title ").Append(TextString(entries[i].Bookmark.Title));
            item.Append(" /Parent ").Append(Reference(parent[i]));
            if (place[i] > 0)
                item.Append(" /Prev ").Append(Reference(siblings[place[i] - 1]));
            if (place[i] < siblings.Length - 1)
                item.Append(" /Next ").Append(Reference(siblings[place[i] + 1]));
            if (families.TryGetValue(i, out var own))
                item.Append(CultureInfo.InvariantCulture, $" {Family(i)} /Count {-own.Length}");
            item.Append(CultureInfo.InvariantCulture, $" /Dest [{pages[entries[i].PageIndex]} 0 R /XYZ 0 {skia.Height(pages[entries[i].PageIndex])} 0]>>");
            update.Add(firstItem + i, item.ToString());
        }
    }

    // A text string in UTF-16 with its byte order mark (ISO 32000-1, 7.9.2.2), spelled in hexadecimal digits.
    private static string TextString(string text) => $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>";

    private static InvalidDataException Unexpected(string what) => new(
        $"The document cannot get its list of contents: {what} is not in the form this version of SkiaSharp was known to write.");

    [GeneratedRegex(@"\s*/ViewerPreferences <<[^<>]*>>")]
    private static partial Regex PreferencesPattern();

    [GeneratedRegex(@"trailer\n<</Size (?<size>\d+)\n/Root (?<root>\d+) 0 R\n/Info (?<info>\d+) 0 R>>\nstartxref\n(?<table>\d+)\n%%EOF\s*$")]
    private static partial Regex TrailerPattern();

    [GeneratedRegex(@"^<</Type /Catalog\n/Pages (?<pages>\d+) 0 R(\n/ViewerPreferences <<[^<>]*>>)?>>$")]
    private static partial Regex CatalogPattern();

    [GeneratedRegex(@"/MediaBox \[0 0 (?<width>\d+) (?<height>\d+)\]")]
    private static partial Regex SizePattern();

    [GeneratedRegex(@"^<</Type /Pages\n/Count (?<count>\d+)\n/Kids \[(?<kids>[\d R]+)\]")]
    private static partial Regex PageTreePattern();

    private sealed class Reader
    {
        private readonly Stream document;
        private readonly long start;
        private readonly long[] offsets;
        private readonly int pageRoot;

        public Reader(Stream document, long start)
        {
            this.document = document;
            this.start = start;
            var total = document.Seek(0, SeekOrigin.End) - start;
            var tail = Latin(Math.Max(0, total - TailBytes), (int)Math.Min(total, TailBytes));
            var trailer = TrailerPattern().Match(tail);
            if (!trailer.Success)
                throw Unexpected("its trailer");
            Size = Number(trailer, "size");
            CatalogNumber = Number(trailer, "root");
            InfoNumber = Number(trailer, "info");
            TableOffset = long.Parse(trailer.Groups["table"].ValueSpan, CultureInfo.InvariantCulture);

            var head = $"xref\n0 {Size}\n";
            var table = Latin(TableOffset, head.Length + CrossReferenceBytes * Size);
            if (!table.StartsWith(head, StringComparison.Ordinal))
                throw Unexpected("its cross-reference table");
            offsets = new long[Size];
            for (var i = 0; i < Size; i++)
            {
                var row = table.AsSpan(head.Length + CrossReferenceBytes * i, CrossReferenceBytes);
                if (row is not [.., ' ', '\n'] || row[10] != ' ' || !long.TryParse(row[..10], NumberStyles.None, CultureInfo.InvariantCulture, out offsets[i]))
                    throw Unexpected("its cross-reference table");
            }

            Catalog = Dictionary(CatalogNumber);
            var catalog = CatalogPattern().Match(Catalog);
            if (!catalog.Success)
                throw Unexpected("its catalogue");
            pageRoot = Number(catalog, "pages");
        }

        public int Size { get; }
        public int CatalogNumber { get; }
        public int InfoNumber { get; }
        public long TableOffset { get; }
        public string Catalog { get; }

        /// <summary>The object numbers of the pages, in their order.</summary>
        public IReadOnlyList<int> Pages()
        {
            List<int> pages = [];
            AddPages(pageRoot, pages);
            return pages;
        }

        private void AddPages(int number, List<int> pages)
        {
            var node = Dictionary(number);
            if (node.StartsWith("<</Type /Page\n", StringComparison.Ordinal))
            {
                pages.Add(number);
                return;
            }

            var tree = PageTreePattern().Match(node);
            if (!tree.Success)
                throw Unexpected("its tree of pages");
            var before = pages.Count;
            foreach (var kid in tree.Groups["kids"].Value.Split(" 0 R", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
                AddPages(int.Parse(kid, NumberStyles.None, CultureInfo.InvariantCulture), pages);
            if (pages.Count - before != Number(tree, "count"))
                throw Unexpected("the number of its pages");
        }

        /// <summary>The height of a page as it was written, in whole points.</summary>
        public int Height(int page)
        {
            var size = SizePattern().Match(Dictionary(page));
            return size.Success ? Number(size, "height") : throw Unexpected("the size of a page");
        }

        /// <summary>A dictionary that is an object of its own, from its first to its last bracket.</summary>
        public string Dictionary(int number)
        {
            const int LongestBytes = 1 << 12;
            if (number <= 0 || number >= Size)
                throw Unexpected("the number of an object");
            var text = Latin(offsets[number], LongestBytes);
            var head = $"{number} 0 obj\n";
            var end = text.IndexOf("\nendobj\n", StringComparison.Ordinal);
            if (end < 0 || !text.StartsWith(head, StringComparison.Ordinal))
                throw Unexpected("an object");
            return text[head.Length..end];
        }

        private string Latin(long offset, int count)
        {
            var bytes = new byte[count];
            document.Position = start + offset;
            return Encoding.Latin1.GetString(bytes, 0, document.ReadAtLeast(bytes, count, throwOnEndOfStream: false));
        }

        private static int Number(Match match, string group) =>
            int.TryParse(match.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
                ? number : throw Unexpected("a number");
    }

    private sealed class Section(long offset)
    {
        private readonly StringBuilder text = new("\n");
        private readonly SortedDictionary<int, long> offsets = [];

        public void Add(int number, string dictionary)
        {
            offsets.Add(number, offset + text.Length);
            text.Append(CultureInfo.InvariantCulture, $"{number} 0 obj\n{dictionary}\nendobj\n");
        }

        public void Finish(Reader before, Stream document, int size)
        {
            var table = offset + text.Length;
            text.Append("xref\n");
            var numbers = offsets.Keys.ToArray();
            for (var i = 0; i < numbers.Length;)
            {
                var next = i + 1;
                while (next < numbers.Length && numbers[next] == numbers[next - 1] + 1)
                    next++;
                text.Append(CultureInfo.InvariantCulture, $"{numbers[i]} {next - i}\n");
                for (; i < next; i++)
                    text.Append(CultureInfo.InvariantCulture, $"{offsets[numbers[i]]:0000000000} 00000 n \n");
            }

            text.Append(CultureInfo.InvariantCulture, $"trailer\n<</Size {size}\n/Root {before.CatalogNumber} 0 R\n/Info {before.InfoNumber} 0 R\n");
            text.Append(CultureInfo.InvariantCulture, $"/Prev {before.TableOffset}>>\nstartxref\n{table}\n%%EOF\n");
            document.Seek(0, SeekOrigin.End);
            document.Write(Encoding.Latin1.GetBytes(text.ToString()));
        }
    }
}
