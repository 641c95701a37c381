using System.Globalization;
using System.Text.Json;
using Fractions;
using Stilewright.Documents.Json;
using Stilewright.Documents.Rules;
using Stilewright.Documents.Shapes;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Documents;

/// <summary>Reads the tree of one file into its records and notes every fault on the way: what cannot be read does not keep the rest from being checked.</summary>
internal sealed class DocumentWalk(DocumentFormat format, ErrorList errors)
{
    private const int LongestId = 40;
    private static readonly string[] RootKeys = ["format", "version"];
    private static readonly string[] CaseKeys = [CaseSetShape.KindKey];

    private readonly RecordShape root = (RecordShape)Shape.Of(format.Root);
    private readonly Dictionary<string, Target> ids = new(StringComparer.Ordinal);
    private readonly List<Reference> references = [];

    /// <returns>The record; meaningless when an error was added.</returns>
    public object? Read(JsonPiece tree)
    {
        TryRecord(root, tree, DocumentPath.Root, null, RootKeys, out var document);
        var own = root.RecordsWithin().Select(record => record.Type).ToHashSet();
        foreach (var reference in references.Where(reference => own.Contains(reference.Type)))
            Resolve(reference.Type, reference.Id, reference.Path, reference.Scope);
        return document;
    }

    private bool TryRead(FieldShape? field, Shape shape, JsonPiece piece, DocumentPath path, Scope scope, out object? value)
    {
        value = null;
        if (piece.Kind == JsonValueKind.Null)
            return Refuse(path, "null stands here", field is { IsRequired: false } ? "leave the key out" : $"write {Expected(shape)}");
        switch (shape)
        {
            case TextShape:
                return TryText(field, piece, path, out value);
            case CountShape:
                return TryCount(field, piece, path, out value);
            case YesNoShape:
                value = piece.Kind == JsonValueKind.True;
                return piece.Kind is JsonValueKind.True or JsonValueKind.False || RefuseKind(shape, piece, path);
            case WordShape words:
                return TryWord(words, piece, path, out value);
            case LengthShape length:
                return TryLength(field, length, piece, path, scope, out value);
            case NumberShape:
                return TryNumber(field, piece, path, scope, out value);
            case TimeShape:
                return TryTime(piece, path, out value);
            case SettingsShape:
                return TrySettings(piece, path, scope, out value);
            case ListShape list:
                return TryList(field, list, piece, path, scope, out value);
            case CaseSetShape set:
                return TryCase(set, piece, path, scope, out value);
            case RecordShape record:
                return TryRecord(record, piece, path, scope, [], out value);
            default:
                throw new InvalidOperationException();
        }
    }

    private bool TryRecord(RecordShape record, JsonPiece piece, DocumentPath path, Scope? outer, string[] otherKeys, out object? value)
    {
        value = null;
        if (piece.Kind != JsonValueKind.Object)
            return RefuseKind(record, piece, path);

        var sound = true;
        var found = new JsonPiece?[record.Fields.Count];
        HashSet<string>? seen = null;
        foreach (var field in piece.Fields)
        {
            if (record.PositionOf(field.Name) is { } position)
            {
                if (found[position] is null)
                    found[position] = field.Value;
                else
                    sound = RefuseSecond(path, field);
            }
            else if (otherKeys.Contains(field.Name))
            {
                if (!(seen ??= []).Add(field.Name))
                    sound = RefuseSecond(path, field);
            }
            else
            {
                errors.Add(path.Field(field.Name), $"unknown key \"{Quote.Shown(field.Name)}\"", Quote.Suggest(field.Name, [.. otherKeys, .. record.Keys]), field.Offset);
                sound = false;
            }
        }

        var values = new object?[found.Length];
        var scope = ScopeOf(record, found, values, path, outer, ref sound);
        for (var position = 0; position < found.Length; position++)
        {
            if (position == record.UnitPosition)
                continue;
            sound &= TryField(record, record.Fields[position], found[position], path, scope, out values[position]);
        }

        if (!sound)
            return false;
        value = record.Make(values);
        foreach (var fault in DocumentRules.Check(value, path))
            errors.Add(fault.Path, fault.Problem, fault.Fix);
        return true;
    }

