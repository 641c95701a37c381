using Stilewright.Documents;
using Stilewright.Drawing.Patterns;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Prints;
using Stilewright.Shop;
using Stilewright.Web.Desk;
using Stilewright.Web.Features.Printing;
using Stilewright.Wording;

namespace Stilewright.Web.Features.Patterns;

/// <summary>Which patterns are wanted, and how they are printed.</summary>
/// <param name="Place">An arched leaf or part, by label or path; null for all of the benches.</param>
/// <param name="Unit">Null for the unit that the project is written in.</param>
public sealed record PatternOrder(string? Place, LengthUnit? Unit = null)
{
    private const double SheetMargin = 5;

    /// <summary>Where no place is named: the benches whose patterns are wanted; null for all of the course.</summary>
    public IReadOnlyList<int>? Benches { get; init; }

    /// <summary>Null for letter where inches are read and a4 where millimetres are.</summary>
    public PatternPaper? Paper { get; init; }

    /// <summary>The edge of the paper that goes in first; null for the one of the print that was measured last.</summary>
    public PaperFeed? Feed { get; init; }

    /// <summary>The printer as it is remembered; null where nothing is, or a drawing is wanted that goes to no printer.</summary>
    public Printer? Printer { get; init; }

    /// <summary>A print that was measured since; null for none.</summary>
    public PrintMeasurement? Measured { get; init; }

    /// <summary>Whether what is remembered of the printer counts.</summary>
    public bool IsCorrected { get; init; } = true;

    /// <summary>The line that a bearing follows; null for the true line.</summary>
    public GuideBearing? Guide { get; init; }

    /// <summary>Whether the pattern of a tall panel is drawn whole.</summary>
    public bool Whole { get; init; }

    /// <summary>Whether one pattern is sawn for rail and panel, also where none of the rack serves.</summary>
    public bool OnePattern { get; init; }

    private PrintCorrection Correction
    {
        get
        {
            var printer = (IsCorrected ? Printer : null) ?? new Printer("printer", "printer", LengthUnit.Inch, []);
            printer = Measured is { } print ? printer with { Measured = [.. printer.Measured, print] } : printer;
            return printer.Measured.Count > 0 ? PrintCorrection.Of(printer, Feed ?? printer.Measured[^1].Feed) : PrintCorrection.None;
        }
    }

    /// <summary>The patterns as sheets, bench by bench, or why there are none.</summary>
    /// <param name="now">In the time of the place.</param>
    public Found<PaperPrint> Print(OpenCourse course, DateTimeOffset now) => Take(course, Whole, benches =>
    {
        var breakdown = benches.Count == 1 ? BreakdownOf(course, benches[0].Project) : course.Whole;
        var revisions = Fingerprint.Of(breakdown);
        var parts = benches.SelectMany(bench => bench.Parts).ToList();
        var handedOut = HandedOut.Of(
            breakdown, benches.Select(bench => bench.Project), HandedOutExtent.Parts, revisions, ProgramVersion.Text, now, parts.Select(each => each.Part));
        return new Found<PaperPrint>.There(new(
            $"Patterns of {handedOut.PartWords}", FileStem(course, parts) + ".pdf",
            DrawnPatterns.Facts(course.Course.Name, parts is [var one] ? one.Part.Label : parts[0].Leaf.Label, ProgramVersion.Text, now),
            benches.SelectMany(bench => bench.Drawn.Pages(
                Paper ?? PatternPaper.All.Single(each => each.Name == (bench.Format.Unit == LengthUnit.Inch ? "letter" : "a4")), Correction, bench.Format.Unit,
                FormattableString.Invariant($"bench {bench.Project.Project.Bench}, {bench.Project.Project.Name}, revision {revisions.Projects[bench.Project.Project.Id]}"))),
            handedOut));
    });

