namespace Stilewright.Drawing.Writing;

/// <summary>What a document says of itself.</summary>
/// <param name="Author">Null where nobody is named.</param>
/// <param name="Keywords">Parted by commas.</param>
/// <param name="Program">The program that made it, with its version.</param>
/// <param name="Created">Written in UTC; nothing else in a document depends on the clock.</param>
public sealed record PdfFacts(
    string Title, string Subject, string? Author, string Keywords, string Program, DateTimeOffset Created);