    /// <summary>Reads the unit before everything else, wherever it stands.</summary>
    private Scope ScopeOf(RecordShape record, JsonPiece?[] found, object?[] values, DocumentPath path, Scope? outer, ref bool sound)
    {
        if (record.UnitPosition is not { } position)
            return outer ?? new(null, record, LengthUnit.Inch);
        Scope unread = new(outer, record, null);
        if (!TryField(record, record.Fields[position], found[position], path, unread, out values[position]))
        {
            sound = false;
            return unread;
        }

        return new(outer, record, (LengthUnit?)values[position] ?? outer?.Unit);
    }

    private bool TryField(RecordShape record, FieldShape field, JsonPiece? piece, DocumentPath parent, Scope scope, out object? value)
    {
        value = field.Absent;
        var path = parent.Field(field.Key);
        if (piece is null)
        {
            return !field.IsRequired || Refuse(path, $"\"{field.Key}\" is missing",
                $"add \"{field.Key}\": {Expected(field.Shape)}{(field.Meaning is null ? "" : $" ({field.Meaning})")}");
        }

        if (!TryRead(field, field.Shape, piece, path, scope, out value))
            return false;
        if (field.IsId)
            return TryTakeId(record, (string)value!, path, scope);
        if (field.RefersTo is not null)
            references.Add(new(field.RefersTo, (string)value!, path, scope));
        if (field.Unique is { } unique && scope.Take(unique.Within, unique.What, (int)value!, path) is { } taken)
            return Refuse(path, $"{unique.What} {value} is already used at {taken}", "give each its own number");
        return true;
    }

    private bool TryText(FieldShape? field, JsonPiece piece, DocumentPath path, out object? value)
    {
        value = piece.Text;
        if (piece.Kind != JsonValueKind.String)
            return RefuseKind(Shape.Of(typeof(string)), piece, path);
        return !string.IsNullOrWhiteSpace(piece.Text)
            || Refuse(path, "the text is empty", field is { IsRequired: false } ? "write it, or leave the key out" : "write it");
    }

    private bool TryCount(FieldShape? field, JsonPiece piece, DocumentPath path, out object? value)
    {
        value = null;
        if (piece.Kind != JsonValueKind.Number)
            return RefuseKind(Shape.Of(typeof(int)), piece, path);
        if (!int.TryParse(piece.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var count))
            return Refuse(path, $"{Quote.Shown(piece.Text)} is not a whole number that can be meant", "write a whole number in digits");
        value = count;
        return field?.Between is not { } between || (count >= between.Least && count <= between.Greatest)
            || Refuse(path, $"{count} is outside the limits", $"write a whole number {Limits(between, "")}");
    }

    private bool TryWord(WordShape words, JsonPiece piece, DocumentPath path, out object? value)
    {
        value = null;
        if (piece.Kind != JsonValueKind.String)
            return RefuseKind(words, piece, path);
        value = words.Find(piece.Text);
        return value is not null || Refuse(path, $"\"{Quote.Shown(piece.Text)}\" is none of the words known here",
            Quote.Suggest(piece.Text, [.. words.Words.Select(word => word.Word)]));
    }

    private bool TryTime(JsonPiece piece, DocumentPath path, out object? value)
    {
        value = null;
        if (piece.Kind != JsonValueKind.String)
            return RefuseKind(Shape.Of(typeof(DateTimeOffset)), piece, path);
        if (TimeText.Read(piece.Text) is not { } time)
            return Refuse(path, $"\"{Quote.Shown(piece.Text)}\" is not a time in universal time", $"write it like {TimeText.Example}");
        value = time;
        return true;
    }

    private bool TryLength(FieldShape? field, LengthShape shape, JsonPiece piece, DocumentPath path, Scope scope, out object? value)
    {
        value = null;
        LengthEntry entry;
        if (!shape.IsTyped && piece.Kind == JsonValueKind.String && LengthText.ReadExact(piece.Text) is { } exact)
            entry = new(piece.Text, exact);
        else if (!TryLength(piece, path, scope, out entry))
            return false;
        value = shape.IsTyped ? entry : entry.Value;
        if (field?.Shape is not LengthShape)
            return true;
        if (field.Least is { } least && (entry.Value < least || (entry.Value == least && field.Between!.Above)))
            return Refuse(path, $"{Quote.Shown(entry.Text)} is too small here", $"write a length {Limits(field.Between!, " in")}");
        return field.Greatest is not { } greatest || entry.Value <= greatest
            || Refuse(path, $"{Quote.Shown(entry.Text)} is too large here", $"write a length {Limits(field.Between!, " in")}, or check its unit");
    }

