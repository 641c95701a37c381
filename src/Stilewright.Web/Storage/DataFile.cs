using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Stilewright.Web.Desk;
using Stilewright.Web.Serving;

namespace Stilewright.Web.Storage;

/// <summary>The file that everything is kept in.</summary>
public static class DataFile
{
    // SQLITE_BUSY, SQLITE_LOCKED, SQLITE_CORRUPT and SQLITE_NOTADB, from the result codes of sqlite.org.
    private const int SqliteBusy = 5;
    private const int SqliteLocked = 6;
    private const int SqliteCorrupt = 11;
    private const int SqliteNotADatabase = 26;
    private const int MostAttempts = 100;
    // The tables as all migrations leave them, and the sample course as it is saved; both are written and compared by a test.
    private const string Schema = "new/schema.sql";
    private const string Sample = "new/sample.sql";
    private static readonly TimeSpan BetweenAttempts = TimeSpan.FromMilliseconds(50);

    public static string ConnectionTo(string path) => new SqliteConnectionStringBuilder { DataSource = path, DefaultTimeout = 10 }.ToString();

    /// <summary>Makes the file, or brings its tables up to this program. A file that is damaged, foreign or newer is left untouched.</summary>
    /// <exception cref="RefusalException">The file cannot be used; the message says what to do.</exception>
    public static async Task PrepareAsync(string path, IDbContextFactory<StoreContext> store, CancellationToken stop)
    {
        if (Path.GetDirectoryName(Path.GetFullPath(path)) is { } folder && !Directory.Exists(folder))
            throw new RefusalException($"The folder {folder} is not there. Make it, or name another data file with --data.");
        if (Directory.Exists(path))
            throw new RefusalException($"{path} is a folder. Name a file with --data.");
        var tables = Tables.None;
        if (File.Exists(path))
        {
            if (!MayBeWritten(path))
                throw new RefusalException($"The data file {path} may only be read. Allow writing to it, or name another data file with --data.");
            if (new FileInfo(path).Length > 0)
                tables = await CheckAsync(path, store, stop);
        }

        try
        {
            // Migrations are for older files: they take longer than all else at a start.
            if (tables is Tables.Older)
            {
                await using var db = await store.CreateDbContextAsync(stop);
                await db.Database.MigrateAsync(stop);
            }

            await using var connection = new SqliteConnection(ConnectionTo(path));
            await connection.OpenAsync(stop);
            await using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA journal_mode=WAL;" + (tables is Tables.None ? await ScriptAsync(Schema, stop) : "");
            await command.ExecuteNonQueryAsync(stop);
        }
        catch (SqliteException exception)
        {
            throw new RefusalException($"The data file {path} cannot be written: {exception.Message} Look whether the folder may be written to and the disk has room.");
        }
    }

    /// <summary>Fills a file that holds no document yet with the sample course.</summary>
    /// <param name="author">The maker who saves it; in the book already.</param>
    public static async Task AddSampleAsync(string path, string author, DateTime now, CancellationToken stop)
    {
        await using var connection = new SqliteConnection(ConnectionTo(path));
        await connection.OpenAsync(stop);
        await using var transaction = await connection.BeginTransactionAsync(stop);
        await using var command = connection.CreateCommand();
        command.CommandText = "SELECT EXISTS (SELECT 1 FROM documents)";
        if (await command.ExecuteScalarAsync(stop) is not 0L)
            return;
        command.CommandText = await ScriptAsync(Sample, stop);
        command.Parameters.AddWithValue("@author", author);
        command.Parameters.AddWithValue("@now", now);
        command.Parameters.AddWithValue("@version", ProgramVersion.Text);
        await command.ExecuteNonQueryAsync(stop);
        await transaction.CommitAsync(stop);
    }

