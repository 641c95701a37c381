using Stilewright.Documents;
using Stilewright.Web.Features.Import;

namespace Stilewright.Web.Features.Api;

/// <summary>Reads the files of a request.</summary>
internal static class UploadReader
{
    /// <returns>The files, or what is to be answered instead.</returns>
    public static async Task<(CourseUpload? Upload, ProblemAnswer? Problem)> ReadAsync(HttpRequest request)
    {
        try
        {
            byte[]? course, standard = null;
            if (FromProgram.IsJson(request))
            {
                course = await BytesAsync(request.Body, DocumentReader.MostBytes, request.HttpContext.RequestAborted);
            }
            else
            {
                var form = await request.ReadFormAsync(request.HttpContext.RequestAborted);
                course = await BytesAsync(form.Files.GetFile("course"), request.HttpContext.RequestAborted);
                standard = await BytesAsync(form.Files.GetFile("standard"), request.HttpContext.RequestAborted);
                if (course is null)
                    return (null, new Wrong("The form has no file \"course\".", [new("course", "the file is missing", "send the course file as the part \"course\"")]));
            }

            return CourseUpload.Read(course!, standard) switch
            {
                DocumentResult<CourseUpload>.Read read => (read.Document, null),
                DocumentResult<CourseUpload>.Refused refused => (null, Wrong.File(refused.Errors)),
                _ => throw new InvalidOperationException("A file is read or refused."),
            };
        }
        catch (BadHttpRequestException broken)
        {
            return (null, Broken(broken));
        }
        catch (InvalidDataException)
        {
            return (null, new Wrong("The form cannot be read: it breaks off, or has too many parts."));
        }
        catch (IOException) when (!request.HttpContext.RequestAborted.IsCancellationRequested)
        {
            return (null, Broken(null));
        }
    }

    /// <summary>Reads a body that is one file.</summary>
    /// <param name="most">How many bytes its reader takes.</param>
    /// <returns>The bytes, or what is to be answered instead.</returns>
    public static async Task<(byte[]? Body, ProblemAnswer? Problem)> BodyAsync(HttpRequest request, int most)
    {
        try
        {
            return (await BytesAsync(request.Body, most, request.HttpContext.RequestAborted), null);
        }
        catch (BadHttpRequestException broken)
        {
            return (null, Broken(broken));
        }
        catch (IOException) when (!request.HttpContext.RequestAborted.IsCancellationRequested)
        {
            return (null, Broken(null));
        }
    }

    private static ProblemAnswer Broken(BadHttpRequestException? broken) => broken?.StatusCode == StatusCodes.Status413PayloadTooLarge
        ? new TooMuch() : new Wrong("The request breaks off, or is not sent as its headers say.");

    private static async Task<byte[]?> BytesAsync(IFormFile? file, CancellationToken stop)
    {
        if (file is null)
            return null;
        await using var stream = file.OpenReadStream();
        return await BytesAsync(stream, DocumentReader.MostBytes, stop);
    }

    // One byte more than is read is enough for the reader to refuse it as too large.
    private static async Task<byte[]> BytesAsync(Stream stream, int most, CancellationToken stop)
    {
        using var held = new MemoryStream();
        var buffer = new byte[81920];
        int read;
        while (held.Length <= most && (read = await stream.ReadAsync(buffer, stop)) > 0)
            held.Write(buffer, 0, read);
        return held.ToArray();
    }
}
