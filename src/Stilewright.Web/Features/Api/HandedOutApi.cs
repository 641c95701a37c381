using System.ComponentModel;
using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Features.Api;

/// <summary>What was handed out, and what of it no longer holds.</summary>
internal static class HandedOutApi
{
    public static void Map(IEndpointRouteBuilder courses)
    {
        courses.MapGet("{id}/handed-out", ListAsync).WithTags("Handed out").WithSummary("What was handed out of the course, the newest first");
        courses.MapGet("{id}/handed-out/{key}/changes", ChangesAsync).WithTags("Handed out").WithSummary("What is no longer as it was handed out");
    }

    private static async Task<Results<Ok<IReadOnlyList<HandedOutLine>>, Missing>> ListAsync(
        [Description("The id of the course.")] string id, Workshop workshop, HandOutBook book, CancellationToken stop) =>
        await workshop.OpenAsync(id, stop) is { } course
            ? TypedResults.Ok<IReadOnlyList<HandedOutLine>>([.. (await book.ListAsync(course, stop)).Select(HandedOutLine.Of)]) : Missing.Course;

    private static async Task<Results<Ok<ChangesAnswer>, Wrong, Missing>> ChangesAsync(
        [Description("The id of the course.")] string id, [Description("The key of the print in the list.")] string key,
        [FromQuery(Name = "unit"), Description("in or mm; absent, the course's.")] string? unit, Workshop workshop, HandOutBook book, CancellationToken stop)
    {
        var query = new QueryReader();
        var shown = query.Unit(unit);
        if (!query.IsSound)
            return query.Wrong;
        if (await workshop.OpenAsync(id, stop) is not { } course)
            return Missing.Course;
        if (!long.TryParse(key, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || await book.FindAsync(course, number, stop) is not { } entry)
            return new Missing("Nothing was handed out of this course under that key.");
        var since = new HandOutComparison(course).Since(entry.Document);
        var format = SizeApi.FormatFor(course, shown);
        return TypedResults.Ok(new ChangesAnswer(entry.Key, entry.What, entry.MadeAt, since.PaperHolds,
            [.. since.OnPaper.Select(change => change.Text(format))], [.. since.Origins.Select(change => change.Text(format))]));
    }
}
