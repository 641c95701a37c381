using System.ComponentModel;
using Microsoft.AspNetCore.Http.HttpResults;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Features.Api;

/// <summary>Courses and their files.</summary>
internal static class CourseApi
{
    private const string Json = "application/json";

    public static void Map(IEndpointRouteBuilder courses)
    {
        courses.MapGet("", ListAsync).WithTags("Courses").WithSummary("All courses, the last changed first");
        courses.MapGet("{id}", GetAsync).WithTags("Courses").WithSummary("A course with its benches");
        courses.MapGet("{id}/export", ExportAsync).WithTags("Courses").WithSummary("The course file")
            .WithDescription("Its house standard is named as a file beside it, unless it is as shipped.").Gives(Json);
        courses.MapGet("{id}/standard/export", StandardAsync).WithTags("Courses").WithSummary("The file of the course's house standard").Gives(Json);
    }

    private static async Task<Ok<IReadOnlyList<CourseLine>>> ListAsync(Workshop workshop, CancellationToken stop) =>
        TypedResults.Ok<IReadOnlyList<CourseLine>>([.. (await workshop.CoursesAsync(stop)).Select(CourseLine.Of)]);

    private static async Task<Results<Ok<CourseAnswer>, Missing>> GetAsync([Description("The id of the course.")] string id, Workshop workshop, CancellationToken stop) =>
        await workshop.OpenAsync(id, stop) is { } course ? TypedResults.Ok(CourseAnswer.Of(course)) : Missing.Course;

    private static async Task<Results<FileContentHttpResult, Missing>> ExportAsync([Description("The id of the course.")] string id, Workshop workshop, CancellationToken stop) =>
        await workshop.OpenAsync(id, stop) is { } course
            ? TypedResults.File(CourseFiles.Course(course), Json, CourseFiles.CourseName(course)) : Missing.Course;

    private static async Task<Results<FileContentHttpResult, Missing>> StandardAsync([Description("The id of the course.")] string id, Workshop workshop, CancellationToken stop) =>
        await workshop.OpenAsync(id, stop) is { } course
            ? TypedResults.File(CourseFiles.Standard(course.Standard), Json, CourseFiles.StandardFileName(course.Standard.Standard)) : Missing.Course;
}
