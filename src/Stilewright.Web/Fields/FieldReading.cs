namespace Stilewright.Web.Fields;

/// <summary>What was typed, read.</summary>
/// <param name="Edit">Puts it into the document; null where it cannot be taken.</param>
/// <param name="Problem">Why it cannot be taken, and what would do; null where it can.</param>
public readonly record struct FieldReading<TDocument>(Func<TDocument, TDocument>? Edit, string? Problem);
