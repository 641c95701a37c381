using System.Globalization;
using Stilewright.Shop;

namespace Stilewright.Drawing.Patterns;

/// <summary>What a printer does to lengths, undone: factors on what is sent to it.</summary>
/// <param name="Across">Along the shorter edge of the sheet, or across a roll.</param>
/// <param name="Along">Along the longer edge of the sheet, or along a roll.</param>
public readonly record struct PrintCorrection(double Across, double Along)
{
    public static PrintCorrection None { get; } = new(1, 1);

    /// <summary>From everything that was measured on prints of that feed direction.</summary>
    public static PrintCorrection Of(Printer printer, PaperFeed feed)
    {
        var (across, along) = printer.Correction(feed);
        return new(across.ToDouble(), along.ToDouble());
    }

    /// <summary>As it is said on every sheet.</summary>
    public override string ToString() => this == None
        ? "no correction for the printer" : $"corrected for the printer by {Percent(Across)} across and {Percent(Along)} along";

    private static string Percent(double factor) => (factor - 1).ToString("+0.00 %;−0.00 %;0 %", CultureInfo.InvariantCulture);
}
