using System.Text;

namespace Stilewright.Cli.Files;

/// <summary>Writes a file whole or not at all, and never over another one unasked.</summary>
internal static class OutputFile
{
    public static void Write(string path, string text, bool replace) =>
        Write(path, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text), replace);

    /// <exception cref="RefusalException">It exists and may not be replaced, or it cannot be written.</exception>
    public static void Write(string path, byte[] bytes, bool replace)
    {
        RefuseExisting(path, replace);
        try
        {
            // Written beside and moved, so that a full disk leaves the old file as it was.
            var beside = $"{path}.{Environment.ProcessId}.part";
            File.WriteAllBytes(beside, bytes);
            File.Move(beside, path, replace);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new RefusalException(ExitCode.FileFailed, $"{path} cannot be written: {fault.Message.ReplaceLineEndings(" ")}");
        }
    }

    /// <exception cref="RefusalException">It exists and may not be replaced, or it is a folder.</exception>
    public static void RefuseExisting(string path, bool replace)
    {
        if (Directory.Exists(path))
            throw new RefusalException(ExitCode.FileFailed, $"{path} is a folder: name a file.");
        if (!replace && File.Exists(path))
            throw new RefusalException(ExitCode.FileFailed, $"{path} is already there: name another file, or add --replace to write over it.");
    }
}
