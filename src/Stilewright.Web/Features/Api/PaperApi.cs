using System.ComponentModel;
using System.Security.Claims;
using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Writing;
using Stilewright.Web.Desk;
using Stilewright.Web.Features.Printing;
using Stilewright.Web.Makers;
using Stilewright.Wording;

namespace Stilewright.Web.Features.Api;

/// <summary>Packets, patterns and labels. What goes to paper is recorded as handed out.</summary>
internal static class PaperApi
{
    private const string Pdf = "application/pdf";
    private const string Csv = "text/csv; charset=utf-8";
    private const string Svg = "image/svg+xml";

    public static void Map(IEndpointRouteBuilder courses)
    {
        courses.MapGet("{id}/packet", PacketAsync).WithTags("Paper").WithSummary("A packet of some benches, or of the whole course").Gives(Pdf);
        courses.MapGet("{id}/labels", LabelsAsync).WithTags("Paper").WithSummary("Labels of parts").Gives(Pdf);
        courses.MapGet("{id}/patterns", PatternsAsync).WithTags("Paper").WithSummary("Full-size patterns of an arched leaf or part").Gives(Pdf);
        courses.MapGet("{id}/patterns.svg", PatternDrawingAsync).WithTags("Drawings").WithSummary("One pattern at full size as SVG").Gives(Svg);
        courses.MapGet("{id}/patterns/points.csv", (string id, [AsParameters] PatternQuery asked, Workshop workshop, CancellationToken stop) =>
            CsvAsync(id, asked, arcs: false, workshop, stop)).WithTags("Drawings").WithSummary("Points of the curves of patterns").Gives("text/csv");
        courses.MapGet("{id}/patterns/arcs.csv", (string id, [AsParameters] PatternQuery asked, Workshop workshop, CancellationToken stop) =>
            CsvAsync(id, asked, arcs: true, workshop, stop)).WithTags("Drawings").WithSummary("Lines and arcs of the curves of patterns").Gives("text/csv");
    }

    public static void MapJobs(IEndpointRouteBuilder api) =>
        api.MapGet("prints/{job}", JobAsync).WithTags("Paper").WithSummary("A print that was made from a page").Gives(Pdf);

    private static async Task<Results<FileStreamHttpResult, Wrong, Missing, Foreign>> PacketAsync(
        [Description("The id of the course.")] string id, [AsParameters] PacketQuery asked,
        HttpRequest request, Workshop workshop, PrintRoom room, ClaimsPrincipal user, TimeProvider clock, CancellationToken stop)
    {
        var query = new QueryReader();
        var order = asked.Read(query);
        return query.IsSound ? await PrintAsync(id, course => order.Packet(course, clock.GetLocalNow()), request, workshop, room, user, stop) : query.Wrong;
    }

    private static async Task<Results<FileStreamHttpResult, Wrong, Missing, Foreign>> LabelsAsync(
        [Description("The id of the course.")] string id, [AsParameters] PacketQuery asked,
        [FromQuery(Name = "leaf"), Description("Only this leaf, by label or path.")] string? leaf,
        HttpRequest request, Workshop workshop, PrintRoom room, ClaimsPrincipal user, TimeProvider clock, CancellationToken stop)
    {
        var query = new QueryReader();
        var order = asked.Read(query);
        var only = query.Text("leaf", leaf);
        return query.IsSound ? await PrintAsync(id, course => order.LabelsOf(course, only, clock.GetLocalNow()), request, workshop, room, user, stop) : query.Wrong;
    }

    private static async Task<Results<FileStreamHttpResult, Wrong, Missing, Foreign>> PatternsAsync(
        [Description("The id of the course.")] string id, [AsParameters] PatternQuery asked,
        HttpRequest request, Workshop workshop, PrintRoom room, PrinterBook printers, ClaimsPrincipal user, TimeProvider clock, CancellationToken stop)
    {
        var query = new QueryReader();
        var order = asked.Read(query) with { Printer = await printers.FindAsync(stop) };
        return query.IsSound ? await PrintAsync(id, course => order.Print(course, clock.GetLocalNow()), request, workshop, room, user, stop) : query.Wrong;
    }

    private static async Task<Results<ContentHttpResult, Wrong, Missing>> PatternDrawingAsync(
        [Description("The id of the course.")] string id, [AsParameters] PatternQuery asked, HttpResponse response, Workshop workshop, CancellationToken stop)
    {
        var query = new QueryReader();
        var order = asked.Read(query);
        if (!query.IsSound)
            return query.Wrong;
        if (await workshop.OpenAsync(id, stop) is not { } course)
            return Missing.Course;
        switch (order.Drawing(course))
        {
            case Found<Scene>.There(var scene):
                response.Headers.ContentDisposition = SizeApi.Attachment($"{order.Place}-pattern.svg");
                return TypedResults.Text(SvgWriter.Text(scene), Svg, Encoding.UTF8);
            case Found<Scene>.Missing(var problem):
                return new Missing(problem);
            default:
                throw new InvalidOperationException("A pattern is there or missing.");
        }
    }

    private static async Task<Results<FileContentHttpResult, Wrong, Missing>> CsvAsync(string id, PatternQuery asked, bool arcs, Workshop workshop, CancellationToken stop)
    {
        var query = new QueryReader();
        var order = asked.Read(query);
        if (!query.IsSound)
            return query.Wrong;
        if (await workshop.OpenAsync(id, stop) is not { } course)
            return Missing.Course;
        return order.Csv(course, arcs) switch
        {
            Found<string>.There(var text) => TypedResults.File(Encoding.UTF8.GetBytes(text), Csv, $"{course.Course.Id}-{(arcs ? "arcs" : "points")}.csv"),
            Found<string>.Missing(var problem) => new Missing(problem),
            _ => throw new InvalidOperationException("Curves are there or missing."),
        };
    }

    private static Results<FileStreamHttpResult, Missing> JobAsync([Description("The id of the print.")] string job, PrintRoom room, ClaimsPrincipal user) =>
        room.Find(job, Asker.IdOf(user)) is { } found && found.Open() is { } file
            ? TypedResults.Stream(file, Pdf, found.FileName, enableRangeProcessing: true) : new Missing("There is no such print, or it is older than 20 minutes. Make it again.");

    // A print is recorded under the maker who asked, so another site must not be able to ask in the maker's place.
    private static async Task<Results<FileStreamHttpResult, Wrong, Missing, Foreign>> PrintAsync(
        string id, Func<OpenCourse, Found<PaperPrint>> make, HttpRequest request, Workshop workshop, PrintRoom room, ClaimsPrincipal user, CancellationToken stop)
    {
        if (!FromProgram.IsOwn(request))
            return new Foreign();
        if (await workshop.OpenAsync(id, stop) is not { } course)
            return Missing.Course;
        return make(course) switch
        {
            Found<PaperPrint>.There(var print) =>
                TypedResults.Stream(await room.PrintAsync(course, Asker.IdOf(user), print, null, stop), Pdf, print.FileName),
            Found<PaperPrint>.Missing(var problem) => new Missing(problem),
            _ => throw new InvalidOperationException("A print is there or missing."),
        };
    }
}
