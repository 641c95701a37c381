using System.Net;
using System.Text;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Serving;

public sealed class ShareTests
{
    private const string Tablet = "192.0.2.7";

    private static Uri At(string path) => new(path, UriKind.Relative);

    [Fact]
    public async Task A_screen_on_the_network_sees_the_way_in_and_nothing_besides()
    {
        await using var served = await Served.StartAsync(share: true);
        using var tablet = served.Screen(Tablet);
        using var page = await tablet.GetAsync(At("/courses/evening?x=1"));
        Assert.Equal(HttpStatusCode.Found, page.StatusCode);
        Assert.Equal("/join?then=%2Fcourses%2Fevening%3Fx%3D1", page.Headers.Location!.ToString());
        Assert.Contains("Join code", await tablet.GetStringAsync(At("/join")), StringComparison.Ordinal);
        Assert.Contains("body", await tablet.GetStringAsync(At("/css/join.css")), StringComparison.Ordinal);

        tablet.DefaultRequestHeaders.Accept.Clear();
        foreach (var closed in new[] { "/css/bench.css", "/js/fields.js", "/_framework/blazor.web.js", "/api/openapi.json", "/health", "/back-up/file" })
        {
            using var refused = await tablet.GetAsync(At(closed));
            Assert.Equal((closed, HttpStatusCode.Forbidden), (closed, refused.StatusCode));
            Assert.Equal("application/problem+json", refused.Content.Headers.ContentType!.MediaType);
        }

        using var hub = await tablet.PostAsync(At("/_blazor/negotiate?negotiateVersion=1"), null);
        Assert.Equal(HttpStatusCode.Forbidden, hub.StatusCode);
    }

    [Fact]
    public async Task The_code_lets_a_screen_in_to_where_it_wanted_to_go()
    {
        await using var served = await Served.StartAsync(share: true);
        using var tablet = served.Screen(Tablet);
        using var joined = await Served.JoinAsync(tablet, $"{served.Server.JoinCode![..3]} {served.Server.JoinCode[3..]}", "/courses/evening");
        Assert.Equal(HttpStatusCode.Found, joined.StatusCode);
        Assert.Equal("/courses/evening", joined.Headers.Location!.ToString());
        var cookie = Assert.Single(joined.Headers.GetValues("Set-Cookie"), value => value.StartsWith("stilewright.joined=", StringComparison.Ordinal));
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(served.Server.JoinCode, cookie, StringComparison.Ordinal);
        using var course = await tablet.GetAsync(At("/courses/evening"));
        Assert.Equal(HttpStatusCode.OK, course.StatusCode);
    }

    [Fact]
    public async Task What_a_screen_joined_is_worth_nothing_after_a_new_start()
    {
        await using var served = await Served.StartAsync(share: true);
        using var tablet = served.Screen(Tablet);
        using var joined = await Served.JoinAsync(tablet, served.Server.JoinCode!);
        var cookie = Assert.Single(joined.Headers.GetValues("Set-Cookie"), value => value.StartsWith("stilewright.joined=", StringComparison.Ordinal)).Split(';')[0];
        await served.StartAgainAsync(share: true);
        using var again = served.Screen(Tablet);
        again.DefaultRequestHeaders.Add("Cookie", cookie);
        using var page = await again.GetAsync(At("/"));
        Assert.Equal(HttpStatusCode.Found, page.StatusCode);
    }

    [Fact]
    public async Task This_computer_needs_no_code_and_headers_do_not_make_a_screen_this_computer()
    {
        await using var served = await Served.StartAsync(share: true);
        using var own = served.Screen();
        using var page = await own.GetAsync(At("/"));
        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        using var tablet = served.Screen(Tablet);
        tablet.DefaultRequestHeaders.Add("X-Forwarded-For", "127.0.0.1");
        tablet.DefaultRequestHeaders.Add("Forwarded", "for=127.0.0.1");
        using var refused = await tablet.GetAsync(At("/"));
        Assert.Equal(HttpStatusCode.Found, refused.StatusCode);
    }

