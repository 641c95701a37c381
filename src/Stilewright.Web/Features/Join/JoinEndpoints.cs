using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Http.HttpResults;
using Stilewright.Web.Serving;

namespace Stilewright.Web.Features.Join;

/// <summary>The way in for screens on the network: a form that takes the join code.</summary>
internal static class JoinEndpoints
{
    private const long MostBytes = 16 * 1024;
    private const int LongestPath = 2000;

    public static void MapJoin(this IEndpointRouteBuilder app, JoinCode code)
    {
        app.MapGet(JoinGate.Page, Results<RazorComponentResult<JoinPage>, RedirectHttpResult> (HttpContext context, IAntiforgery antiforgery, string? then) =>
            JoinGate.IsLetIn(context, code) ? TypedResults.LocalRedirect(Local(then)) : Page(context, antiforgery, then, null, StatusCodes.Status200OK));
        app.MapPost(JoinGate.Page, (HttpContext context, IAntiforgery antiforgery, GuessLimit limit, ILogger<GuessLimit> log) =>
            JoinAsync(context, code, antiforgery, limit, log)).DisableAntiforgery();
    }

    // The form is checked here and not by the pipeline, so that a page that was open too long is shown again, with words.
    private static async Task<Results<RazorComponentResult<JoinPage>, RedirectHttpResult>> JoinAsync(
        HttpContext context, JoinCode code, IAntiforgery antiforgery, GuessLimit limit, ILogger log)
    {
        context.Features.Get<IHttpMaxRequestBodySizeFeature>()?.MaxRequestBodySize = MostBytes;
        if (!context.Request.HasFormContentType || !await antiforgery.IsRequestValidAsync(context))
            return Page(context, antiforgery, null, "This page was open for too long. Enter the code again.", StatusCodes.Status400BadRequest);
        var form = await context.Request.ReadFormAsync(context.RequestAborted);
        var (entered, then) = (form["code"].ToString(), form["then"].ToString());
        switch (limit.Check(() => code.Is(entered)))
        {
            case true:
                context.Response.Cookies.Append(JoinGate.Cookie, code.Token, new() { HttpOnly = true, SameSite = SameSiteMode.Lax, IsEssential = true, MaxAge = TimeSpan.FromDays(30), Path = "/" });
                return TypedResults.LocalRedirect(Local(then));
            case false:
                return Page(context, antiforgery, then, "That is not the code. Look at the instructor's screen: it changes when Stilewright is started.", StatusCodes.Status403Forbidden);
            default:
                JoinLog.Refused(log);
                context.Response.Headers.RetryAfter = GuessLimit.Window.TotalSeconds.ToString(System.Globalization.CultureInfo.InvariantCulture);
                return Page(context, antiforgery, then, "Too many wrong codes were tried just now. Wait a minute, then enter the code again.", StatusCodes.Status429TooManyRequests);
        }
    }

    private static RazorComponentResult<JoinPage> Page(HttpContext context, IAntiforgery antiforgery, string? then, string? problem, int status)
    {
        var tokens = antiforgery.GetAndStoreTokens(context);
        context.Response.Headers.CacheControl = "no-store";
        return new(new { FieldName = tokens.FormFieldName, Token = tokens.RequestToken!, Then = Local(then), Problem = problem }) { StatusCode = status };
    }

    // A place of this application; anything else leads to the first page.
    private static string Local(string? then) =>
        then is ['/', ..] and not ['/', '/' or '\\', ..] && then.Length <= LongestPath && !then.Any(char.IsControl) && !then.StartsWith(JoinGate.Page, StringComparison.OrdinalIgnoreCase)
            ? then : "/";
}
