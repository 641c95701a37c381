using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Web.Desk;
using Stilewright.Wording;

namespace Stilewright.Web.Features.Api;

/// <summary>A course in the list of all.</summary>
public sealed record CourseLine(string Id, string Name, int Benches, bool IsPutAway, DateTime ChangedAt, string ChangedBy)
{
    public static CourseLine Of(CourseSummary course) => new(course.Id, course.Name, course.Benches, course.IsArchived, course.ChangedAt, course.ChangedBy);
}

/// <summary>A course with its benches.</summary>
/// <param name="Standard">The id of its house standard.</param>
/// <param name="Revision">The number of the course's own newest revision.</param>
/// <param name="BasedOn">The numbers of all revisions together, as an import of revisions asks for them.</param>
public sealed record CourseAnswer(string Id, string Name, string Unit, string Standard, int Revision, string BasedOn, bool IsPutAway, IReadOnlyList<BenchLine> Benches)
{
    public static CourseAnswer Of(OpenCourse course) => new(
        course.Course.Id, course.Course.Name, UnitWord(course.Course.Unit), course.Standard.Standard.Id, course.Head, course.Stand, course.IsArchived,
        [.. course.Projects.Select(BenchLine.Of)]);

    internal static string UnitWord(LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";
}

/// <summary>One bench of a course.</summary>
/// <param name="Id">Of the project that is built there.</param>
/// <param name="Findings">How many there are of each severity, in words.</param>
public sealed record BenchLine(int Bench, string Id, string Name, int Revision, int Fronts, int Leaves, int Parts, string Findings)
{
    public static BenchLine Of(OpenProject project)
    {
        SizedLeaf[] leaves = [.. project.Worked.Fronts.SelectMany(front => front.Leaves)];
        return new(project.Project.Bench, project.Project.Id, project.Project.Name, project.Head, project.Worked.Fronts.Count(), leaves.Length,
            leaves.Sum(leaf => leaf.Parts.Count), FindingWords.Summary([.. project.Breakdown.Findings]));
    }
}

/// <summary>A length.</summary>
/// <param name="Text">As it is printed in the unit that was asked for; ≈ where it was rounded for print.</param>
/// <param name="Inches">Exactly, as a fraction of inches such as 137/16.</param>
/// <param name="IsExact">False where a root lies below it, and the fraction is the nearest that the program holds.</param>
public sealed record LengthAnswer(string Text, string Inches, bool IsExact)
{
    public static LengthAnswer? Of(Worked? quantity, LengthFormat format) => quantity is null ? null
        : new(WorkedText.Figure(quantity, format), quantity.Amount.Reduce().ToString(), quantity.IsExact);

    public static LengthAnswer? Of(Length? length, LengthFormat format) => length is { } known
        ? new(format.Print(known), known.Inches.Reduce().ToString(), true) : null;
}

/// <summary>Width across the grain and length along it; of glass, width and height.</summary>
public sealed record SizeAnswer(LengthAnswer Width, LengthAnswer Length)
{
    public static SizeAnswer? Of(PartSize? size, LengthFormat format) => size is null ? null
        : new(LengthAnswer.Of(size.Width, format)!, LengthAnswer.Of(size.Length, format)!);
}

/// <summary>The thicknesses a part goes through.</summary>
public sealed record ThicknessAnswer(LengthAnswer? Rough, LengthAnswer Planed, LengthAnswer Sanded);

/// <summary>An arch.</summary>
/// <param name="IsOfPair">Whether it runs across both leaves of a pair; span and rise are then those of the whole.</param>
public sealed record ArchAnswer(string Family, LengthAnswer Span, LengthAnswer Rise, LengthAnswer? Shoulder, bool IsOfPair);

/// <summary>A part in its three stages.</summary>
/// <param name="Rough">Absent for sheet and glass, which are cut to size.</param>
public sealed record PartAnswer(
    string Path, string Label, string Name, string Kind, string Material, string Stock, SizeAnswer Finished, SizeAnswer IntoTheClamps, SizeAnswer? Rough,
    ThicknessAnswer? Thickness, string? Grain, ArchAnswer? Arch);

/// <summary>A leaf with its parts.</summary>
/// <param name="IsWithheld">Whether it cannot be built as it stands, so that it has no parts; a finding says why.</param>
public sealed record LeafAnswer(string Path, string Label, string Name, LengthAnswer Width, LengthAnswer Height, string Hinge, string Design, bool IsWithheld, IReadOnlyList<PartAnswer> Parts);

/// <summary>A front with its leaves.</summary>
/// <param name="Width">Absent where the opening is not measured yet.</param>
/// <param name="Height">Absent where the opening is not measured yet.</param>
public sealed record FrontAnswer(string Path, string Label, string Name, string? Mount, LengthAnswer? Width, LengthAnswer? Height, LengthAnswer? Gap, IReadOnlyList<LeafAnswer> Leaves);

/// <summary>Something that was found.</summary>
/// <param name="Severity">cannot be built, hazard, caution or note.</param>
/// <param name="AcceptedBecause">The instructor's reason, of an accepted hazard.</param>
public sealed record FindingAnswer(string Severity, string Rule, string Path, string? Field, IReadOnlyList<string> AlsoAt, string Problem, string Advice, string Source, string? AcceptedBecause);

/// <summary>What is built at one bench.</summary>
public sealed record ProjectAnswer(int Bench, string Id, string Name, int Revision, IReadOnlyList<FrontAnswer> Fronts, IReadOnlyList<FindingAnswer> Findings);

/// <summary>Sizes, parts and findings.</summary>
public sealed record BreakdownAnswer(string Course, string Name, string Unit, IReadOnlyList<ProjectAnswer> Projects)
{
    /// <param name="unit">Null for the unit that each project is written in.</param>
    public static BreakdownAnswer Of(OpenCourse course, IEnumerable<OpenProject> projects, LengthUnit? unit) => new(
        course.Course.Id, course.Course.Name, CourseAnswer.UnitWord(unit ?? course.Course.Unit), [.. projects.Select(project => Of(course, project, unit))]);

