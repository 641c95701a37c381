using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using Stilewright.Web.Serving;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Features.BackUp;

/// <summary>A copy of the data file, for the screen of this computer alone: it holds every name and all that everyone ever saved.</summary>
internal static class BackUpEndpoints
{
    public const string File = "/back-up/file";

    public static void MapBackUp(this IEndpointRouteBuilder app) => app.MapGet(File, SendAsync).ExcludeFromDescription();

    private static async Task<Results<FileStreamHttpResult, ProblemHttpResult>> SendAsync(
        HttpContext context, ServeSettings settings, TimeProvider clock, CancellationToken stop)
    {
        if (!ThisComputer.Asks(context))
        {
            return TypedResults.Problem("A back-up holds every name and all that everyone saved. Make it on the computer that Stilewright runs on.",
                statusCode: StatusCodes.Status403Forbidden, title: "Only on the instructor's screen");
        }

        var copy = Path.Combine(Path.GetTempPath(), $"stilewright-{Guid.NewGuid():N}.db");
        try
        {
            await DataFile.BackUpAsync(settings.Data, copy, stop);
            // Gone from the disk when the last byte was read, or the reader hung up.
            var content = new FileStream(copy, new FileStreamOptions { Mode = FileMode.Open, Share = FileShare.Read | FileShare.Delete, Options = FileOptions.DeleteOnClose | FileOptions.Asynchronous });
            context.Response.Headers.CacheControl = "no-store";
            return TypedResults.Stream(content, "application/vnd.sqlite3", string.Create(CultureInfo.InvariantCulture, $"stilewright-{clock.GetLocalNow():yyyy-MM-dd-HHmm}.db"));
        }
        catch (RefusalException refusal)
        {
            return TypedResults.Problem(refusal.Message, statusCode: StatusCodes.Status503ServiceUnavailable, title: "No copy could be made");
        }
    }
}
