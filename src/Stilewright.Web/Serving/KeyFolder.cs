namespace Stilewright.Web.Serving;

/// <summary>The folder of the keys that cookies are sealed with. Who reads them could pass for any maker, so it is its owner's alone.</summary>
internal static class KeyFolder
{
    private const UnixFileMode OwnerAlone = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    /// <param name="data">The data file; the folder stands beside it.</param>
    public static string Of(string data) => Path.GetFullPath(data) + ".keys";

    /// <summary>Makes the folder, or takes from others what an earlier version left them. On Windows the rights of the folder around it hold.</summary>
    public static void Prepare(string data)
    {
        if (OperatingSystem.IsWindows())
            return;
        var folder = Of(data);
        Directory.CreateDirectory(folder, OwnerAlone);
        try
        {
            File.SetUnixFileMode(folder, OwnerAlone);
        }
        catch (UnauthorizedAccessException)
        {
            // Someone else's folder: its owner decides.
        }
    }
}
