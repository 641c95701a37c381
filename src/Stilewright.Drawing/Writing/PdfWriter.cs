using SkiaSharp;

namespace Stilewright.Drawing.Writing;

/// <summary>Writes scenes as pages of a PDF: lines as lines and letters as letters, at their exact places.</summary>
/// <remarks>
/// The same pages and facts give the same bytes. Several documents may be written at once, each by one thread.
/// A page is drawn and let go before the next is asked for.
/// </remarks>
public static class PdfWriter
{
    private const double PointsPerMillimetre = 72 / 25.4;

    /// <param name="output">Is left open. Where it cannot be read and sought, the document passes through a temporary file.</param>
    /// <param name="pages">At least one; taken one at a time.</param>
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
        List<PdfContents.Entry> entries = [];
        var count = 0;
        using (var document = SKDocument.CreatePdf(output, Metadata(facts)))
        {
            using var painter = new ScenePainter();
            try
            {
                foreach (var page in pages)
                {
                    cancellation.ThrowIfCancellationRequested();
                    var height = (float)(page.Scene.HeightMillimetres * PointsPerMillimetre);
                    var canvas = document.BeginPage((float)(page.Scene.WidthMillimetres * PointsPerMillimetre), height);
                    canvas.Scale((float)PointsPerMillimetre);
                    painter.Paint(canvas, page.Scene);
                    document.EndPage();
                    entries.AddRange(page.Bookmarks.Select(mark => new PdfContents.Entry(mark, count, height)));
                    count++;
                    progress?.Report(count);
                }

                cancellation.ThrowIfCancellationRequested();
                if (count == 0)
                    throw new ArgumentException("A document needs at least one page.", nameof(pages));
            }
            catch
            {
                document.Abort();
                throw;
            }

            document.Close();
        }

        PdfContents.Append(output, start, entries);
    }

    private static SKDocumentPdfMetadata Metadata(PdfFacts facts) => SKDocumentPdfMetadata.Default with
    {
        Title = facts.Title,
        Subject = facts.Subject,
        Author = facts.Author,
        Keywords = facts.Keywords,
        Creator = facts.Program,
        Creation = facts.Created.UtcDateTime,
        Modified = facts.Created.UtcDateTime,
    };
}
