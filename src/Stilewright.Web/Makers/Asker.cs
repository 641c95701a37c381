using System.Security.Claims;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Components.Authorization;

namespace Stilewright.Web.Makers;

/// <summary>The one place that knows who is asking. Until makers sign in, that is who sits at this browser.</summary>
public sealed class Asker(AuthenticationStateProvider state)
{
    private const string Place = "stilewright.place";

    /// <summary>The id of the maker at this screen.</summary>
    public async Task<string> IdAsync() => IdOf((await state.GetAuthenticationStateAsync()).User);

    /// <summary>Whether this is a screen of the computer that the application runs on: the instructor's.</summary>
    public async Task<bool> IsAtThisComputerAsync() => IsAtThisComputer((await state.GetAuthenticationStateAsync()).User);

    public static bool IsAtThisComputer(ClaimsPrincipal user) => user.HasClaim(claim => claim.Type == Place);

    /// <exception cref="InvalidOperationException">Nobody is known, which the server sees to for every page.</exception>
    public static string IdOf(ClaimsPrincipal user) =>
        user.FindFirstValue(ClaimTypes.NameIdentifier) ?? throw new InvalidOperationException("Every page has a maker.");

    /// <summary>Someone who was not here before.</summary>
    internal static ClaimsPrincipal Someone() => Of(Guid.NewGuid().ToString("N")[..16]);

    /// <summary>A program that carries no cookie.</summary>
    internal static ClaimsPrincipal OtherProgram() => Of(MakerBook.OtherProgramId);

    /// <summary>Notes where the asker sits, for one request and the page that comes of it; no cookie carries it.</summary>
    internal static void MarkAtThisComputer(ClaimsPrincipal user) => user.AddIdentity(new ClaimsIdentity([new Claim(Place, "this computer")]));

    private static ClaimsPrincipal Of(string id) => new(new ClaimsIdentity([new(ClaimTypes.NameIdentifier, id)], CookieAuthenticationDefaults.AuthenticationScheme));
}
