using System.Globalization;
using System.Text;

namespace Stilewright.Documents;

/// <summary>A place in a document. Made for every value that is read, so its text is built only when it is asked for.</summary>
internal sealed class DocumentPath
{
    private readonly string? name;
    private readonly int index;

    private DocumentPath(DocumentPath? parent, string? name, int index)
    {
        Parent = parent;
        this.name = name;
        this.index = index;
    }

    public static DocumentPath Root { get; } = new(null, null, 0);

    public DocumentPath? Parent { get; }

    public DocumentPath Field(string key) => new(this, key, 0);

    public DocumentPath Item(int position) => new(this, null, position);

    /// <summary>The piece at this place in the tree, or the nearest one above it that exists.</summary>
    public Json.JsonPiece PieceIn(Json.JsonPiece root)
    {
        if (Parent is null)
            return root;
        var parent = Parent.PieceIn(root);
        return name is not null ? parent.Find(name) ?? parent
            : index < parent.Items.Count ? parent.Items[index] : parent;
    }

    public override string ToString()
    {
        StringBuilder text = new();
        Append(text);
        return text.ToString();
    }

    private void Append(StringBuilder text)
    {
        if (Parent is null)
        {
            text.Append('$');
            return;
        }

        Parent.Append(text);
        if (name is null)
            text.Append(CultureInfo.InvariantCulture, $"[{index}]");
        else if (IsPlain(name))
            text.Append('.').Append(name);
        else
            text.Append(CultureInfo.InvariantCulture, $"['{Quote.Shown(name).Replace("'", "\\'", StringComparison.Ordinal)}']");
    }

    private static bool IsPlain(string key) => key.Length is > 0 and <= Quote.MostCharacters && key.All(char.IsAsciiLetterOrDigit);
}
