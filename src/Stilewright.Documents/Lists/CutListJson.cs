using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Documents.Lists;

/// <summary>The cut list as JSON. Every size is an exact fraction of inches as text, such as <c>"137/16"</c>.</summary>
public static class CutListJson
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        // Read by programs and people; never put into a page as it is.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Of(Breakdown breakdown, IReadOnlyList<CutListGroup> groups)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteString("course", breakdown.Course.Name);
            json.WriteString("unit", "in");
            json.WriteStartArray("lists");
            foreach (var group in groups)
            {
                json.WriteStartObject();
                json.WriteString("for", group.Heading);
                json.WriteStartArray("lines");
                foreach (var row in group.Rows)
                    WriteRow(json, row);
                json.WriteEndArray();
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void WriteRow(Utf8JsonWriter json, CutListRow row)
    {
        var part = row.Part;
        json.WriteStartObject();
        json.WriteStartArray("benches");
        foreach (var bench in row.Benches)
            json.WriteNumberValue(bench);
        json.WriteEndArray();
        WriteWords(json, "projects", row.Projects);
        WriteWords(json, "leaves", row.Line.Leaves);
        WriteWords(json, "parts", row.Line.Parts.Select(each => each.Label));
        WriteWords(json, "paths", row.Line.Parts.Select(each => each.Path));
        json.WriteString("part", row.Name);
        json.WriteNumber("count", row.Line.Count);
        json.WriteString("material", part.Material);
        json.WriteString("stock", part.Stock);
        WriteSize(json, "finished", part.Finished);
        WriteSize(json, "clamps", part.GlueUp);
        WriteSize(json, "rough", part.Rough);
        if (part.Thickness is { } thickness)
        {
            json.WriteStartObject("thickness");
            Write(json, "rough", thickness.Rough);
            Write(json, "planed", thickness.Planed);
            Write(json, "final", thickness.Final);
            json.WriteEndObject();
        }

        if (part.Grain is { } grain)
            json.WriteString("grain", TradeWords.Words(grain));
        // A root lies below such a size: its fraction is the nearest the program holds.
        if (part.Quantities.Any(quantity => !quantity.IsExact))
            json.WriteBoolean("exact", false);
        json.WriteEndObject();
    }

    private static void WriteSize(Utf8JsonWriter json, string name, PartSize? size)
    {
        if (size is null)
            return;
        json.WriteStartObject(name);
        Write(json, "width", size.Width);
        Write(json, "length", size.Length);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, Worked? quantity)
    {
        if (quantity is not null)
            json.WriteString(name, quantity.Amount.Reduce().ToString());
    }

    private static void WriteWords(Utf8JsonWriter json, string name, IEnumerable<string> words)
    {
        json.WriteStartArray(name);
        foreach (var word in words)
            json.WriteStringValue(word);
        json.WriteEndArray();
    }
}
