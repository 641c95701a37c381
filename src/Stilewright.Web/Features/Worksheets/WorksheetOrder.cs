using System.Globalization;
using Microsoft.AspNetCore.Http.Extensions;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Worksheets;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Teaching.Worksheets;
using Stilewright.Web.Desk;
using Stilewright.Web.Features.Printing;
using Stilewright.Wording;

namespace Stilewright.Web.Features.Worksheets;

/// <summary>Which worksheets are wanted. An address holds all of it, so that a sheet on a maker's screen is the one on paper.</summary>
/// <param name="Unit">Of the problems.</param>
/// <param name="LevelNumber">From 1.</param>
/// <param name="Seed">Of random problems; null for the doors of the projects.</param>
public sealed record WorksheetOrder(LengthUnit Unit, int LevelNumber, ulong? Seed)
{
    /// <summary>What every random problem has; null for what the level says.</summary>
    public IReadOnlyList<ProblemFeature>? Features { get; init; }

    /// <summary>The step of the openings of random problems; null for the level's.</summary>
    public Length? Readings { get; init; }

    /// <summary>How much is left to the maker; null for what the level says.</summary>
    public BlankStyle? Blanks { get; init; }

    private static readonly int[] PartsOfInch = [1, 2, 4, 8, 16];

    /// <summary>The steps of readings that can be chosen: wholes, halves, quarters and so on.</summary>
    public static IReadOnlyList<Length> ReadingsFor(LengthUnit unit) => unit == LengthUnit.Inch
        ? [.. PartsOfInch.Select(parts => Length.FromInches(new(1, parts)))]
        : [Length.FromMillimetres(10), Length.FromMillimetres(5), Length.FromMillimetres(1), Length.FromMillimetres(new(1, 2))];

    public Level Level
    {
        get
        {
            var level = Levels.For(Unit)[LevelNumber - 1];
            if (Seed is not null && Features is not null)
                level = level.With(Features);
            if (Seed is not null && Readings is { } step)
                level = level.WithReadings(step);
            return Blanks is { } style ? level.WithBlanks(style) : level;
        }
    }

    /// <summary>An order as an address has it. What is not there or cannot be read is as the level says.</summary>
    /// <param name="from">"doors" for the doors of the projects; else at random.</param>
    /// <param name="otherwise">The seed where the address has none.</param>
    public static WorksheetOrder Read(LengthUnit unit, int? level, string? from, string? seed, string? with, string? readings, string? blanks, ulong otherwise) =>
        new(unit, level is >= 1 && level <= Levels.Inch.Count ? level.Value : 1, from == "doors" ? null : Seeds.Read(seed) ?? otherwise)
        {
            Features = with is null ? null : QueryWords.Read<ProblemFeature>(with),
            Readings = readings is not null && LengthReader.Read(readings, unit) is ParseResult<Length>.Parsed { Value: var step } && ReadingsFor(unit).Contains(step) ? step : null,
            Blanks = blanks is null || QueryWords.Read<BlankStyle>(blanks) is not [var style] ? null : style,
        };

    /// <summary>The query that repeats it, beginning with a question mark.</summary>
    public string Query
    {
        get
        {
            QueryBuilder query = new() { { "level", LevelNumber.ToString(CultureInfo.InvariantCulture) }, { "unit", Unit == LengthUnit.Inch ? "in" : "mm" } };
            if (Seed is not { } seed)
            {
                query.Add("from", "doors");
            }
            else
            {
                query.Add("seed", seed.ToString(CultureInfo.InvariantCulture));
                if (Features is not null)
                    query.Add("with", Features.Count == 0 ? "single" : QueryWords.List(Features));
                if (Readings is { } step)
                    query.Add("readings", new LengthFormat(Unit, 64).Print(step));
            }

            if (Blanks is { } style)
                query.Add("blanks", QueryWords.Of(style));
            return query.ToString();
        }
    }

    public string AddressIn(string courseId) => $"/courses/{Uri.EscapeDataString(courseId)}/worksheets{Query}";

    public string AddressFor(string courseId, int bench) => string.Create(CultureInfo.InvariantCulture, $"/courses/{Uri.EscapeDataString(courseId)}/worksheets/{bench}{Query}");

    /// <summary>The sheet of one bench, or why there is none.</summary>
    public Found<Worksheet> Sheet(OpenCourse course, int bench)
    {
        if (Seed is { } seed)
        {
            try
            {
                return new Found<Worksheet>.There(RandomWorksheets.Of(Level, seed, bench));
            }
            catch (InvalidOperationException fault)
            {
                return new Found<Worksheet>.Missing(fault.Message);
            }
        }

        return course.AtBench(bench) is { } project
            ? WorksheetMaker.OfBench(project.Breakdown, project.Worked, Level, new(Unit, new StandardInForce(course.Standard.Standard).Format.FinestDenominator))
            : new Found<Worksheet>.Missing(string.Create(CultureInfo.InvariantCulture, $"There is no bench {bench} in this course."));
    }

    /// <summary>The print of some benches, and why others have no sheet; no print where none has.</summary>
    /// <param name="now">In the time of the place.</param>
    public (PaperPrint? Print, IReadOnlyList<string> Missing) Print(OpenCourse course, IReadOnlyList<int> benches, PaperKind paper, TeachingContents contents, DateTimeOffset now)
    {
        var tried = benches.Select(bench => Sheet(course, bench)).ToList();
        Worksheet[] sheets = [.. tried.OfType<Found<Worksheet>.There>().Select(found => found.Thing)];
        string[] missing = [.. tried.OfType<Found<Worksheet>.Missing>().Select(each => each.Problem)];
        if (sheets.Length == 0)
            return (null, missing.Length > 0 ? missing : ["No bench is chosen."]);
        var print = WorksheetPrint.Of(sheets, paper == PaperKind.A4 ? Paper.A4 : Paper.Letter, contents, ProgramVersion.Text, now);
        return (new($"Worksheets, {Level.Words}", $"{course.Course.Id}-worksheets.pdf", print.Facts, print.Pages, null), missing);
    }
}
