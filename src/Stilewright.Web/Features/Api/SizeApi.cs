using System.ComponentModel;
using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Net.Http.Headers;
using Stilewright.Documents.Lists;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Web.Desk;
using Stilewright.Wood;
using Stilewright.Wording;

namespace Stilewright.Web.Features.Api;

/// <summary>Sizes, parts, findings, cut lists and drawings.</summary>
internal static class SizeApi
{
    private const string Csv = "text/csv; charset=utf-8";
    private const string Json = "application/json";
    private const string Svg = "image/svg+xml";
    private const double SheetMargin = 5;

    public static void Map(IEndpointRouteBuilder courses)
    {
        courses.MapGet("{id}/breakdown", WholeAsync).WithTags("Sizes").WithSummary("Sizes, parts in three stages and findings of every bench");
        courses.MapGet("{id}/benches/{bench}/breakdown", BenchAsync).WithTags("Sizes").WithSummary("Sizes, parts in three stages and findings of one bench");
        courses.MapGet("{id}/cut-list", CutListAsync).WithTags("Sizes").WithSummary("What to cut, identical parts gathered")
            .WithDescription("As JSON with exact fractions of inches, or as comma-separated values by format=csv or the header Accept: text/csv.").Gives(Json, "text/csv");
        courses.MapGet("{id}/wood", WoodAsync).WithTags("Sizes").WithSummary("Panels through the year, gaps and overlays, glue-ups and weights")
            .WithDescription("Lengths are exact fractions of inches as text; moisture in %, weight in pounds.").Gives(Json);
        courses.MapGet("{id}/drawing", DrawingAsync).WithTags("Drawings").WithSummary("A face, run, leaf or part as SVG").Gives(Svg);
    }

    private static async Task<Results<Ok<BreakdownAnswer>, Wrong, Missing>> WholeAsync(
        [Description("The id of the course.")] string id, [FromQuery(Name = "unit"), Description("in or mm; absent, the unit each project is written in.")] string? unit,
        Workshop workshop, CancellationToken stop)
    {
        var query = new QueryReader();
        var shown = query.Unit(unit);
        if (!query.IsSound)
            return query.Wrong;
        return await workshop.OpenAsync(id, stop) is { } course ? TypedResults.Ok(BreakdownAnswer.Of(course, course.Projects, shown)) : Missing.Course;
    }

    private static async Task<Results<Ok<BreakdownAnswer>, Wrong, Missing>> BenchAsync(
        [Description("The id of the course.")] string id, [Description("The number of the bench.")] string bench,
        [FromQuery(Name = "unit"), Description("in or mm; absent, the unit the project is written in.")] string? unit, Workshop workshop, CancellationToken stop)
    {
        var query = new QueryReader();
        var shown = query.Unit(unit);
        var number = query.Whole("bench", bench, 0, 1, 999);
        if (!query.IsSound)
            return query.Wrong;
        if (await workshop.OpenAsync(id, stop) is not { } course)
            return Missing.Course;
        return course.AtBench(number) is { } project
            ? TypedResults.Ok(BreakdownAnswer.Of(course, [project], shown)) : new Missing(FormattableString.Invariant($"There is no bench {number} in this course."));
    }

    private static async Task<Results<FileContentHttpResult, Wrong, Missing>> CutListAsync(
        [Description("The id of the course.")] string id,
        [FromQuery(Name = "by"), Description("Gather identical parts by leaf, bench or course; bench when absent.")] string? by,
        [FromQuery(Name = "bench"), Description("Only this bench.")] string? bench,
        [FromQuery(Name = "leaf"), Description("Only this leaf, by label or path.")] string? leaf,
        [FromQuery(Name = "format"), Description("json or csv; absent, as the header Accept says.")] string? format,
        [FromQuery(Name = "unit"), Description("in or mm, of the text sizes in csv.")] string? unit,
        HttpRequest request, Workshop workshop, CancellationToken stop)
    {
        var query = new QueryReader();
        var gathered = query.Word("by", by, CutListBy.Bench, ("leaf", CutListBy.Leaf), ("bench", CutListBy.Bench), ("course", CutListBy.Course));
        var isCsv = query.Word("format", format, WantsCsv(request), ("json", false), ("csv", true));
        var only = query.Whole("bench", bench, 0, 1, 999);
        var name = query.Text("leaf", leaf);
        var shown = query.Unit(unit);
        if (!query.IsSound)
            return query.Wrong;
        if (await workshop.OpenAsync(id, stop) is not { } course)
            return Missing.Course;
        switch (Selection.Of(course.Whole, only == 0 ? null : only, name))
        {
            case Found<Selection>.There(var selection):
                var groups = CutListGroups.Of(selection, gathered);
                var text = isCsv ? CutListCsv.Of(groups, FormatFor(course, shown)) : CutListJson.Of(selection.Breakdown, groups);
                return TypedResults.File(Encoding.UTF8.GetBytes(text), isCsv ? Csv : Json, $"{course.Course.Id}-cut-list.{(isCsv ? "csv" : "json")}");
            case Found<Selection>.Missing(var problem):
                return new Missing(problem);
            default:
                throw new InvalidOperationException("A selection is there or missing.");
        }
    }

