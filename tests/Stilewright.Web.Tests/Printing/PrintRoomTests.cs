using Microsoft.Extensions.Logging.Abstractions;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Writing;
using Stilewright.Web.Desk;
using Stilewright.Web.Features.Printing;
using Stilewright.Web.Makers;
using Stilewright.Web.Storage;
using Stilewright.Web.Tests.Running;
using Stilewright.Wording;

namespace Stilewright.Web.Tests.Printing;

public sealed class PrintRoomTests : IAsyncLifetime, IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("stilewright-print-").FullName;
    private readonly SetClock clock = new();
    private Workshop workshop = null!;
    private HandOutBook book = null!;
    private PrintRoom room = null!;
    private OpenCourse course = null!;

    public async Task InitializeAsync()
    {
        var store = new DataFiles(Path.Combine(folder, "x.db"));
        await DataFile.PrepareAsync(Path.Combine(folder, "x.db"), store, default);
        var makers = new MakerBook(store, clock);
        await makers.EnterAsync("me", "Me");
        await makers.EnterAsync("you", "You");
        (workshop, book) = (new(store, clock), new(store, clock));
        room = new(book, clock, NullLogger<PrintRoom>.Instance);
        var read = Assert.IsType<Documents.DocumentResult<Projects.Course>.Read>(Documents.DocumentReader.ReadCourse(await File.ReadAllBytesAsync(Repository.EveningCourse)));
        course = Assert.IsType<SaveResult.Saved>(await workshop.AddAsync(read.Document, null, "me", RevisionCause.Import)).Course;
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose()
    {
        room.Dispose();
        workshop.Dispose();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task A_job_counts_its_sheets_and_can_be_downloaded_by_its_maker_until_it_is_old()
    {
        var job = Started(Print(12, TimeSpan.Zero));
        await EndOf(job);
        Assert.Equal((PrintState.Ready, 12), (job.State, job.Sheets));
        Assert.Null(room.Find(job.Id, "you"));
        Assert.Same(job, room.Find(job.Id, "me"));
        for (var time = 0; time < 2; time++)
        {
            await using var file = job.Open()!;
            using var pdf = UglyToad.PdfPig.PdfDocument.Open(file);
            Assert.Equal(12, pdf.NumberOfPages);
        }

        Assert.Single(await book.ListAsync(course));
        clock.Now += PrintRoom.KeptFor + TimeSpan.FromSeconds(1);
        Assert.Null(room.Find(job.Id, "me"));
        Assert.Null(job.Open());
    }

    [Fact]
    public async Task A_stopped_job_ends_and_nothing_was_handed_out()
    {
        var job = Started(Print(int.MaxValue, TimeSpan.FromMilliseconds(1)));
        while (job.Sheets == 0)
            await Task.Delay(5);
        job.Stop();
        await EndOf(job);
        Assert.Equal(PrintState.Stopped, job.State);
        Assert.Null(job.Open());
        Assert.Empty(await book.ListAsync(course));
    }

    [Fact]
    public async Task A_job_that_fails_says_so_and_leaves_nothing()
    {
        var print = Print(3, TimeSpan.Zero);
        var job = Started(print with { Pages = print.Pages.Select((page, i) => i < 2 ? page : throw new InvalidOperationException("made to fail")) });
        await EndOf(job);
        Assert.Equal(PrintState.Failed, job.State);
        Assert.Empty(await book.ListAsync(course));
    }

    [Fact]
    public async Task A_maker_has_only_so_many_jobs_at_once_and_another_is_not_kept_waiting_by_that()
    {
        var jobs = Enumerable.Range(0, PrintRoom.MostOfOneMaker).Select(_ => Started(Print(int.MaxValue, TimeSpan.FromMilliseconds(1)))).ToList();
        Assert.IsType<Found<PrintJob>.Missing>(room.Start(course, "me", Print(1, TimeSpan.Zero)));
        Assert.IsType<Found<PrintJob>.There>(room.Start(course, "you", Print(1, TimeSpan.Zero)));
        foreach (var job in jobs)
        {
            job.Stop();
            await EndOf(job);
        }

        await EndOf(Started(Print(1, TimeSpan.Zero)));
    }

    [Fact]
    public async Task Old_jobs_make_room_for_new_ones()
    {
        List<PrintJob> jobs = [];
        for (var i = 0; i < PrintRoom.MostJobs + 2; i++)
        {
            clock.Now += TimeSpan.FromSeconds(1);
            jobs.Add(Started(Print(1, TimeSpan.Zero)));
            await EndOf(jobs[^1]);
        }

        Assert.Equal(PrintRoom.MostJobs, jobs.Count(job => room.Find(job.Id, "me") is not null));
        Assert.Null(room.Find(jobs[0].Id, "me"));
        Assert.NotNull(room.Find(jobs[^1].Id, "me"));
    }

    private PrintJob Started(PaperPrint print) => Assert.IsType<Found<PrintJob>.There>(room.Start(course, "me", print)).Thing;

    private static async Task EndOf(PrintJob job)
    {
        // Far more than any of them takes.
        for (var i = 0; !job.IsFinished && i < 12_000; i++)
            await Task.Delay(5);
        Assert.True(job.IsFinished, "The job did not end.");
    }

    private PaperPrint Print(int pages, TimeSpan each)
    {
        var real = Assert.IsType<Found<PaperPrint>.There>(new PacketOrder([1]).Packet(course, clock.Now)).Thing;
        return real with { Pages = Pages() };

        IEnumerable<PdfPage> Pages()
        {
            for (var i = 0; i < pages; i++)
            {
                Thread.Sleep(each);
                yield return new(new("sheet", "a sheet", 100, 100, [new Shape(Outline.Box(new(10, 10, 80, 80)), LineStyle.Visible)]), []);
            }
        }
    }
}
