using System.ComponentModel;
using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Stilewright.Documents.Lists;
using Stilewright.Hanging;
using Stilewright.Web.Desk;
using Stilewright.Wording;

namespace Stilewright.Web.Features.Api;

/// <summary>Hinges of leaves, their places, and what is bored.</summary>
internal static class HangingApi
{
    private const string Json = "application/json";

    public static void Map(IEndpointRouteBuilder courses) =>
        courses.MapGet("{id}/hanging", HangingAsync).WithTags("Sizes").WithSummary("Hinges of leaves: how many and why, their places, what is bored and at which stop")
            .WithDescription("Lengths are exact fractions of inches. Leaves without hinges are left out.").Gives(Json);

    private static async Task<Results<FileContentHttpResult, Wrong, Missing>> HangingAsync(
        [Description("The id of the course.")] string id,
        [FromQuery(Name = "bench"), Description("Only this bench.")] string? bench,
        [FromQuery(Name = "leaf"), Description("Only this leaf, by label or path.")] string? leaf,
        Workshop workshop, CancellationToken stop)
    {
        var query = new QueryReader();
        var only = query.Whole("bench", bench, 0, 1, 999);
        var name = query.Text("leaf", leaf);
        if (!query.IsSound)
            return query.Wrong;
        if (await workshop.OpenAsync(id, stop) is not { } course)
            return Missing.Course;
        return Selection.Of(course.Whole, only == 0 ? null : only, name) switch
        {
            Found<Selection>.There(var selection) => TypedResults.File(
                Encoding.UTF8.GetBytes(HangingJson.Of(selection.Breakdown.Course.Name, [.. selection.Hung(HangingPlan.Of(selection.Breakdown))])), Json, $"{course.Course.Id}-hanging.json"),
            Found<Selection>.Missing(var problem) => new Missing(problem),
            _ => throw new InvalidOperationException("A selection is there or missing."),
        };
    }
}