    private bool TryLength(JsonPiece piece, DocumentPath path, Scope scope, out LengthEntry entry, string orWord = "")
    {
        entry = default;
        if (piece.Kind is not (JsonValueKind.String or JsonValueKind.Number))
            return RefuseKind(Shape.Of(typeof(LengthEntry)), piece, path);
        var result = LengthReader.Read(piece.Text, scope.Unit ?? LengthUnit.Inch);
        // Where the unit itself is refused, a length is not refused for being written in the other one.
        if (scope.Unit is null && result is ParseResult<Length>.Failed)
            result = LengthReader.Read(piece.Text, LengthUnit.Millimetre);
        switch (result)
        {
            case ParseResult<Length>.Parsed parsed:
                entry = new(piece.Text, parsed.Value);
                return true;
            case ParseResult<Length>.Failed failed:
                return Refuse(path, $"the length \"{Quote.Shown(failed.Text)}\" cannot be read at character {failed.Position + 1}", $"expected: {failed.Expected}{orWord}");
            default:
                throw new InvalidOperationException();
        }
    }

    private bool TryNumber(FieldShape? field, JsonPiece piece, DocumentPath path, Scope scope, out object? value)
    {
        value = null;
        if (piece.Kind is not (JsonValueKind.String or JsonValueKind.Number))
            return RefuseKind(Shape.Of(typeof(NumberEntry)), piece, path);
        var kind = field?.NumberKind ?? NumberKind.Plain;
        if (NumberReader.Read(piece.Text, kind, scope.Unit ?? LengthUnit.Inch) is not ParseResult<Fraction>.Parsed(var number))
        {
            var failed = (ParseResult<Fraction>.Failed)NumberReader.Read(piece.Text, kind, scope.Unit ?? LengthUnit.Inch);
            return Refuse(path, $"\"{Quote.Shown(failed.Text)}\" cannot be read at character {failed.Position + 1}", $"expected: {failed.Expected}");
        }

        value = new NumberEntry(piece.Text, number);
        var unit = kind switch { NumberKind.Percent => " %", NumberKind.Temperature => " F", _ => "" };
        return field?.Between is not { } between || Fits(number.ToDouble(), between)
            || Refuse(path, $"{Quote.Shown(piece.Text)} is outside the limits", $"write a number {Limits(between, unit)}");

        static bool Fits(double number, Projects.BetweenAttribute between) =>
            number <= between.Greatest && (between.Above ? number > between.Least : number >= between.Least);
    }

    private bool TryList(FieldShape? field, ListShape list, JsonPiece piece, DocumentPath path, Scope scope, out object? value)
    {
        value = null;
        if (piece.Kind != JsonValueKind.Array)
            return RefuseKind(list, piece, path);
        var items = Array.CreateInstance(list.ItemType, piece.Items.Count);
        var sound = true;
        for (var index = 0; index < items.Length; index++)
        {
            if (TryRead(null, list.Item, piece.Items[index], path.Item(index), scope, out var item))
                items.SetValue(item, index);
            else
                sound = false;
        }

        value = items;
        if (field?.Between is { } between && (items.Length < between.Least || items.Length > between.Greatest))
            return Refuse(path, $"{items.Length} stand in this list", $"write {Limits(between, "")}");
        return sound;
    }

    private bool TryCase(CaseSetShape set, JsonPiece piece, DocumentPath path, Scope scope, out object? value)
    {
        value = null;
        if (piece.Kind != JsonValueKind.Object)
            return RefuseKind(set, piece, path);
        var kinds = set.Cases.Select(one => one.Kind).ToList();
        var kindPath = path.Field(CaseSetShape.KindKey);
        if (piece.Find(CaseSetShape.KindKey) is not { } kind)
            return Refuse(kindPath, "\"kind\" is missing", $"add \"kind\": {Quote.List(kinds)}");
        if (kind.Kind != JsonValueKind.String)
            return Refuse(kindPath, $"{kind.Words} stands here", $"write one of the kinds in quotation marks: {Quote.List(kinds)}");
        return set.Find(kind.Text) is { } record
            ? TryRecord(record, piece, path, scope, CaseKeys, out value)
            : Refuse(kindPath, $"\"{Quote.Shown(kind.Text)}\" is none of the kinds known here", Quote.Suggest(kind.Text, kinds));
    }

