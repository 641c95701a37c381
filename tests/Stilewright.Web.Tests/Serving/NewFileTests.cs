using System.Globalization;
using System.Text;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Stilewright.Documents;
using Stilewright.Projects;
using Stilewright.Web.Desk;
using Stilewright.Web.Makers;
using Stilewright.Web.Storage;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Serving;

/// <summary>A new data file is made by two scripts, which is quicker; they make what migrations and an import would.</summary>
public sealed class NewFileTests : IDisposable
{
    private readonly SetClock clock = new() { Now = new(2026, 1, 12, 18, 30, 0, 125, TimeSpan.Zero) };
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("stilewright-new-");

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
    }

    [Fact]
    public async Task The_scripts_make_what_migrations_and_an_import_make()
    {
        var slow = await MakeSlowlyAsync();
        if (Environment.GetEnvironmentVariable("STILEWRIGHT_WRITE") == "1")
        {
            await using var db = new DataFiles(slow).CreateDbContext();
            await File.WriteAllTextAsync(Script("schema.sql"), db.GetService<IMigrator>().GenerateScript().ReplaceLineEndings("\n"));
            await File.WriteAllTextAsync(Script("sample.sql"), Inserts(slow));
            return;
        }

        // What this build carries, not what lies in the folder.
        var quick = Path.Combine(folder.FullName, "quick.db");
        DataFiles files = new(quick);
        await DataFile.PrepareAsync(quick, files, default);
        await new MakerBook(files, clock).EnterAsync(MakerBook.ProgramId, "the program");
        await DataFile.AddSampleAsync(quick, MakerBook.ProgramId, clock.Now.UtcDateTime, default);
        Assert.True(All(slow).SequenceEqual(All(quick)), "A script of src/Stilewright.Web/Storage/New is stale: run this test once with STILEWRIGHT_WRITE=1, build, and commit it.");
    }

    [Fact]
    public async Task A_new_file_has_no_migration_left_and_takes_the_sample_once()
    {
        var path = Path.Combine(folder.FullName, "new.db");
        DataFiles files = new(path);
        await DataFile.PrepareAsync(path, files, default);
        await new MakerBook(files, clock).EnterAsync(MakerBook.ProgramId, "the program");
        await using (var db = files.CreateDbContext())
        {
            Assert.Empty(await db.Database.GetPendingMigrationsAsync());
            Assert.False(db.Database.HasPendingModelChanges());
            await db.Database.MigrateAsync();
        }

        await DataFile.AddSampleAsync(path, MakerBook.ProgramId, clock.Now.UtcDateTime, default);
        var filled = All(path);
        await DataFile.AddSampleAsync(path, MakerBook.ProgramId, clock.Now.UtcDateTime.AddDays(1), default);
        await DataFile.PrepareAsync(path, files, default);
        Assert.Equal(filled, All(path));
        using Workshop workshop = new(files, TimeProvider.System);
        var course = Assert.Single(await workshop.CoursesAsync());
        Assert.Equal(clock.Now.UtcDateTime, course.ChangedAt);
        Assert.Equal(course.Benches, (await workshop.OpenAsync(course.Id))!.Projects.Count);
    }

    [Fact]
    public async Task A_file_that_waits_for_migrations_gets_them()
    {
        var path = Path.Combine(folder.FullName, "older.db");
        using (var connection = Open(path))
        {
            using var command = connection.CreateCommand();
            command.CommandText = "CREATE TABLE \"__EFMigrationsHistory\" (\"MigrationId\" TEXT NOT NULL CONSTRAINT \"PK___EFMigrationsHistory\" PRIMARY KEY, \"ProductVersion\" TEXT NOT NULL)";
            command.ExecuteNonQuery();
        }

        DataFiles files = new(path);
        await DataFile.PrepareAsync(path, files, default);
        await using var db = files.CreateDbContext();
        Assert.Empty(await db.Database.GetPendingMigrationsAsync());
        Assert.Equal(0, await db.Documents.CountAsync());
    }

    private async Task<string> MakeSlowlyAsync()
    {
        var path = Path.Combine(folder.FullName, "slow.db");
        DataFiles files = new(path);
        await using (var db = files.CreateDbContext())
            await db.Database.MigrateAsync();
        await new MakerBook(files, clock).EnterAsync(MakerBook.ProgramId, "the program");
        using Workshop workshop = new(files, clock);
        var course = Assert.IsType<DocumentResult<Course>.Read>(DocumentReader.ReadCourse(await File.ReadAllBytesAsync(Repository.EveningCourse))).Document;
        Assert.IsType<SaveResult.Saved>(await workshop.AddAsync(course, null, MakerBook.ProgramId, RevisionCause.Import));
        return path;
    }

    // All tables as they were declared, and every row of them; but for the lock, which migrations make for themselves.
    private static List<string> All(string path)
    {
        using var connection = Open(path);
        List<string> all = [.. Rows(connection, "SELECT type, name, tbl_name, sql FROM sqlite_master WHERE name <> '__EFMigrationsLock' ORDER BY type, name")];
        foreach (var table in Names(connection))
            all.AddRange(Rows(connection, $"SELECT * FROM \"{table}\" ORDER BY 1, 2").Select(row => $"{table}: {row}"));
        return all;
    }

    private static List<string> Names(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT name FROM sqlite_master WHERE type = 'table' AND name <> '__EFMigrationsLock' ORDER BY rootpage";
        using var reader = command.ExecuteReader();
        List<string> names = [];
        while (reader.Read())
            names.Add(reader.GetString(0));
        return names;
    }

    private static List<string> Rows(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        List<string> rows = [];
        while (reader.Read())
            rows.Add(string.Join('|', Enumerable.Range(0, reader.FieldCount).Select(at => $"{reader.GetDataTypeName(at)} {Literal(reader.GetValue(at))}")));
        return rows;
    }

    // What is in the tables of the program, as insertions; time, version and author are those of the start.
    private static string Inserts(string path)
    {
        using var connection = Open(path);
        var script = new StringBuilder();
        foreach (var table in Names(connection).Where(name => name is not ("makers" or "sqlite_sequence" or "__EFMigrationsHistory")))
        {
            using var command = connection.CreateCommand();
            command.CommandText = $"SELECT * FROM \"{table}\" ORDER BY 1, 2";
            using var reader = command.ExecuteReader();
            while (reader.Read())
            {
                var columns = Enumerable.Range(0, reader.FieldCount).Select(reader.GetName).ToList();
                var values = columns.Select((column, at) => column switch
                {
                    "MadeAt" => "@now",
                    "AuthorId" => "@author",
                    "ProgramVersion" => "@version",
                    _ => Literal(reader.GetValue(at)),
                });
                script.Append(CultureInfo.InvariantCulture, $"INSERT INTO \"{table}\" ({string.Join(", ", columns.Select(column => $"\"{column}\""))}) VALUES ({string.Join(", ", values)});\n");
            }
        }

        return script.ToString();
    }

    private static string Literal(object value) => value switch
    {
        DBNull => "NULL",
        string text => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'",
        _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
    };

    private static SqliteConnection Open(string path)
    {
        SqliteConnection connection = new($"Data Source={path};Pooling=False");
        connection.Open();
        return connection;
    }

    private static string Script(string name) => Path.Combine(Repository.Folder("src/Stilewright.Web/Storage/New"), name);
}
