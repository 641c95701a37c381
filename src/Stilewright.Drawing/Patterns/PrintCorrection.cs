namespace Stilewright.Drawing.Patterns;

/// <summary>What a printer does to lengths, undone: factors on what is sent to it.</summary>
/// <param name="Across">Along the shorter edge of the sheet, or across a roll.</param>
/// <param name="Along">Along the longer edge of the sheet, or along a roll.</param>
public readonly record struct PrintCorrection(double Across, double Along)
{
    /// <summary>Printers of an office are within one part in fifty; more is a page that was fitted to the paper.</summary>
    private const double MostDeviation = 0.02;

    public static PrintCorrection None { get; } = new(1, 1);

    /// <summary>The correction for the next print, from how long the rules of a print with this one came out.</summary>
    /// <param name="nominalMillimetres">How long the rule should be.</param>
    /// <param name="acrossMillimetres">How long it is along the shorter edge.</param>
    /// <param name="alongMillimetres">How long it is along the longer edge.</param>
    public PrintCorrection After(double nominalMillimetres, double acrossMillimetres, double alongMillimetres) =>
        new(Across * nominalMillimetres / acrossMillimetres, Along * nominalMillimetres / alongMillimetres);

    /// <summary>Whether it is a printer's own error and not a print that was fitted to the page.</summary>
    public bool IsPlausible => Math.Abs(Across - 1) <= MostDeviation && Math.Abs(Along - 1) <= MostDeviation;
}
