namespace Stilewright.Web.Storage;

/// <summary>A result of a maker in a course; <see cref="Makers.AttemptAccess"/> decides who sees it.</summary>
internal interface IStoredResult
{
    string AuthorId { get; }
    long CourseKey { get; }
}
