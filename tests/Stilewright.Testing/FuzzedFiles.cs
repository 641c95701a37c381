using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Stilewright.Documents;
using Stilewright.Documents.Lists;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Testing;

/// <summary>Files that were damaged, or that never were any of ours: the same seed and number give the same bytes.</summary>
public sealed class FuzzedFiles
{
    private static readonly string[] Scraps =
    [
        "{", "}", "[", "]", ",", ":", "\"", "\\", "null", "true", "-1", "1e999", "0.1", "00", "\"\\ud800\"", "\"\\u0000\"", "//", "\n", "\uFEFF", "½",
        "\"kind\"", "\"unit\"", "\"id\"", "\"27 1/2\"", "99999999999999999999", "\"format\"", "\"version\":", "{}", "[]", "'",
    ];

    private readonly int seed;
    private readonly List<byte[]> sound;

    public FuzzedFiles(int seed)
    {
        this.seed = seed;
        sound = [.. Enumerable.Range(0, 12).Select(number => DocumentWriter.Write(RandomCourse.Of(unchecked(seed * 31 + number), 2)))];
        sound.AddRange(Enumerable.Range(0, 3).Select(number => DocumentWriter.Write(RandomCourse.HandedOutOf(unchecked(seed * 31 + number), 2))));
        sound.Add(DocumentWriter.Write(new WrittenList(LengthUnit.Inch, [new("rail", 2, new("2 1/4", Length.FromInches(new(9, 4))), null), new("panel", null, null, new("27 1/2", Length.FromInches(new(55, 2))), "7.2L")])));
        sound.Add(DocumentWriter.Write(ShippedStandards.Inch));
        sound.Add(DocumentWriter.Write(StandardInFull.Of(ShippedStandards.Millimetre)));
    }

    public byte[] Case(int number)
    {
        Random random = new(unchecked(seed * 1_000_003 + number));
        return random.Next(11) switch
        {
            0 => RandomBytes(random),
            1 => Encoding.UTF8.GetBytes(string.Concat(Enumerable.Range(0, random.Next(60)).Select(_ => Scraps[random.Next(Scraps.Length)]))),
            2 => Encoding.UTF8.GetBytes(RandomValue(random, 5)?.ToJsonString() ?? "null"),
            3 => Truncated(random),
            4 => Flipped(random),
            5 => Spliced(random),
            6 => WithKeyTwice(random),
            7 => Nested(random),
            8 => HugeNumber(random),
            _ => Rearranged(random),
        };
    }

    /// <summary>A maker's list that was damaged, or whose cells were mixed up.</summary>
    public byte[] ListCase(int number)
    {
        Random random = new(unchecked(seed * 1_000_003 + number));
        var separator = ",;\t"[random.Next(3)];
        string[] cells = ["part", "count", "width", "length", "size", "leaf", "unit", "mm", "rail", "top rail", "2", "2 1/4", "8 9/16\"", "57 mm", "2 1/4 x 32", "2,5", "7.2L", "≈8 1/2", ""];
        StringBuilder text = new(random.Next(2) == 0 ? $"part{separator}count{separator}width{separator}length\n" : "");
        foreach (var _ in Enumerable.Range(0, random.Next(1, 5)))
        {
            text.Append(random.Next(3) > 0
                ? $"rail{separator}2{separator}2 1/4{separator}{random.Next(1, 130)}"
                : string.Join(separator, Enumerable.Range(0, random.Next(1, 7)).Select(_ => random.Next(6) == 0 ? Scraps[random.Next(Scraps.Length)] : cells[random.Next(cells.Length)])));
            text.Append(random.Next(3) == 0 ? "\r\n" : "\n");
        }

        if (random.Next(10) == 0)
            return Case(number);
        var file = Encoding.UTF8.GetBytes(text.ToString());
        if (random.Next(4) == 0)
            file[random.Next(file.Length)] ^= (byte)(1 << random.Next(8));
        return file;
    }

    private static byte[] RandomBytes(Random random)
    {
        var bytes = new byte[random.Next(400)];
        random.NextBytes(bytes);
        return bytes;
    }

    private byte[] Truncated(Random random)
    {
        var file = Pick(random);
        return file[..random.Next(file.Length)];
    }

    private byte[] Flipped(Random random)
    {
        var file = (byte[])Pick(random).Clone();
        foreach (var _ in Enumerable.Range(0, random.Next(1, 6)))
            file[random.Next(file.Length)] ^= (byte)(1 << random.Next(8));
        return file;
    }

