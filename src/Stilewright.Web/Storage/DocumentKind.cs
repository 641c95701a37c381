namespace Stilewright.Web.Storage;

/// <summary>What a stored document holds. A course is stored without its projects, each of which has a history of its own.</summary>
public enum DocumentKind
{
    Course,
    Standard,
    Project,
    Printer,
}
