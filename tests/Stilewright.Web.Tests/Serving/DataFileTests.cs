using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Stilewright.Web.Desk;
using Stilewright.Web.Makers;
using Stilewright.Web.Serving;
using Stilewright.Web.Storage;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Serving;

public sealed class DataFileTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("stilewright-data-");

    private string Data => Path.Combine(folder.FullName, "shop.db");

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
    }

    private async Task<string> RefusedAsync(string? data = null, int port = 0) =>
        (await Assert.ThrowsAsync<RefusalException>(async () => await WebServer.StartAsync(new() { Port = port, Data = data ?? Data }, default))).Message;

    private async Task MakeAsync()
    {
        await using (var _ = await WebServer.StartAsync(new() { Port = 0, Data = Data }, default))
        {
        }

        SqliteConnection.ClearAllPools();
    }

    private void Execute(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={Data};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    [Fact]
    public async Task A_taken_port_is_told_with_the_way_out()
    {
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var port = ((IPEndPoint)taken.LocalEndpoint).Port;
        var words = await RefusedAsync(port: port);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"Port {port} is taken"), words, StringComparison.Ordinal);
        Assert.Contains("--port", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_missing_folder_and_a_folder_in_place_of_a_file_are_told()
    {
        Assert.Contains("is not there. Make it", await RefusedAsync(Path.Combine(folder.FullName, "none", "shop.db")), StringComparison.Ordinal);
        Assert.Contains("is a folder", await RefusedAsync(folder.FullName), StringComparison.Ordinal);
        Assert.Empty(folder.GetFileSystemInfos());
    }

    [Fact]
    public async Task A_file_that_may_only_be_read_is_told()
    {
        await MakeAsync();
        File.SetAttributes(Data, FileAttributes.ReadOnly);
        Assert.Contains("may only be read", await RefusedAsync(), StringComparison.Ordinal);
        File.SetAttributes(Data, FileAttributes.Normal);
    }

    [Fact]
    public async Task A_damaged_file_stays_byte_for_byte()
    {
        await MakeAsync();
        var bytes = await File.ReadAllBytesAsync(Data);
        // Every page after the first, so that the file still looks like one.
        for (var i = 4096; i < bytes.Length; i += 7)
            bytes[i] ^= 0x5a;
        await File.WriteAllBytesAsync(Data, bytes);
        Assert.Contains("damaged", await RefusedAsync(), StringComparison.Ordinal);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(Data));
    }

    [Fact]
    public async Task A_file_that_is_no_database_stays_byte_for_byte()
    {
        await File.WriteAllTextAsync(Data, "openings of bench 3: 15 1/4 by 19 1/2");
        var bytes = await File.ReadAllBytesAsync(Data);
        Assert.Contains("is not a data file of this program", await RefusedAsync(), StringComparison.Ordinal);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(Data));
    }

    [Theory]
    [InlineData("CREATE TABLE recipes (name TEXT)")]
    [InlineData("CREATE TABLE __EFMigrationsHistory (MigrationId TEXT, ProductVersion TEXT); INSERT INTO __EFMigrationsHistory VALUES ('20200101000000_Recipes', '5')")]
    public async Task A_database_of_another_program_stays_byte_for_byte(string sql)
    {
        Execute(sql);
        var bytes = await File.ReadAllBytesAsync(Data);
        Assert.Contains("of another program", await RefusedAsync(), StringComparison.Ordinal);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(Data));
    }

    [Fact]
    public async Task A_newer_file_stays_byte_for_byte()
    {
        await MakeAsync();
        Execute("PRAGMA journal_mode=DELETE; INSERT INTO __EFMigrationsHistory VALUES ('29990101000000_Later', '99')");
        var bytes = await File.ReadAllBytesAsync(Data);
        Assert.Contains("newer Stilewright", await RefusedAsync(), StringComparison.Ordinal);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(Data));
    }

    [Fact]
    public async Task A_sound_file_starts_again_with_what_was_in_it()
    {
        await MakeAsync();
        var before = await new DataFiles(Data).CountAsync(db => db.Revisions);
        await MakeAsync();
        Assert.Equal(before, await new DataFiles(Data).CountAsync(db => db.Revisions));
        Assert.True(before > 8);
    }

    [Fact]
    public async Task Back_ups_made_while_others_save_are_whole()
    {
        await using var server = await WebServer.StartAsync(new() { Port = 0, Data = Data }, default);
        using var workshop = new Workshop(new DataFiles(Data), TimeProvider.System);
        var course = (await workshop.OpenAsync("evening"))!;
        using var enough = new CancellationTokenSource();
        var saves = 0;
        var saving = Task.Run(async () =>
        {
            while (!enough.IsCancellationRequested)
            {
                saves++;
                var result = await workshop.SaveAsync(course, MakerBook.ProgramId, whole => whole with
                {
                    Name = string.Create(CultureInfo.InvariantCulture, $"Course {saves}"),
                    Projects = [.. whole.Projects.Select(project => project with { Name = string.Create(CultureInfo.InvariantCulture, $"Work {saves}") })],
                });
                course = Assert.IsType<SaveResult.Saved>(result).Course;
            }
        });
        List<int> heads = [];
        for (var i = 0; i < 12; i++)
        {
            var copy = Path.Combine(folder.FullName, string.Create(CultureInfo.InvariantCulture, $"copy-{i}.db"));
            await DataFile.BackUpAsync(Data, copy, default);
            await using var db = new DataFiles(copy).CreateDbContext();
            Assert.Equal("ok", (await db.Database.SqlQueryRaw<string>("PRAGMA integrity_check").ToListAsync()).Single());
            var documents = await db.Documents.Where(document => document.Kind != DocumentKind.Standard).ToListAsync();
            foreach (var document in documents)
                Assert.Equal(document.Head, await db.Revisions.Where(revision => revision.DocumentKey == document.Key).MaxAsync(revision => revision.Number));
            // One save changes the course and all its projects: a copy has all of it or nothing.
            heads.Add(Assert.Single(documents.Select(document => document.Head).Distinct()));
        }

        await enough.CancelAsync();
        await saving;
        Assert.True(heads[^1] > heads[0], "Nothing was saved while the copies were made.");
    }

    [Fact]
    public async Task The_back_up_of_the_page_is_a_data_file_and_leaves_nothing_behind()
    {
        await using var served = await Served.StartAsync(share: true);
        using var own = served.Screen();
        var left = Directory.GetFiles(Path.GetTempPath(), "stilewright-*.db").Length;
        using (var answer = await own.GetAsync(new Uri("/back-up/file", UriKind.Relative)))
        {
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.EndsWith(".db", answer.Content.Headers.ContentDisposition!.FileName!.Trim('"'), StringComparison.Ordinal);
            await File.WriteAllBytesAsync(Data, await answer.Content.ReadAsByteArrayAsync());
        }

        Assert.Equal(await new DataFiles(served.Data).CountAsync(db => db.Revisions), await new DataFiles(Data).CountAsync(db => db.Revisions));
        for (var i = 0; i < 50 && Directory.GetFiles(Path.GetTempPath(), "stilewright-*.db").Length > left; i++)
            await Task.Delay(20);
        Assert.Equal(left, Directory.GetFiles(Path.GetTempPath(), "stilewright-*.db").Length);

        using var tablet = served.Screen("192.0.2.7");
        using var joined = await Served.JoinAsync(tablet, served.Server.JoinCode!);
        using var refused = await tablet.GetAsync(new Uri("/back-up/file", UriKind.Relative));
        Assert.Equal(HttpStatusCode.Forbidden, refused.StatusCode);
    }
}
