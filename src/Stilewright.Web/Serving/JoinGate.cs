namespace Stilewright.Web.Serving;

/// <summary>Lets through who sits at this computer and who has joined. Everyone else is shown the way in, and nothing besides.</summary>
internal sealed class JoinGate(RequestDelegate next, JoinCode code)
{
    public const string Cookie = "stilewright.joined";
    public const string Page = "/join";
    public const string PageStyles = "/css/join.css";

    public Task InvokeAsync(HttpContext context)
    {
        if (IsLetIn(context, code) || context.Request.Path == Page || context.Request.Path == PageStyles)
            return next(context);
        context.Response.Headers.CacheControl = "no-store";
        var wantsPage = HttpMethods.IsGet(context.Request.Method) && context.Request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase);
        return wantsPage
            ? TypedResults.LocalRedirect($"{Page}?then={Uri.EscapeDataString(context.Request.Path + context.Request.QueryString)}").ExecuteAsync(context)
            : TypedResults.Problem("Enter the join code at /join first; it is shown on the computer that Stilewright runs on.", statusCode: StatusCodes.Status403Forbidden,
                title: "This screen has not joined").ExecuteAsync(context);
    }

    public static bool IsLetIn(HttpContext context, JoinCode code) =>
        ThisComputer.Asks(context) || code.Gave(context.Request.Cookies[Cookie]);
}
