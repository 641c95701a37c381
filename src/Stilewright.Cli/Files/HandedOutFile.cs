using Stilewright.Documents;
using Stilewright.Prints;

namespace Stilewright.Cli.Files;

/// <summary>The file beside a packet that keeps what the packet told.</summary>
internal static class HandedOutFile
{
    private const string Ending = ".handed-out.json";

    /// <summary>The name beside a packet: <c>bench-3.pdf</c> has <c>bench-3.handed-out.json</c>.</summary>
    public static string Beside(string packet) => Path.ChangeExtension(packet, null) + Ending;

    /// <summary>Writes the file whole or not at all.</summary>
    /// <exception cref="RefusalException">It exists and may not be replaced, it cannot be written, or it could not be read again.</exception>
    public static void Write(string path, HandedOut handedOut, bool replace)
    {
        var bytes = DocumentWriter.Write(handedOut);
        if (bytes.Length > DocumentReader.MostBytes)
            throw new RefusalException(ExitCode.FileFailed, $"{path} would be too large to be read again: hand out fewer benches at once.");
        OutputFile.Write(path, bytes, replace);
    }

    /// <exception cref="RefusalException">It cannot be read; the lines are all errors that were found.</exception>
    public static HandedOut Read(string path) => CourseFile.Use(path, DocumentReader.ReadHandedOut(InputFile.Read(path)));
}
