using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.Extensions.DependencyInjection;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Pages;

/// <summary>A server for pictures: nobody else writes into it, and all in it was saved on one day long ago.</summary>
public sealed class LookServer : IAsyncLifetime
{
    public TestServer Server { get; private set; } = null!;

    // Cookies keep the time of the browser, which would drop them as too old.
    public async Task InitializeAsync() => Server = await TestServer.OpenAsync(services => services
        .AddSingleton<TimeProvider>(new SetClock())
        .Configure<CookieAuthenticationOptions>(CookieAuthenticationDefaults.AuthenticationScheme, cookie => cookie.TimeProvider = TimeProvider.System));

    public async Task DisposeAsync() => await Server.DisposeAsync();
}
