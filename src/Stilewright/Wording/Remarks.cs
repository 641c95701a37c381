using Stilewright.Measure;

namespace Stilewright.Wording;

/// <summary>Sentences that stand on everything the program prints where they apply.</summary>
public static class Remarks
{
    /// <summary>Stands wherever sizes are given that someone takes to a machine.</summary>
    public const string Machines =
        "Machines are used under their manuals, the instructor and local codes (29 CFR 1910.213); these figures replace none of them.";

    /// <summary>Explains the rounding mark wherever it is printed.</summary>
    public const string Rounded = $"{LengthFormat.RoundedMark} before a figure: it was rounded to be printed; the program keeps the exact value.";

    /// <summary>Stands in place of the parts of a leaf that a finding withholds.</summary>
    public const string Withheld = "Its parts are withheld: it cannot be built as it stands.";
}
