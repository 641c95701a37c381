using System.Reflection;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.WebUtilities;
using Stilewright.Documents;

namespace Stilewright.Web.Features.Api;

/// <summary>Problem details (RFC 9457).</summary>
/// <param name="Type">Always <c>about:blank</c>: the status says what kind of problem it is.</param>
/// <param name="Detail">What is wrong, in a sentence.</param>
/// <param name="Errors">Every fault that was found; empty where the detail says all.</param>
public sealed record ApiProblem(string Type, string Title, int Status, string Detail, IReadOnlyList<ApiError> Errors)
{
    public static ApiProblem Of(int status, string detail, IReadOnlyList<ApiError>? errors = null) =>
        new("about:blank", ReasonPhrases.GetReasonPhrase(status), status, detail, errors ?? []);
}

/// <summary>One fault: where it is, what it is and what to do.</summary>
/// <param name="Path">A JSON path in the file that was sent, or the name of a value in the address.</param>
public sealed record ApiError(string Path, string Problem, string Fix, int? Line = null, int? Column = null)
{
    public static ApiError Of(DocumentError error) => new(error.Path, error.Problem, error.Fix, error.Line, error.Column);
}

/// <summary>An answer that is a problem.</summary>
public abstract class ProblemAnswer(int status, string detail, IReadOnlyList<ApiError>? errors = null) : IResult, IStatusCodeHttpResult
{
    public const string ContentType = "application/problem+json";

    public ApiProblem Problem { get; } = ApiProblem.Of(status, detail, errors);

    int? IStatusCodeHttpResult.StatusCode => Problem.Status;

    public Task ExecuteAsync(HttpContext httpContext) => WriteAsync(httpContext, Problem);

    internal static Task WriteAsync(HttpContext context, ApiProblem problem)
    {
        context.Response.StatusCode = problem.Status;
        return context.Response.WriteAsJsonAsync(problem, options: null, ContentType, context.RequestAborted);
    }

    private protected static void Tell(EndpointBuilder builder, int status) =>
        builder.Metadata.Add(new ProducesResponseTypeMetadata(status, typeof(ApiProblem), [ContentType]));
}

/// <summary>Something in the address or in the file is wrong (400).</summary>
public sealed class Wrong(string detail, IReadOnlyList<ApiError>? errors = null)
    : ProblemAnswer(StatusCodes.Status400BadRequest, detail, errors), IEndpointMetadataProvider
{
    /// <summary>A file that is refused, with all that was found.</summary>
    public static Wrong File(IReadOnlyList<DocumentError> errors) =>
        new(errors.Count == 1 ? "The file cannot be used: 1 error." : FormattableString.Invariant($"The file cannot be used: {errors.Count} errors."), [.. errors.Select(ApiError.Of)]);

    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) => Tell(builder, StatusCodes.Status400BadRequest);
}

/// <summary>There is no such thing (404).</summary>
public sealed class Missing(string detail) : ProblemAnswer(StatusCodes.Status404NotFound, detail), IEndpointMetadataProvider
{
    public static Missing Course { get; } = new("There is no such course.");

    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) => Tell(builder, StatusCodes.Status404NotFound);
}

/// <summary>It was saved by someone else meanwhile, or does not go together with what is here (409).</summary>
public sealed class Outdated(string detail, IReadOnlyList<ApiError>? errors = null)
    : ProblemAnswer(StatusCodes.Status409Conflict, detail, errors), IEndpointMetadataProvider
{
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) => Tell(builder, StatusCodes.Status409Conflict);
}

/// <summary>The request does not come from a page of this program (403).</summary>
public sealed class Foreign()
    : ProblemAnswer(StatusCodes.Status403Forbidden, "This can be asked for from a page of this program, or by a program of your own, but not by another site."), IEndpointMetadataProvider
{
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) => Tell(builder, StatusCodes.Status403Forbidden);
}

/// <summary>It is for the instructor's screen alone (403).</summary>
public sealed class OnlyInstructor()
    : ProblemAnswer(StatusCodes.Status403Forbidden, "This is for the instructor, at the computer that Stilewright runs on."), IEndpointMetadataProvider
{
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) => Tell(builder, StatusCodes.Status403Forbidden);
}

/// <summary>More was sent than is read (413).</summary>
public sealed class TooMuch()
    : ProblemAnswer(StatusCodes.Status413PayloadTooLarge, FormattableString.Invariant($"Files are read up to {DocumentReader.MostBytes / (1024 * 1024)} MB.")), IEndpointMetadataProvider
{
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) => Tell(builder, StatusCodes.Status413PayloadTooLarge);
}

/// <summary>What was sent is of a kind that is not read here (415).</summary>
public sealed class OtherKind(string? detail = null)
    : ProblemAnswer(StatusCodes.Status415UnsupportedMediaType,
        detail ?? $"Send the course file as application/json, or course and standard as the parts \"course\" and \"standard\" of multipart/form-data with the header {FromProgram.Header}."), IEndpointMetadataProvider
{
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) => Tell(builder, StatusCodes.Status415UnsupportedMediaType);
}
