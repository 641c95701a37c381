using System.ComponentModel;
using System.Security.Claims;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Stilewright.Documents.Changes;
using Stilewright.Projects;
using Stilewright.Web.Desk;
using Stilewright.Web.Makers;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Features.Api;

/// <summary>Course files that come in.</summary>
internal static class ImportApi
{
    public static void Map(IEndpointRouteBuilder courses)
    {
        courses.MapPost("", NewAsync).Writes().WithTags("Import").WithSummary("Imports a course file as a new course")
            .WithDescription("Where a course of its id is here already, the new one gets fresh ids. A house standard comes as a second file.");
        courses.MapPost("{id}/import", OverAsync).Writes().WithTags("Import").WithSummary("Imports a course file as new revisions of the course")
            .WithDescription("First with dryRun=true, which tells the differences and the numbers of the revisions they were found against; then with these numbers as basedOn. "
                + "It is refused where anyone saved since.");
    }

    private static async Task<Results<Created<CourseAnswer>, Wrong, Outdated, TooMuch>> NewAsync(HttpRequest request, Workshop workshop, ClaimsPrincipal user, CancellationToken stop)
    {
        var (upload, problem) = await UploadReader.ReadAsync(request);
        if (upload is null)
            return problem is TooMuch much ? much : (Wrong)problem!;
        return await workshop.AddAsync(upload.Course, upload.Standard, Asker.IdOf(user), RevisionCause.Import, stop) switch
        {
            SaveResult.Saved(var made) => TypedResults.Created($"/api/courses/{made.Course.Id}", CourseAnswer.Of(made)),
            SaveResult.Refused(var errors) => Wrong.File(errors),
            _ => new Outdated("Someone saved at the same moment. Try again."),
        };
    }

    private static async Task<Results<Ok<DifferencesAnswer>, Ok<CourseAnswer>, Wrong, Missing, Outdated, TooMuch>> OverAsync(
        [Description("The id of the course.")] string id, HttpRequest request, Workshop workshop, ClaimsPrincipal user,
        [FromQuery(Name = "dryRun"), Description("true to be told the differences, without any change.")] string? dryRun,
        [FromQuery(Name = "basedOn"), Description("The numbers that came with the differences.")] string? basedOn, CancellationToken stop)
    {
        var query = new QueryReader();
        var isTried = query.Flag("dryRun", dryRun, false);
        if (!query.IsSound)
            return query.Wrong;
        if (await workshop.OpenAsync(id, stop) is not { } course)
            return Missing.Course;
        var (upload, problem) = await UploadReader.ReadAsync(request);
        if (upload is null)
            return problem is TooMuch much ? much : (Wrong)problem!;
        if (Workshop.RefusalsOver(course, upload.Course, upload.Standard) is { Count: > 0 } refusals)
            return Wrong.File(refusals);
        if (isTried)
            return TypedResults.Ok(new DifferencesAnswer(course.Stand, Workshop.DifferencesTo(course, upload.Course)));
        if (basedOn != course.Stand)
        {
            return new Outdated(
                string.IsNullOrEmpty(basedOn) ? "Ask for the differences first, with dryRun=true, and send the numbers that come with them as basedOn."
                    : "Someone saved since the differences were shown. Ask for them again.",
                [new("basedOn", $"the course stands at {course.Stand}", "look at the differences again, then send the numbers that come with them")]);
        }

        return await workshop.ImportOverAsync(course, upload.Course, Asker.IdOf(user), stop) switch
        {
            SaveResult.Saved(var now) => TypedResults.Ok(CourseAnswer.Of(now)),
            SaveResult.Refused(var errors) => Wrong.File(errors),
            SaveResult.Conflicted(var conflicts, var now) => new Outdated("Someone saved the same fields at the same moment.",
                [.. conflicts.Select(conflict => new ApiError("$", new ChangeWords(typeof(Course), now.Tree).Of(conflict), "look at the differences again"))]),
            _ => throw new InvalidOperationException("A save is kept, refused or in conflict."),
        };
    }
}
