using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Components.Endpoints;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Stilewright.Drawing.Letters;
using Stilewright.Web.Desk;
using Stilewright.Web.Features.Api;
using Stilewright.Web.Features.BackUp;
using Stilewright.Web.Features.Join;
using Stilewright.Web.Features.Printing;
using Stilewright.Web.Makers;
using Stilewright.Web.Shell;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Serving;

/// <summary>The running application.</summary>
public sealed class WebServer : IAsyncDisposable
{
    // Pages that are open have nothing to lose: what is typed is kept by the browser, what was saved is on the disk.
    private static readonly TimeSpan TimeToStop = TimeSpan.FromMilliseconds(500);

    private readonly WebApplication app;
    private readonly Entrance entrance;

    private WebServer(WebApplication app, Entrance entrance) => (this.app, this.entrance) = (app, entrance);

    /// <summary>Where it can be reached, the one on this computer first.</summary>
    public IReadOnlyList<string> Addresses => entrance.Addresses;

    /// <summary>What other screens must enter; null where it listens on this computer alone.</summary>
    public string? JoinCode => entrance.Code?.Text;

    /// <exception cref="RefusalException">The data file or the port cannot be used.</exception>
    public static Task<WebServer> StartAsync(ServeSettings settings, CancellationToken stop) => StartAsync(settings, _ => { }, stop);

    /// <param name="configure">Changes the services before the application is built, for tests.</param>
    internal static async Task<WebServer> StartAsync(ServeSettings settings, Action<IServiceCollection> configure, CancellationToken stop)
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
        // What the host adds of its own accord goes: it would answer wrong host names before this program can say why, and believe
        // headers about who asks wherever an environment variable tells it to.
        builder.Services.RemoveAll<IStartupFilter>();
        builder.Logging.ClearProviders();
        if (settings.Log)
        {
            builder.Logging.AddJsonConsole(console => console.UseUtcTimestamp = true);
            builder.Services.Configure<Microsoft.Extensions.Logging.Console.ConsoleLoggerOptions>(console => console.LogToStandardErrorThreshold = LogLevel.Trace);
        }
        else
        {
            builder.Logging.AddProvider(new FaultNotice(Console.Error, TimeProvider.System));
        }

        builder.Logging.AddFilter("Microsoft", LogLevel.Warning);
        var entrance = new Entrance(settings.Share ? new JoinCode() : null);
        AddServices(builder.Services, settings, entrance);
        configure(builder.Services);

        var app = builder.Build();
        try
        {
            await DataFile.PrepareAsync(settings.Data, app.Services.GetRequiredService<IDbContextFactory<StoreContext>>(), stop);
            KeyFolder.Prepare(settings.Data);
            await FirstStart.RunAsync(app.Services, settings, stop);
            Use(app, entrance);
            await app.StartAsync(stop);
        }
        catch (IOException exception) when (exception.InnerException is SocketException or Microsoft.AspNetCore.Connections.AddressInUseException)
        {
            await app.DisposeAsync();
            throw new RefusalException(FormattableString.Invariant(
                $"Port {settings.Port} is taken, perhaps by a Stilewright that is running already. Look at http://localhost:{settings.Port}, or start with another one: --port {(settings.Port < 65535 ? settings.Port + 1 : 5280)}."));
        }
        catch (SocketException exception)
        {
            await app.DisposeAsync();
            throw new RefusalException(FormattableString.Invariant(
                $"Port {settings.Port} cannot be listened on: {exception.Message}. Ports below 1024 are kept for the system; start with another one, such as --port 5280."));
        }
        catch
        {
            await app.DisposeAsync();
            throw;
        }

