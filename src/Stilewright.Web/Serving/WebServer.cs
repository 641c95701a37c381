using System.Net;
using System.Net.Sockets;
using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.EntityFrameworkCore;
using Stilewright.Web.Desk;
using Stilewright.Web.Makers;
using Stilewright.Web.Shell;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Serving;

/// <summary>The running application.</summary>
public sealed class WebServer : IAsyncDisposable
{
    private readonly WebApplication app;

    private WebServer(WebApplication app, IReadOnlyList<string> addresses, string? joinCode) =>
        (this.app, Addresses, JoinCode) = (app, addresses, joinCode);

    /// <summary>Where it can be reached, the one on this computer first.</summary>
    public IReadOnlyList<string> Addresses { get; }

    /// <summary>What other screens must enter; null where it listens on this computer alone.</summary>
    public string? JoinCode { get; }

    /// <exception cref="RefusalException">The data file or the port cannot be used.</exception>
    public static async Task<WebServer> StartAsync(ServeSettings settings, CancellationToken stop)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(WebServer).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
            EnvironmentName = Environments.Production,
        });
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.Limits.MaxRequestBodySize = Documents.DocumentReader.MostBytes + 64 * 1024;
            if (settings.Share)
                kestrel.ListenAnyIP(settings.Port);
            else if (settings.Port == 0)
                kestrel.Listen(IPAddress.Loopback, 0);
            else
                kestrel.ListenLocalhost(settings.Port);
        });
        builder.Logging.ClearProviders();
        builder.Logging.AddJsonConsole(console => console.UseUtcTimestamp = true);
        builder.Logging.AddFilter("Microsoft", LogLevel.Warning).AddFilter("Microsoft.Hosting.Lifetime", LogLevel.Warning);
        var join = settings.Share ? new JoinCode() : null;
        AddServices(builder.Services, settings, join);

        var app = builder.Build();
        try
        {
            await DataFile.PrepareAsync(settings.Data, app.Services.GetRequiredService<IDbContextFactory<StoreContext>>(), stop);
            await FirstStart.RunAsync(app.Services, settings, stop);
            Use(app);
            await app.StartAsync(stop);
        }
        catch (IOException exception) when (exception.InnerException is SocketException or Microsoft.AspNetCore.Connections.AddressInUseException)
        {
            await app.DisposeAsync();
            throw new RefusalException(FormattableString.Invariant(
                $"Port {settings.Port} is taken, perhaps by a Stilewright that is running already. Look at http://localhost:{settings.Port}, or start with another one: --port {settings.Port + 1}."));
        }
        catch
        {
            await app.DisposeAsync();
            throw;
        }

        return new(app, Reachable(app, settings), join?.Text);
    }

    public Task WaitAsync(CancellationToken stop) => app.WaitForShutdownAsync(stop);

    public ValueTask DisposeAsync() => app.DisposeAsync();

    private static void AddServices(IServiceCollection services, ServeSettings settings, JoinCode? join)
    {
        services.AddRazorComponents().AddInteractiveServerComponents(options =>
        {
            options.DetailedErrors = false;
            // A tablet that goes to sleep at the bench finds its page again; what is typed is kept by the browser besides.
            options.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(5);
            options.DisconnectedCircuitMaxRetained = 60;
        });
        services.AddDbContextFactory<StoreContext>(options => options.UseSqlite(DataFile.ConnectionTo(settings.Data)));
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton<Workshop>();
        services.AddSingleton<MakerBook>();
        services.AddSingleton(settings);
        services.AddScoped<Asker>();
        services.AddCascadingAuthenticationState();
        services.AddProblemDetails();
        services.AddOpenApi();
        services.AddHealthChecks().AddCheck<StoreHealth>("data file");
        services.AddAuthentication(CookieAuthenticationDefaults.AuthenticationScheme).AddCookie(cookie =>
        {
            cookie.Cookie.Name = "stilewright.maker";
            cookie.Cookie.SameSite = SameSiteMode.Strict;
            cookie.ExpireTimeSpan = TimeSpan.FromDays(365);
        });
        services.AddAuthorization();
        services.AddAntiforgery(antiforgery => antiforgery.Cookie.Name = "stilewright.form");
        services.AddDataProtection().SetApplicationName("Stilewright")
            .PersistKeysToFileSystem(new(Path.GetFullPath(settings.Data) + ".keys"));
        services.Configure<HostFilteringOptions>(filter => filter.AllowedHosts = [.. AllowedHosts(settings)]);
        if (join is not null)
            services.AddSingleton(join);
    }

    private static void Use(WebApplication app)
    {
        app.UseHostFiltering();
        app.UseExceptionHandler("/fault", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.Use(SafeHeaders);
        app.UseAuthentication();
        app.Use(KnowTheMaker);
        app.UseAuthorization();
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapHealthChecks("/health");
        app.MapOpenApi("/api/openapi.json");
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
    }

    private static Task SafeHeaders(HttpContext context, RequestDelegate next)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; "
            + "object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        return next(context);
    }

    // Every browser is a maker from its first request on, so that each change has an author.
    private static async Task KnowTheMaker(HttpContext context, RequestDelegate next)
    {
        if (context.User.Identity?.IsAuthenticated != true)
        {
            var id = Guid.NewGuid().ToString("N")[..16];
            await context.RequestServices.GetRequiredService<MakerBook>().EnterAsync(id, "A maker", context.RequestAborted);
            var identity = new ClaimsIdentity([new(ClaimTypes.NameIdentifier, id)], CookieAuthenticationDefaults.AuthenticationScheme);
            var user = new ClaimsPrincipal(identity);
            await context.SignInAsync(user, new AuthenticationProperties { IsPersistent = true });
            context.User = user;
        }

        await next(context);
    }

    private static IEnumerable<string> AllowedHosts(ServeSettings settings)
    {
        IEnumerable<string> own = ["localhost", "127.0.0.1", "[::1]"];
        return settings.Share ? own.Concat([Dns.GetHostName()]).Concat(OwnAddresses()).Concat(settings.Hosts) : own;
    }

    private static IEnumerable<string> OwnAddresses() =>
        System.Net.NetworkInformation.NetworkInterface.GetAllNetworkInterfaces()
            .Where(card => card.OperationalStatus == System.Net.NetworkInformation.OperationalStatus.Up)
            .SelectMany(card => card.GetIPProperties().UnicastAddresses)
            .Select(each => each.Address)
            .Where(address => address.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(address))
            .Select(address => address.ToString());

    private static List<string> Reachable(WebApplication app, ServeSettings settings)
    {
        var port = new Uri(app.Urls.First().Replace("[::]", "localhost", StringComparison.Ordinal).Replace("0.0.0.0", "localhost", StringComparison.Ordinal)).Port;
        List<string> addresses = [FormattableString.Invariant($"http://localhost:{port}")];
        if (settings.Share)
            addresses.AddRange(OwnAddresses().Concat(settings.Hosts).Select(host => FormattableString.Invariant($"http://{host}:{port}")));
        return addresses;
    }
}
