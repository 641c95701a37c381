using System.Text.Json.Nodes;

namespace Stilewright.Documents;

/// <summary>
/// The step of a course from version 1 to 2. Version 1 listed the readings of a kind: one, or both ends, or both ends with the middle
/// between them. Version 2 names each by its place; a single one is named by the top or the left.
/// </summary>
internal static class ReadingsByName
{
    private static readonly string[] Widths = ["widthTop", "widthMiddle", "widthBottom"];
    private static readonly string[] Heights = ["heightLeft", "heightMiddle", "heightRight"];

    public static UpgradeStep Step { get; } = new(1, course =>
    {
        Walk(course);
        return course;
    });

    // In version 1 only an opening has readings.
    private static void Walk(JsonNode? node)
    {
        switch (node)
        {
            case JsonArray items:
                foreach (var item in items)
                    Walk(item);
                break;
            case JsonObject record:
                foreach (var (key, value) in record)
                {
                    if (key == "readings" && value is JsonObject readings)
                    {
                        Name(readings, "widths", Widths);
                        Name(readings, "heights", Heights);
                    }
                    else
                    {
                        Walk(value);
                    }
                }

                break;
        }
    }

    // A list that version 1 would have refused is left as it is, to be refused now.
    private static void Name(JsonObject readings, string list, string[] places)
    {
        if (readings[list] is not JsonArray { Count: >= 1 and <= 3 } read || places.Any(readings.ContainsKey))
            return;
        string[] named = read.Count switch
        {
            1 => [places[0]],
            2 => [places[0], places[2]],
            _ => places,
        };
        readings.Remove(list);
        for (var i = 0; i < named.Length; i++)
            readings[named[i]] = read[i]?.DeepClone();
    }
}
