using System.ComponentModel;
using Spectre.Console.Cli;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Serving;

/// <summary>Options of a back-up.</summary>
internal sealed class BackUpSettings : CommandSettings
{
    [CommandOption("--data <FILE>")]
    [Description("The data file to copy.")]
    [DefaultValue("stilewright.db")]
    public string Data { get; init; } = "stilewright.db";

    [CommandOption("--out <FILE>", true)]
    [Description("The copy. A file that is there is not replaced.")]
    public required string Out { get; init; }
}

/// <summary>Copies the data file, also while the application runs.</summary>
internal sealed class BackUpCommand : AsyncCommand<BackUpSettings>
{
    public override async Task<int> ExecuteAsync(CommandContext context, BackUpSettings settings, CancellationToken stop)
    {
        await DataFile.BackUpAsync(settings.Data, settings.Out, stop);
        Console.WriteLine($"Copied {settings.Data} to {settings.Out}.");
        return 0;
    }
}
