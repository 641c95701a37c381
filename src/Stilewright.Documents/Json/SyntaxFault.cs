namespace Stilewright.Documents.Json;

/// <summary>Why a text is no JSON, in words for a person who edits it by hand.</summary>
/// <param name="Offset">The byte at fault.</param>
internal readonly record struct SyntaxFault(string Problem, string Fix, int Offset)
{
    private const string Unexpected = "this is not written as JSON";

    /// <summary>Names the usual slips from the byte where reading stopped and what stands before it.</summary>
    public static SyntaxFault At(ReadOnlySpan<byte> utf8, int offset)
    {
        var before = utf8[..offset].TrimEnd(" \t\r\n"u8);
        var last = before.IsEmpty ? 0 : before[^1];
        if (utf8[offset..].Trim(" \t\r\n"u8).IsEmpty)
        {
            return new("the file ends before it is complete",
                "close every text, list and object that is open; part of the file may be missing", utf8.Length);
        }

        var at = utf8[offset];
        return at switch
        {
            (byte)'}' or (byte)']' when last == ',' => new("a comma with nothing after it", "take out the comma before the closing bracket", offset),
            (byte)'}' or (byte)']' when last == ':' => new("a key without a value", "write the value after the colon, or take out the key", offset),
            (byte)'}' or (byte)']' => new("a bracket that closes something else", "close lists with ] and objects with }", offset),
            (byte)'\'' => new("single quotation marks", "use double quotation marks", offset),
            (byte)'/' or (byte)'#' => new("a comment or a fraction outside quotation marks", "take out the comment, or put the fraction in quotation marks, such as \"3/8\"", offset),
            (byte)',' => new("a comma where a value or a key belongs", "take out the comma, or write what is missing", offset),
            (byte)':' => new("a colon where it does not belong", "write a key in quotation marks, a colon and a value", offset),
            (byte)'=' => new("an equals sign", "put a colon between key and value", offset),
            (byte)'\n' or (byte)'\r' or (byte)'\t' => new("a line break or tab inside a text", "close the quotation marks on the same line", offset),
            (byte)'"' when last is '"' or '}' or ']' or (>= '0' and <= '9') or 'e' or 'l' =>
                new("something is missing between two values", "put a comma between values, and a colon between a key and its value", offset),
            (byte)'{' or (byte)'[' when last is '}' or ']' or '"' => new("something is missing between two values", "put a comma between values", offset),
            (byte)'{' or (byte)'[' or (byte)'"' => new(Unexpected, "check the commas and brackets before this place", offset),
            (byte)'\\' => new("a backslash", "in a text write a backslash as \\\\", offset),
            (>= (byte)'0' and <= (byte)'9') or (byte)'-' or (byte)'+' or (byte)'.' =>
                new("a number is not written as JSON wants it", "put lengths in quotation marks, such as \"27 1/2\"; other numbers are plain digits", offset),
            _ when last is >= '0' and <= '9' => new("a number is not written as JSON wants it", "put lengths in quotation marks, such as \"27 1/2\"; other numbers are plain digits", offset),
            _ when last == '\\' => new("a backslash before a character that needs none", "in a text write a backslash as \\\\", offset),
            >= (byte)'A' => new("a word outside quotation marks", "put keys and texts in double quotation marks", offset),
            _ => new(Unexpected, "check the commas, brackets and quotation marks before this place", offset),
        };
    }
}
