using System.Collections.Concurrent;
using System.Text;
using SkiaSharp;

namespace Stilewright.Drawing.Letters;

/// <summary>Sets text in the one font of page, SVG and PDF, and measures it alike everywhere.</summary>
/// <remarks>Widths are linear: no hinting, no kerning, no ligatures, so that a layout made on one machine holds on every other.</remarks>
public static class Typesetter
{
    /// <summary>The family's name, for writers that name a font.</summary>
    public const string FamilyName = "Source Sans 3";

    private const float MeasuringSize = 1000;

    // Numerator and denominator: at 4 mm their figures are 1.7 mm high. The numerator's top is level with that of the figures beside it.
    private const double FractionSize = 0.64;
    private const double FigureHeight = 0.65;
    private const double NumeratorUp = FigureHeight * (1 - FractionSize);

    // The slash of this font is made to reach under its neighbours, which here come closer than its own small figures would.
    private const double SlashGap = 0.04;
    private const char FractionSlash = '\u2044';

    private static readonly SKTypeface Regular = Load("SourceSans3-Regular.ttf");
    private static readonly SKTypeface Strong = Load("SourceSans3-SemiBold.ttf");
    private static readonly Ruler RegularRuler = new(Regular);
    private static readonly Ruler StrongRuler = new(Strong);

    /// <summary>The typeface of a weight.</summary>
    public static SKTypeface Face(Weight weight) => weight == Weight.Strong ? Strong : Regular;

    /// <summary>Width of plain text in millimetres, fractions not set.</summary>
    public static double Width(string text, TextStyle style) => Width(text.AsSpan(), style);

    /// <summary>Sets one line; <c>12 3/16</c> becomes a mixed number with a small numerator and denominator.</summary>
    public static SetLine Set(string text, TextStyle style)
    {
        // Names come from files; no font has letters for control characters.
        if (text.AsSpan().ContainsAnyInRange('\0', '\u001f') || text.AsSpan().ContainsAnyInRange('\u007f', '\u009f'))
            text = string.Concat(text.Select(letter => char.IsControl(letter) ? ' ' : letter));
        List<LetterRun> runs = [];
        var right = 0.0;
        var size = style.SizeMillimetres;
        // Small figures of the strong weight have strokes about as thick as the regular figures beside them.
        var small = new TextStyle(size * FractionSize, Weight.Strong);

        void Add(string letters, TextStyle as_, double up)
        {
            if (letters.Length == 0)
                return;
            var width = Width(letters, as_);
            runs.Add(new(letters, as_, right, up, width));
            right += width;
        }

        var written = 0;
        for (var at = 0; at < text.Length;)
        {
            if (FractionAt(text, at) is not { } fraction)
            {
                at++;
                continue;
            }

            // The space of a mixed number is narrower than one between words, but there: whoever copies or hears 12 3/16 must not get 123/16.
            var isMixed = at >= 2 && at - 1 > written && text[at - 1] == ' ' && char.IsAsciiDigit(text[at - 2]);
            Add(text[written..(isMixed ? at - 1 : at)], style, 0);
            if (isMixed)
                Add(" ", small, 0);
            Add(text[at..fraction.Slash], small, NumeratorUp * size);
            right += SlashGap * size;
            Add(FractionSlash.ToString(), style, 0);
            right += SlashGap * size;
            Add(text[(fraction.Slash + 1)..fraction.End], small, 0);
            written = at = fraction.End;
        }

        Add(text[written..], style, 0);
        return new(text, runs, right, size * 0.72, size * 0.22);
    }

    /// <summary>Breaks text into lines no wider than given, at spaces; a word that is wider is broken where it must be.</summary>
    /// <param name="widthMillimetres">Greater than zero.</param>
    /// <param name="before">How much of the first line is taken already; less than zero where it begins further to the left.</param>
    public static IReadOnlyList<SetLine> Wrap(string text, TextStyle style, double widthMillimetres, double before = 0)
    {
        List<SetLine> lines = [];
        var gap = Width(" ", style);
        foreach (var paragraph in text.Split('\n'))
        {
            var room = lines.Count == 0 ? widthMillimetres - before : widthMillimetres;
            if (Set(paragraph, style) is var whole && whole.Width <= room)
            {
                lines.Add(whole);
                continue;
            }

            // Widths of words add up, since nothing is kerned.
            var line = "";
            var used = 0.0;
            foreach (var word in Words(paragraph))
            {
                var width = Set(word, style).Width;
                if (line.Length == 0 ? width <= room : used + gap + width <= room)
                {
                    used += line.Length == 0 ? width : gap + width;
                    line = line.Length == 0 ? word : $"{line} {word}";
                    continue;
                }

                if (line.Length > 0 || room < widthMillimetres)
                {
                    lines.Add(Set(line, style));
                    room = widthMillimetres;
                }

                (line, used) = (word, width);
                while (used > room && line.Length > 1)
                {
                    var most = line.Length - 1;
                    while (most > 1 && Set(line[..most], style).Width > room)
                        most--;
                    // What is bound together parts at a space before letters do.
                    var space = SpaceBefore(line, most);
                    lines.Add(Set(line[..(space ?? most)], style));
                    room = widthMillimetres;
                    line = line[(space + 1 ?? most)..];
                    used = Set(line, style).Width;
                }
            }

            lines.Add(Set(line, style));
        }

        return lines;
    }