    [Fact]
    public async Task Guessing_is_stopped_for_all_screens_with_words_also_for_the_right_code_until_a_minute_has_gone()
    {
        var clock = new SetClock();
        await using var served = await Served.StartAsync(share: true, clock);
        using var guesser = served.Screen("192.0.2.66");
        var wrong = served.Server.JoinCode == "000000" ? "111111" : "000000";
        for (var i = 0; i < 10; i++)
        {
            using var no = await Served.JoinAsync(guesser, wrong);
            Assert.Equal(HttpStatusCode.Forbidden, no.StatusCode);
            Assert.Contains("That is not the code", await no.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }

        using var tablet = served.Screen(Tablet);
        using (var locked = await Served.JoinAsync(tablet, served.Server.JoinCode!))
        {
            Assert.Equal(HttpStatusCode.TooManyRequests, locked.StatusCode);
            Assert.Contains("Wait a minute", await locked.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }

        clock.Now += TimeSpan.FromMinutes(1);
        using var joined = await Served.JoinAsync(tablet, served.Server.JoinCode!);
        Assert.Equal(HttpStatusCode.Found, joined.StatusCode);
    }

    [Fact]
    public async Task A_form_from_elsewhere_is_not_taken()
    {
        await using var served = await Served.StartAsync(share: true);
        using var tablet = served.Screen(Tablet);
        using var forged = await tablet.PostAsync(At("/join"), new FormUrlEncodedContent(new Dictionary<string, string> { ["code"] = served.Server.JoinCode! }));
        Assert.Equal(HttpStatusCode.BadRequest, forged.StatusCode);
        Assert.Contains("Enter the code again", await forged.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("//evil.example/")]
    [InlineData("/\\evil.example/")]
    [InlineData("https://evil.example/")]
    [InlineData("")]
    public async Task Joining_leads_nowhere_but_into_the_application(string then)
    {
        await using var served = await Served.StartAsync(share: true);
        using var tablet = served.Screen(Tablet);
        using var joined = await Served.JoinAsync(tablet, served.Server.JoinCode!, then);
        Assert.Equal("/", joined.Headers.Location!.ToString());
    }

    [Theory]
    [InlineData("evil.example")]
    [InlineData("localhost.evil.example:80")]
    public async Task A_wrong_host_name_is_refused_with_a_problem(string host)
    {
        await using var served = await Served.StartAsync();
        using var screen = served.Screen();
        screen.DefaultRequestHeaders.Host = host;
        using var refused = await screen.GetAsync(At("/"));
        Assert.Equal(HttpStatusCode.BadRequest, refused.StatusCode);
        Assert.Equal("application/problem+json", refused.Content.Headers.ContentType!.MediaType);
        Assert.Contains("Wrong host name", await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pages_make_a_maker_and_health_checks_and_files_make_none()
    {
        await using var served = await Served.StartAsync();
        Task<int> MakersAsync() => new DataFiles(served.Data).CountAsync(db => db.Makers);
        var before = await MakersAsync();
        foreach (var path in new[] { "/health", "/css/bench.css", "/js/fields.js", "/mark.svg" })
        {
            using var screen = served.Screen();
            using var answer = await screen.GetAsync(At(path));
        }

        Assert.Equal(before, await MakersAsync());
        using var maker = served.Screen();
        using var page = await maker.GetAsync(At("/"));
        using var other = await maker.GetAsync(At("/me"));
        Assert.Equal(before + 1, await MakersAsync());
    }

    [Fact]
    public async Task Programs_without_a_cookie_are_one_maker_and_get_none()
    {
        await using var served = await Served.StartAsync();
        Task<int> MakersAsync() => new DataFiles(served.Data).CountAsync(db => db.Makers);
        var before = await MakersAsync();
        foreach (var path in new[] { "/api/courses", "/api/courses/evening", "/api/nothing", "/api/courses/evening/packet?bench=1", "/api/courses/evening/handed-out", "/api/prints/none" })
        {
            using var program = served.Screen();
            using var answer = await program.GetAsync(At(path));
            Assert.False(answer.Headers.Contains("Set-Cookie"), path);
        }

        using var sender = served.Screen();
        var course = Encoding.UTF8.GetString(await File.ReadAllBytesAsync(Repository.EveningCourse)).Replace("\"id\": \"evening\"", "\"id\": \"sent\"", StringComparison.Ordinal);
        using StringContent content = new(course, Encoding.UTF8, "application/json");
        using var sent = await sender.PostAsync(At("/api/courses"), content);
        Assert.Equal(HttpStatusCode.Created, sent.StatusCode);
        Assert.Equal(before, await MakersAsync());
        // Two courses and one packet, all of them by a maker with a name.
        Assert.Equal(2, System.Text.RegularExpressions.Regex.Count(
            await sender.GetStringAsync(At("/api/courses")) + await sender.GetStringAsync(At("/api/courses/evening/handed-out")), "another program"));
    }

    [Fact]
    public async Task The_keys_of_the_cookies_are_their_owners_alone()
    {
        if (OperatingSystem.IsWindows())
            return;
        await using var served = await Served.StartAsync();
        var folder = served.Data + ".keys";
        Assert.NotEmpty(Directory.GetFiles(folder));
        const UnixFileMode owner = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
        Assert.Equal(owner, File.GetUnixFileMode(folder));
        // As an earlier version left it.
        File.SetUnixFileMode(folder, owner | UnixFileMode.GroupRead | UnixFileMode.GroupExecute | UnixFileMode.OtherRead | UnixFileMode.OtherExecute);
        await served.StartAgainAsync(share: false);
        Assert.Equal(owner, File.GetUnixFileMode(folder));
    }

    [Fact]
    public async Task Every_answer_carries_the_headers_that_keep_a_page_to_itself()
    {
        await using var served = await Served.StartAsync();
        using var screen = served.Screen();
        foreach (var path in new[] { "/", "/css/bench.css", "/health", "/not-there" })
        {
            using var answer = await screen.GetAsync(At(path));
            var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy").SelectMany(value => value.Split(", ")), value => value.Contains("default-src", StringComparison.Ordinal));
            Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
            Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        }
    }
}
