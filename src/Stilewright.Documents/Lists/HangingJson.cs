using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stilewright.Findings;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Documents.Lists;

/// <summary>Hinges of leaves, their places and what is bored, as JSON. Every length is an exact fraction of inches as text, such as <c>"25/8"</c>.</summary>
public static class HangingJson
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        // Read by programs and people; never put into a page as it is.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Of(string course, IReadOnlyList<HungLeaf> leaves)
    {
        ArgumentNullException.ThrowIfNull(leaves);
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteString("course", course);
            json.WriteString("unit", "in");
            json.WriteStartArray("leaves");
            foreach (var leaf in leaves)
                Write(json, leaf);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void Write(Utf8JsonWriter json, HungLeaf leaf)
    {
        json.WriteStartObject();
        json.WriteNumber("bench", leaf.Project.Bench);
        json.WriteString("leaf", leaf.Leaf.Label);
        json.WriteString("path", leaf.Leaf.Path);
        json.WriteString("hinged", TradeWords.Words(leaf.Leaf.Hinge));
        json.WriteString("edgeSeenFromBack", TradeWords.Words(leaf.Edge));
        json.WriteString("hinge", leaf.Hinge.Id);
        json.WriteNumber("count", (int)leaf.Set.Number.Count.Amount);
        json.WriteString("why", BoringWords.Why(leaf.Set.Number));
        json.WriteStartArray("sources");
        foreach (var source in BoringWords.Sources(leaf.Set.Number))
            json.WriteStringValue(source.Text);
        json.WriteEndArray();
        json.WriteBoolean("hasTop", leaf.Hand.HasTop);
        Write(json, "boringDistance", leaf.Sheet?.Distance);
        Write(json, "cupCentre", leaf.Sheet?.CupCentre);
        Write(json, "plate", leaf.Fit?.Plate);
        var plans = leaf.StopPlans;
        json.WriteStartArray("places");
        foreach (var bore in leaf.Bores)
        {
            json.WriteStartObject();
            Write(json, leaf.IsUpright ? "fromTop" : "fromLeftSeenFromBack", bore.FromFirst);
            Write(json, leaf.IsUpright ? "fromBottom" : "fromRightSeenFromBack", bore.FromOther);
            if (bore.Why is { } why)
                json.WriteString("because", why);
            json.WriteStartArray("stops");
            foreach (var plan in plans)
            {
                foreach (var stop in plan.Stops.Where(stop => stop.Bore.Number == bore.Number && stop.IsNear))
                {
                    json.WriteStartObject();
                    json.WriteString("machine", plan.Machine.Id);
                    json.WriteString("stop", stop.Stop.Name);
                    json.WriteString("end", TradeWords.Words(stop.End));
                    json.WriteString("error", stop.Error.Inches.Reduce().ToString());
                    json.WriteEndObject();
                }
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("machines");
        foreach (var plan in plans)
        {
            json.WriteStartObject();
            json.WriteString("machine", plan.Machine.Id);
            Write(json, "fence", plan.Fence);
            json.WriteStartArray("cautions");
            foreach (var caution in plan.Cautions)
                json.WriteStringValue(FindingText.Say(caution, LengthFormat.InchesTo32));
            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, Worked? quantity)
    {
        if (quantity is not null)
            json.WriteString(name, quantity.Amount.Reduce().ToString());
    }
}
