using System.Text.Json.Nodes;
using Stilewright.Documents.Shapes;

namespace Stilewright.Documents.Changes;

/// <summary>Finds, applies and takes back changes of documents that stand as JSON trees.</summary>
/// <remarks>
/// The root of a tree is a course, a project as it stands in a course, or a house standard, of the newest version. Trees are those
/// of documents that the reader accepts; what a merge makes must be read again, since two sound changes can be unsound together.
/// An empty list and absent ones are the same, and so are empty settings, as in the files that are written.
/// </remarks>
public static class DocumentChanges
{
    /// <summary>The changes that lead from one tree to the other, in the order in which they are to be applied.</summary>
    /// <param name="root">The record that the trees hold.</param>
    /// <exception cref="ArgumentException">The trees are of different documents: their ids differ.</exception>
    public static IReadOnlyList<Change> Between(JsonObject before, JsonObject after, Type root)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return TreeDifference.Between(before, after, RootShape(root));
    }

    /// <summary>Puts changes on a document that may have moved on since they were made; all of them, or none.</summary>
    /// <remarks>A value is set where it is still as it was before the change, or already as after it. A record whose predecessor is gone goes to the end
    /// of its list. Where two people move one record, the later move holds.</remarks>
    /// <param name="head">The document as it is now; it is not altered.</param>
    /// <param name="root">The record that the tree holds.</param>
    public static MergeResult Apply(JsonObject head, IReadOnlyList<Change> changes, Type root)
    {
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(changes);
        return ChangeMerge.Apply(head, changes, RootShape(root));
    }

    /// <summary>The changes that take the given ones back.</summary>
    public static IReadOnlyList<Change> Inverse(IReadOnlyList<Change> changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        return [.. changes.Reverse().Select(change => change.Inverse)];
    }

    internal static RecordShape RootShape(Type root)
    {
        ArgumentNullException.ThrowIfNull(root);
        return Shape.Of(root) is RecordShape { IdField: not null } shape ? shape
            : throw new ArgumentException($"{root} has no id, so that its changes cannot be addressed.", nameof(root));
    }
}
