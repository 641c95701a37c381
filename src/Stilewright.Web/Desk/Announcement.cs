namespace Stilewright.Web.Desk;

/// <summary>Tells open pages that a course changed.</summary>
/// <param name="CourseId">The id of the course's record.</param>
/// <param name="AuthorId">The maker who saved.</param>
public sealed record Announcement(string CourseId, string AuthorId);
