using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Stilewright.Documents.Shapes;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Documents;

/// <summary>JSON Schemas (draft 2020-12) of the files, for editors and other programs.</summary>
/// <remarks>Whatever a schema refuses the reader refuses too. The reader refuses more: a schema cannot read lengths, follow ids or compare fields.</remarks>
public static class DocumentSchema
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string ForCourse() => For(DocumentFormat.Course, "A course of Stilewright");

    public static string ForStandard() => For(DocumentFormat.Standard, "A house standard of Stilewright");

    public static string ForHandedOut() => For(DocumentFormat.HandedOut, "What was handed out of a course of Stilewright");

    public static string ForLabelSheet() => For(DocumentFormat.LabelSheet, "A sheet of labels for Stilewright");

    public static string ForPrinter() => For(DocumentFormat.Printer, "A printer for patterns of Stilewright");

    public static string ForMakersList() => For(DocumentFormat.MakersList, "A maker's cut list for Stilewright");

    private static string For(DocumentFormat format, string title)
    {
        Definitions definitions = new(format.Root == typeof(HouseStandard));
        var root = (RecordShape)Shape.Of(format.Root);
        var properties = new JsonObject
        {
            ["format"] = new JsonObject { ["const"] = format.Name },
            ["version"] = new JsonObject { ["const"] = format.Version },
        };
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = title,
            ["description"] = Definitions.Described(root.Type),
            ["type"] = "object",
        };
        definitions.AddFields(schema, root, properties, ["format", "version"]);
        schema["$defs"] = definitions.All();

        ArrayBufferWriter<byte> buffer = new();
        using (Utf8JsonWriter writer = new(buffer, Options))
            schema.WriteTo(writer);
        return System.Text.Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    /// <summary>The definitions that a schema has come to need.</summary>
    private sealed class Definitions(bool isStandard)
    {
        private const string LengthName = "length";
        private const string ExactLengthName = "exactLength";
        private readonly SortedDictionary<string, JsonObject> found = new(StringComparer.Ordinal);

        public JsonObject All() => new(found.Select(one => KeyValuePair.Create(one.Key, (JsonNode?)one.Value)));

        public static string? Described(Type type) => type.GetCustomAttributes(typeof(MeaningAttribute), inherit: false) is [MeaningAttribute meaning] ? meaning.Text : null;

        public void AddFields(JsonObject schema, RecordShape record, JsonObject properties, IEnumerable<string> alsoRequired)
        {
            foreach (var field in record.Fields)
                properties[field.Key] = OfField(field);
            schema["properties"] = properties;
            schema["required"] = new JsonArray([.. alsoRequired.Concat(record.Fields.Where(field => field.IsRequired).Select(field => field.Key)).Select(key => (JsonNode)key)]);
            schema["additionalProperties"] = false;
        }

        private JsonObject OfField(FieldShape field)
        {
            var schema = Of(field.Shape);
            if (field.IsId)
                schema["pattern"] = "^[a-z0-9][a-z0-9-]{0,39}$";
            if (field.Between is { } between)
                AddLimits(schema, field.Shape, between);
            if (Sentences(field) is { Length: > 0 } text)
                schema["description"] = text;
            return schema;
        }

        private static string Sentences(FieldShape field)
        {
            List<string> sentences = [];
            if (field.Meaning is not null)
                sentences.Add(field.Meaning);
            if (field.IsId)
                sentences.Add("Made once, never reused, unique in the file");
            if (field.RefersTo is not null)
                sentences.Add($"The id of a {Spelling.InWords(field.RefersTo)}");
            if (field.Unique is not null)
                sentences.Add($"No two in one {Spelling.InWords(field.Unique.Within)} are alike");
            if (field.Shape is NumberShape)
                sentences.Add(NumberSentence(field));
            if (field.Shape is LengthShape && field.Between is { } between)
                sentences.Add(between.Greatest < double.MaxValue
                    ? FormattableString.Invariant($"{(between.Above ? "Above" : "From")} {between.Least} in, at most {between.Greatest} in")
                    : FormattableString.Invariant($"{(between.Above ? "Above" : "From")} {between.Least} in"));
            return string.Join(". ", sentences);
        }

        private static string NumberSentence(FieldShape field)
        {
            var (unit, written) = field.NumberKind switch
            {
                NumberKind.Percent => (" %", "A percentage, such as 8.5 or \"8.5 %\""),
                NumberKind.Temperature => (" F", "A temperature, such as \"70 F\" or \"21 C\"; without either, F where lengths are inches and C where they are millimetres"),
                _ => ("", "A number, such as 0.5"),
            };
            return field.Between is not { } between ? written
                : FormattableString.Invariant($"{written}. {(between.Above ? "Above" : "From")} {between.Least}{unit}, at most {between.Greatest}{unit}");
        }

        private static void AddLimits(JsonObject schema, Shape shape, BetweenAttribute between)
        {
            var (least, greatest) = shape switch
            {
                CountShape => ("minimum", "maximum"),
                ListShape => ("minItems", "maxItems"),
                _ => ("", ""),
            };
            if (least.Length == 0)
                return;
            schema[least] = (int)between.Least;
            if (between.Greatest < double.MaxValue)
                schema[greatest] = (int)between.Greatest;
        }

        private JsonObject Of(Shape shape)
        {
            switch (shape)
            {
                case TextShape:
                    return new() { ["type"] = "string", ["minLength"] = 1 };
                case CountShape:
                    return new() { ["type"] = "integer" };
                case YesNoShape:
                    return new() { ["type"] = "boolean" };
                case WordShape words:
                    return Refer(Spelling.Key(words.Type.Name), () => OfWords(words));
                case LengthShape { IsTyped: true }:
                    return Refer(LengthName, OfLength);
                case LengthShape:
                    return Refer(ExactLengthName, OfExactLength);
                case NumberShape:
                    return new() { ["type"] = new JsonArray("string", "number"), ["minLength"] = 1 };
                case TimeShape:
                    return new() { ["type"] = "string", ["format"] = "date-time", ["pattern"] = TimeText.Pattern };
                case SettingsShape:
                    return Refer("settings", OfSettings);
                case ListShape list:
                    return new() { ["type"] = "array", ["items"] = Of(list.Item) };
                case CaseSetShape set:
                    return Refer(Spelling.Key(set.Type.Name), () => OfCases(set));
                case RecordShape record:
                    return Refer(Spelling.Key(record.Type.Name), () => OfRecord(record, null));
                default:
                    throw new InvalidOperationException();
            }
        }

        private JsonObject Refer(string name, Func<JsonObject> make)
        {
            if (!found.ContainsKey(name))
            {
                // Entered before it is made, since a space may hold spaces.
                found[name] = [];
                found[name] = make();
            }

            return new() { ["$ref"] = $"#/$defs/{name}" };
        }

        private JsonObject OfRecord(RecordShape record, string? kind)
        {
            var schema = new JsonObject();
            if (Described(record.Type) is { } text)
                schema["description"] = text;
            schema["type"] = "object";
            JsonObject properties = [];
            if (kind is not null)
                properties[CaseSetShape.KindKey] = new JsonObject { ["const"] = kind };
            AddFields(schema, record, properties, kind is null ? [] : [CaseSetShape.KindKey]);
            return schema;
        }

        private JsonObject OfCases(CaseSetShape set)
        {
            var schema = new JsonObject();
            if (Described(set.Type) is { } text)
                schema["description"] = text;
            schema["oneOf"] = new JsonArray([.. set.Cases.Select(one => Refer(Spelling.Key(one.Shape.Type.Name), () => OfRecord(one.Shape, one.Kind)))]);
            return schema;
        }

        private static JsonObject OfWords(WordShape words)
        {
            var schema = new JsonObject { ["enum"] = new JsonArray([.. words.Words.Select(word => (JsonNode)word.Word)]) };
            var meanings = words.Words.Where(word => word.Meaning is not null).Select(word => $"{word.Word}: {word.Meaning}").ToList();
            if (meanings.Count > 0)
                schema["description"] = string.Join(". ", meanings);
            return schema;
        }

        private static JsonObject OfLength() => new()
        {
            ["description"] = "A length as a person writes it, such as 27 1/2, 27.5 in or 698 mm. A number without a unit is in the unit of the nearest object with a unit",
            ["type"] = new JsonArray("string", "number"),
            ["minLength"] = 1,
            ["maxLength"] = Measure.LengthReader.MostCharacters,
            ["minimum"] = 0,
        };

        private static JsonObject OfExactLength() => new()
        {
            ["description"] = "An exact length as the program writes it, such as 8 9/16 in, 217.5 mm or 17/3 in",
            ["type"] = new JsonArray("string", "number"),
            ["minLength"] = 1,
            ["maxLength"] = LengthText.MostCharacters,
            ["minimum"] = 0,
        };

        private JsonObject OfSettings()
        {
            JsonObject properties = [];
            foreach (var setting in Settings.All.Where(setting => isStandard || setting.Overridable))
            {
                properties[setting.Key] = new JsonObject
                {
                    ["description"] = $"{setting.Meaning}. As shipped {setting.Inch}{(setting.Kind == SettingKind.Length && !setting.IsWord(setting.Inch) ? " in" : "")} or {setting.Metric}. Source: {setting.Source}",
                    ["anyOf"] = new JsonArray(
                        OfSetting(setting),
                        new JsonObject
                        {
                            ["type"] = "object",
                            ["properties"] = new JsonObject
                            {
                                ["value"] = OfSetting(setting),
                                ["source"] = new JsonObject { ["type"] = "string", ["minLength"] = 1, ["description"] = "Where the value comes from" },
                            },
                            ["required"] = new JsonArray("value"),
                            ["additionalProperties"] = false,
                        }),
                };
            }

            return new()
            {
                ["description"] = "Settings by key, each a value, or an object with value and source",
                ["type"] = "object",
                ["properties"] = properties,
                ["additionalProperties"] = false,
            };
        }

        private JsonObject OfSetting(Setting setting) => setting switch
        {
            { Kind: SettingKind.Length, Choices: { } words } => new()
            {
                ["anyOf"] = new JsonArray(Refer(LengthName, OfLength), new JsonObject { ["enum"] = new JsonArray([.. words.Select(word => (JsonNode)word)]) }),
            },
            { Kind: SettingKind.Percent } => new()
            {
                ["type"] = new JsonArray("string", "number"),
                ["description"] = $"A percentage{(setting.Choices is { } words ? $", or {string.Join(" or ", words)}" : "")}",
            },
            { Kind: SettingKind.Length } => Refer(LengthName, OfLength),
            { Kind: SettingKind.Count, Choices: { } counts } => new()
            {
                ["enum"] = new JsonArray([.. counts.Select(count => (JsonNode)count), .. counts.Select(count => (JsonNode)int.Parse(count, System.Globalization.CultureInfo.InvariantCulture))]),
            },
            { Kind: SettingKind.Choice, Choices: { } words } => new() { ["enum"] = new JsonArray([.. words.Select(word => (JsonNode)word)]) },
            { Kind: SettingKind.Reference } => new() { ["type"] = "string", ["minLength"] = 1 },
            _ => new() { ["type"] = new JsonArray("string", "integer") },
        };
    }
}
