using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;

namespace Stilewright.Web.Tests.Api;

/// <summary>Each test changes the course, so each has a server of its own.</summary>
public sealed class ImportTests : IAsyncLifetime
{
    private readonly ApiHost host = new();

    public Task InitializeAsync() => host.InitializeAsync();

    public Task DisposeAsync() => host.DisposeAsync();

    [Fact]
    public async Task What_was_exported_changes_nothing()
    {
        var (status, answer) = await host.SendAsync("/api/courses/evening/import?dryRun=true", await ExportAsync());
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Empty(answer["differences"]!.AsArray());
    }

    [Fact]
    public async Task A_changed_file_becomes_revisions_after_its_differences_were_shown()
    {
        var file = (await ExportAsync()).Replace("\"Hall cupboard\"", "\"Porch cupboard\"", StringComparison.Ordinal);
        var (_, shown) = await host.SendAsync("/api/courses/evening/import?dryRun=true", file);
        Assert.All(shown["differences"]!.AsArray(), words => Assert.Contains("Hall cupboard → Porch cupboard", ((string)words!).Replace("“", "", StringComparison.Ordinal).Replace("”", "", StringComparison.Ordinal), StringComparison.Ordinal));
        Assert.NotEmpty(shown["differences"]!.AsArray());
        Assert.Equal("Hall cupboard", await NameAsync());

        Assert.Equal(HttpStatusCode.Conflict, (await host.SendAsync("/api/courses/evening/import", file)).Status);
        Assert.Equal("Hall cupboard", await NameAsync());

        var basedOn = Uri.EscapeDataString((string)shown["basedOn"]!);
        var (status, now) = await host.SendAsync($"/api/courses/evening/import?basedOn={basedOn}", file);
        Assert.Equal(HttpStatusCode.OK, status);
        var bench = now["benches"]!.AsArray().Single(each => (int)each!["bench"]! == 1)!;
        Assert.Equal(("Porch cupboard", 2), ((string)bench["name"]!, (int)bench["revision"]!));
        Assert.Equal(1, (int)now["benches"]!.AsArray().Single(each => (int)each!["bench"]! == 2)!["revision"]!);

        // The numbers are of the state before, so the same import is refused now.
        Assert.Equal(HttpStatusCode.Conflict, (await host.SendAsync($"/api/courses/evening/import?basedOn={basedOn}", file)).Status);
    }

    [Fact]
    public async Task A_bench_that_is_not_in_the_file_is_cleared_and_comes_back_with_its_history()
    {
        var whole = await ExportAsync();
        var without = JsonNode.Parse(whole)!;
        without["projects"]!.AsArray().RemoveAt(0);
        Assert.Equal(HttpStatusCode.OK, await OverAsync(without.ToJsonString()));
        Assert.Equal(7, (await host.JsonAsync("/api/courses/evening"))["benches"]!.AsArray().Count);
        Assert.Equal(HttpStatusCode.OK, await OverAsync(whole));
        var bench = (await host.JsonAsync("/api/courses/evening"))["benches"]!.AsArray().Single(each => (int)each!["bench"]! == 1)!;
        Assert.Equal(("hall", 2), ((string)bench["id"]!, (int)bench["revision"]!));
    }

    [Fact]
    public async Task A_course_whose_id_is_taken_comes_in_beside_it()
    {
        var (status, made) = await host.SendAsync("/api/courses", await ExportAsync());
        Assert.Equal(HttpStatusCode.Created, status);
        Assert.NotEqual("evening", (string)made["id"]!);
        Assert.Equal(2, (await host.JsonAsync("/api/courses")).AsArray().Count);
        // The same parts under ids of its own.
        var sizes = new[] { "evening", (string)made["id"]! }.Select(async id =>
            (await host.JsonAsync($"/api/courses/{id}/cut-list?by=course"))["lists"]![0]!["lines"]!.AsArray().Select(line => line!["finished"]!.ToJsonString()).ToList());
        var both = await Task.WhenAll(sizes);
        Assert.Equal(both[0], both[1]);
    }

    [Fact]
    public async Task A_standard_of_ones_own_comes_as_a_second_file_and_goes_out_as_one()
    {
        var standard = (await host.Client.GetStringAsync("/api/courses/evening/standard/export")).Replace("\"id\": \"inch\"", "\"id\": \"shop\"", StringComparison.Ordinal);
        var course = JsonNode.Parse(await ExportAsync())!;
        course["standard"] = "shop.json";
        Assert.Equal(HttpStatusCode.BadRequest, (await host.SendAsync("/api/courses", course.ToJsonString())).Status);

        using var form = Form(course.ToJsonString(), standard);
        form.Headers.Add("X-Stilewright", "1");
        var answer = await host.Client.PostAsync("/api/courses", form);
        var made = JsonNode.Parse(await answer.Content.ReadAsStringAsync())!;
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        Assert.Equal("shop", (string)made["standard"]!);
        var exported = JsonNode.Parse(await host.Client.GetStringAsync($"/api/courses/{made["id"]}/export"))!;
        Assert.Equal("shop-standard.json", (string)exported["standard"]!);
        // It is known here by that name too.
        Assert.Equal(HttpStatusCode.Created, (await host.SendAsync("/api/courses", exported.ToJsonString())).Status);
    }

