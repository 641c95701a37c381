using System.Net;

namespace Stilewright.Web.Tests.Api;

public sealed class HandedOutTests : IAsyncLifetime
{
    private readonly ApiHost host = new();

    public Task InitializeAsync() => host.InitializeAsync();

    public Task DisposeAsync() => host.DisposeAsync();

    [Fact]
    public async Task Paper_is_kept_and_told_when_it_no_longer_holds()
    {
        await host.Client.GetByteArrayAsync("/api/courses/evening/packet?bench=1");
        await host.Client.GetByteArrayAsync("/api/courses/evening/patterns?path=1.2L");
        await host.Client.GetByteArrayAsync("/api/courses/evening/packet?bench=2");
        var list = (await host.JsonAsync("/api/courses/evening/handed-out")).AsArray();
        Assert.Equal(["Packet of bench 2", "Patterns of 1·2L·TR and 1·2L·P", "Packet of bench 1"], list.Select(each => (string)each!["what"]!));
        Assert.Equal([23, 2, 15], list.Select(each => (int)each!["parts"]!));
        foreach (var each in list)
            Assert.True((bool)(await ChangesAsync((long)each!["key"]!))["paperHolds"]!);

        // The face of bench 1 is 1 in wider now: each leaf of the pair 1/2 in, so its rails are 12 3/16 where they were 11 11/16.
        var file = (await host.Client.GetStringAsync("/api/courses/evening/export")).Replace("\"width\": \"34\"", "\"width\": \"35\"", StringComparison.Ordinal);
        var (_, shown) = await host.SendAsync("/api/courses/evening/import?dryRun=true", file);
        Assert.Equal(HttpStatusCode.OK, (await host.SendAsync($"/api/courses/evening/import?basedOn={Uri.EscapeDataString((string)shown["basedOn"]!)}", file)).Status);

        Assert.True((bool)(await ChangesAsync((long)list[0]!["key"]!))["paperHolds"]!);
        foreach (var each in list.Skip(1))
        {
            var changes = await ChangesAsync((long)each!["key"]!);
            Assert.Contains(changes["changes"]!.AsArray(), words => (string)words! == "1·2L·TR top rail, arched: handed out at 4 × 11 11/16 in, now 4 × 12 3/16 in (finished)");
        }

        // A pattern told of two parts, so that no other is new since.
        Assert.All((await ChangesAsync((long)list[1]!["key"]!))["changes"]!.AsArray(), words => Assert.DoesNotContain("new since", (string)words!, StringComparison.Ordinal));

        var page = WebUtility.HtmlDecode(await host.Client.GetStringAsync("/courses/evening/bench/1/packet"));
        Assert.Contains("handed out at 4 × 11 11/16 in, now 4 × 12 3/16 in", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_site_cannot_have_paper_recorded()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/api/courses/evening/packet?bench=1");
        request.Headers.Add("Sec-Fetch-Site", "cross-site");
        Assert.Equal(HttpStatusCode.Forbidden, (await host.Client.SendAsync(request)).StatusCode);
        Assert.Empty((await host.JsonAsync("/api/courses/evening/handed-out")).AsArray());
    }

    private Task<System.Text.Json.Nodes.JsonNode> ChangesAsync(long key) => host.JsonAsync(FormattableString.Invariant($"/api/courses/evening/handed-out/{key}/changes"));
}