    private static async Task<Results<FileContentHttpResult, Wrong, Missing>> WoodAsync(
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
            Found<Selection>.There(var selection) => TypedResults.File(Encoding.UTF8.GetBytes(WoodJson.Of(selection, GlueUpOrder.Usual)), Json, $"{course.Course.Id}-wood.json"),
            Found<Selection>.Missing(var problem) => new Missing(problem),
            _ => throw new InvalidOperationException("A selection is there or missing."),
        };
    }

    private static async Task<Results<ContentHttpResult, Wrong, Missing>> DrawingAsync(
        [Description("The id of the course.")] string id,
        [FromQuery(Name = "path"), Description("A face, run, leaf or part, by path or label such as 7.2L.")] string? path,
        [FromQuery(Name = "view"), Description("Of a leaf: front, back, stick-across, stick-up or boring; of a solid panel: panel-fit, panel-play or glue-up; front when absent.")] string? view,
        [FromQuery(Name = "unit"), Description("in or mm; absent, the unit the project is written in.")] string? unit,
        [FromQuery(Name = "scale"), Description("How many times smaller than the thing; absent, the largest standard scale that fits.")] string? scale,
        [FromQuery(Name = "width"), Description("Room on paper in millimetres; 180 when absent.")] string? width,
        [FromQuery(Name = "height"), Description("Room on paper in millimetres; 220 when absent.")] string? height,
        HttpResponse response, Workshop workshop, CancellationToken stop)
    {
        const int Largest = 5000;
        var query = new QueryReader();
        var place = query.Needed("path", path, "name a face, run, leaf or part, such as 7.2L");
        var seen = query.Word("view", view, LeafViews.Front, [.. LeafViews.All.Select(each => (each, each))]);
        var shown = query.Unit(unit);
        var smaller = query.Whole("scale", scale, 0, 1, Largest);
        var (across, up) = (query.Whole("width", width, 180, 20, Largest), query.Whole("height", height, 220, 20, Largest));
        if (!query.IsSound)
            return query.Wrong;
        if (await workshop.OpenAsync(id, stop) is not { } course)
            return Missing.Course;
        switch (Drawable.Find(course.Whole, place, seen, across))
        {
            case Found<Drawable>.There(var thing):
                var format = new LengthFormat(shown ?? thing.Project.Project.Unit ?? course.Course.Unit, thing.Project.Standard.Format.FinestDenominator);
                var scene = thing.IsFullSize ? thing.Draw(Scale.FullSize, format)
                    : smaller > 0 ? thing.Draw(new(smaller), format) : Fit.Largest(format.Unit, across, up, each => thing.Draw(each, format), scales: thing.Scales).Scene;
                response.Headers.ContentDisposition = Attachment($"{place}-{seen}.svg");
                return TypedResults.Text(SvgWriter.Text(scene.OnSheet(SheetMargin)), Svg, Encoding.UTF8);
            case Found<Drawable>.Missing(var problem):
                return new Missing(problem);
            default:
                throw new InvalidOperationException("A thing is there or missing.");
        }
    }

    internal static string Attachment(string name)
    {
        var plain = string.Concat(name.Select(letter => char.IsAsciiLetterOrDigit(letter) || letter == '.' ? letter : '-')).Trim('-', '.');
        return new ContentDispositionHeaderValue("inline") { FileName = plain }.ToString();
    }

    internal static LengthFormat FormatFor(OpenCourse course, LengthUnit? unit) =>
        new(unit ?? course.Course.Unit, new StandardInForce(course.Standard.Standard).Format.FinestDenominator);

    private static bool WantsCsv(HttpRequest request) =>
        request.GetTypedHeaders().Accept.OrderByDescending(accepted => accepted.Quality ?? 1).FirstOrDefault() is { } first && first.MediaType.Equals("text/csv", StringComparison.OrdinalIgnoreCase);
}