    private bool TrySettings(JsonPiece piece, DocumentPath path, Scope scope, out object? value)
    {
        value = SettingValues.None;
        if (piece.Kind != JsonValueKind.Object)
            return RefuseKind(Shape.Of(typeof(SettingValues)), piece, path);
        Dictionary<Setting, SettingValue> values = [];
        var sound = true;
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (var field in piece.Fields)
        {
            var place = path.Field(field.Name);
            if (Settings.Find(field.Name) is not { } setting)
            {
                errors.Add(place, $"unknown setting \"{Quote.Shown(field.Name)}\"", Quote.Suggest(field.Name, [.. Settings.All.Select(known => known.Key)]), field.Offset);
                sound = false;
            }
            else if (!seen.Add(field.Name))
            {
                sound = RefuseSecond(path, field);
            }
            else if (!setting.Overridable && format.Root != typeof(HouseStandard))
            {
                errors.Add(place, $"the {setting.Label} belongs to the house standard and cannot differ here", "take it out, or change it in the standard", field.Offset);
                sound = false;
            }
            else if (TrySetting(setting, field.Value, place, scope, out var one))
            {
                values.Add(setting, one);
            }
            else
            {
                sound = false;
            }
        }

        if (values.Count > 0)
            value = new SettingValues(values);
        return sound;
    }

    private bool TrySetting(Setting setting, JsonPiece piece, DocumentPath path, Scope scope, out SettingValue value)
    {
        value = null!;
        string? source = null;
        if (piece.Kind == JsonValueKind.Object)
        {
            var sound = true;
            JsonPiece? inner = null;
            HashSet<string> seen = new(StringComparer.Ordinal);
            foreach (var field in piece.Fields)
            {
                if (!seen.Add(field.Name))
                {
                    sound = RefuseSecond(path, field);
                }
                else if (field.Name == "value")
                {
                    inner = field.Value;
                }
                else if (field.Name == "source")
                {
                    sound &= TryText(null, field.Value, path.Field("source"), out var text);
                    source = text as string;
                }
                else
                {
                    errors.Add(path.Field(field.Name), $"unknown key \"{Quote.Shown(field.Name)}\"", Quote.Suggest(field.Name, ["value", "source"]), field.Offset);
                    sound = false;
                }
            }

            path = path.Field("value");
            if (inner is null)
                return Refuse(path, "\"value\" is missing", $"add \"value\": the {setting.Label}");
            if (!sound)
                return false;
            piece = inner;
        }

        if (piece.Kind is not (JsonValueKind.String or JsonValueKind.Number))
            return Refuse(path, $"{piece.Words} stands here", $"write the {setting.Label} as text or number, or as an object with \"value\" and \"source\"");
        if (setting.Kind == SettingKind.Length && !(piece.Kind == JsonValueKind.String && setting.IsWord(piece.Text)))
        {
            var orWord = setting.Choices is { } words ? $", or {Quote.List([.. words])}" : "";
            if (!TryLength(piece, path, scope, out var entry, orWord))
                return false;
            if (entry.Value.IsZero && !setting.MayBeZero)
                return Refuse(path, $"the {setting.Label} is zero", "write a length above zero");
            value = new(entry.Text, entry.Value, source);
            return true;
        }

        if (setting.Kind == SettingKind.Percent && !setting.IsWord(piece.Text))
        {
            switch (NumberReader.Read(piece.Text, NumberKind.Percent, LengthUnit.Inch))
            {
                case ParseResult<Fraction>.Failed failed:
                    return Refuse(path, $"the {setting.Label} \"{Quote.Shown(failed.Text)}\" cannot be read at character {failed.Position + 1}",
                        $"expected: {failed.Expected}{(setting.Choices is { } words ? $", or {Quote.List([.. words])}" : "")}");
                case ParseResult<Fraction>.Parsed(var percent) when percent > Setting.MostMoisture:
                    return Refuse(path, $"a {setting.Label} of {Quote.Shown(piece.Text)} is too much", $"write at most {Setting.MostMoisture} %, where wood stops to swell");
            }

            value = new(piece.Text, Length.Zero, source);
            return true;
        }

        if (setting.Kind != SettingKind.Reference && setting.Choices is { } choices && !choices.Contains(piece.Text))
            return Refuse(path, $"\"{Quote.Shown(piece.Text)}\" is none of the values of the {setting.Label}", Quote.Suggest(piece.Text, [.. choices]));
        if (setting.Kind == SettingKind.Count && !int.TryParse(piece.Text, NumberStyles.None, CultureInfo.InvariantCulture, out _))
            return Refuse(path, $"\"{Quote.Shown(piece.Text)}\" is not a count", "write a whole number in digits");
        value = new(piece.Text, Length.Zero, source);
        return true;
    }