    private static ProjectAnswer Of(OpenCourse course, OpenProject project, LengthUnit? unit)
    {
        var format = new LengthFormat(unit ?? project.Project.Unit ?? course.Course.Unit, project.Worked.Standard.Format.FinestDenominator);
        return new(project.Project.Bench, project.Project.Id, project.Project.Name, project.Head,
            [.. project.Worked.Fronts.Select(front => Of(front, format))],
            [.. project.Breakdown.Findings.Select(finding => Of(finding, format))]);
    }

    private static FrontAnswer Of(SizedFront front, LengthFormat format) => new(
        front.Path, front.Label, front.Name, front.Mount is { } mount ? TradeWords.Words(mount) : null,
        LengthAnswer.Of(front.Width, format), LengthAnswer.Of(front.Height, format), LengthAnswer.Of(front.Gap, format),
        [.. front.Leaves.Select(leaf => new LeafAnswer(
            leaf.Path, leaf.Label, leaf.Name, LengthAnswer.Of(leaf.Width, format)!, LengthAnswer.Of(leaf.Height, format)!, TradeWords.Words(leaf.Hinge), leaf.DesignName,
            leaf.IsWithheld, [.. leaf.Parts.Select(part => Of(part, format))]))]);

    private static PartAnswer Of(Part part, LengthFormat format) => new(
        part.Path, part.Label, part.Name, TradeWords.Words(part.Kind), part.Material, part.Stock,
        SizeAnswer.Of(part.Finished, format)!, SizeAnswer.Of(part.GlueUp, format)!, SizeAnswer.Of(part.Rough, format),
        part.Thickness is { } thickness ? new(LengthAnswer.Of(thickness.Rough, format), LengthAnswer.Of(thickness.Planed, format)!, LengthAnswer.Of(thickness.Final, format)!) : null,
        part.Grain is { } grain ? TradeWords.Words(grain) : null,
        (part.Arch ?? part.TopArch ?? part.BottomArch) is { } arch
            ? new(TradeWords.Words(arch.Family), LengthAnswer.Of(arch.Span, format)!, LengthAnswer.Of(arch.WholeRise, format)!, LengthAnswer.Of(arch.Shoulder, format), arch.OfPair is not null) : null);

    private static FindingAnswer Of(Finding finding, LengthFormat format) => new(
        TradeWords.Words(finding.Severity), finding.Rule.Code, finding.Place.Path, finding.Place.Field, [.. finding.AlsoAt.Select(place => place.Path)],
        finding.ProblemText(format), finding.AdviceText(format), finding.Rule.Source.Text, finding.AcceptedBecause);
}

/// <summary>What a file would change in a course.</summary>
/// <param name="BasedOn">Send it with the import itself, which is refused where anyone saved since.</param>
/// <param name="Differences">In words; empty where nothing would change.</param>
public sealed record DifferencesAnswer(string BasedOn, IReadOnlyList<string> Differences);

/// <summary>Paper that was handed out.</summary>
public sealed record HandedOutLine(long Key, string What, DateTime MadeAt, string By, IReadOnlyList<int> Benches, int Parts)
{
    public static HandedOutLine Of(HandedOutEntry entry) => new(
        entry.Key, entry.What, entry.MadeAt, entry.By, [.. entry.Document.Projects.Select(project => project.Bench)], entry.Document.PartCount);
}

/// <summary>What of a print no longer holds.</summary>
/// <param name="PaperHolds">Whether everything on the paper is still so.</param>
/// <param name="Changes">Parts and benches that are not as they were handed out, in words.</param>
/// <param name="Origins">What else is of another revision or version, without a change to a part of its own.</param>
public sealed record ChangesAnswer(long Key, string What, DateTime MadeAt, bool PaperHolds, IReadOnlyList<string> Changes, IReadOnlyList<string> Origins);
