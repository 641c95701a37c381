using Microsoft.EntityFrameworkCore;
using Stilewright.Documents;
using Stilewright.Projects;
using Stilewright.Web.Desk;
using Stilewright.Web.Makers;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Serving;

/// <summary>Fills a new data file with the sample course.</summary>
internal static class FirstStart
{
    private const string Sample = "samples/evening-course.json";

    public static async Task RunAsync(IServiceProvider services, ServeSettings settings, CancellationToken stop)
    {
        await services.GetRequiredService<MakerBook>().EnterAsync(MakerBook.ProgramId, "the program", stop);
        await using var db = await services.GetRequiredService<IDbContextFactory<StoreContext>>().CreateDbContextAsync(stop);
        if (settings.Empty || await db.Documents.AnyAsync(stop))
            return;
        await using var stream = typeof(FirstStart).Assembly.GetManifestResourceStream(Sample)
            ?? throw new InvalidOperationException("This build carries no sample course.");
        using var held = new MemoryStream();
        await stream.CopyToAsync(held, stop);
        if (DocumentReader.ReadCourse(held.ToArray()) is not DocumentResult<Course>.Read read)
            throw new InvalidOperationException("The sample course that this build carries cannot be read.");
        await services.GetRequiredService<Workshop>().AddAsync(read.Document, null, MakerBook.ProgramId, RevisionCause.Import, stop);
    }
}
