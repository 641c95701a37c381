using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace Stilewright.Documents.Json;

/// <summary>Reads a JSON text into a tree, or says in plain words why it is none.</summary>
internal static class JsonTree
{
    /// <summary>A course of 24 benches has some thousands of values; the limit keeps a hostile file from filling the memory.</summary>
    private const int MostValues = 500_000;

    private static readonly JsonReaderOptions Options = new() { MaxDepth = int.MaxValue };

    /// <returns>The tree, or null when an error was added.</returns>
    public static JsonPiece? Read(ReadOnlySpan<byte> utf8, ErrorList errors)
    {
        if (utf8.Length > DocumentReader.MostBytes)
        {
            errors.Add(DocumentPath.Root, $"the file is larger than {DocumentReader.MostBytes / 1024 / 1024} MB", "check that it is the right file; a course for a whole class takes a small part of that");
            return null;
        }

        if (!Utf8.IsValid(utf8))
        {
            errors.Add(DocumentPath.Root, "the file is not UTF-8 text", "save it as UTF-8, or check that it is the right file", FirstInvalid(utf8));
            return null;
        }

        if (utf8.Trim(" \t\r\n"u8).IsEmpty)
        {
            errors.Add(DocumentPath.Root, "the file is empty", "check that it is the right file, or restore it from a copy", 0);
            return null;
        }

        var reader = new Utf8JsonReader(utf8, Options);
        var left = MostValues;
        try
        {
            reader.Read();
            var root = ReadValue(ref reader, errors, 1, ref left);
            // Whatever follows the document makes this throw.
            if (root is not null)
                reader.Read();
            return root;
        }
        catch (JsonException exception)
        {
            var fault = SyntaxFault.At(utf8, OffsetOf(utf8, exception.LineNumber ?? 0, exception.BytePositionInLine ?? 0));
            errors.Add(DocumentPath.Root, fault.Problem, fault.Fix, fault.Offset);
            return null;
        }
    }

    private static JsonPiece? ReadValue(ref Utf8JsonReader reader, ErrorList errors, int depth, ref int left)
    {
        var offset = (int)reader.TokenStartIndex;
        if (--left < 0)
        {
            errors.Add(DocumentPath.Root, $"the file holds more than {MostValues} values", "check that it is the right file", offset);
            return null;
        }

        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                return depth > DocumentReader.MostDepth ? TooDeep(errors, offset) : ReadObject(ref reader, errors, depth, ref left);
            case JsonTokenType.StartArray:
                return depth > DocumentReader.MostDepth ? TooDeep(errors, offset) : ReadList(ref reader, errors, depth, ref left);
            case JsonTokenType.String:
                return TryText(ref reader, errors, out var text) ? new(JsonValueKind.String, offset) { Text = text } : null;
            case JsonTokenType.Number:
                return new(JsonValueKind.Number, offset) { Text = Encoding.UTF8.GetString(reader.ValueSpan) };
            case JsonTokenType.True:
                return new(JsonValueKind.True, offset);
            case JsonTokenType.False:
                return new(JsonValueKind.False, offset);
            default:
                return new(JsonValueKind.Null, offset);
        }
    }

    private static JsonPiece? ReadObject(ref Utf8JsonReader reader, ErrorList errors, int depth, ref int left)
    {
        var offset = (int)reader.TokenStartIndex;
        List<JsonField> fields = [];
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var nameOffset = (int)reader.TokenStartIndex;
            if (!TryText(ref reader, errors, out var name))
                return null;
            reader.Read();
            if (ReadValue(ref reader, errors, depth + 1, ref left) is not { } value)
                return null;
            fields.Add(new(name, nameOffset, value));
        }

        return new(JsonValueKind.Object, offset) { Fields = fields };
    }

    private static JsonPiece? ReadList(ref Utf8JsonReader reader, ErrorList errors, int depth, ref int left)
    {
        var offset = (int)reader.TokenStartIndex;
        List<JsonPiece> items = [];
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            if (ReadValue(ref reader, errors, depth + 1, ref left) is not { } value)
                return null;
            items.Add(value);
        }

        return new(JsonValueKind.Array, offset) { Items = items };
    }

    private static bool TryText(ref Utf8JsonReader reader, ErrorList errors, out string text)
    {
        try
        {
            text = reader.GetString()!;
            return true;
        }
        catch (InvalidOperationException)
        {
            // Valid JSON may escape half of a character pair, which is no text.
            errors.Add(DocumentPath.Root, "a text holds half of a character, written as \\uD800 to \\uDFFF", "write the character itself", (int)reader.TokenStartIndex);
            text = "";
            return false;
        }
    }

    private static JsonPiece? TooDeep(ErrorList errors, int offset)
    {
        errors.Add(DocumentPath.Root, $"lists and objects are nested more than {DocumentReader.MostDepth} deep", "check that it is the right file; spaces divided that often cannot be built", offset);
        return null;
    }

    private static int FirstInvalid(ReadOnlySpan<byte> utf8)
    {
        var offset = 0;
        while (offset < utf8.Length && Rune.DecodeFromUtf8(utf8[offset..], out _, out var used) == OperationStatus.Done)
            offset += used;
        return offset;
    }

    private static int OffsetOf(ReadOnlySpan<byte> utf8, long line, long byteInLine)
    {
        var start = 0;
        for (var passed = 0L; passed < line; passed++)
        {
            var end = utf8[start..].IndexOf((byte)'\n');
            if (end < 0)
                break;
            start += end + 1;
        }

        return (int)Math.Min(utf8.Length, start + byteInLine);
    }
}
