using System.Buffers;
using System.Collections;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stilewright.Documents.Lists;
using Stilewright.Documents.Shapes;
using Stilewright.Measure;
using Stilewright.Prints;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Documents;

/// <summary>Writes files: UTF-8, two spaces, line feeds, keys in the order of the records. The same document gives the same bytes.</summary>
/// <remarks>Keys that say no more than their absence are left out. Lengths are written as they were typed.
/// Nothing is checked; what the reader refuses it refuses when it is read.</remarks>
public static class DocumentWriter
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
        // Files are read by people; they are never put into a page as they are.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static byte[] Write(Course course) => Write(course, DocumentFormat.Course);

    /// <summary>Writes the standard, with the shipped lists in full where its own are empty.</summary>
    public static byte[] Write(HouseStandard standard)
    {
        ArgumentNullException.ThrowIfNull(standard);
        return Write(StandardInFull.ListsOf(standard), DocumentFormat.Standard);
    }

    public static byte[] Write(HandedOut handedOut) => Write(handedOut, DocumentFormat.HandedOut);

    public static byte[] Write(LabelSheet sheet) => Write(sheet, DocumentFormat.LabelSheet);

    public static byte[] Write(Printer printer) => Write(printer, DocumentFormat.Printer);

    public static byte[] Write(WrittenList list) => Write(list, DocumentFormat.MakersList);

    private static byte[] Write(object document, DocumentFormat format)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArrayBufferWriter<byte> buffer = new();
        using (Utf8JsonWriter writer = new(buffer, Options))
        {
            writer.WriteStartObject();
            writer.WriteString("format", format.Name);
            writer.WriteNumber("version", format.Version);
            WriteFields(writer, (RecordShape)Shape.Of(format.Root), document, LengthUnit.Inch);
            writer.WriteEndObject();
        }

        buffer.Write("\n"u8);
        return WithoutNeedlessEscapes(buffer.WrittenSpan);
    }

    /// <summary>Puts back the characters beyond U+FFFF, which the platform's encoders always write as two escapes.</summary>
    private static byte[] WithoutNeedlessEscapes(ReadOnlySpan<byte> json)
    {
        const int EscapeSize = 6;
        if (json.IndexOf("\\uD"u8) < 0)
            return json.ToArray();

        ArrayBufferWriter<byte> plain = new(json.Length);
        while (json.IndexOf((byte)'\\') is >= 0 and var at)
        {
            plain.Write(json[..at]);
            json = json[at..];
            if (TryEscape(json, out var high) && char.IsHighSurrogate(high) && TryEscape(json[EscapeSize..], out var low) && char.IsLowSurrogate(low))
            {
                plain.Advance(new Rune(high, low).EncodeToUtf8(plain.GetSpan(4)));
                json = json[(2 * EscapeSize)..];
            }
            else
            {
                plain.Write(json[..2]);
                json = json[2..];
            }
        }

        plain.Write(json);
        return plain.WrittenSpan.ToArray();

        static bool TryEscape(ReadOnlySpan<byte> json, out char character)
        {
            var isEscape = json.Length >= EscapeSize && json.StartsWith("\\u"u8);
            ushort value = 0;
            isEscape = isEscape && ushort.TryParse(json[2..EscapeSize], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out value);
            character = (char)value;
            return isEscape;
        }
    }

    private static void WriteFields(Utf8JsonWriter writer, RecordShape record, object value, LengthUnit unit)
    {
        if (record.UnitPosition is { } position && record.Fields[position].ValueIn(value) is LengthUnit own)
            unit = own;
        foreach (var field in record.Fields)
        {
            var content = field.ValueIn(value);
            if (field.IsAbsent(content))
                continue;
            writer.WritePropertyName(field.Key);
            if (content is NumberEntry number)
                writer.WriteStringValue(NumberText(number, field.NumberKind, unit));
            else
                WriteValue(writer, field.Shape, content!, unit);
        }
    }

    // As it was typed, where it still says the same under the unit of this document.
    private static string NumberText(NumberEntry number, NumberKind kind, LengthUnit unit) =>
        NumberReader.Read(number.Text, kind, unit) is ParseResult<Fractions.Fraction>.Parsed(var value) && value == number.Value ? number.Text
            : $"{number.Value.ToDecimal().ToString(CultureInfo.InvariantCulture)} F";

    private static void WriteValue(Utf8JsonWriter writer, Shape shape, object value, LengthUnit unit)
    {
        switch (shape)
        {
            case TextShape:
                writer.WriteStringValue((string)value);
                break;
            case CountShape:
                writer.WriteNumberValue((int)value);
                break;
            case YesNoShape:
                writer.WriteBooleanValue((bool)value);
                break;
            case WordShape words:
                writer.WriteStringValue(words.WordOf(value));
                break;
            case LengthShape { IsTyped: true }:
                var entry = (LengthEntry)value;
                writer.WriteStringValue(LengthText.Of(entry.Text, entry.Value, unit));
                break;
            case LengthShape:
                writer.WriteStringValue(LengthText.Of(null, (Length)value, unit));
                break;
            case TimeShape:
                writer.WriteStringValue(TimeText.Of((DateTimeOffset)value));
                break;
            case SettingsShape:
                WriteSettings(writer, (SettingValues)value, unit);
                break;
            case ListShape list:
                writer.WriteStartArray();
                foreach (var item in (IEnumerable)value)
                    WriteValue(writer, list.Item, item, unit);
                writer.WriteEndArray();
                break;
            case CaseSetShape set:
                var (kind, one) = set.CaseOf(value);
                writer.WriteStartObject();
                writer.WriteString(CaseSetShape.KindKey, kind);
                WriteFields(writer, one, value, unit);
                writer.WriteEndObject();
                break;
            case RecordShape record:
                writer.WriteStartObject();
                WriteFields(writer, record, value, unit);
                writer.WriteEndObject();
                break;
        }
    }

    private static void WriteSettings(Utf8JsonWriter writer, SettingValues settings, LengthUnit unit)
    {
        writer.WriteStartObject();
        foreach (var setting in Settings.All)
        {
            if (settings.Find(setting) is not { } value)
                continue;
            writer.WritePropertyName(setting.Key);
            if (value.Source is null)
            {
                WriteSetting(writer, setting, value, unit);
                continue;
            }

            writer.WriteStartObject();
            writer.WritePropertyName("value");
            WriteSetting(writer, setting, value, unit);
            writer.WriteString("source", value.Source);
            writer.WriteEndObject();
        }

        writer.WriteEndObject();
    }

    private static void WriteSetting(Utf8JsonWriter writer, Setting setting, SettingValue value, LengthUnit unit)
    {
        if (setting.Kind == SettingKind.Length && !setting.IsWord(value.Text))
            writer.WriteStringValue(LengthText.Of(value.Text, value.Amount, unit));
        else if (setting.Kind == SettingKind.Count && int.TryParse(value.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var count))
            writer.WriteNumberValue(count);
        else
            writer.WriteStringValue(value.Text);
    }
}
