using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Stilewright.Documents;
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
