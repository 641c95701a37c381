namespace Stilewright.Web.Storage;

/// <summary>A document with a history. Its content is in its revisions.</summary>
public sealed class StoredDocument
{
    /// <summary>The key in the database; ids of records are unique only within their course.</summary>
    public long Key { get; init; }

    public required DocumentKind Kind { get; init; }

    /// <summary>The id that the document's record has in files.</summary>
    public required string RecordId { get; init; }

    /// <summary>The course that a project belongs to; null for all else.</summary>
    public long? CourseKey { get; init; }

    /// <summary>The number of the newest revision.</summary>
    public required int Head { get; set; }

    /// <summary>Put away: out of sight, nothing lost. Of a project, that its bench was cleared.</summary>
    public bool IsArchived { get; set; }

    /// <summary>For a project that does not follow the newest house standard: the revision it is kept on.</summary>
    public int? KeptOnStandard { get; set; }
}
