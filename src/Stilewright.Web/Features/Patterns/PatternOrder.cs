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
/// <param name="Place">An arched leaf or part, by label or path.</param>
/// <param name="Unit">Null for the unit that the project is written in.</param>
public sealed record PatternOrder(string Place, LengthUnit? Unit = null)
{
    private const double SheetMargin = 5;

    /// <summary>Null for letter where inches are read and a4 where millimetres are.</summary>
    public PatternPaper? Paper { get; init; }

    /// <summary>A print that was measured, to correct the next one by; null for no correction.</summary>
    public PrintMeasurement? Measured { get; init; }

    /// <summary>The line that a bearing follows; null for the true line.</summary>
    public GuideBearing? Guide { get; init; }

    /// <summary>Whether the pattern of a tall panel is drawn whole.</summary>
    public bool Whole { get; init; }

    /// <summary>Whether one pattern is sawn for rail and panel, also where none of the rack serves.</summary>
    public bool OnePattern { get; init; }

    private PrintCorrection Correction => Measured is { } print
        ? PrintCorrection.Of(new Printer("printer", "printer", LengthUnit.Inch, [print]), print.Feed) : PrintCorrection.None;

    /// <summary>The patterns as sheets, or why there are none.</summary>
    /// <param name="now">In the time of the place.</param>
    public Found<PaperPrint> Print(OpenCourse course, DateTimeOffset now) => Take(course, Whole, (found, format, drawn) =>
    {
        var (project, breakdown) = (found[0].Project, BreakdownOf(course, found[0]));
        var revisions = Fingerprint.Of(breakdown);
        var paper = Paper ?? PatternPaper.All.Single(each => each.Name == (format.Unit == LengthUnit.Inch ? "letter" : "a4"));
        var footnote = FormattableString.Invariant($"bench {project.Project.Bench}, {project.Project.Name}, revision {revisions.Projects[project.Project.Id]}");
        var handedOut = HandedOut.Of(breakdown, [project], HandedOutExtent.Parts, revisions, ProgramVersion.Text, now, found.Select(each => each.Part));
        return new Found<PaperPrint>.There(new(
            $"Patterns of {handedOut.PartWords}", FileStem(course, found[0]) + ".pdf",
            DrawnPatterns.Facts(course.Course.Name, found.Count == 1 ? found[0].Part.Label : found[0].Leaf.Label, ProgramVersion.Text, now),
            drawn.Pages(paper, Correction, format.Unit, footnote), handedOut));
    });

    /// <summary>One pattern as a drawing for other programs, or why there is none.</summary>
    public Found<Scene> Drawing(OpenCourse course) => Take<Scene>(course, Whole, (found, _, drawn) => drawn.Patterns is [var one]
        ? new Found<Scene>.There(PatternSheet.Of(one.Scene, Correction).OnSheet(SheetMargin))
        : new Found<Scene>.Missing($"A drawing holds one pattern, and {Place} has {drawn.Patterns.Count}: name one of {string.Join(", ", found.Select(each => each.Part.Label))}, and ask for the whole of a tall panel."));

    /// <summary>Points or arcs of whole outlines as comma-separated values, or why there are none.</summary>
    public Found<string> Csv(OpenCourse course, bool arcs) => Take<string>(course, true, (_, format, drawn) =>
        new Found<string>.There(arcs ? PatternCsv.Arcs(drawn.Patterns, format.Unit) : PatternCsv.Points(drawn.Patterns, format.Unit)));

    private Found<T> Take<T>(OpenCourse course, bool isWhole, Func<IReadOnlyList<ArchedPart>, LengthFormat, DrawnPatterns, Found<T>> then)
    {
        switch (ArchedParts.Find(course.Whole, Place))
        {
            case Found<IReadOnlyList<ArchedPart>>.There(var found):
                var project = found[0].Project;
                var format = new LengthFormat(Unit ?? project.Project.Unit ?? course.Course.Unit, project.Standard.Format.FinestDenominator);
                var revision = Fingerprint.Of(course.Course, project.Project);
                var drawn = DrawnPatterns.Of(found, revision, format, isWhole, OnePattern, Guide);
                return drawn.Refusals.Count > 0 ? new Found<T>.Missing(string.Join(" ", drawn.Refusals)) : then(found, format, drawn);
            case Found<IReadOnlyList<ArchedPart>>.Missing(var problem):
                return new Found<T>.Missing(problem);
            default:
                throw new InvalidOperationException("A part is there or missing.");
        }
    }

    private static Doors.Breakdown BreakdownOf(OpenCourse course, ArchedPart part) =>
        course.WithId(part.Project.Project.Id)?.Breakdown ?? course.Whole;

    /// <summary>The name of a pattern's file, without its ending.</summary>
    public static string FileStem(OpenCourse course, ArchedPart part) =>
        FormattableString.Invariant($"{course.Course.Id}-{part.Leaf.Label.Replace('·', '-')}-patterns");
}
