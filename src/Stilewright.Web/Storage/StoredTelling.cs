using Stilewright.Teaching.Telling;

namespace Stilewright.Web.Storage;

/// <summary>How much makers of a course are told about their lists.</summary>
public sealed class StoredTelling
{
    public required long CourseKey { get; init; }
    public required Telling Most { get; set; }
}
