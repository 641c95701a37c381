using Spectre.Console.Cli;

namespace Stilewright.Web.Serving;

/// <summary>Starts the application and runs until it is stopped.</summary>
internal sealed class ServeCommand : AsyncCommand<ServeSettings>
{
    public override async Task<int> ExecuteAsync(CommandContext context, ServeSettings settings, CancellationToken stop)
    {
        await using var server = await WebServer.StartAsync(settings, stop);
        Console.WriteLine($"Stilewright is at {server.Addresses[0]}");
        foreach (var address in server.Addresses.Skip(1))
            Console.WriteLine($"  on the network: {address}");
        if (server.JoinCode is { } code)
            Console.WriteLine($"Join code for other screens: {code}");
        Console.WriteLine($"Data file: {Path.GetFullPath(settings.Data)}");
        Console.WriteLine("Stop with Ctrl+C; everything is saved as it is entered.");
        await server.WaitAsync(stop);
        return 0;
    }
}
