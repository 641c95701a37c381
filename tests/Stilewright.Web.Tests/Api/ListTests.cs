using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Web.Tests.Running;
using Stilewright.Web.Tests.Serving;

namespace Stilewright.Web.Tests.Api;

public sealed class ListTests
{
    private static Uri At(string path) => new(path, UriKind.Relative);

    private static StringContent Csv(string text) => new(text, Encoding.UTF8, new MediaTypeHeaderValue("text/csv"));

    // The list of a leaf as its maker writes it: every part right, but for rails without their tongues.
    private static string WithoutGrooves(ListKey key) => "part,count,width,length\n" + string.Concat(key.Items.Where(item => item.Part is not null).Select(item =>
        $"{item.Name},1,{Inches(item.Width.Length)},{Inches(item.Kind == ItemKind.Rail ? item.Length.Length - 2 * Groove(item) : item.Length.Length)}\n"));

    private static Length Groove(KeyItem rail) => (rail.Part!.Finished.Length.Length - rail.Part.Shoulder!.Length) / 2;

    private static string Inches(Length length) => new LengthFormat(LengthUnit.Inch, 64).Print(length);

    [Fact]
    public async Task A_list_is_checked_and_no_more_is_told_than_the_course_tells()
    {
        await using var server = await TestServer.OpenAsync();
        var course = await server.SampleAsync();
        var project = course.AtBench(1)!;
        var leaf = project.Worked.Fronts.SelectMany(front => front.Leaves).First(leaf => leaf.Parts.Any(part => part.Shoulder is not null && part.Arch is null && part.Finished.Length.Length != part.Shoulder.Length));
        var text = WithoutGrooves(ListKey.Of(project.Worked, leaf, CutStage.Finished));
        using HttpClient client = new() { BaseAddress = new(server.Address) };
        var address = $"/api/courses/{course.Course.Id}/benches/1/check?leaf={Uri.EscapeDataString(leaf.Path)}";

        var (status, answer) = await SendAsync(address);
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.False((bool)answer["isRight"]!);
        Assert.Empty(answer["mistakes"]!.AsArray());
        var rails = answer["lines"]!.AsArray().SelectMany(line => line!["figures"]!.AsArray()).Where(figure => (string)figure!["answer"]! == "not right").ToList();
        Assert.Equal(2, rails.Count);
        // Neither a right size nor how far off: nothing besides what the maker wrote.
        Assert.All(answer["lines"]!.AsArray().SelectMany(line => line!["figures"]!.AsArray()), figure => Assert.True(figure!["right"] is null && figure["off"] is null));
        foreach (var wrong in leaf.Parts.Where(part => part.Shoulder is not null))
            Assert.DoesNotContain($"\"{Inches(wrong.Finished.Length.Length)}\"", answer.ToJsonString(), StringComparison.Ordinal);

        (_, answer) = await SendAsync(address + "&tell=rule");
        var mistake = Assert.Single(answer["mistakes"]!.AsArray())!;
        Assert.Equal("The grooves were left out.", (string?)mistake["missed"]);
        Assert.Empty(mistake["work"]!.AsArray());

        (status, answer) = await SendAsync(address + "&tell=all");
        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.Equal("tell", (string?)answer["errors"]![0]!["path"]);

        // The three checks that were answered are kept, and the instructor's table tells of them.
        using var table = await client.GetAsync(At($"/api/courses/{course.Course.Id}/class.csv"));
        Assert.Equal(HttpStatusCode.OK, table.StatusCode);
        Assert.Contains("rule,all,all,2,,,,1,The grooves were left out.", await table.Content.ReadAsStringAsync(), StringComparison.Ordinal);

        async Task<(HttpStatusCode, JsonNode)> SendAsync(string path)
        {
            using var content = Csv(text);
            using var sent = await client.PostAsync(At(path), content);
            return (sent.StatusCode, JsonNode.Parse(await sent.Content.ReadAsStringAsync())!);
        }
    }

    [Fact]
    public async Task The_table_of_the_class_is_for_the_screen_of_this_computer()
    {
        await using var served = await Served.StartAsync(share: true);
        using var tablet = served.Screen("192.0.2.7");
        using var joined = await Served.JoinAsync(tablet, served.Server.JoinCode!);
        using var refused = await tablet.GetAsync(At("/api/courses/evening/class.csv"));
        Assert.Equal(HttpStatusCode.Forbidden, refused.StatusCode);
        Assert.Equal("application/problem+json", refused.Content.Headers.ContentType!.MediaType);
        var page = await tablet.GetStringAsync(At("/courses/evening/class"));
        Assert.Contains("is for the instructor", page, StringComparison.Ordinal);
        Assert.DoesNotContain("at most", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_list_from_a_form_of_another_site_is_refused()
    {
        await using var server = await TestServer.OpenAsync();
        using HttpClient client = new() { BaseAddress = new(server.Address) };
        using StringContent plain = new("rail,2,2,8");
        using var answer = await client.PostAsync(At("/api/courses/evening/benches/1/check"), plain);
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.StatusCode);
        using var list = Csv("rail,2,2,8");
        list.Headers.Add("X-Test", "1");
        using HttpRequestMessage foreign = new(HttpMethod.Post, At("/api/courses/evening/benches/1/check")) { Content = list };
        foreign.Headers.Add("Sec-Fetch-Site", "cross-site");
        using var closed = await client.SendAsync(foreign);
        Assert.Equal(HttpStatusCode.Forbidden, closed.StatusCode);
    }
}
