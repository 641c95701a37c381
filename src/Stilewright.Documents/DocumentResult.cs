namespace Stilewright.Documents;

/// <summary>What became of a file: the document, or every reason why it is refused.</summary>
public abstract record DocumentResult<T>
{
    private DocumentResult()
    {
    }

    public sealed record Read(T Document) : DocumentResult<T>;

    /// <param name="Errors">At least one, in the order of the file.</param>
    public sealed record Refused(IReadOnlyList<DocumentError> Errors) : DocumentResult<T>;
}
