using Stilewright.Documents;
using Stilewright.Documents.Changes;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Desk;

public sealed partial class Workshop
{
    /// <summary>What a file would change in a course, in words; empty where it would change nothing.</summary>
    public static IReadOnlyList<string> DifferencesTo(OpenCourse course, Course file)
    {
        var before = CourseTree.Assemble(course.Tree, course.Projects.Select(project => project.Tree));
        var after = TreeOf(AsStored(course, file));
        var words = new ChangeWords(typeof(Course), before, after);
        return [.. DocumentChanges.Between(before, after, typeof(Course)).Select(words.Of)];
    }

    /// <summary>Why a file cannot become revisions of a course; empty where it can.</summary>
    /// <param name="standard">The house standard that came with the file; null for none.</param>
    public static IReadOnlyList<DocumentError> RefusalsOver(OpenCourse course, Course file, HouseStandard? standard)
    {
        List<DocumentError> errors = [];
        if (file.Id != course.Course.Id)
            errors.Add(new("$.id", $"the file is of the course {file.Id}, not of {course.Course.Id}", "import it as a new course"));
        var own = course.Standard.Standard;
        if (standard is not null ? !CourseFiles.IsSame(own with { Id = standard.Id }, standard) : NamesAnother(course, file))
        {
            errors.Add(new("$.standard", $"the file is built by another house standard than {own.Id}, which the course has here",
                "change the standard on its own page, or import the file as a new course"));
        }
        else
        {
            errors.AddRange(References.Check(AsStored(course, file), own));
        }

        return errors;
    }

    /// <summary>Makes a file the newest revision of what it changes. Nothing before it is lost.</summary>
    /// <param name="basedOn">The course as it was when the differences were shown; what others saved since is merged or told as a conflict.</param>
    public Task<SaveResult> ImportOverAsync(OpenCourse basedOn, Course file, string authorId, CancellationToken stop = default) =>
        SaveAsync(basedOn, authorId, _ => AsStored(basedOn, file), RevisionCause.Import, stop);

    private static bool NamesAnother(OpenCourse course, Course file) =>
        file.Standard != course.Standard.Standard.Id && CourseFiles.StandardIdOf(file.Standard) != course.Standard.Standard.Id;

    private static Course AsStored(OpenCourse course, Course file) => file with { Standard = course.Standard.Standard.Id };
}
