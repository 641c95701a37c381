namespace Stilewright.Web.Features.Api;

/// <summary>Lets requests that change anything through only where no other site can have made them.</summary>
/// <remarks>
/// The maker's cookie is SameSite=Strict, but that alone is not enough here: a request without it is given a new maker, and pages of
/// another port of this computer count as the same site. A page of another origin can send only forms and plain text without asking first
/// (the "simple" requests of the Fetch standard); JSON, and any header of one's own, makes the browser ask, and this server never says yes.
/// So JSON is taken as it is, and a form, which an own program may send with two files, only with the header. Where a browser tells
/// by Sec-Fetch-Site that another site asks, it is believed.
/// </remarks>
public static class FromProgram
{
    /// <summary>A header that no form can carry; its value does not matter.</summary>
    public const string Header = "X-Stilewright";

    public static bool Has(HttpRequest request) => IsOwn(request)
        && (IsJson(request) || (request.HasFormContentType && request.Headers.ContainsKey(Header)));

    /// <summary>Whether a list may be taken: comma-separated values too are no "simple" request, so a browser asks before another site sends them.</summary>
    public static bool HasList(HttpRequest request) => IsOwn(request) && (IsJson(request) || IsOf(request, "text/csv"));

    /// <summary>False where the browser says that another origin asks. Programs other than browsers say nothing.</summary>
    public static bool IsOwn(HttpRequest request) => request.Headers["Sec-Fetch-Site"].ToString() is "" or "same-origin" or "none";

    public static bool IsJson(HttpRequest request) => IsOf(request, "application/json");

    private static bool IsOf(HttpRequest request, string kind) =>
        request.ContentType?.Split(';')[0].Trim().Equals(kind, StringComparison.OrdinalIgnoreCase) == true;
}
