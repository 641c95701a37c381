using Stilewright.Web.Storage;

namespace Stilewright.Web.Desk;

/// <summary>What one maker can take back or make again in a document.</summary>
/// <param name="Undo">The maker's own last change that still stands; null where there is none.</param>
/// <param name="Redo">The undoing that would be taken back; null where there is none.</param>
public sealed record ProjectHistory(int? Undo, int? Redo)
{
    public static ProjectHistory Empty { get; } = new(null, null);

    public bool CanUndo => Undo is not null;
    public bool CanRedo => Redo is not null;

    /// <param name="own">The maker's own revisions of the document, oldest first.</param>
    public static ProjectHistory Of(IEnumerable<(int Number, RevisionCause Cause)> own)
    {
        Stack<int> undo = new(), redo = new();
        foreach (var (number, cause) in own)
        {
            switch (cause)
            {
                case RevisionCause.Undo when undo.Count > 0:
                    undo.Pop();
                    redo.Push(number);
                    break;
                case RevisionCause.Redo when redo.Count > 0:
                    redo.Pop();
                    undo.Push(number);
                    break;
                default:
                    // The first revision is how the document began, which is not taken back.
                    if (number > 1)
                        undo.Push(number);
                    redo.Clear();
                    break;
            }
        }

        return new(undo.TryPeek(out var last) ? last : null, redo.TryPeek(out var undone) ? undone : null);
    }
}