    /// <summary>One pattern as a drawing for other programs, or why there is none.</summary>
    public Found<Scene> Drawing(OpenCourse course) => Take<Scene>(course, Whole, benches => benches is [{ Drawn.Patterns: [var one] }]
        ? new Found<Scene>.There(PatternSheet.Of(one.Scene, Correction).OnSheet(SheetMargin))
        : new Found<Scene>.Missing($"A drawing holds one pattern, and {Place ?? "the course"} has {benches.Sum(bench => bench.Drawn.Patterns.Count)}: name one of {string.Join(", ", benches.SelectMany(bench => bench.Parts).Select(each => each.Part.Label))}, and ask for the whole of a tall panel."));

    /// <summary>Points or arcs of whole outlines as comma-separated values, in the unit of the first bench, or why there are none.</summary>
    public Found<string> Csv(OpenCourse course, bool arcs) => Take<string>(course, true, benches =>
    {
        var (patterns, unit) = (benches.SelectMany(bench => bench.Drawn.Patterns).ToList(), benches[0].Format.Unit);
        return new Found<string>.There(arcs ? PatternCsv.Arcs(patterns, unit) : PatternCsv.Points(patterns, unit));
    });

    private Found<T> Take<T>(OpenCourse course, bool isWhole, Func<IReadOnlyList<BenchPatterns>, Found<T>> then)
    {
        switch (Wanted(course.Whole))
        {
            case Found<IReadOnlyList<ArchedPart>>.There(var found):
                List<BenchPatterns> benches = [];
                foreach (var parts in found.GroupBy(part => part.Project))
                {
                    var format = new LengthFormat(Unit ?? parts.Key.Project.Unit ?? course.Course.Unit, parts.Key.Standard.Format.FinestDenominator);
                    var own = parts.ToList();
                    benches.Add(new(parts.Key, own, format, DrawnPatterns.Of(own, Fingerprint.Of(course.Course, parts.Key.Project), format, isWhole, OnePattern, Guide)));
                }

                var refusals = benches.SelectMany(bench => bench.Drawn.Refusals).ToList();
                return refusals.Count > 0 ? new Found<T>.Missing(string.Join(" ", refusals)) : then(benches);
            case Found<IReadOnlyList<ArchedPart>>.Missing(var problem):
                return new Found<T>.Missing(problem);
            default:
                throw new InvalidOperationException("A part is there or missing.");
        }
    }

    private Found<IReadOnlyList<ArchedPart>> Wanted(Doors.Breakdown breakdown)
    {
        if (Place is not null)
            return ArchedParts.Find(breakdown, Place);
        var found = ArchedParts.Of(breakdown).Where(part => Benches is null || Benches.Contains(part.Project.Project.Bench)).ToList();
        return found.Count > 0 ? new Found<IReadOnlyList<ArchedPart>>.There(found) : new Found<IReadOnlyList<ArchedPart>>.Missing(
            $"No leaf {(Benches is null ? "of this course" : $"at bench {string.Join(", ", Benches)}")} has an arch, so that there is no pattern to print.");
    }

    private static Doors.Breakdown BreakdownOf(OpenCourse course, Doors.ProjectBreakdown project) =>
        course.WithId(project.Project.Id)?.Breakdown ?? course.Whole;

    private static string FileStem(OpenCourse course, IReadOnlyList<ArchedPart> parts) => parts.Select(part => part.Leaf.Path).Distinct().Count() == 1
        ? FileStem(course, parts[0]) : FormattableString.Invariant($"{course.Course.Id}-patterns");

    private sealed record BenchPatterns(Doors.ProjectBreakdown Project, IReadOnlyList<ArchedPart> Parts, LengthFormat Format, DrawnPatterns Drawn);

    /// <summary>The name of a pattern's file, without its ending.</summary>
    public static string FileStem(OpenCourse course, ArchedPart part) =>
        FormattableString.Invariant($"{course.Course.Id}-{part.Leaf.Label.Replace('·', '-')}-patterns");
}
