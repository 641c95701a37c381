using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Cli.Commands;

/// <summary>How the reader wants lengths shown.</summary>
internal abstract class ReaderSettings : CommandSettings
{
    [CommandOption("--in")]
    [Description("Show inches, whatever the course is written in.")]
    public bool Inches { get; init; }

    [CommandOption("--mm")]
    [Description("Show millimetres, whatever the course is written in.")]
    public bool Millimetres { get; init; }

    [CommandOption("--finest <FRACTION>")]
    [Description("The finest fraction of an inch shown: 8, 16, 32 or 64.")]
    public string? Finest { get; init; }

    public override ValidationResult Validate()
    {
        if (Inches && Millimetres)
            return ValidationResult.Error("Give --in or --mm, not both.");
        return Finest is null or "8" or "16" or "32" or "64"
            ? ValidationResult.Success() : ValidationResult.Error($"--finest takes 8, 16, 32 or 64, not \"{Finest}\".");
    }

    /// <summary>The format asked for; what is not asked is as the projects shown are written, or else as the standard prints.</summary>
    public LengthFormat FormatFor(Breakdown breakdown, IEnumerable<ProjectBreakdown> shown)
    {
        var own = new StandardInForce(breakdown.Standard).Format;
        var written = shown.Select(project => project.Project.Unit ?? breakdown.Course.Unit).Distinct().Take(2).ToList();
        var unit = Inches ? LengthUnit.Inch : Millimetres ? LengthUnit.Millimetre : written is [var one] ? one : own.Unit;
        return new(unit, Finest is null ? own.FinestDenominator : int.Parse(Finest, System.Globalization.CultureInfo.InvariantCulture));
    }
}
