using Fractions;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

public enum PaperFeed
{
    [Meaning("The shorter edge goes in first")]
    ShortEdge,

    [Meaning("The longer edge goes in first")]
    LongEdge,
}

[Meaning("The rules of one print, as they were measured; each print was corrected by those before it")]
public sealed record PrintMeasurement(
    PaperFeed Feed,
    [Meaning("How long the rules should be"), Between(1, 40)] LengthEntry Nominal,
    [Meaning("The rule along the shorter edge of the paper, as measured"), Between(1, 41)] LengthEntry Across,
    [Meaning("The rule along the longer edge of the paper, as measured"), Between(1, 41)] LengthEntry Along)
{
    /// <summary>Printers are within one part in fifty of a true length; more is a page that was fitted to the paper.</summary>
    public static Fraction MostDeviation { get; } = new(1, 50);

    /// <summary>Whether both rules are within <see cref="MostDeviation"/>.</summary>
    public bool IsPlausible => Fraction.Abs((Across.Value / Nominal.Value) - 1) <= MostDeviation && Fraction.Abs((Along.Value / Nominal.Value) - 1) <= MostDeviation;
}

[Meaning("A printer, and how long its prints came out")]
public sealed record Printer(
    [Id] string Id,
    [Meaning("What the shop calls it")] string Name,
    [Meaning("The unit of numbers that name none")] LengthUnit Unit,
    [Meaning("In the order in which they were printed")] IReadOnlyList<PrintMeasurement> Measured)
{
    /// <summary>By what the next print is to be multiplied, along the shorter and along the longer edge of its paper: exactly.</summary>
    public (Fraction Across, Fraction Along) Correction(PaperFeed feed) => Measured.Where(print => print.Feed == feed).Aggregate(
        (Across: Fraction.One, Along: Fraction.One),
        (all, print) => (all.Across * (print.Nominal.Value / print.Across.Value), all.Along * (print.Nominal.Value / print.Along.Value)));

    /// <summary>How many prints of a feed direction were measured.</summary>
    public int Count(PaperFeed feed) => Measured.Count(print => print.Feed == feed);
}
