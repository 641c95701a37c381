using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Web.Fields;

/// <summary>A length that is entered on a page: where it lives in the document, and how it is put back.</summary>
/// <inheritdoc cref="Field" path="/param"/>
/// <param name="Get">What the document has; null where nothing is entered.</param>
/// <param name="Set">The document with another value; null takes it out.</param>
public record LengthField<TDocument>(string Name, string Label, Func<TDocument, LengthEntry?> Get, Func<TDocument, LengthEntry?, TDocument> Set)
    : Field<TDocument>(Name, Label)
{
    public override string TextIn(TDocument document, FieldText text) => text.Of(Get(document));

    public override bool IsSame(TDocument left, TDocument right, FieldText text) => Nullable.Equals(Get(left), Get(right));

    public override FieldReading<TDocument> Read(string typed, FieldText text) => text.Read(typed) switch
    {
        ParseResult<LengthEntry>.Parsed(var entry) => new(document => Set(document, entry), null),
        ParseResult<LengthEntry>.Failed failed => new(null, failed.Message),
        _ => throw new InvalidOperationException("Text is read or not."),
    };

    public override TDocument Without(TDocument document) => Set(document, null);
}

/// <summary>A length of a course.</summary>
/// <inheritdoc cref="LengthField{TDocument}" path="/param"/>
public sealed record LengthField(string Name, string Label, Func<Course, LengthEntry?> Get, Func<Course, LengthEntry?, Course> Set)
    : LengthField<Course>(Name, Label, Get, Set);
