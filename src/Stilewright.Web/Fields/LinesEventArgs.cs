namespace Stilewright.Web.Fields;

/// <summary>Which lines of a list the browser keeps drafts of.</summary>
public sealed class LinesEventArgs : EventArgs
{
    /// <summary>The numbers in the names of their fields, ascending.</summary>
    public IReadOnlyList<int> Lines { get; set; } = [];
}