    private static async Task<string> ScriptAsync(string name, CancellationToken stop)
    {
        await using var stream = typeof(DataFile).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"This build carries no {name}.");
        using StreamReader reader = new(stream);
        return await reader.ReadToEndAsync(stop);
    }

    private static bool MayBeWritten(string path)
    {
        if (File.GetAttributes(path).HasFlag(FileAttributes.ReadOnly))
            return false;
        try
        {
            using var _ = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete);
            return true;
        }
        catch (UnauthorizedAccessException)
        {
            return false;
        }
    }

    // Opened read-only, so that a file this program should not touch stays as it is.
    private static async Task<Tables> CheckAsync(string path, IDbContextFactory<StoreContext> store, CancellationToken stop)
    {
        var keep = "It was left untouched. Put it aside and restore a copy, or name another data file with --data.";
        HashSet<string> applied = [];
        try
        {
            await using var connection = new SqliteConnection(new SqliteConnectionStringBuilder
            {
                DataSource = path,
                Mode = SqliteOpenMode.ReadOnly,
                Pooling = false,
            }.ToString());
            await connection.OpenAsync(stop);
            await using var check = connection.CreateCommand();
            check.CommandText = "PRAGMA quick_check(1)";
            if (await check.ExecuteScalarAsync(stop) is not "ok")
                throw new RefusalException($"The data file {path} is damaged. {keep}");
            await using var tables = connection.CreateCommand();
            tables.CommandText = "SELECT name FROM sqlite_master WHERE type = 'table'";
            HashSet<string> names = [];
            await using (var rows = await tables.ExecuteReaderAsync(stop))
            {
                while (await rows.ReadAsync(stop))
                    names.Add(rows.GetString(0));
            }

            if (names.Count == 0)
                return Tables.None;
            if (!names.Contains("__EFMigrationsHistory"))
                throw new RefusalException($"{path} is a database of another program. {keep}");
            await using var history = connection.CreateCommand();
            history.CommandText = "SELECT MigrationId FROM __EFMigrationsHistory";
            await using var steps = await history.ExecuteReaderAsync(stop);
            while (await steps.ReadAsync(stop))
                applied.Add(steps.GetString(0));
        }
        catch (SqliteException)
        {
            throw new RefusalException($"{path} is not a data file of this program, or it is damaged. {keep}");
        }

        await using var db = await store.CreateDbContextAsync(stop);
        var known = db.Database.GetMigrations().ToHashSet(StringComparer.Ordinal);
        if (applied.Count > 0 && !applied.Overlaps(known))
            throw new RefusalException($"{path} is a database of another program. {keep}");
        if (applied.Except(known, StringComparer.Ordinal).Any())
            throw new RefusalException($"The data file {path} was made by a newer Stilewright. It was left untouched: get the newer program, or name another data file with --data.");
        return applied.IsSupersetOf(known) ? Tables.Current : Tables.Older;
    }

    // A backup begins anew where a save is just being written; SQLite says so instead of waiting.
    private static void Copy(SqliteConnection from, SqliteConnection to, CancellationToken stop)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                from.BackupDatabase(to);
                return;
            }
            catch (SqliteException exception) when (exception.SqliteErrorCode is SqliteBusy or SqliteLocked && attempt < MostAttempts)
            {
                stop.ThrowIfCancellationRequested();
                Thread.Sleep(BetweenAttempts);
            }
        }
    }

    /// <summary>Copies a data file with SQLite's online backup, which waits for nobody and breaks no write in half.</summary>
    /// <exception cref="RefusalException">There is no such file, or the copy would replace one.</exception>
    public static async Task BackUpAsync(string path, string copy, CancellationToken stop)
    {
        if (!File.Exists(path))
            throw new RefusalException($"There is no data file {path}. Name it with --data.");
        if (Path.GetDirectoryName(Path.GetFullPath(copy)) is { } folder && !Directory.Exists(folder))
            throw new RefusalException($"The folder {folder} is not there. Make it, or name another file with --out.");
        if (File.Exists(copy) || Directory.Exists(copy))
            throw new RefusalException($"{copy} is there already. Name another file with --out.");
        try
        {
            await using var from = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ToString());
            await using var to = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = copy, Pooling = false }.ToString());
            await from.OpenAsync(stop);
            await to.OpenAsync(stop);
            await Task.Run(() => Copy(from, to, stop), stop);
        }
        catch (SqliteException exception)
        {
            File.Delete(copy);
            throw new RefusalException(exception.SqliteErrorCode is SqliteNotADatabase or SqliteCorrupt
                ? $"{path} is not a data file of this program, or it is damaged. It was not copied." : $"{path} could not be copied to {copy}: {exception.Message}");
        }
    }

    private enum Tables
    {
        None,
        Older,
        Current,
    }
}
