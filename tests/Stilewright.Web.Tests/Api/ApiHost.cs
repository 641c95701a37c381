using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using Stilewright.Web.Serving;

namespace Stilewright.Web.Tests.Api;

/// <summary>A running server with the sample course in a data file of its own, and one maker who asks.</summary>
public sealed class ApiHost : IAsyncLifetime
{
    private readonly string folder = Directory.CreateTempSubdirectory("stilewright-api-").FullName;
    private WebServer? server;

    /// <summary>Keeps its cookie, as a browser does.</summary>
    public HttpClient Client { get; private set; } = null!;

    /// <summary>Another maker.</summary>
    public HttpClient Other { get; private set; } = null!;

    public async Task InitializeAsync()
    {
        server = await WebServer.StartAsync(new() { Port = 0, Data = Path.Combine(folder, "x.db") }, default);
        (Client, Other) = (Maker(), Maker());
    }

    public async Task DisposeAsync()
    {
        Client.Dispose();
        Other.Dispose();
        await server!.DisposeAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    public async Task<JsonNode> JsonAsync(string address)
    {
        var answer = await Client.GetAsync(address);
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.IsSuccessStatusCode, text);
        return JsonNode.Parse(text)!;
    }

    public async Task<(HttpStatusCode Status, JsonNode Body)> SendAsync(string address, string json)
    {
        using var content = Json(json);
        var answer = await Client.PostAsync(address, content);
        return (answer.StatusCode, JsonNode.Parse(await answer.Content.ReadAsStringAsync())!);
    }

    public static StringContent Json(string text) => new(text, Encoding.UTF8, new MediaTypeHeaderValue("application/json"));

    private HttpClient Maker() => new(new HttpClientHandler { CookieContainer = new(), AllowAutoRedirect = false })
    {
        // The name that the server gives is also one of its own hosts.
        BaseAddress = new(server!.Addresses[0]),
    };
}
