using SkiaSharp;

namespace Stilewright.Drawing.Writing;

/// <summary>Writes scenes as pages of a PDF: lines as lines and letters as letters, at their exact places.</summary>
/// <remarks>
/// The same pages and facts give the same bytes. Several documents may be written at once, each by one thread.
/// A page is drawn and let go while the next ones are asked for on another thread.
/// </remarks>
public static class PdfWriter
{
    // A packet lays out a whole project before its first page comes: enough pages to write while the next one is laid out.
    internal const int PagesAhead = 40;
    private const double PointsPerMillimetre = 72 / 25.4;
    private const string Producer = "SkiaSharp";

    /// <param name="output">Is left open. Where it cannot be read and sought, the document passes through a temporary file.</param>
    /// <param name="pages">At least one; taken on another thread, some ahead of what is written.</param>
    /// <param name="progress">Told the number of pages written after each page.</param>
    /// <param name="cancellation">Looked at before each page; what was written until then is no document.</param>
    /// <exception cref="OperationCanceledException">Cancelled before the last page was written.</exception>
    /// <exception cref="ArgumentException">There is no page.</exception>
    public static void Write(
        Stream output, PdfFacts facts, IEnumerable<PdfPage> pages,
        IProgress<int>? progress = null, CancellationToken cancellation = default)
    {
        if (output is { CanRead: true, CanSeek: true })
        {
            WriteInPlace(output, facts, pages, progress, cancellation);
            return;
        }

        using var file = new FileStream(
            Path.Combine(Path.GetTempPath(), Path.GetRandomFileName()), FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None,
            bufferSize: 1 << 16, FileOptions.DeleteOnClose);
        WriteInPlace(file, facts, pages, progress, cancellation);
        file.Position = 0;
        file.CopyTo(output);
    }

    private static void WriteInPlace(
        Stream output, PdfFacts facts, IEnumerable<PdfPage> pages, IProgress<int>? progress, CancellationToken cancellation)
    {
        var start = output.Position;
        List<PdfUpdate.PageSize> sizes = [];
        List<PdfUpdate.Entry> entries = [];
        using (var document = SKDocument.CreatePdf(output, Metadata(facts)))
        {
            using var painter = new ScenePainter();
            try
            {
                foreach (var page in ReadAhead.Of(pages, PagesAhead))
                {
                    cancellation.ThrowIfCancellationRequested();
                    var size = new PdfUpdate.PageSize(
                        page.Scene.WidthMillimetres * PointsPerMillimetre, page.Scene.HeightMillimetres * PointsPerMillimetre);
                    var canvas = document.BeginPage((float)size.Width, (float)size.Height);
                    canvas.Scale((float)PointsPerMillimetre);
                    painter.Paint(canvas, page.Scene);
                    document.EndPage();
                    entries.AddRange(page.Bookmarks.Select(mark => new PdfUpdate.Entry(mark, sizes.Count)));
                    sizes.Add(size);
                    progress?.Report(sizes.Count);
                }

                cancellation.ThrowIfCancellationRequested();
                if (sizes.Count == 0)
                    throw new ArgumentException("A document needs at least one page.", nameof(pages));
            }
            catch
            {
                document.Abort();
                throw;
            }

            document.Close();
        }

        PdfUpdate.Append(output, start, sizes, entries);
    }

    private static SKDocumentPdfMetadata Metadata(PdfFacts facts) => SKDocumentPdfMetadata.Default with
    {
        Title = facts.Title,
        Subject = facts.Subject,
        Author = facts.Author,
        Keywords = facts.Keywords,
        Creator = facts.Program,
        Producer = Producer,
        Creation = facts.Created.UtcDateTime,
        Modified = facts.Created.UtcDateTime,
    };
}
