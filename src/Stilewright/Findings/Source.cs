namespace Stilewright.Findings;

/// <summary>How far a figure or a rule can be leaned on.</summary>
public enum SourceKind
{
    /// <summary>Read in a published text that is named.</summary>
    Published,

    /// <summary>A habit of the trade without a source.</summary>
    CommonPractice,

    /// <summary>Follows from geometry or arithmetic.</summary>
    Geometry,

    /// <summary>Set by the shop that uses it.</summary>
    Shop,
}

/// <summary>Where a figure or a rule comes from.</summary>
/// <param name="Text">The publication, or the reason, as it is shown.</param>
public sealed record Source(SourceKind Kind, string Text)
{
    public static Source CommonPractice { get; } = new(SourceKind.CommonPractice, "common practice, no source");
    public static Source Geometry { get; } = new(SourceKind.Geometry, "follows from the geometry");
    public static Source Shop { get; } = new(SourceKind.Shop, "the shop's own limit");
    public static Source Published(string text) => new(SourceKind.Published, text);

    public override string ToString() => Text;
}
