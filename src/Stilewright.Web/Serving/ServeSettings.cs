using System.ComponentModel;
using System.Globalization;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Stilewright.Web.Serving;

/// <summary>Options of the application's start.</summary>
public sealed class ServeSettings : CommandSettings
{
    [CommandOption("--data <FILE>")]
    [Description("The data file. It is made, with a sample course, where it is not there.")]
    [DefaultValue("stilewright.db")]
    public string Data { get; init; } = "stilewright.db";

    [CommandOption("--port <NUMBER>")]
    [Description("The port to listen on; 0 takes any that is free.")]
    [DefaultValue(5280)]
    public int Port { get; init; } = 5280;

    [CommandOption("--share")]
    [Description("Listens on the network too, for tablets and phones in the shop, behind a join code that is shown here.")]
    public bool Share { get; init; }

    [CommandOption("--host <NAME>")]
    [Description("With --share: a name or address by which this computer is reached. May be given more than once; its own are known.")]
    public string[] Hosts { get; init; } = [];

    [CommandOption("--empty")]
    [Description("Starts a new data file without the sample course.")]
    public bool Empty { get; init; }

    [CommandOption("--log")]
    [Description("Writes what happens to the standard error, one JSON object on a line. Without it, only that something failed.")]
    public bool Log { get; init; }

    public override ValidationResult Validate()
    {
        if (Port is < 0 or > 65535)
            return ValidationResult.Error(string.Create(CultureInfo.InvariantCulture, $"--port {Port}: a port is a whole number from 0 to 65535."));
        if (Hosts.Length > 0 && !Share)
            return ValidationResult.Error("--host names this computer for others: give it together with --share.");
        return Hosts.FirstOrDefault(host => host.Length == 0 || host.AsSpan().ContainsAny("*/:@ ") && !System.Net.IPAddress.TryParse(host, out _)) is { } wrong
            ? ValidationResult.Error($"--host \"{wrong}\": give the plain name or address, such as shop-computer or 192.168.1.20.")
            : ValidationResult.Success();
    }
}
