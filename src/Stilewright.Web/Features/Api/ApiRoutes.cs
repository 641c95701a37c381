namespace Stilewright.Web.Features.Api;

/// <summary>The interface for other programs, under <c>/api</c>.</summary>
public static class ApiRoutes
{
    /// <summary>Adds every operation. Reading is for all who may see the pages; writing is the maker's whose cookie comes with it, or that of other programs together.</summary>
    public static void MapApi(this IEndpointRouteBuilder app)
    {
        ArgumentNullException.ThrowIfNull(app);
        var api = app.MapGroup("/api");
        var courses = api.MapGroup("/courses");
        CourseApi.Map(courses);
        ImportApi.Map(courses);
        SizeApi.Map(courses);
        HangingApi.Map(courses);
        PaperApi.Map(courses);
        HandedOutApi.Map(courses);
        ListApi.Map(courses);
        PaperApi.MapJobs(api);
    }

    /// <summary>Makes every error under <c>/api</c> a problem, whatever part of the server it comes from.</summary>
    public static void UseApiProblems(this IApplicationBuilder app) => app.UseWhen(
        context => context.Request.Path.StartsWithSegments("/api"),
        api =>
        {
            api.UseExceptionHandler(fault => fault.Run(context =>
                ProblemAnswer.WriteAsync(context, ApiProblem.Of(StatusCodes.Status500InternalServerError, "A fault of the program itself. Nothing that was saved is lost."))));
            api.UseStatusCodePages(pages => ProblemAnswer.WriteAsync(pages.HttpContext,
                ApiProblem.Of(pages.HttpContext.Response.StatusCode, Told(pages.HttpContext.Response.StatusCode))));
        });

    private static string Told(int status) => status switch
    {
        StatusCodes.Status404NotFound => "There is nothing at this address. The description of all there is: /api/openapi.json",
        StatusCodes.Status405MethodNotAllowed => "This address takes another method.",
        StatusCodes.Status413PayloadTooLarge => new TooMuch().Problem.Detail,
        StatusCodes.Status415UnsupportedMediaType => new OtherKind().Problem.Detail,
        _ => "The request cannot be answered as it is.",
    };

    /// <summary>Keeps other sites from writing.</summary>
    internal static RouteHandlerBuilder Writes(this RouteHandlerBuilder route) => route
        .AddEndpointFilter(async (context, next) => FromProgram.Has(context.HttpContext.Request) ? await next(context)
            : FromProgram.IsOwn(context.HttpContext.Request) ? new OtherKind() : new Foreign())
        .WithMetadata(new ProducesResponseTypeMetadata(StatusCodes.Status415UnsupportedMediaType, typeof(ApiProblem), [ProblemAnswer.ContentType]))
        .WithMetadata(new ProducesResponseTypeMetadata(StatusCodes.Status403Forbidden, typeof(ApiProblem), [ProblemAnswer.ContentType]))
        .Accepts<System.Text.Json.Nodes.JsonObject>("application/json", "multipart/form-data");

    /// <summary>The same for an operation that takes a list.</summary>
    internal static RouteHandlerBuilder WritesList(this RouteHandlerBuilder route) => route
        .AddEndpointFilter(async (context, next) => FromProgram.HasList(context.HttpContext.Request) ? await next(context)
            : FromProgram.IsOwn(context.HttpContext.Request) ? new OtherKind("Send the list as application/json or text/csv.") : new Foreign())
        .WithMetadata(new ProducesResponseTypeMetadata(StatusCodes.Status415UnsupportedMediaType, typeof(ApiProblem), [ProblemAnswer.ContentType]))
        .WithMetadata(new ProducesResponseTypeMetadata(StatusCodes.Status403Forbidden, typeof(ApiProblem), [ProblemAnswer.ContentType]))
        .Accepts<System.Text.Json.Nodes.JsonNode>("application/json", "text/csv");

    /// <summary>Says what file an operation answers with.</summary>
    internal static RouteHandlerBuilder Gives(this RouteHandlerBuilder route, string contentType, params string[] others) =>
        route.WithMetadata(new ProducesResponseTypeMetadata(StatusCodes.Status200OK, typeof(byte[]), [contentType, .. others]));
}
