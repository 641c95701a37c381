using Stilewright.Documents;

namespace Stilewright.Cli.Files;

/// <summary>Reads a whole file of reasonable size.</summary>
internal static class InputFile
{
    /// <exception cref="RefusalException">It is missing, a folder, locked, empty, too large or no text.</exception>
    public static byte[] Read(string path)
    {
        var bytes = ReadBytes(path, "the course file", ", or make a sample with `stilewright sample`");
        if (bytes.Length == 0)
            throw Refuse(path, "is empty", "make a sample with `stilewright sample`");
        if (bytes.Contains((byte)0))
            throw Refuse(path, "holds no text", "name a course file, which is JSON in UTF-8");
        return bytes;
    }

    /// <summary>A file of another kind, whose reader judges what it holds.</summary>
    /// <param name="what">What is meant to be in it, such as "the list".</param>
    /// <exception cref="RefusalException">It is missing, a folder, locked or too large.</exception>
    public static byte[] Read(string path, string what) => ReadBytes(path, what, "");

    private static byte[] ReadBytes(string path, string what, string otherwise)
    {
        try
        {
            if (Directory.Exists(path))
                throw Refuse(path, "is a folder", $"name {what} in it");
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            return ReadAll(stream, path);
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            throw Refuse(path, "is not there", $"check the name and the folder{otherwise}");
        }
        catch (UnauthorizedAccessException)
        {
            throw Refuse(path, "may not be read", "change its permissions or copy it elsewhere");
        }
        catch (Exception fault) when (fault is IOException or ArgumentException or NotSupportedException)
        {
            throw Refuse(path, "cannot be read", fault.Message.ReplaceLineEndings(" "));
        }
    }

    private static byte[] ReadAll(FileStream stream, string path)
    {
        using var held = new MemoryStream();
        var buffer = new byte[81_920];
        int count;
        while ((count = stream.Read(buffer)) > 0)
        {
            held.Write(buffer, 0, count);
            if (held.Length > DocumentReader.MostBytes)
                throw Refuse(path, $"is larger than {DocumentReader.MostBytes / (1024 * 1024)} MiB", "check that it is the right file, or split it into several");
        }

        return held.ToArray();
    }

    private static RefusalException Refuse(string path, string problem, string fix) =>
        new(ExitCode.FileFailed, $"{path} {problem}: {fix}.");
}
