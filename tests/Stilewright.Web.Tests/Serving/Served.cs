using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Stilewright.Web.Serving;

namespace Stilewright.Web.Tests.Serving;

/// <summary>A running server with a data file of its own. Requests may come from another address, as over the network.</summary>
internal sealed partial class Served : IAsyncDisposable
{
    private const string FromHeader = "Test-From";
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("stilewright-served-");

    public WebServer Server { get; private set; } = null!;

    public string Data => Path.Combine(folder.FullName, "shop.db");

    public static async Task<Served> StartAsync(bool share = false, TimeProvider? clock = null)
    {
        var served = new Served();
        await served.StartAgainAsync(share, clock);
        return served;
    }

    public async Task StartAgainAsync(bool share, TimeProvider? clock = null)
    {
        if (Server is not null)
            await Server.DisposeAsync();
        Server = await WebServer.StartAsync(new() { Port = 0, Data = Data, Share = share }, services =>
        {
            services.AddSingleton<IStartupFilter, Elsewhere>();
            if (clock is not null)
                services.AddSingleton(clock);
        }, default);
    }

    /// <param name="from">The address that requests come from; null for this computer.</param>
    public HttpClient Screen(string? from = null)
    {
        var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false }) { BaseAddress = new(Server.Addresses[0]) };
        client.DefaultRequestHeaders.Accept.ParseAdd("text/html");
        if (from is not null)
            client.DefaultRequestHeaders.Add(FromHeader, from);
        return client;
    }

    public static async Task<HttpResponseMessage> JoinAsync(HttpClient screen, string code, string then = "/")
    {
        var page = await screen.GetStringAsync(new Uri($"/join?then={Uri.EscapeDataString(then)}", UriKind.Relative));
        var token = TokenField().Match(page);
        return await screen.PostAsync(new Uri("/join", UriKind.Relative), new FormUrlEncodedContent(new Dictionary<string, string>
        {
            [token.Groups[1].Value] = token.Groups[2].Value,
            ["then"] = then,
            ["code"] = code,
        }));
    }

    public async ValueTask DisposeAsync()
    {
        await Server.DisposeAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
    }

    [GeneratedRegex("name=\"([^\"]+)\" value=\"(CfDJ8[^\"]+)\"")]
    private static partial Regex TokenField();

    private sealed class Elsewhere : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.Use((context, rest) =>
            {
                if (context.Request.Headers.TryGetValue(FromHeader, out var from))
                    context.Connection.RemoteIpAddress = IPAddress.Parse(from.ToString());
                return rest(context);
            });
            next(app);
        };
    }
}
