using System.Text;
using Fractions;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Wording;

/// <summary>Sizes and words of the trade as pages and packets print them, in one reader's unit.</summary>
public sealed class TradeWords(LengthFormat format)
{
    public LengthFormat Format => format;

    /// <summary>The unit's name, in the plural.</summary>
    public string Unit => format.Unit == LengthUnit.Inch ? "inches" : "millimetres";

    /// <summary>The figure without its unit, marked ≈ where it was rounded; nothing for nothing.</summary>
    public string Of(Worked? quantity) => quantity is null ? "" : WorkedText.Figure(quantity, format);

    public string Of(Length length) => format.Print(length);

    /// <summary>Width × length, or nothing.</summary>
    public string Of(PartSize? size) => size is null ? "" : Size(size.Width, size.Length);

    public string Size(Worked width, Worked height) => $"{Of(width)} × {Of(height)}";

    /// <summary>"overlay 3/8", "gap 3/32" or "flush"; what an inset front has too much is planed off.</summary>
    public string Reach(Length reach, Mount? mount) => reach.IsZero ? "flush"
        : reach.IsNegative ? $"gap {Of(-reach)}" : mount == Mount.Inset ? $"{Of(reach)} to plane off" : $"overlay {Of(reach)}";

    public static string Hinge(HingeSide hinge) => hinge switch
    {
        HingeSide.Left => "hinged left",
        HingeSide.Right => "hinged right",
        HingeSide.Top => "lifts up",
        HingeSide.Bottom => "hinged at the bottom",
        _ => "fixed",
    };

    /// <summary>A word of a closed set as it is read: <c>CopeBothEnds</c> becomes "cope both ends".</summary>
    public static string Words(Enum value)
    {
        var text = new StringBuilder();
        foreach (var letter in value.ToString())
        {
            if (char.IsUpper(letter) && text.Length > 0)
                text.Append(' ');
            text.Append(char.ToLowerInvariant(letter));
        }

        return text.ToString();
    }

    /// <summary>"1 leaf", "2 leaves".</summary>
    public static string Count(int count, string one, string many) => count == 1 ? $"1 {one}" : $"{count} {many}";

    /// <summary>Everything done to a part beyond sawing and planing it to size.</summary>
    public string Work(Part part)
    {
        List<string> words = [.. part.Work.Select(work => Words(work))];
        if (part.Arch is { } arch)
            words.Add(Arch(arch));
        if (part.Hand is { } hand)
            words.Add($"{Words(hand)} hand");
        if (part.FaceDown is { } faceDown)
            words.Add(faceDown ? "face down" : "face up");
        return string.Join(", ", words);
    }

    /// <summary>An arch by its numbers.</summary>
    public string Arch(ArchShape arch) =>
        $"{Words(arch.Family)} arch {(arch.OfPair is null ? "" : "across the pair ")}{Of(arch.WholeRise)} high over {Of(arch.Span)}"
        + (arch.Shoulder is { } shoulder && !shoulder.Amount.IsZero ? $", shoulders {Of(shoulder)}" : "")
        + (arch.ReverseToCrown == Fraction.One ? "" : $", reverse to crown {arch.ReverseToCrown.Numerator} : {arch.ReverseToCrown.Denominator}")
        + (arch.Repeats > 1 ? $", {arch.Repeats} times" : "")
        + (arch.OfPair is null ? "" : $", {Of(arch.Rise)} high in this leaf");
}
