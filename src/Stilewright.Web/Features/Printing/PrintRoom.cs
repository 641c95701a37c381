using System.Collections.Concurrent;
using System.Security.Cryptography;
using Stilewright.Drawing.Writing;
using Stilewright.Web.Desk;
using Stilewright.Wording;

namespace Stilewright.Web.Features.Printing;

/// <summary>Where paper is made: a few prints at once, each into a file that is gone when it is let go.</summary>
public sealed partial class PrintRoom(HandOutBook book, TimeProvider clock, ILogger<PrintRoom> log) : IDisposable
{
    /// <summary>Prints written at the same time; more wait, so that the pages stay quick.</summary>
    public const int AtOnce = 2;

    /// <summary>Jobs held at the same time, finished ones included.</summary>
    public const int MostJobs = 30;

    /// <summary>Jobs of one maker that are not finished.</summary>
    public const int MostOfOneMaker = 3;

    /// <summary>How long a finished job can be downloaded.</summary>
    public static readonly TimeSpan KeptFor = TimeSpan.FromMinutes(20);

    private readonly SemaphoreSlim presses = new(AtOnce, AtOnce);
    private readonly ConcurrentDictionary<string, PrintJob> jobs = new(StringComparer.Ordinal);
    private readonly Lock starting = new();

    /// <summary>Writes a print and records what it hands out.</summary>
    /// <returns>The file, at its beginning; it is deleted when it is closed.</returns>
    /// <exception cref="OperationCanceledException">Stopped before the last page; nothing is recorded.</exception>
    public async Task<FileStream> PrintAsync(OpenCourse course, string authorId, PaperPrint print, IProgress<int>? progress, CancellationToken stop)
    {
        await presses.WaitAsync(stop);
        FileStream? file = null;
        try
        {
            file = TemporaryFile();
            // On a thread of its own: laying sheets out is work for the processor, and the pool serves the pages.
            await Task.Factory.StartNew(
                () => PdfWriter.Write(file, print.Facts, print.Pages, progress, stop), stop, TaskCreationOptions.LongRunning, TaskScheduler.Default);
            if (print.HandedOut is { } told)
                await book.RecordAsync(course, authorId, print.What, told, stop);
            file.Position = 0;
            return file;
        }
        catch
        {
            if (file is not null)
                await file.DisposeAsync();
            throw;
        }
        finally
        {
            presses.Release();
        }
    }

    /// <summary>Starts a print that a page follows.</summary>
    public Found<PrintJob> Start(OpenCourse course, string authorId, PaperPrint print)
    {
        ClearOld();
        lock (starting)
        {
            if (jobs.Values.Count(each => each.AuthorId == authorId && !each.IsFinished) >= MostOfOneMaker)
                return new Found<PrintJob>.Missing("Your other prints are still being made. Wait for one to be ready, or stop it.");
            if (jobs.Count >= MostJobs && !Remove(jobs.Values.Where(each => each.IsFinished).MinBy(each => each.FinishedAt)))
                return new Found<PrintJob>.Missing("Many prints are being made at the moment. Try again in a minute.");
            var job = new PrintJob(Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16)), authorId, print.What, print.FileName);
            jobs[job.Id] = job;
            _ = RunAsync(job, course, print);
            return new Found<PrintJob>.There(job);
        }
    }

    /// <summary>A job of a maker; null where there is none, or it is another maker's.</summary>
    public PrintJob? Find(string id, string authorId)
    {
        ClearOld();
        return jobs.TryGetValue(id, out var job) && job.AuthorId == authorId ? job : null;
    }

    /// <summary>Lets a job go, with its file.</summary>
    public bool Remove(PrintJob? job)
    {
        if (job is null || !jobs.TryRemove(job.Id, out _))
            return false;
        job.Stop();
        job.Dispose();
        return true;
    }

    public void Dispose()
    {
        foreach (var job in jobs.Values)
            Remove(job);
        presses.Dispose();
    }

    private async Task RunAsync(PrintJob job, OpenCourse course, PaperPrint print)
    {
        try
        {
            job.Finish(await PrintAsync(course, job.AuthorId, print, job, job.Stopping), clock.GetUtcNow());
        }
        catch (OperationCanceledException)
        {
            job.End(PrintState.Stopped, clock.GetUtcNow());
        }
        catch (Exception fault)
        {
            LogFailure(fault, print.What);
            job.End(PrintState.Failed, clock.GetUtcNow());
        }
    }

    private void ClearOld()
    {
        var before = clock.GetUtcNow() - KeptFor;
        foreach (var job in jobs.Values.Where(job => job.FinishedAt < before))
            Remove(job);
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "A print failed: {What}")]
    private partial void LogFailure(Exception fault, string what);

    // Nothing of its name comes from outside.
    private static FileStream TemporaryFile() => new(
        Path.Combine(Path.GetTempPath(), $"stilewright-{Path.GetRandomFileName()}.pdf"), FileMode.CreateNew, FileAccess.ReadWrite,
        FileShare.Read | FileShare.Delete, bufferSize: 1 << 16, FileOptions.DeleteOnClose | FileOptions.Asynchronous);
}
