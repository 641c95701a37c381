using System.ComponentModel;
using System.Globalization;
using System.Text.Json;
using Fractions;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Cli.Pages;
using Stilewright.Measure;
using Stilewright.Wood;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

/// <summary>A small reckoner: moisture from air, air from moisture, and what a width does between two moistures.</summary>
internal sealed class MoistureCommand(Screen screen) : Command<MoistureCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandOption("--temperature <T>")]
        [Description("Temperature of the air, such as 70F or 21C; without a letter °F.")]
        public string? TemperatureText { get; init; }

        [CommandOption("--humidity <PERCENT>")]
        [Description("Relative humidity of that air: tells the moisture that wood comes to.")]
        public string? HumidityText { get; init; }

        [CommandOption("--moisture <PERCENT>")]
        [Description("Moisture content of wood: tells the humidity that keeps it there.")]
        public string? MoistureText { get; init; }

        [CommandOption("--wood <NAME>")]
        [Description("A wood, such as \"red oak\": tells how far --width moves from one moisture to another.")]
        public string? Wood { get; init; }

        [CommandOption("--width <LENGTH>")]
        [Description("Width across the grain at the first moisture; inches without a unit.")]
        public string? Width { get; init; }

        [CommandOption("--from <PERCENT>")]
        [Description("Moisture content at which the width was measured.")]
        public string? From { get; init; }

        [CommandOption("--to <PERCENT>")]
        [Description("Moisture content that it comes to.")]
        public string? To { get; init; }

        [CommandOption("--rings <RINGS>")]
        [Description("flat, quarter or mixed; flat when absent. Mixed is reckoned as flat.")]
        public string Rings { get; init; } = "flat";

        [CommandOption("--json")]
        [Description("Write it as JSON.")]
        public bool Json { get; init; }

        public override ValidationResult Validate()
        {
            var asksAir = TemperatureText is not null || HumidityText is not null || MoistureText is not null;
            string?[] widthOptions = [Wood, Width, From, To];
            var asksWidth = widthOptions.Any(text => text is not null);
            if (!asksAir && !asksWidth)
                return ValidationResult.Error("Give --temperature with --humidity or --moisture, or --wood, --width, --from and --to.");
            if (asksAir && asksWidth)
                return ValidationResult.Error("Ask about the air, or about a width, one at a time.");
            if (asksAir && (TemperatureText is null || HumidityText is null == MoistureText is null))
                return ValidationResult.Error("--temperature goes with one of --humidity and --moisture.");
            if (asksWidth && widthOptions.Any(text => text is null))
                return ValidationResult.Error("--wood, --width, --from and --to go together.");
            if (Rings is not ("flat" or "quarter" or "mixed"))
                return ValidationResult.Error($"--rings takes flat, quarter or mixed, not \"{Rings}\".");
            return base.Validate();
        }

        public RingOrientation RingOrientation => Rings switch { "quarter" => RingOrientation.Quarter, "mixed" => RingOrientation.Mixed, _ => RingOrientation.Flat };
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (settings.TemperatureText is { } temperature)
            TellAir(settings, Read("--temperature", temperature, NumberKind.Temperature));
        else
            TellWidth(settings);
        return ExitCode.Good;
    }

    private void TellAir(Settings settings, Fraction temperature)
    {
        var fahrenheit = temperature.ToDouble();
        if (settings.HumidityText is { } humidityText)
        {
            var humidity = Read("--humidity", humidityText, NumberKind.Percent);
            if (humidity > 100)
                throw new RefusalException(ExitCode.WrongUse, "--humidity is from 0 to 100 %.");
            Write(settings, fahrenheit, humidity.ToDouble(), EquilibriumMoisture.Percent(fahrenheit, humidity.ToDouble()));
            return;
        }

        var moisture = Read("--moisture", settings.MoistureText!, NumberKind.Percent).ToDouble();
        if (EquilibriumMoisture.Humidity(fahrenheit, moisture) is not { } found)
        {
            var most = EquilibriumMoisture.Percent(fahrenheit, 100).ToString("0.#", CultureInfo.InvariantCulture);
            throw new RefusalException(ExitCode.WrongUse, $"No air at that temperature holds wood at {settings.MoistureText}: at 100 % humidity it comes to {most} %.");
        }

        Write(settings, fahrenheit, found, moisture);
    }

    private void Write(Settings settings, double fahrenheit, double humidity, double moisture)
    {
        if (settings.Json)
        {
            screen.Plain.WriteLine(JsonSerializer.Serialize(new { fahrenheit = Math.Round(fahrenheit, 2), humidityPercent = Math.Round(humidity, 2), moisturePercent = Math.Round(moisture, 2), source = ReckonerWords.AirSource }, JsonSerializerOptions.Web));
            return;
        }

        screen.Plain.WriteLine(ReckonerWords.Air(fahrenheit, humidity, moisture));
        screen.Plain.WriteLine($"Source: {ReckonerWords.AirSource}.");
    }

    private void TellWidth(Settings settings)
    {
        var width = TypedLength.Read("--width", settings.Width!, LengthUnit.Inch);
        var unit = settings.Width!.Contains("mm", StringComparison.OrdinalIgnoreCase) || settings.Width.Contains("cm", StringComparison.OrdinalIgnoreCase) ? LengthUnit.Millimetre : LengthUnit.Inch;
        var (from, to) = (Read("--from", settings.From!, NumberKind.Percent), Read("--to", settings.To!, NumberKind.Percent));
        var match = SpeciesTable.Shipped.Find(settings.Wood!);
        if (match is not SpeciesMatch.Found({ Movement: not null } species))
        {
            var near = match is SpeciesMatch.Unknown { Nearest.Count: > 0 } unknown ? $" Do you mean {string.Join(" or ", unknown.Nearest)}?" : "";
            throw new RefusalException(ExitCode.WrongUse, $"How far \"{settings.Wood}\" moves is not known.{near}");
        }

        var moved = ReckonedMovement.Of(species, settings.RingOrientation, width, from, to);
        if (settings.Json)
        {
            screen.Plain.WriteLine(JsonSerializer.Serialize(new
            {
                wood = species.Name,
                rings = settings.Rings,
                widthInches = Round(width.Inches),
                fromPercent = Round(from),
                toPercent = Round(to),
                changeInches = Round(moved.Change.Amount),
                widthAfterInches = Round(moved.After.Amount),
                source = WoodWords.MovementSource(species),
            }, JsonSerializerOptions.Web));
            return;
        }

        var words = new TradeWords(new(unit, 64));
        screen.Plain.WriteLine(ReckonerWords.Moved(moved, words));
        screen.Plain.WriteLine($"{WorkedText.Formula(moved.Change)} = {WorkedText.Arithmetic(moved.Change, words.Format)}");
        if (settings.RingOrientation == RingOrientation.Mixed)
            screen.Plain.WriteLine(ReckonerWords.Mixed);
        screen.Plain.WriteLine($"Source: {WoodWords.MovementSource(species)}");
    }

    private static decimal Round(Fraction number) => Math.Round(number.ToDecimal(), 5);

    private static Fraction Read(string option, string text, NumberKind kind) => NumberReader.Read(text, kind, LengthUnit.Inch) switch
    {
        ParseResult<Fraction>.Parsed parsed => parsed.Value,
        ParseResult<Fraction>.Failed failed => throw new RefusalException(ExitCode.WrongUse, $"{option}: {failed.Message}"),
        _ => throw new InvalidOperationException("A number is read or not."),
    };
}
