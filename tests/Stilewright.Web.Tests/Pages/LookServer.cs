using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Stilewright.Web.Desk;
using Stilewright.Web.Storage;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Pages;

/// <summary>A server for pictures: nobody else writes into it, and all in it was saved on one day long ago.</summary>
public sealed class LookServer : IAsyncLifetime
{
    public TestServer Server { get; private set; } = null!;

    public async Task InitializeAsync() => Server = await TestServer.OpenAsync(services =>
        services.AddSingleton(provider => new Workshop(provider.GetRequiredService<IDbContextFactory<StoreContext>>(), new SetClock())));

    public async Task DisposeAsync() => await Server.DisposeAsync();
}
