using System.ComponentModel;
using System.Security.Claims;
using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Stilewright.Documents;
using Stilewright.Documents.Lists;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Telling;
using Stilewright.Web.Desk;
using Stilewright.Web.Features.CheckList;
using Stilewright.Web.Makers;

namespace Stilewright.Web.Features.Api;

/// <summary>Makers' own cut lists.</summary>
internal static class ListApi
{
    public static void Map(IEndpointRouteBuilder courses)
    {
        courses.MapPost("{id}/benches/{bench}/check", CheckAsync).WritesList().WithTags("Lists").WithSummary("Checks a maker's own cut list")
            .WithDescription("The list is JSON (format stilewright/makers-list) or comma-separated values. It is kept as one check of the maker who asks. No more is told than the course tells.");
        courses.MapGet("{id}/class.csv", ClassAsync).WithTags("Lists").WithSummary("What the class misses in lists and worksheets, by week and bench, and how its drills go")
            .WithDescription("For the instructor: only at the computer that Stilewright runs on.").Gives("text/csv");
    }

    private static async Task<Results<Ok<CheckAnswer>, Wrong, Missing, TooMuch>> CheckAsync(
        [Description("The id of the course.")] string id, [Description("The number of the bench.")] string bench,
        [FromQuery(Name = "leaf"), Description("The leaf that the list is for, by label or path; all leaves of the bench when absent.")] string? leaf,
        [FromQuery(Name = "stage"), Description("What the sizes are: finished, clamps or rough; as the list says, or finished, when absent.")] string? stage,
        [FromQuery(Name = "unit"), Description("in or mm: of bare numbers in comma-separated values, and of the answer; absent, the unit the project is written in.")] string? unit,
        [FromQuery(Name = "tell"), Description("right-or-wrong, hint, rule or all, as far as the course tells it; right-or-wrong when absent.")] string? tell,
        HttpRequest request, Workshop workshop, AttemptBook attempts, TimeProvider clock, ClaimsPrincipal user, CancellationToken stop)
    {
        var query = new QueryReader();
        var number = query.Whole("bench", bench, 0, 1, 999);
        var name = query.Text("leaf", leaf);
        var asked = query.Word("stage", stage, (CutStage?)null, [.. Enum.GetValues<CutStage>().Select(each => (MakersListReader.Words(each), (CutStage?)each))]);
        var shown = query.Unit(unit);
        var telling = query.Word("tell", tell, Telling.RightOrWrong, [.. Enum.GetValues<Telling>().Select(each => (CheckAnswer.Word(each), each))]);
        if (!query.IsSound)
            return query.Wrong;
        if (await workshop.OpenAsync(id, stop) is not { } course)
            return Missing.Course;
        if (course.AtBench(number) is not { } project)
            return new Missing(FormattableString.Invariant($"There is no bench {number} in this course."));
        SizedLeaf[] leaves = [.. project.Worked.Fronts.SelectMany(front => front.Leaves).Where(each => name is null || Is(each, name))];
        if (leaves.Length == 0)
            return new Missing(name is null ? FormattableString.Invariant($"Bench {number} has no leaves.") : $"Bench {number} has no leaf of that name.");
        if (name is not null && leaves.Length > 1)
            return new Wrong("Several leaves are called so.", [new("leaf", "the label is that of several leaves", $"name one by its path, such as {leaves[0].Path}")]);
        if (leaves.All(each => each.IsWithheld))
            return new Wrong("It cannot be built as it stands, so no list can be right. The breakdown says why.");
        var most = await attempts.MostToldAsync(course, stop);
        if (telling > most)
            return new Wrong("The course does not tell as much.", [new("tell", $"this course tells {CheckAnswer.Word(most)} at most", $"ask for {CheckAnswer.Word(most)} or less")]);

        var format = new LengthFormat(shown ?? project.Project.Unit ?? course.Course.Unit, project.Worked.Standard.Format.FinestDenominator);
        var (body, problem) = await UploadReader.BodyAsync(request, MakersListReader.MostBytes);
        if (body is null)
            return problem is TooMuch much ? much : (Wrong)problem!;
        switch (MakersListReader.Read(body, format.Unit, asked))
        {
            case DocumentResult<ReadList>.Read(var list):
                var only = name is null ? null : leaves[0];
                var (key, stray) = Checked.KeyOf(project, only, list.List);
                if (stray.Count > 0)
                {
                    return new Wrong("Some lines are for a leaf that is not here.", [.. stray.Select(line => new ApiError(
                        FormattableString.Invariant($"line {line.Number}"), "there is no such leaf", $"name one of {string.Join(", ", key.Items.Select(item => item.Leaf).Distinct())}"))]);
                }

                var found = await Checked.OfAsync(workshop, clock, course, project, only, list, key, stop);
                await attempts.RecordAsync(course, project, only?.Label, Asker.IdOf(user), found.Found, stop);
                return TypedResults.Ok(CheckAnswer.Of(found.Found, list, Answers.Of(found.Found, telling, format)));
            case DocumentResult<ReadList>.Refused(var errors):
                return Wrong.File(errors);
            default:
                throw new InvalidOperationException("A list is read or refused.");
        }
    }

    private static async Task<Results<FileContentHttpResult, Missing, OnlyInstructor>> ClassAsync(
        [Description("The id of the course.")] string id, Workshop workshop, AttemptBook attempts, ClaimsPrincipal user, CancellationToken stop)
    {
        var access = AttemptAccess.Of(user);
        if (!access.IsInstructor)
            return new OnlyInstructor();
        if (await workshop.OpenAsync(id, stop) is not { } course)
            return Missing.Course;
        var found = await attempts.ReckonAsync(access, course, course.Course.Unit, stop);
        // With the mark by which spreadsheets know UTF-8.
        return TypedResults.File(Encoding.UTF8.GetPreamble().Concat(Encoding.UTF8.GetBytes(ClassCsv.Of(found))).ToArray(), "text/csv; charset=utf-8", $"{course.Course.Id}-class.csv");
    }

    // 1·2L and 1.2L are one label.
    private static bool Is(SizedLeaf leaf, string name) =>
        leaf.Path == name || string.Equals(leaf.Label.Replace('·', '.'), name.Replace('·', '.'), StringComparison.OrdinalIgnoreCase);
}
