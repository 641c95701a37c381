using System.Globalization;
using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Bench;

/// <summary>A whole class: the file's bytes read and checked, everything worked out, cut lists gathered.</summary>
internal static class CourseMeasurement
{
    public static void Run()
    {
        var file = DocumentWriter.Write(SampleCourses.Of(24, 100));
        var (leaves, lines) = (0, 0);
        var timing = Timing.Of(400, 51, () => (leaves, lines) = Work(file));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"course: 24 benches, {leaves} leaves, {file.Length:N0} bytes to {lines:N0} lines of cut lists by bench and course, warm"));
        Console.WriteLine($"  read, references, sizes, parts, findings, cut lists: {timing.Against(20)}; {timing.Processor}");
    }

    private static (int Leaves, int Lines) Work(byte[] file)
    {
        if (DocumentReader.ReadCourse(file) is not DocumentResult<Course>.Read { Document: var course })
            throw new InvalidOperationException("The measured course was refused.");
        if (References.Check(course, ShippedStandards.Inch).Count > 0)
            throw new InvalidOperationException("The measured course names what the standard does not have.");
        var breakdown = Breakdown.Of(course, ShippedStandards.Inch);
        var lines = CutList.Of(breakdown.Parts).Count;
        foreach (var project in breakdown.Projects)
            lines += CutList.Of(project.Fronts.SelectMany(front => front.Leaves).SelectMany(leaf => leaf.Parts)).Count;
        return (breakdown.Leaves.Count(), lines);
    }
}
