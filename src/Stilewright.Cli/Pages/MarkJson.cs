using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Stilewright.Documents.Lists;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Telling;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>The answer to a maker's list as JSON. Only what the level of telling allows stands in it.</summary>
internal static class MarkJson
{
    private static readonly JsonSerializerOptions Options = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Of(Breakdown breakdown, MarkedList marked, LengthFormat format)
    {
        var answer = marked.Answer;
        JsonObject root = new()
        {
            ["course"] = breakdown.Course.Name,
            ["for"] = marked.For,
            ["stage"] = MakersListReader.Words(marked.Found.List.Stage),
            ["tell"] = TradeWords.Words(answer.Telling).Replace(' ', '-'),
            ["unit"] = format.Unit == LengthUnit.Inch ? "in" : "mm",
            ["isRight"] = marked.Found.IsRight,
            ["summary"] = answer.Summary,
            ["unread"] = Words(marked.Read.Unread),
            ["lines"] = new JsonArray([.. answer.Lines.Select(Line)]),
            ["missing"] = Words(answer.Missing),
            ["mistakes"] = new JsonArray([.. answer.Mistakes.Select(Mistake)]),
        };
        if (marked.Reuses.Count > 0)
            root["reuse"] = new JsonArray([.. marked.Reuses.Select(reuse => Reuse(reuse.Line, reuse.Advice, format))]);
        return root.ToJsonString(Options) + "\n";
    }

    private static JsonArray Words(IEnumerable<string> words) => new([.. words.Select(word => (JsonNode)word)]);

    private static JsonObject Line(LineAnswer line) => Without(new()
    {
        ["line"] = line.Line.Number,
        ["part"] = line.Line.Name,
        ["count"] = line.Line.Count,
        ["takenFor"] = line.What,
        ["isRight"] = line.IsRight,
        ["figures"] = new JsonArray([.. line.Numbers.Select(number => (JsonNode)Without(new()
        {
            ["of"] = number.Number.Item.Label,
            ["measure"] = number.Number.Measure.ToString().ToLowerInvariant(),
            ["told"] = number.Told,
            ["answer"] = number.Mark,
            ["right"] = number.Right,
            ["off"] = number.Off,
        }))]),
        ["remarks"] = Words(line.Remarks),
    });

    private static JsonObject Mistake(MistakeAnswer mistake) => Without(new()
    {
        ["about"] = mistake.About,
        ["hint"] = mistake.Hint,
        ["missed"] = mistake.Missed,
        ["rule"] = mistake.Rule,
        ["formulas"] = Words(mistake.Formulas),
        ["work"] = new JsonArray([.. mistake.Work.Select(work => (JsonNode)new JsonObject { ["asWorked"] = work.AsWorked, ["right"] = work.Right })]),
        ["question"] = mistake.Question,
        ["following"] = mistake.Following,
    });

    private static JsonObject Reuse(ListLine line, Teaching.Reuse.ReuseAdvice advice, LengthFormat format)
    {
        JsonArray Options(IReadOnlyList<Teaching.Reuse.ReuseOption> options) => new([.. options.Select(option => (JsonNode)new JsonObject
        {
            ["as"] = TradeWords.Words(option.Rung),
            ["parts"] = Words(option.Parts.Select(part => part.Label)),
            ["steps"] = Words(option.Steps.Select(step => FindingText.Say(step, format))),
            ["limits"] = new JsonArray([.. option.Limits.Select(limit => (JsonNode)Without(new()
            {
                ["rule"] = limit.Rule.Code,
                ["problem"] = limit.ProblemText(format),
                ["advice"] = limit.AdviceText(format),
                ["source"] = limit.Rule.Source.ToString(),
                ["acceptedBecause"] = limit.AcceptedBecause,
            }))]),
        })]);
        return new() { ["line"] = line.Number, ["options"] = Options(advice.Options), ["unsafe"] = Options(advice.Unsafe) };
    }

    // What is not told is not there, rather than null.
    private static JsonObject Without(JsonObject fields)
    {
        foreach (var (key, _) in fields.Where(field => field.Value is null).ToList())
            fields.Remove(key);
        return fields;
    }
}
