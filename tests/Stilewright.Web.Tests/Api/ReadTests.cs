using System.Net;
using System.Xml.Linq;
using UglyToad.PdfPig;

namespace Stilewright.Web.Tests.Api;

public sealed class ReadTests(ApiHost host) : IClassFixture<ApiHost>
{
    // 15 5/16 − 2 × 2 1/4 + 2 × 7/16 = 11 11/16, as the README works it by hand.
    [Fact]
    public async Task A_breakdown_tells_sizes_as_text_and_exactly()
    {
        var bench = (await host.JsonAsync("/api/courses/evening/benches/1/breakdown"))["projects"]![0]!;
        var rail = bench["fronts"]!.AsArray().SelectMany(front => front!["leaves"]!.AsArray()).SelectMany(leaf => leaf!["parts"]!.AsArray())
            .Single(part => (string)part!["label"]! == "1·2L·TR")!;
        Assert.Equal("11 11/16", (string)rail["finished"]!["length"]!["text"]!);
        Assert.Equal("187/16", (string)rail["finished"]!["length"]!["inches"]!);
        Assert.Equal("65/16", (string)rail["intoTheClamps"]!["width"]!["inches"]!);
        Assert.Equal("13/16", (string)rail["thickness"]!["planed"]!["text"]!);
        Assert.Contains(bench["findings"]!.AsArray(), finding => (string)finding!["rule"]! == "part.short-for-sticking" && (string)finding["severity"]! == "hazard");

        var metric = (await host.JsonAsync("/api/courses/evening/benches/1/breakdown?unit=mm"))["projects"]![0]!.ToJsonString();
        // 187/16 in × 25.4 = 296.8625 mm.
        Assert.Contains("296.9", metric, StringComparison.Ordinal);
        Assert.Contains("187/16", metric, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Courses_are_listed_with_their_benches()
    {
        Assert.Contains((await host.JsonAsync("/api/courses")).AsArray(), course => (string)course!["id"]! == "evening" && (int)course["benches"]! == 8);
        var course = await host.JsonAsync("/api/courses/evening");
        Assert.Equal([1, 2, 3, 4, 5, 6, 7, 8], course["benches"]!.AsArray().Select(bench => (int)bench!["bench"]!));
    }

    [Fact]
    public async Task A_cut_list_is_the_same_as_json_and_as_csv()
    {
        var json = await host.JsonAsync("/api/courses/evening/cut-list?by=course");
        using var request = new HttpRequestMessage(HttpMethod.Get, "/api/courses/evening/cut-list?by=course");
        request.Headers.Accept.ParseAdd("text/csv");
        var answer = await host.Client.SendAsync(request);
        Assert.Equal("text/csv", answer.Content.Headers.ContentType?.MediaType);
        var rows = (await answer.Content.ReadAsStringAsync()).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(json["lists"]![0]!["lines"]!.AsArray().Count, rows.Length - 1);
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition?.DispositionType);
    }

    [Theory]
    [InlineData("drawing?path=1.2L&view=front&unit=in", "1·2L")]
    [InlineData("drawing?path=1.2L&view=back&unit=mm", "1·2L")]
    [InlineData("drawing?path=hall-front&unit=in", "Hall cupboard")]
    [InlineData("drawing?path=1.2L&view=boring", "Boring sheet of 1·2L")]
    [InlineData("patterns.svg?path=1.2L.TR", "1·2L·TR")]
    public async Task Drawings_are_svg(string address, string named)
    {
        var answer = await host.Client.GetAsync($"/api/courses/evening/{address}");
        Assert.Equal("image/svg+xml", answer.Content.Headers.ContentType?.MediaType);
        var svg = XDocument.Parse(await answer.Content.ReadAsStringAsync());
        Assert.Equal("svg", svg.Root!.Name.LocalName);
        Assert.Contains(named, svg.Root.Elements().First(each => each.Name.LocalName == "title").Value, StringComparison.Ordinal);
    }

    // Bench 1 of the sample has one pair; a drawer front is not hung.
    [Fact]
    public async Task Hinges_come_as_exact_fractions()
    {
        var leaves = System.Text.Json.Nodes.JsonNode.Parse(await host.Client.GetStringAsync("/api/courses/evening/hanging?bench=1"))!["leaves"]!.AsArray();
        Assert.Equal(["1·2L", "1·2R"], leaves.Select(leaf => (string)leaf!["leaf"]!));
        Assert.Equal(("25/8", "189/8"), ((string)leaves[0]!["places"]![0]!["fromTop"]!, (string)leaves[0]!["places"]![0]!["fromBottom"]!));
    }

    [Fact]
    public async Task Patterns_come_by_leaf_by_bench_or_for_the_whole_course()
    {
        var pages = new List<int>();
        foreach (var wanted in new[] { "path=1.2L", "bench=1", "bench=1,8", "paper=letter" })
        {
            using var pdf = PdfDocument.Open(await host.Client.GetByteArrayAsync($"/api/courses/evening/patterns?{wanted}"));
            pages.Add(pdf.NumberOfPages);
        }

        // Each holds those before it, since both leaves of bench 1 and the leaves of other benches are arched too.
        Assert.Equal(pages.Order(), pages);
        Assert.Equal(4, pages.Distinct().Count());
        var none = await host.Client.GetAsync("/api/courses/evening/patterns?bench=2");
        Assert.Equal(HttpStatusCode.NotFound, none.StatusCode);
        Assert.Contains("at bench 2 has an arch", await none.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_packet_is_a_pdf_on_the_paper_wanted()
    {
        using var pdf = PdfDocument.Open(await host.Client.GetByteArrayAsync("/api/courses/evening/packet?bench=2&paper=a4&labels=false"));
        Assert.All(pdf.GetPages(), page => Assert.Equal((595, 842), ((int)Math.Round(page.Width), (int)Math.Round(page.Height))));
        using var thin = PdfDocument.Open(await host.Client.GetByteArrayAsync("/api/courses/evening/packet?bench=2&paper=a4&labels=false&partDrawings=false&working=false"));
        Assert.InRange(thin.NumberOfPages, 1, pdf.NumberOfPages - 1);
        Assert.Contains("bench 2", pdf.Information.Title, StringComparison.Ordinal);
        using var more = PdfDocument.Open(await host.Client.GetByteArrayAsync("/api/courses/evening/packet?bench=2&paper=a4&labels=false&partDrawings=false&working=false&worksheet=1&worksheetKey=true"));
        Assert.Equal(thin.NumberOfPages + 2, more.NumberOfPages);
        Assert.Contains("Key and mark scheme", more.GetPage(more.NumberOfPages).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nothing/here", HttpStatusCode.NotFound)]
    [InlineData("courses/evening/nothing", HttpStatusCode.NotFound)]
    [InlineData("courses/none", HttpStatusCode.NotFound)]
    [InlineData("courses/evening/benches/99/breakdown", HttpStatusCode.NotFound)]
    [InlineData("courses/evening/benches/one/breakdown", HttpStatusCode.BadRequest)]
    [InlineData("courses/evening/packet?bench=1,x", HttpStatusCode.BadRequest)]
    [InlineData("courses/evening/packet?worksheet=7", HttpStatusCode.BadRequest)]
    [InlineData("courses/evening/packet?labelSheet=none", HttpStatusCode.NotFound)]
    [InlineData("courses/evening/drawing", HttpStatusCode.BadRequest)]
    [InlineData("courses/evening/drawing?path=9.9Q", HttpStatusCode.NotFound)]
    [InlineData("courses/evening/hanging?bench=x", HttpStatusCode.BadRequest)]
    [InlineData("courses/evening/hanging?leaf=9.9Q", HttpStatusCode.NotFound)]
    [InlineData("courses/evening/drawing?path=1.1&view=boring", HttpStatusCode.NotFound)]
    [InlineData("courses/evening/patterns?path=1.1", HttpStatusCode.NotFound)]
    [InlineData("courses/evening/wood?bench=99", HttpStatusCode.NotFound)]
    [InlineData("courses/evening/wood?bench=one", HttpStatusCode.BadRequest)]
    [InlineData("courses/nowhere/wood", HttpStatusCode.NotFound)]
    [InlineData("courses/evening/drawing?path=1.2L.TR&view=glue-up", HttpStatusCode.NotFound)]
    [InlineData("courses/evening/patterns?path=1.2L&bearing=1/4", HttpStatusCode.BadRequest)]
    [InlineData("courses/evening/patterns?path=1.2L&rule=6&across=5&along=6", HttpStatusCode.BadRequest)]
    [InlineData("courses/evening/patterns?path=1.2L&roll=1", HttpStatusCode.BadRequest)]
    [InlineData("courses/evening/handed-out/77/changes", HttpStatusCode.NotFound)]
    [InlineData("prints/0123", HttpStatusCode.NotFound)]
    public async Task Every_fault_is_told_as_problem_details(string address, HttpStatusCode status)
    {
        var answer = await host.Client.GetAsync($"/api/{address}");
        Assert.Equal(status, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        var problem = System.Text.Json.Nodes.JsonNode.Parse(await answer.Content.ReadAsStringAsync())!;
        Assert.Equal((int)status, (int)problem["status"]!);
        Assert.False(string.IsNullOrWhiteSpace((string)problem["detail"]!));
        Assert.All(problem["errors"]!.AsArray(), error => Assert.False(string.IsNullOrWhiteSpace((string)error!["fix"]!)));
    }

    [Fact]
    public async Task The_wood_of_a_bench_is_told_as_the_command_line_tells_it()
    {
        var wood = System.Text.Json.Nodes.JsonNode.Parse(await host.Client.GetStringAsync("/api/courses/evening/wood?bench=1"))!;
        var leaf = wood["leaves"]!.AsArray().Single(each => (string)each!["label"]! == "1·2L")!;
        Assert.Equal("183/16", (string)leaf["panels"]![0]!["width"]!);
        Assert.Equal(3, leaf["glueUps"]![0]!["staves"]!.AsArray().Count);
        Assert.Contains("from memory", (string)leaf["moisture"]!["source"]!, StringComparison.Ordinal);
        Assert.Contains("at making", await host.Client.GetStringAsync("/api/courses/evening/drawing?path=1.2L&view=panel-fit"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("courses/evening/bench/1/packet", "Packet of bench 1")]
    [InlineData("courses/evening/bench/1/patterns", "Patterns of bench 1")]
    [InlineData("courses/evening/bench/1/hang", "Bore and hang, bench 1")]
    [InlineData("courses/evening/bench/1/wood", "from memory")]
    [InlineData("courses/evening/bench/1/wood", "Widths that work at making: 11 5/32 to 11 17/32")]
    [InlineData("courses/evening/print", "Packet of the course")]
    [InlineData("courses/evening/cut-list", "Bench 1, Hall cupboard")]
    [InlineData("import", "Import a course")]
    public async Task The_pages_of_paper_and_files_answer(string address, string says) =>
        Assert.Contains(says, WebUtility.HtmlDecode(await host.Client.GetStringAsync($"/{address}")), StringComparison.Ordinal);
}
