namespace Stilewright.Web.Storage;

/// <summary>What brought a revision about.</summary>
public enum RevisionCause
{
    Edit,
    Undo,
    Redo,
    Restore,
    Import,
}

/// <summary>One state of a document. Written once, never changed.</summary>
public sealed class StoredRevision
{
    public required long DocumentKey { get; init; }

    /// <summary>Counted from 1 within its document.</summary>
    public required int Number { get; init; }

    /// <summary>The maker who saved it; names are kept with makers alone.</summary>
    public required string AuthorId { get; init; }

    /// <summary>When it was saved, UTC.</summary>
    public required DateTime MadeAt { get; init; }

    /// <summary>The version of the file format that <see cref="Json"/> is in.</summary>
    public required int FormatVersion { get; init; }

    public required string ProgramVersion { get; init; }

    /// <summary>The whole document, as files hold it.</summary>
    public required string Json { get; init; }

    /// <summary>What changed since the revision before; an empty list for the first.</summary>
    public required string Changes { get; init; }

    /// <summary>The revision that the one who saved had before them; 0 for the first.</summary>
    public required int BasedOn { get; init; }

    public required RevisionCause Cause { get; init; }

    /// <summary>The revision that is undone, done again or restored; null for other causes.</summary>
    public int? Of { get; init; }
}
