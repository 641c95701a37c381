namespace Stilewright.Tests.Wood;

/// <summary>Tables as they ship, read for tests by other code than the program's.</summary>
internal static class Table
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string name)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Wood", "Data", name));
        var columns = lines[0].Split(',');
        return [.. lines.Skip(1).Select(line => Fields(line).Zip(columns).ToDictionary(pair => pair.Second, pair => pair.First))];
    }

    // Every second piece between quotation marks is one field.
    private static IEnumerable<string> Fields(string line) => line.Split('"')
        .SelectMany((piece, index) => index % 2 == 1 ? [piece] : piece.Trim(',') is { Length: > 0 } plain ? plain.Split(',') : piece == ",," ? [""] : []);
}
