using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>Moves of screws and the gaps after them as JSON.</summary>
internal static class AdjustJson
{
    private static readonly JsonSerializerOptions Options = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Of(Breakdown breakdown, IReadOnlyList<AdjustedRow> rows, LengthFormat format)
    {
        JsonObject root = new()
        {
            ["course"] = breakdown.Course.Name,
            ["unit"] = format.Unit == LengthUnit.Inch ? "in" : "mm",
            ["rows"] = new JsonArray([.. rows.Select(row => (JsonNode)Row(row, format))]),
        };
        return root.ToJsonString(Options) + "\n";
    }

    private static JsonObject Row(AdjustedRow row, LengthFormat format)
    {
        var words = new AdjustingWords(row.Plan, format);
        return new()
        {
            ["row"] = row.Row.Name,
            ["isEven"] = row.Plan.IsWithin,
            ["summary"] = words.Summary(),
            ["moves"] = new JsonArray([.. row.Task.Leaves.Select((leaf, index) => (leaf, index)).Where(each => !row.Plan.After.Moves[each.index].IsNone).Select(each => (JsonNode)new JsonObject
            {
                ["leaf"] = each.leaf.Label,
                ["steps"] = new JsonArray([.. words.Moves(each.index).Select(move => (JsonNode)move)]),
            })]),
            ["gaps"] = new JsonArray([.. row.Plan.After.Gaps.Select(gap => (JsonNode)new JsonObject
            {
                ["gap"] = AdjustingWords.Place(gap.Reading),
                ["now"] = format.Print(gap.Reading.Gap),
                ["after"] = format.Print(gap.After),
                ["shouldBe"] = format.Print(gap.Target),
            })]),
            ["corners"] = new JsonArray([.. row.Plan.After.Corners.Select(corner => (JsonNode)new JsonObject
            {
                ["leaf"] = corner.Reading.Leaf,
                ["corner"] = AdjustingWords.Corner(corner.Reading.Corner),
                ["now"] = AdjustingWords.Proud(corner.Reading.Proud, format),
                ["after"] = AdjustingWords.Proud(corner.After, format),
            })]),
            ["remedies"] = new JsonArray([.. row.Plan.Remedies.Select(remedy => (JsonNode)new JsonObject
            {
                ["kind"] = TradeWords.Words(remedy.Kind),
                ["does"] = remedy.Does,
                ["steps"] = new JsonArray([.. words.Lines(remedy).Skip(1).Select(line => (JsonNode)line)]),
            })]),
        };
    }
}