        entrance.Addresses = Reachable(app, settings);
        return new(app, entrance);
    }

    public Task WaitAsync(CancellationToken stop) => app.WaitForShutdownAsync(stop);

    public ValueTask DisposeAsync() => app.DisposeAsync();

    private static void AddServices(IServiceCollection services, ServeSettings settings, Entrance entrance)
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
        services.AddSingleton<HandOutBook>();
        services.AddSingleton<PrinterBook>();
        services.AddSingleton<AttemptBook>();
        services.AddSingleton<PrintRoom>();
        services.AddSingleton(settings);
        services.AddSingleton(entrance);
        services.AddSingleton<GuessLimit>();
        services.AddScoped<Asker>();
        services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeToStop);
        services.AddCascadingAuthenticationState();
        services.AddProblemDetails();
        services.AddOpenApi();
        services.AddHealthChecks().AddCheck<StoreHealth>("data file");
        services.AddAuthentication(CookieAuthenticationDefaults.AuthenticationScheme).AddCookie(cookie =>
        {
            cookie.Cookie.Name = "stilewright.maker";
            // Sent along when a link in a message leads here, or its reader would be someone new; never with what another site posts.
            cookie.Cookie.SameSite = SameSiteMode.Lax;
            cookie.ExpireTimeSpan = TimeSpan.FromDays(365);
        });
        services.AddAuthorization();
        services.AddAntiforgery(antiforgery => antiforgery.Cookie.Name = "stilewright.form");
        services.AddDataProtection().SetApplicationName("Stilewright")
            .PersistKeysToFileSystem(new(KeyFolder.Of(settings.Data)));
        services.Configure<HostFilteringOptions>(filter =>
        {
            filter.AllowedHosts = [.. AllowedHosts(settings)];
            filter.AllowEmptyHosts = false;
            filter.IncludeFailureMessage = false;
        });
    }

    private static void Use(WebApplication app, Entrance entrance)
    {
        app.Use(TellWrongHost);
        app.UseHostFiltering();
        app.UseExceptionHandler("/fault", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.UseApiProblems();
        app.Use(SafeHeaders);
        if (entrance.Code is { } code)
        {
            app.UseMiddleware<JoinGate>(code);
            app.MapJoin(code);
        }

        app.UseAuthentication();
        app.Use(KnowTheMaker);
        app.UseAuthorization();
        app.UseAntiforgery();
        app.MapStaticAssets();
        // The letters of the drawings, from where the drawings have them.
        app.MapGet("/fonts/{name}", Results<FileStreamHttpResult, NotFound> (HttpContext context, string name) =>
        {
            if (Typesetter.OpenFile(name) is not { } font)
                return TypedResults.NotFound();
            context.Response.Headers.CacheControl = "public, max-age=604800";
            return TypedResults.Stream(font, "font/ttf");
        }).ExcludeFromDescription();
        app.MapHealthChecks("/health");
        app.MapBackUp();
        app.MapOpenApi("/api/openapi.json");
        app.MapApi();
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

    private static async Task TellWrongHost(HttpContext context, RequestDelegate next)
    {
        await next(context);
        if (context.Response is { HasStarted: false, StatusCode: StatusCodes.Status400BadRequest, ContentType: null })
        {
            await TypedResults.Problem("This computer is not known under the name in the address. Use an address that was told at the start, or start with --share --host and this name.",
                statusCode: StatusCodes.Status400BadRequest, title: "Wrong host name").ExecuteAsync(context);
        }
    }

    // Every browser is a maker from its first page on, so that each change has an author; files and health checks need none. Other programs
    // carry no cookie, and are one maker together.
    private static async Task KnowTheMaker(HttpContext context, RequestDelegate next)
    {
        if (context.GetEndpoint()?.Metadata.GetMetadata<ComponentTypeMetadata>() is not null
            || context.Request.Path.StartsWithSegments("/api") || context.Request.Path.StartsWithSegments("/_blazor"))
        {
            if (context.User.Identity?.IsAuthenticated != true && context.Request.Path.StartsWithSegments("/api"))
            {
                context.User = Asker.OtherProgram();
            }
            else if (context.User.Identity?.IsAuthenticated != true)
            {
                context.User = Asker.Someone();
                await context.SignInAsync(context.User, new AuthenticationProperties { IsPersistent = true });
            }

            // Also of one whose cookie is older than the data file.
            await context.RequestServices.GetRequiredService<MakerBook>().EnterAsync(Asker.IdOf(context.User), MakerBook.Unnamed, context.RequestAborted);
            if (ThisComputer.Asks(context))
                Asker.MarkAtThisComputer(context.User);
        }

        await next(context);
    }

    private static IEnumerable<string> AllowedHosts(ServeSettings settings)
    {
        IEnumerable<string> own = ["localhost", "127.0.0.1", "[::1]"];
        return settings.Share ? own.Concat([Dns.GetHostName(), $"{Dns.GetHostName()}.local"]).Concat(OwnAddresses()).Concat(settings.Hosts) : own;
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
