using System.Text.Json;

namespace Stilewright.Documents.Json;

/// <summary>A value of a JSON text with its place. Keeps what other trees drop: duplicate keys and the digits of numbers.</summary>
/// <param name="kind">A true or false value is of either kind.</param>
/// <param name="offset">The first byte of the value in the text.</param>
internal sealed class JsonPiece(JsonValueKind kind, int offset)
{
    public JsonValueKind Kind { get; } = kind;
    public int Offset { get; } = offset;

    /// <summary>The text of a string, or the characters of a number as written.</summary>
    public string Text { get; init; } = "";

    public IReadOnlyList<JsonField> Fields { get; init; } = [];
    public IReadOnlyList<JsonPiece> Items { get; init; } = [];

    /// <summary>What it is, for a sentence.</summary>
    public string Words => Kind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        JsonValueKind.True => "true",
        JsonValueKind.False => "false",
        _ => "null",
    };

    /// <summary>The first field of that name, or null.</summary>
    public JsonPiece? Find(string name)
    {
        foreach (var field in Fields)
            if (field.Name == name)
                return field.Value;
        return null;
    }
}

/// <summary>A key of an object, where it stands, and its value.</summary>
/// <remarks>A class, as are the other small records here: code for lists of value types is not compiled ahead of time, and the first
/// file would wait for it (208 methods compiled when a course was first read, 79 with classes).</remarks>
internal sealed record JsonField(string Name, int Offset, JsonPiece Value);