    [Fact]
    public async Task Every_error_of_a_file_is_told_with_its_place_and_fix()
    {
        var file = (await ExportAsync()).Replace("\"bench\": 1,", "\"bench\": 0,", StringComparison.Ordinal).Replace("\"unit\": \"in\"", "\"unit\": \"ell\"", StringComparison.Ordinal);
        var (status, problem) = await host.SendAsync("/api/courses", file);
        Assert.Equal(HttpStatusCode.BadRequest, status);
        var errors = problem["errors"]!.AsArray();
        Assert.Contains(errors, error => (string)error!["path"]! == "$.unit");
        Assert.Contains(errors, error => ((string)error!["path"]!).EndsWith(".bench", StringComparison.Ordinal));
        Assert.All(errors, error => Assert.True((int)error!["line"]! > 0 && ((string)error["fix"]!).Length > 0));
    }

    [Fact]
    public async Task A_file_of_another_course_or_standard_does_not_become_revisions()
    {
        var file = await ExportAsync();
        var (status, problem) = await host.SendAsync("/api/courses/evening/import?dryRun=true", file.Replace("\"id\": \"evening\"", "\"id\": \"morning\"", StringComparison.Ordinal));
        Assert.Equal((HttpStatusCode.BadRequest, "$.id"), (status, (string)problem["errors"]![0]!["path"]!));
        (status, problem) = await host.SendAsync("/api/courses/evening/import?dryRun=true", file.Replace("\"standard\": \"inch\"", "\"standard\": \"other.json\"", StringComparison.Ordinal));
        Assert.Equal((HttpStatusCode.BadRequest, "$.standard"), (status, (string)problem["errors"]![0]!["path"]!));
    }

    // What a page of another origin can send without asking first: forms and plain text (the simple requests of the Fetch standard).
    [Theory]
    [InlineData("text/plain", null, HttpStatusCode.UnsupportedMediaType)]
    [InlineData("application/x-www-form-urlencoded", null, HttpStatusCode.UnsupportedMediaType)]
    [InlineData("multipart/form-data", null, HttpStatusCode.UnsupportedMediaType)]
    [InlineData("application/json", "cross-site", HttpStatusCode.Forbidden)]
    [InlineData("application/json", "same-site", HttpStatusCode.Forbidden)]
    [InlineData("application/json", "same-origin", HttpStatusCode.Created)]
    public async Task Another_site_cannot_write(string type, string? from, HttpStatusCode status)
    {
        var file = await ExportAsync();
        using HttpContent content = type == "multipart/form-data" ? Form(file, null) : new StringContent(file, Encoding.UTF8, new MediaTypeHeaderValue(type));
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/courses") { Content = content };
        if (from is not null)
            request.Headers.Add("Sec-Fetch-Site", from);
        Assert.Equal(status, (await host.Client.SendAsync(request)).StatusCode);
        Assert.Equal(status == HttpStatusCode.Created ? 2 : 1, (await host.JsonAsync("/api/courses")).AsArray().Count);
    }

    [Fact]
    public async Task A_file_that_is_too_large_is_refused()
    {
        using var content = ApiHost.Json(new string(' ', Documents.DocumentReader.MostBytes + 1024 * 1024));
        // Asked first whether to go on, so that the answer is not lost among what is still being sent.
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/courses") { Content = content };
        request.Headers.ExpectContinue = true;
        var answer = await host.Client.SendAsync(request);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
    }

    private Task<string> ExportAsync() => host.Client.GetStringAsync("/api/courses/evening/export");

    private async Task<string> NameAsync() => (string)(await host.JsonAsync("/api/courses/evening"))["benches"]![0]!["name"]!;

    private async Task<HttpStatusCode> OverAsync(string file)
    {
        var (_, shown) = await host.SendAsync("/api/courses/evening/import?dryRun=true", file);
        return (await host.SendAsync($"/api/courses/evening/import?basedOn={Uri.EscapeDataString((string)shown["basedOn"]!)}", file)).Status;
    }

    private static MultipartFormDataContent Form(string course, string? standard)
    {
        MultipartFormDataContent form = new() { { new StringContent(course), "course", "course.json" } };
        if (standard is not null)
            form.Add(new StringContent(standard), "standard", "shop.json");
        return form;
    }
}
