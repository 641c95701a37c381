using Stilewright.Web.Makers;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Serving;

/// <summary>Fills a new data file with the sample course.</summary>
internal static class FirstStart
{
    public static async Task RunAsync(IServiceProvider services, ServeSettings settings, CancellationToken stop)
    {
        await services.GetRequiredService<MakerBook>().EnterAsync(MakerBook.ProgramId, "the program", stop);
        await services.GetRequiredService<MakerBook>().EnterAsync(MakerBook.OtherProgramId, "another program", stop);
        if (!settings.Empty)
            await DataFile.AddSampleAsync(settings.Data, MakerBook.ProgramId, services.GetRequiredService<TimeProvider>().GetUtcNow().UtcDateTime, stop);
    }
}
