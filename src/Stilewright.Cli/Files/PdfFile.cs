using System.Globalization;
using Stilewright.Drawing.Writing;

namespace Stilewright.Cli.Files;

/// <summary>Writes a PDF whole or not at all, and tells how far it is.</summary>
internal static class PdfFile
{
    private const int PagesBetweenReports = 10;

    /// <summary>The number of pages written.</summary>
    /// <exception cref="RefusalException">It exists and may not be replaced, or it cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped; no file is left behind.</exception>
    public static int Write(string path, PdfFacts facts, IEnumerable<PdfPage> pages, bool replace, Screen screen, CancellationToken cancellation)
    {
        var progress = new Progress(screen);
        OutputFile.Write(path, stream => PdfWriter.Write(stream, facts, pages, progress, cancellation), replace);
        progress.End();
        return progress.Count;
    }

    // Told at once and in order, which the library's own Progress does not promise.
    private sealed class Progress(Screen screen) : IProgress<int>
    {
        public int Count { get; private set; }

        public void Report(int value)
        {
            Count = value;
            if (screen.IsTerminal && value % PagesBetweenReports == 0)
                screen.Error.Write(string.Create(CultureInfo.InvariantCulture, $"\r{value} sheets … (Ctrl+C stops)"));
        }

        public void End()
        {
            if (screen.IsTerminal && Count >= PagesBetweenReports)
                screen.Error.Write("\r                                   \r");
        }
    }
}
