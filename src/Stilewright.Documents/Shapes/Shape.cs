using System.Collections.Concurrent;
using System.Reflection;
using System.Text.Json.Nodes;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Documents.Shapes;

/// <summary>How values of one type stand in a document: found by reflection once per type, then kept.</summary>
internal abstract class Shape
{
    private static readonly ConcurrentDictionary<Type, Shape> Known = new();

    /// <exception cref="InvalidOperationException">The type follows none of the conventions: a programmer's mistake.</exception>
    public static Shape Of(Type type) => Known.GetOrAdd(Nullable.GetUnderlyingType(type) ?? type, Make);

    private static Shape Make(Type type) => type switch
    {
        _ when type == typeof(string) => new TextShape(),
        _ when type == typeof(int) => new CountShape(),
        _ when type == typeof(bool) => new YesNoShape(),
        _ when type == typeof(LengthEntry) => new LengthShape(isTyped: true),
        _ when type == typeof(Length) => new LengthShape(isTyped: false),
        _ when type == typeof(NumberEntry) => new NumberShape(),
        _ when type == typeof(DateTimeOffset) => new TimeShape(),
        _ when type == typeof(SettingValues) => new SettingsShape(),
        { IsEnum: true } => new WordShape(type),
        { IsGenericType: true } when type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) => new ListShape(type.GetGenericArguments()[0]),
        { IsClass: true, IsAbstract: true } when type.IsDefined(typeof(CaseAttribute)) => new CaseSetShape(type),
        { IsClass: true, IsAbstract: false } => new RecordShape(type),
        _ => throw new InvalidOperationException($"{type} has no form in documents."),
    };

    private bool? holdsIds;

    /// <summary>Whether a record with an id can stand in a value of this form.</summary>
    public bool HoldsIds => holdsIds ??= RecordsWithin().Any(record => record.IdField is not null);

    /// <summary>Every record that a value of this form can hold, itself included.</summary>
    public IReadOnlySet<RecordShape> RecordsWithin()
    {
        HashSet<RecordShape> found = [];
        Visit(this);
        return found;

        void Visit(Shape shape)
        {
            switch (shape)
            {
                case RecordShape record when found.Add(record):
                    foreach (var field in record.Fields)
                        Visit(field.Shape);
                    break;
                case ListShape list:
                    Visit(list.Item);
                    break;
                case CaseSetShape set:
                    foreach (var (_, one) in set.Cases)
                        Visit(one);
                    break;
            }
        }
    }

    /// <summary>The record that an object of this form is, by its kind where there are several; null where it is none.</summary>
    public RecordShape? RecordOf(JsonNode? node) => node is not JsonObject tree ? null : this switch
    {
        RecordShape record => record,
        CaseSetShape set when tree[CaseSetShape.KindKey] is JsonValue kind && kind.TryGetValue<string>(out var word) => set.Find(word),
        _ => null,
    };
}

internal sealed class TextShape : Shape;

internal sealed class CountShape : Shape;

internal sealed class YesNoShape : Shape;

/// <summary>A length as a person typed it, or an exact one that was worked out.</summary>
internal sealed class LengthShape(bool isTyped) : Shape
{
    public bool IsTyped { get; } = isTyped;
}

/// <summary>A number that is no length, as a person typed it; its field says what it counts.</summary>
internal sealed class NumberShape : Shape;

/// <summary>A moment in universal time, to the second.</summary>
internal sealed class TimeShape : Shape;

internal sealed class SettingsShape : Shape;

/// <summary>One of the words of an enum.</summary>
internal sealed class WordShape : Shape
{
    private readonly Dictionary<string, object> values = [];
    private readonly Dictionary<object, string> words = [];

    public WordShape(Type type)
    {
        List<EnumWord> list = [];
        foreach (var field in type.GetFields(BindingFlags.Public | BindingFlags.Static))
        {
            var word = field.GetCustomAttribute<SpelledAttribute>()?.Word ?? Spelling.Word(field.Name);
            var value = field.GetValue(null)!;
            values.Add(word, value);
            words.Add(value, word);
            list.Add(new(word, field.GetCustomAttribute<MeaningAttribute>()?.Text, field.GetCustomAttribute<LabelAttribute>()?.Text ?? word.Replace('-', ' ')));
        }

        Type = type;
        Words = list;
    }

