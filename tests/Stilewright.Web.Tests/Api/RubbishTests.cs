using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Stilewright.Testing;

namespace Stilewright.Web.Tests.Api;

/// <summary>Walks the description of the interface and sends rubbish to every operation: the answer is always good or a problem, never a fault.</summary>
public sealed class RubbishTests(ApiHost host) : IClassFixture<ApiHost>
{
    private const int CallsOfEach = 60;

    // Whole words that some value means, so that rubbish meets operations that are partly right.
    private static readonly string[] Sound =
    [
        "evening", "1", "2", "8", "1,2", "true", "false", "in", "mm", "csv", "json", "letter", "a4", "roll", "front", "back", "stick-up", "1.2L", "1.2L.TR", "hall-front", "1/4", "6", "150 mm",
        "short", "long", "leaf", "course", "plain-a4", "letter-30", "24", "4000", "5000",
        "finished", "clamps", "rough", "right-or-wrong", "hint", "rule", "all", "hall-front/leaf.left",
    ];

    // Lists that are partly right, so that rubbish gets as far as the checker.
    private static readonly string[] Lists =
    [
        "part,count,width,length\nstile,2,2 1/4,30\nrail,2,2 1/4,8\npanel,1,8,22\n", "rail,2,2,8", "part;width;length\nrail;57;200 mm\n", "stile,400,1e9,0\n,,,\n", "rail,1,1/0,8", "=cmd|x,1,2,3",
        """{ "format": "stilewright/makers-list", "version": 1, "unit": "in", "lines": [ { "part": "rail", "count": 2, "width": "2 1/4", "length": "8" } ] }""", "[", "",
    ];

    private static readonly string[] Odd = ["", " ", "-1", "0", "999999999999", "1e308", "NaN", "../../etc/passwd", "..%2f", "' or 1=1 --", "<script>", new string('9', 3000), "\ufffd", "null", "1,,2", ","];

    private static readonly Gen<string> Text = Gen.Frequency(
        (4, Gen.Int[0, Sound.Length - 1].Select(i => Sound[i])),
        (1, Gen.String[Gen.Char, 0, 40]),
        (1, Gen.String[Gen.Char["%&=?/\\.:;'\"<>{}[]()\0\r\n\t ½·\u202e\ud800-0123456789eE+"], 0, 30]),
        (1, Gen.Int[0, Odd.Length - 1].Select(i => Odd[i])));

    [Fact]
    public async Task Rubbish_is_answered_with_a_problem_and_never_with_a_fault()
    {
        var description = await host.JsonAsync("/api/openapi.json");
        FuzzedFiles files = new(20261128);
        var operations = description["paths"]!.AsObject().SelectMany(path => path.Value!.AsObject(), (path, operation) => (Path: path.Key, Method: operation.Key, operation.Value)).ToList();
        Assert.True(operations.Count >= 20, "The description has lost operations.");
        var statuses = new HashSet<int>();
        foreach (var (path, method, operation) in operations)
        {
            Assert.False(string.IsNullOrWhiteSpace((string?)operation!["summary"]), $"{method} {path} says nothing of itself.");
            var parameters = (operation["parameters"]?.AsArray() ?? []).Select(each => (Name: (string)each!["name"]!, In: (string)each["in"]!)).ToList();
            await Gen.Select(Text.Array[parameters.Count], Gen.Int[0, 9], Gen.Int[0, 99_999]).SampleAsync(async (texts, kind, number) =>
            {
                using var request = Request(path, method, parameters, texts, kind, number, files.Case(number));
                using var answer = await host.Client.SendAsync(request);
                var status = (int)answer.StatusCode;
                lock (statuses)
                    statuses.Add(status);
                var told = $"{method} {request.RequestUri} ({request.Content?.Headers.ContentType}): {status}";
                Assert.True(status is >= 200 and < 300 or >= 400 and < 500, told);
                if (status < 400)
                    return;
                Assert.True(answer.Content.Headers.ContentType?.MediaType == "application/problem+json", told);
                var text = await answer.Content.ReadAsStringAsync();
                Assert.DoesNotContain("   at Stilewright", text, StringComparison.Ordinal);
                Assert.DoesNotContain("Exception", text, StringComparison.Ordinal);
                var problem = JsonNode.Parse(text)!;
                Assert.True((int)problem["status"]! == status && (string)problem["detail"]! != "", told);
            }, iter: CallsOfEach, threads: 1);
        }

        Assert.Superset(new HashSet<int> { 200, 400, 404, 415 }, statuses);
    }

    private static HttpRequestMessage Request(string path, string method, List<(string Name, string In)> parameters, string[] texts, int kind, int number, byte[] body)
    {
        var address = new StringBuilder(path);
        var mark = '?';
        foreach (var (i, ((name, place), text)) in parameters.Zip(texts).Index())
        {
            if (place == "path" && name == "id" && number % 10 < 7)
                address.Replace("{id}", "evening");
            else if (place == "path")
                address.Replace($"{{{name}}}", Escaped(text.Length is 0 or > 200 || text is "." or ".." ? "none" : text));
            else if (kind < 9 && (number >> i) % 3 == 0)
                (_, mark) = (address.Append(mark).Append(name).Append('=').Append(Escaped(text)), '&');
        }

        HttpRequestMessage request = new(new(method.ToUpperInvariant()), address.ToString());
        if (method == "post")
        {
            var isList = path.EndsWith("/check", StringComparison.Ordinal) && kind % 2 == 1;
            request.Content = new ByteArrayContent(isList ? Encoding.UTF8.GetBytes(Lists[number % Lists.Length]) : body);
            request.Content.Headers.ContentType = kind switch
            {
                0 => new("text/plain"),
                1 => new("multipart/form-data") { Parameters = { new NameValueHeaderValue("boundary", "x") } },
                2 => null,
                _ when isList => new("text/csv"),
                _ => new("application/json"),
            };
            if (kind == 1)
                request.Headers.Add("X-Stilewright", "1");
        }

        return request;
    }

    // A null character in an address is refused by the server's own reader of requests, before anything of ours.
    private static string Escaped(string text) => Uri.EscapeDataString(string.Concat(text.Select(letter => char.IsSurrogate(letter) || letter == '\0' ? '?' : letter)));
}
