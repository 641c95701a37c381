namespace Stilewright.Web.Storage;

/// <summary>Someone who works here. The only place that holds a name.</summary>
public sealed class StoredMaker
{
    public required string Id { get; init; }
    public required string Name { get; set; }

    /// <summary>UTC.</summary>
    public required DateTime FirstSeenAt { get; init; }
}
