namespace Stilewright.Web.Storage;

/// <summary>What a print told people, kept as the file that the command line writes beside a packet.</summary>
public sealed class StoredHandOut
{
    public long Key { get; init; }
    public required long CourseKey { get; init; }

    /// <summary>When it was printed, UTC.</summary>
    public required DateTime MadeAt { get; init; }

    public required string AuthorId { get; init; }

    /// <summary>What was printed, in words, such as "Packet of bench 3".</summary>
    public required string What { get; init; }

    public required int FormatVersion { get; init; }
    public required string Json { get; init; }
}
