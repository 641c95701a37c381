using System.ComponentModel;
using System.Globalization;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Stilewright.Cli.Commands;

/// <summary>A verb that can be held to one bench.</summary>
internal abstract class BenchSettings : CourseSettings
{
    [CommandOption("--bench <NUMBER>")]
    [Description("Only this bench.")]
    public string? Bench { get; init; }

    public int? BenchNumber => Bench is null ? null : int.Parse(Bench, NumberStyles.None, CultureInfo.InvariantCulture);

    public override ValidationResult Validate()
    {
        if (Bench is not null && !int.TryParse(Bench, NumberStyles.None, CultureInfo.InvariantCulture, out _))
            return ValidationResult.Error($"--bench takes the number of a bench, not \"{Bench}\".");
        return base.Validate();
    }
}
