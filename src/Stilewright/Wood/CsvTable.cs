using System.Text;

namespace Stilewright.Wood;

/// <summary>The rows of a shipped table: comma-separated, fields with commas in quotation marks, the first line naming the columns.</summary>
internal static class CsvTable
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string resource)
    {
        using var stream = typeof(CsvTable).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"The table {resource} is not in the program.");
        using StreamReader reader = new(stream);
        var columns = Fields(reader.ReadLine()!);
        List<IReadOnlyDictionary<string, string>> rows = [];
        while (reader.ReadLine() is { } line)
        {
            var fields = Fields(line);
            if (fields.Count != columns.Count)
                throw new InvalidOperationException($"The table {resource} has a row of {fields.Count} fields under {columns.Count} columns: {line}");
            rows.Add(columns.Zip(fields).ToDictionary(pair => pair.First, pair => pair.Second));
        }

        return rows;
    }

    private static List<string> Fields(string line)
    {
        List<string> fields = [];
        StringBuilder field = new();
        var quoted = false;
        foreach (var character in line)
        {
            if (character == '"')
            {
                quoted = !quoted;
            }
            else if (character == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(character);
            }
        }

        fields.Add(field.ToString());
        return fields;
    }
}