    private byte[] Spliced(Random random)
    {
        var file = Pick(random);
        var at = random.Next(file.Length);
        return [.. file[..at], .. Encoding.UTF8.GetBytes(Scraps[random.Next(Scraps.Length)]), .. file[(at + random.Next(3) > file.Length ? at : at + random.Next(0, Math.Min(3, file.Length - at)))..]];
    }

    private byte[] WithKeyTwice(Random random)
    {
        var lines = Encoding.UTF8.GetString(Pick(random)).Split('\n').ToList();
        var keys = lines.Select((line, index) => (line, index)).Where(one => one.line.TrimEnd().EndsWith(',') && one.line.Contains("\": ", StringComparison.Ordinal)).ToList();
        var (copied, at) = keys[random.Next(keys.Count)];
        lines.Insert(at, copied);
        return Encoding.UTF8.GetBytes(string.Join('\n', lines));
    }

    private byte[] Nested(Random random)
    {
        var depth = random.Next(1, 20_000);
        var isList = random.Next(2) == 0;
        StringBuilder text = new();
        text.Insert(0, isList ? "[" : "{\"space\":", depth).Append('1');
        if (random.Next(2) == 0)
            text.Append(isList ? ']' : '}', depth);
        return random.Next(2) == 0
            ? Encoding.UTF8.GetBytes(text.ToString())
            : Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(Pick(random)).Replace("\"projects\": [", $"\"projects\": [{text},", StringComparison.Ordinal));
    }

    private byte[] HugeNumber(Random random)
    {
        var text = Encoding.UTF8.GetString(Pick(random));
        var digits = new string('9', random.Next(5, 5000));
        var number = random.Next(4) switch
        {
            0 => digits,
            1 => "-" + digits,
            2 => "0." + digits,
            _ => $"1e{digits[..Math.Min(9, digits.Length)]}",
        };
        var starts = Enumerable.Range(0, text.Length - 1).Where(at => text[at] == ' ' && char.IsAsciiDigit(text[at + 1])).ToList();
        var at = starts[random.Next(starts.Count)] + 1;
        return Encoding.UTF8.GetBytes(text[..at] + (random.Next(2) == 0 ? number : $"\"{number}\"") + text[(at + 1)..]);
    }

    /// <summary>A file that stays JSON, with some values replaced, renamed or taken out.</summary>
    private byte[] Rearranged(Random random)
    {
        var root = JsonNode.Parse(Pick(random))!;
        foreach (var _ in Enumerable.Range(0, random.Next(1, 6)))
        {
            List<JsonNode> holders = [];
            Collect(root, holders);
            var holder = holders[random.Next(holders.Count)];
            if (holder is JsonObject fields && fields.Count > 0)
            {
                var (key, value) = fields.ElementAt(random.Next(fields.Count));
                switch (random.Next(4))
                {
                    case 0:
                        fields.Remove(key);
                        break;
                    case 1:
                        fields.Remove(key);
                        fields[key[..^1] + random.Next(10).ToString(CultureInfo.InvariantCulture)] = value;
                        break;
                    default:
                        fields[key] = RandomValue(random, 2);
                        break;
                }
            }
            else if (holder is JsonArray items)
            {
                items.Insert(random.Next(items.Count + 1), items.Count > 0 && random.Next(2) == 0 ? items[random.Next(items.Count)]?.DeepClone() : RandomValue(random, 2));
            }
        }

        return Encoding.UTF8.GetBytes(root.ToJsonString());
    }

    private static void Collect(JsonNode? node, List<JsonNode> holders)
    {
        if (node is JsonObject fields)
        {
            holders.Add(node);
            foreach (var (_, value) in fields)
                Collect(value, holders);
        }
        else if (node is JsonArray items)
        {
            holders.Add(node);
            foreach (var item in items)
                Collect(item, holders);
        }
    }

    private static JsonNode? RandomValue(Random random, int depth) => random.Next(depth > 0 ? 11 : 8) switch
    {
        0 => null,
        1 => random.Next(2) == 0,
        2 => random.Next(-3, 100),
        3 => random.NextDouble() * 1e6,
        4 => "27 1/2",
        5 => Scraps[random.Next(Scraps.Length)],
        6 => "",
        7 => new string('x', random.Next(200)),
        8 => new JsonArray([.. Enumerable.Range(0, random.Next(4)).Select(_ => RandomValue(random, depth - 1))]),
        _ => new JsonObject(Enumerable.Range(0, random.Next(5)).Select(index => KeyValuePair.Create(
            random.Next(2) == 0 ? $"key {index}" : new[] { "id", "kind", "name", "unit", "format" }[index], RandomValue(random, depth - 1)))),
    };

    private byte[] Pick(Random random) => sound[random.Next(sound.Count)];
}