    /// <summary>The narrowest that text can be wrapped without a word being broken, in millimetres.</summary>
    public static double WidestWord(string text, TextStyle style) =>
        text.Split('\n').SelectMany(Words).Select(word => Set(word, style).Width).DefaultIfEmpty().Max();

    // A mixed number must not be torn in two, nor a sign from what it works on, nor a unit from its figure.
    private static IEnumerable<string> Words(string paragraph)
    {
        var words = paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (var i = 0; i < words.Length; i++)
        {
            var word = words[i];
            while (i + 1 < words.Length && (IsSign(words[i]) || IsBinding(words[i + 1])
                || (char.IsAsciiDigit(words[i][^1]) && IsUnit(words[i + 1])) || (EndsInWhole(words[i]) && FractionAt(words[i + 1], 0) is not null)))
            {
                word = $"{word} {words[++i]}";
            }

            yield return word;
        }
    }

    private static int? SpaceBefore(string line, int most)
    {
        for (var at = most; at > 0; at--)
        {
            if (line[at] == ' ' && !(char.IsAsciiDigit(line[at - 1]) && FractionAt(line, at + 1) is not null))
                return at;
        }

        return null;
    }

    private static bool EndsInWhole(string word) => char.IsAsciiDigit(word[^1]) && !word.Contains('/', StringComparison.Ordinal);

    private static bool IsSign(string word) => word is "=" or "+" or "−" or "×" or "÷";

    private static bool IsUnit(string word) => word.AsSpan().TrimEnd(".,;:)") is "in" or "mm";

    private static bool IsBinding(string word) => word is "×" or "÷";

    private static (int Slash, int End)? FractionAt(string text, int at)
    {
        if (at > 0 && (char.IsLetterOrDigit(text[at - 1]) || text[at - 1] is '/' or '.' or '-'))
            return null;
        var slash = at;
        while (slash < text.Length && char.IsAsciiDigit(text[slash]))
            slash++;
        if (slash == at || slash >= text.Length || text[slash] != '/')
            return null;
        var end = slash + 1;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
            end++;
        return end == slash + 1 || (end < text.Length && (char.IsLetterOrDigit(text[end]) || text[end] is '/' or '-')) ? null : (slash, end);
    }

    private static double Width(ReadOnlySpan<char> text, TextStyle style) =>
        (style.Weight == Weight.Strong ? StrongRuler : RegularRuler).Width(text) * style.SizeMillimetres / MeasuringSize;

    /// <summary>The font's file, for pages; null where there is none of that name, such as <c>SourceSans3-Regular.ttf</c>.</summary>
    public static Stream? OpenFile(string name) => typeof(Typesetter).Assembly.GetManifestResourceStream($"fonts/{name}");

    private static SKTypeface Load(string name)
    {
        using var stream = OpenFile(name) ?? throw new InvalidOperationException($"The font {name} is not in the program.");
        return SKTypeface.FromStream(stream);
    }

    // Advances are looked up once per letter: measuring through Skia for every text took most of a layout's time.
    private sealed class Ruler(SKTypeface face)
    {
        private readonly ConcurrentDictionary<Rune, float> advances = new();

        public double Width(ReadOnlySpan<char> text)
        {
            var width = 0.0;
            foreach (var letter in text.EnumerateRunes())
                width += advances.GetOrAdd(letter, Measure);
            return width;
        }

        private float Measure(Rune letter)
        {
            using var font = new SKFont(face, MeasuringSize) { Subpixel = true, Hinting = SKFontHinting.None, LinearMetrics = true };
            return font.MeasureText(letter.ToString());
        }
    }
}
