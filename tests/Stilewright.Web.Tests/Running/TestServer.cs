using Microsoft.Extensions.DependencyInjection;
using Stilewright.Projects;
using Stilewright.Web.Desk;
using Stilewright.Web.Makers;
using Stilewright.Web.Serving;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Tests.Running;

/// <summary>A running server with a data file of its own, which can be stopped and started again at the same address.</summary>
public sealed class TestServer : IAsyncDisposable
{
    /// <summary>The id of the course that a new data file begins with.</summary>
    public const string SampleId = "evening";

    private readonly string folder = Directory.CreateTempSubdirectory("stilewright-web-").FullName;
    private WebServer? server;
    private OpenCourse? sample;

    private readonly Action<IServiceCollection> configure;

    private TestServer(Action<IServiceCollection>? configure) => this.configure = configure ?? (_ => { });

    /// <summary>Such as <c>http://localhost:41234</c>; the same after a new start.</summary>
    public string Address { get; private set; } = "";

    private string Data => Path.Combine(folder, "server.db");

    /// <param name="configure">Changes the services before the application is built.</param>
    public static async Task<TestServer> OpenAsync(Action<IServiceCollection>? configure = null)
    {
        var server = new TestServer(configure);
        await server.StartAsync();
        return server;
    }

    public async Task StartAsync()
    {
        server = await WebServer.StartAsync(new() { Port = Address.Length == 0 ? 0 : new Uri(Address).Port, Data = Data }, configure, default);
        Address = server.Addresses[0];
    }

    public async Task StopAsync()
    {
        if (server is not null)
            await server.DisposeAsync();
        server = null;
    }

    /// <summary>Puts a course into the data file, beside the running server.</summary>
    public async Task AddAsync(Course course)
    {
        using var workshop = Workshop();
        Assert.IsType<SaveResult.Saved>(await workshop.AddAsync(course, null, MakerBook.ProgramId, RevisionCause.Edit));
    }

    /// <summary>A course as the data file has it now.</summary>
    public async Task<OpenCourse> CourseAsync(string courseId)
    {
        using var workshop = Workshop();
        return (await workshop.OpenAsync(courseId))!;
    }

    /// <summary>The course that a new data file begins with, as it was when it was asked for first.</summary>
    public async Task<OpenCourse> SampleAsync() => sample ??= await ReadSampleAsync();

    /// <summary>The project at bench 1 as the data file has it now.</summary>
    public async Task<OpenProject> ProjectAsync(string courseId) => (await CourseAsync(courseId)).AtBench(1)!;

    public async ValueTask DisposeAsync()
    {
        await StopAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    private async Task<OpenCourse> ReadSampleAsync()
    {
        using var workshop = Workshop();
        return (await workshop.OpenAsync(SampleId))!;
    }

    private Workshop Workshop() => new(new DataFiles(Data), TimeProvider.System);
}
