using System.Text;

namespace Stilewright.Cli.Files;

/// <summary>Writes a file whole or not at all, and never over another one unasked.</summary>
internal static class OutputFile
{
    public static void Write(string path, string text, bool replace) =>
        Write(path, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text), replace);

    /// <exception cref="RefusalException">It exists and may not be replaced, or it cannot be written.</exception>
    public static void Write(string path, byte[] bytes, bool replace) => Write(path, stream => stream.Write(bytes), replace);

    /// <summary>Writes beside and moves, so that a full disk, a fault or a stop leaves the old file as it was and no half one.</summary>
    /// <param name="write">Fills the file; its stream can be read and sought as well.</param>
    /// <exception cref="RefusalException">It exists and may not be replaced, or it cannot be written.</exception>
    public static void Write(string path, Action<Stream> write, bool replace)
    {
        RefuseExisting(path, replace);
        var beside = $"{path}.{Environment.ProcessId}.part";
        try
        {
            using (var stream = new FileStream(beside, FileMode.Create, FileAccess.ReadWrite, FileShare.None))
                write(stream);
            File.Move(beside, path, replace);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException || (fault is ArgumentException && path.Length == 0))
        {
            throw new RefusalException(ExitCode.FileFailed, $"{path} cannot be written: {fault.Message.ReplaceLineEndings(" ")}");
        }
        finally
        {
            Remove(beside);
        }
    }

    /// <exception cref="RefusalException">It exists and may not be replaced, or it is a folder.</exception>
    public static void RefuseExisting(string path, bool replace)
    {
        if (Directory.Exists(path))
            throw new RefusalException(ExitCode.FileFailed, $"{path} is a folder: name a file.");
        if (Path.GetDirectoryName(path) is { Length: > 0 } folder && !Directory.Exists(folder))
            throw new RefusalException(ExitCode.FileFailed, $"There is no folder {folder}: make it, or name another file than {path}.");
        if (!replace && File.Exists(path))
            throw new RefusalException(ExitCode.FileFailed, $"{path} is already there: name another file, or add --replace to write over it.");
    }

    private static void Remove(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            // What was to be told has been told; a left-over beside it is the lesser fault.
        }
    }
}
