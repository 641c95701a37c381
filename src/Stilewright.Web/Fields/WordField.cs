namespace Stilewright.Web.Fields;

/// <summary>Words that are typed on a page, such as a name.</summary>
/// <inheritdoc cref="Field" path="/param"/>
/// <param name="Get">What the document has; null where nothing is entered.</param>
/// <param name="Set">The document with other words; null takes them out.</param>
public sealed record WordField<TDocument>(string Name, string Label, Func<TDocument, string?> Get, Func<TDocument, string?, TDocument> Set)
    : Field<TDocument>(Name, Label)
{
    private const int MostCharacters = 400;

    /// <summary>Why words cannot be taken; null where they can. What is not checked is taken.</summary>
    public Func<string, string?>? Check { get; init; }

    public override bool IsFigure => Check is not null;

    public override string TextIn(TDocument document, FieldText text) => Get(document) ?? "";

    public override FieldReading<TDocument> Read(string typed, FieldText text)
    {
        var words = typed.Trim();
        if (words.Length > MostCharacters)
            return new(null, FormattableString.Invariant($"{Label} has {words.Length} characters; at most {MostCharacters} are kept."));
        return Check?.Invoke(words) is { } problem ? new(null, problem) : new(document => Set(document, words), null);
    }

    public override TDocument Without(TDocument document) => Set(document, null);
}
