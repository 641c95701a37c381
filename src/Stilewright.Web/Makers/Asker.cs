using System.Security.Claims;
using Microsoft.AspNetCore.Components.Authorization;

namespace Stilewright.Web.Makers;

/// <summary>The one place that knows who is asking. Until makers sign in, that is who sits at this browser.</summary>
public sealed class Asker(AuthenticationStateProvider state)
{
    /// <summary>The id of the maker at this screen.</summary>
    public async Task<string> IdAsync() => IdOf((await state.GetAuthenticationStateAsync()).User);

    /// <exception cref="InvalidOperationException">Nobody is known, which the server sees to for every request.</exception>
    public static string IdOf(ClaimsPrincipal user) =>
        user.FindFirstValue(ClaimTypes.NameIdentifier) ?? throw new InvalidOperationException("Every request has a maker.");
}