    private bool TryTakeId(RecordShape record, string id, DocumentPath path, Scope scope)
    {
        if (!IsId(id))
        {
            return Refuse(path, $"\"{Quote.Shown(id)}\" cannot be an id",
                $"use small letters a to z, digits and hyphens, at most {LongestId}, starting with a letter or digit");
        }

        if (ids.TryAdd(id, new(record, path, scope)))
            return true;
        return Refuse(path, $"the id \"{id}\" is already used at {ids[id].Path}", "give each record an id of its own");
    }

    private static bool IsId(string text) => text.Length is > 0 and <= LongestId && text[0] != '-'
        && text.All(character => char.IsAsciiLetterLower(character) || char.IsAsciiDigit(character) || character == '-');

    private void Resolve(Type type, string id, DocumentPath path, Scope scope)
    {
        var word = Spelling.InWords(type);
        if (!ids.TryGetValue(id, out var target) || target.Record.Type != type)
        {
            var known = ids.Where(one => one.Value.Record.Type == type && scope.Sees(one.Value.Scope)).Select(one => one.Key).ToList();
            errors.Add(path, target is not null ? $"\"{id}\" is no {word} but a {Spelling.InWords(target.Record.Type)}" : $"no {word} \"{Quote.Shown(id)}\" here", Quote.Suggest(id, known));
        }
        else if (!scope.Sees(target.Scope))
        {
            errors.Add(path, $"the {word} \"{id}\" belongs to another project, at {target.Path}", $"name a {word} of this project or of the course");
        }
    }

    private bool RefuseSecond(DocumentPath parent, JsonField field)
    {
        errors.Add(parent.Field(field.Name), $"the key \"{Quote.Shown(field.Name)}\" stands here twice", "keep one of the two", field.Offset);
        return false;
    }

    private bool RefuseKind(Shape shape, JsonPiece piece, DocumentPath path) =>
        Refuse(path, $"{piece.Words} stands here", $"write {Expected(shape)}");

    private bool Refuse(DocumentPath path, string problem, string fix)
    {
        errors.Add(path, problem, fix);
        return false;
    }

    private static string Expected(Shape shape) => shape switch
    {
        TextShape => "a text in quotation marks",
        CountShape => "a whole number",
        YesNoShape => "true or false",
        TimeShape => $"a time in quotation marks, such as \"{TimeText.Example}\"",
        NumberShape => "a number, such as 8.5",
        LengthShape => "a length in quotation marks, such as \"27 1/2\" or \"698 mm\"",
        WordShape words => $"one of these words in quotation marks: {Quote.List([.. words.Words.Select(word => word.Word)])}",
        ListShape => "a list in square brackets",
        SettingsShape => "settings in braces, such as { \"gap.pair\": \"1/8\" }",
        CaseSetShape set => $"an object in braces with \"kind\": {Quote.List([.. set.Cases.Select(one => one.Kind)])}",
        _ => "an object in braces",
    };

    private sealed record Target(RecordShape Record, DocumentPath Path, Scope Scope);

    private sealed record Reference(Type Type, string Id, DocumentPath Path, Scope Scope);

    private static string Limits(Projects.BetweenAttribute between, string unit)
    {
        var least = string.Create(CultureInfo.InvariantCulture, $"{(between.Above ? "above" : "of at least")} {between.Least}{unit}");
        return between.Greatest < double.MaxValue
            ? string.Create(CultureInfo.InvariantCulture, $"{least} and at most {between.Greatest}{unit}")
            : least;
    }
}