    public Type Type { get; }

    /// <summary>The words in the order of the enum, each with its meaning where it says one.</summary>
    public IReadOnlyList<EnumWord> Words { get; }

    public object? Find(string word) => values.GetValueOrDefault(word);

    public string WordOf(object value) => words[value];
}

/// <summary>A word of an enum as it is spelled, its meaning where it says one, and what people say in a sentence.</summary>
internal sealed record EnumWord(string Word, string? Meaning, string Label);

internal sealed class ListShape(Type item) : Shape
{
    private Shape? itemShape;

    public Type ItemType { get; } = item;

    public Shape Item => itemShape ??= Of(ItemType);

    /// <summary>Whether every item has an id, so that items are told apart by it.</summary>
    public bool IsById => Item switch
    {
        RecordShape record => record.IdField is not null,
        CaseSetShape set => set.Cases.All(one => one.Shape.IdField is not null),
        _ => false,
    };

    public Array Empty { get; } = Array.CreateInstance(item, 0);
}

/// <summary>A record: an object whose keys are the parameters of its only constructor.</summary>
internal sealed class RecordShape : Shape
{
    public const string IdKey = "id";

    private readonly Dictionary<string, int> positions;
    private readonly ConstructorInvoker make;

    public RecordShape(Type type)
    {
        var constructors = type.GetConstructors();
        if (constructors is not [var constructor])
            throw new InvalidOperationException($"{type} has {constructors.Length} public constructors; a record in documents has one.");
        NullabilityInfoContext nullability = new();
        Type = type;
        Label = type.GetCustomAttribute<LabelAttribute>(inherit: false)?.Text ?? Spelling.InWords(type);
        Fields = [.. constructor.GetParameters().Select(parameter => new FieldShape(type, parameter, nullability))];
        IdField = Fields.FirstOrDefault(field => field is { IsId: true, Key: IdKey });
        MayBeEmpty = !Fields.Any(field => field.IsRequired);
        positions = new(StringComparer.Ordinal);
        for (var index = 0; index < Fields.Count; index++)
            positions.Add(Fields[index].Key, index);
        UnitPosition = positions.TryGetValue("unit", out var position) && Fields[position].Shape is WordShape { Type: var word } && word == typeof(LengthUnit)
            ? position : null;
        make = ConstructorInvoker.Create(constructor);
    }

    public Type Type { get; }

    /// <summary>What people call one such record in a sentence.</summary>
    public string Label { get; }

    /// <summary>In the order of the constructor, which is that of the file.</summary>
    public IReadOnlyList<FieldShape> Fields { get; }

    /// <summary>The id by which the record is addressed, in records that have one of their own; what was handed out has that of its course.</summary>
    public FieldShape? IdField { get; }

    /// <summary>Whether an object without keys is such a record: nothing in it must be said.</summary>
    public bool MayBeEmpty { get; }

    /// <summary>Where the field stands that sets the unit for everything inside, in records that have one.</summary>
    public int? UnitPosition { get; }

    public IEnumerable<string> Keys => Fields.Select(one => one.Key);

    public int? PositionOf(string key) => positions.TryGetValue(key, out var position) ? position : null;

    public object Make(object?[] values) => make.Invoke(values.AsSpan());
}

/// <summary>A closed set of records, told apart by <c>kind</c>.</summary>
internal sealed class CaseSetShape(Type type) : Shape
{
    public const string KindKey = "kind";

    private IReadOnlyList<CaseShape>? cases;

    public Type Type { get; } = type;

    /// <summary>What people call one of them in a sentence.</summary>
    public string Label { get; } = type.GetCustomAttribute<LabelAttribute>(inherit: false)?.Text ?? Spelling.InWords(type);

    public IReadOnlyList<CaseShape> Cases =>
        cases ??= [.. Type.GetCustomAttributes<CaseAttribute>().Select(one => new CaseShape(one.Kind, (RecordShape)Of(one.Type)))];

    public RecordShape? Find(string kind) => Cases.FirstOrDefault(one => one.Kind == kind)?.Shape;

    public CaseShape CaseOf(object record) => Cases.First(one => one.Shape.Type == record.GetType());
}

/// <summary>A case of a closed set and the kind that it is told by.</summary>
internal sealed record CaseShape(string Kind, RecordShape Shape);
