namespace Stilewright.Web.Features.Printing;

/// <summary>How far a print is.</summary>
public enum PrintState
{
    Running,
    Ready,
    Stopped,
    Failed,
}

/// <summary>A print that is being made while its page waits.</summary>
public sealed class PrintJob(string id, string authorId, string what, string fileName) : IProgress<int>, IDisposable
{
    // A page is told of every so many sheets: it has other things to do than to count.
    private const int SheetsBetweenReports = 5;

    private readonly CancellationTokenSource stopping = new();
    private readonly Lock finishing = new();
    private FileStream? file;
    private bool isDisposed;

    /// <summary>Raised as sheets are made and when it ends, on the thread that makes them.</summary>
    public event Action? Changed;

    /// <summary>Cannot be guessed.</summary>
    public string Id { get; } = id;

    public string AuthorId { get; } = authorId;
    public string What { get; } = what;
    public string FileName { get; } = fileName;
    public PrintState State { get; private set; }

    /// <summary>Sheets made so far.</summary>
    public int Sheets { get; private set; }

    /// <summary>Null while it runs.</summary>
    public DateTimeOffset? FinishedAt { get; private set; }

    public bool IsFinished => FinishedAt is not null;

    internal CancellationToken Stopping => stopping.Token;

    void IProgress<int>.Report(int value)
    {
        Sheets = value;
        if (value == 1 || value % SheetsBetweenReports == 0)
            Changed?.Invoke();
    }

    /// <summary>Ends it before its last sheet; a finished one stays as it is.</summary>
    public void Stop()
    {
        lock (finishing)
        {
            if (!isDisposed)
                stopping.Cancel();
        }
    }

    /// <summary>The PDF from its beginning, for one download; null where it is not ready, or let go.</summary>
    public FileStream? Open()
    {
        lock (finishing)
        {
            return isDisposed || file is null ? null
                : new(file.Name, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 1 << 16, FileOptions.Asynchronous);
        }
    }

    public void Dispose()
    {
        lock (finishing)
        {
            if (isDisposed)
                return;
            isDisposed = true;
            file?.Dispose();
            stopping.Dispose();
        }
    }

    internal void Finish(FileStream made, DateTimeOffset now)
    {
        lock (finishing)
        {
            if (isDisposed)
                made.Dispose();
            else
                file = made;
        }

        End(PrintState.Ready, now);
    }

    internal void End(PrintState state, DateTimeOffset now)
    {
        (State, FinishedAt) = (state, now);
        Changed?.Invoke();
    }
}
