using Stilewright.Measure;
using Stilewright.Web.Fields;
using Stilewright.Wording;

namespace Stilewright.Web.Desk;

/// <summary>A document on one screen, with what is being typed into its fields.</summary>
/// <param name="readerUnit">The unit that this screen is read in; null for the document's own.</param>
public abstract class FieldDesk(LengthUnit? readerUnit)
{
    public LengthUnit? ReaderUnit { get; set; } = readerUnit;

    /// <summary>What happened last, in words for the head of the page; null at first.</summary>
    public string? Message { get; protected set; }

    /// <summary>What kept the last edit from being saved; empty where it was.</summary>
    public IReadOnlyList<string> Refusals
    {
        get;
        protected set
        {
            var wereNone = field.Count == 0;
            field = value;
            if (!wereNone || value.Count > 0)
                Told?.Invoke();
        }
    } = [];

    /// <summary>Raised when <see cref="Refusals"/> are others, which the frame of the page shows.</summary>
    public event Action? Told;

    /// <summary>The id of the document, under which the browser keeps what is typed.</summary>
    public abstract string Id { get; }

    /// <summary>The unit of the document's own numbers.</summary>
    public abstract LengthUnit OwnUnit { get; }

    public abstract LengthFormat Format { get; }

    public TradeWords Words => new(Format);

    public FieldText Text => new(OwnUnit, Format);

    /// <summary>What is saved in the field, as the field shows it.</summary>
    public abstract string SavedText(Field field);

    /// <summary>What is typed in the field and could be read, else what is saved.</summary>
    public abstract string TriedText(Field field);

    /// <summary>Why what is typed in the field cannot be taken; null where it can.</summary>
    public abstract string? ProblemOf(Field field);

    public abstract FieldConflict? ConflictOf(Field field);

    /// <summary>What was typed in the field and left again for what is saved; null where nothing was.</summary>
    public abstract string? LeftOf(Field field);

    /// <summary>Whether a text says what is saved in the field, in whichever words: 596.90 says 596.9.</summary>
    public abstract bool IsSaved(Field field, string text);

    /// <summary>Tries what is being typed.</summary>
    public abstract void Typed(Field field, string text);

    /// <summary>Ends the typing in a field. Where someone else saved another value meanwhile, both are kept and shown.</summary>
    /// <param name="basedOn">What the field said when the typing began.</param>
    public abstract Task SettleAsync(Field field, string text, string basedOn);

    /// <summary>Ends a conflict with one of the two values.</summary>
    public abstract Task ResolveAsync(Field field, bool mine);
}

/// <inheritdoc cref="FieldDesk"/>
/// <typeparam name="TDocument">What the fields belong to.</typeparam>
/// <remarks>What is typed is tried on the document at once, so that drawings follow; what cannot be read is marked, and they keep the
/// last that could. Nothing is saved before it is settled.</remarks>
public abstract class FieldDesk<TDocument>(LengthUnit? readerUnit) : FieldDesk(readerUnit)
{
    private const string TakenOut = "Someone took out what this belongs to, so it cannot be saved. It is kept on this screen until you press Escape in its field.";

    private readonly Dictionary<string, Draft> drafts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> problems = new(StringComparer.Ordinal);
    private readonly Dictionary<string, FieldConflict> conflicts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> left = new(StringComparer.Ordinal);

    /// <summary>Counts what was typed and saved; what follows from it holds while the number stays.</summary>
    public int Edition { get; private set; }

    /// <summary>The document as it is saved.</summary>
    public abstract TDocument Saved { get; }

    /// <summary>The document with everything that is typed and could be read.</summary>
    public TDocument Tried => drafts.Values.Aggregate(Saved, (document, draft) => draft.Edit(document));

    /// <summary>Whether anything typed here is not saved yet.</summary>
    public bool HasDrafts => drafts.Count > 0 || problems.Count > 0;

    /// <summary>Whether anything typed here cannot be read.</summary>
    public bool HasProblems => problems.Count > 0;

    /// <summary>What is typed here and not saved in the fields of one thing.</summary>
    /// <param name="id">Of an opening, say.</param>
    public IEnumerable<(string Label, string Text)> Unsaved(string id) => drafts.Values
        .Where(draft => draft.Field.Name.StartsWith($"{id}/", StringComparison.Ordinal)).Select(draft => (draft.Field.Label, draft.Typed));

    /// <summary>Whether what the fields belong to still exists.</summary>
    protected virtual bool IsThere => true;

    /// <summary>Whether anything typed here could be read and is not saved yet.</summary>
    protected bool HasTried => drafts.Count > 0;

    public sealed override string SavedText(Field field) => Own(field).TextIn(Saved, Text);

    public sealed override string TriedText(Field field) => Own(field).TextIn(Tried, Text);

    public sealed override string? ProblemOf(Field field) => problems.GetValueOrDefault(field.Name);

    public sealed override FieldConflict? ConflictOf(Field field) => conflicts.GetValueOrDefault(field.Name);

    public sealed override string? LeftOf(Field field) => left.GetValueOrDefault(field.Name);

    public sealed override bool IsSaved(Field field, string text) => IsThere && (text.Trim().Length == 0
        ? SavedText(field).Length == 0
        : Own(field).Read(text, Text).Edit is { } edit && Own(field).IsSame(edit(Saved), Saved, Text) && SavedText(field).Length > 0);

    public sealed override void Typed(Field field, string text)
    {
        if (!IsThere)
            return;
        Edition++;
        left.Remove(field.Name);
        conflicts.Remove(field.Name);
        if (IsSaved(field, text))
            Forget(field.Name);
        else if (Read(field, text) is { } edit)
            drafts[field.Name] = new(Own(field), text, edit);
    }

    public override async Task SettleAsync(Field field, string text, string basedOn)
    {
        if (!IsThere)
            return;
        Edition++;
        if (Read(field, text) is not { } edit)
            return;
        if (IsSaved(field, text))
            Forget(field.Name);
        else if (text.Trim().Length > 0 && Own(field).TextIn(edit(Saved), Text).Length == 0)
            problems[field.Name] = TakenOut;
        else if (IsSaved(field, basedOn))
            await SettleMineAsync(field, edit, text, basedOn);
        else
            conflicts[field.Name] = new(field.Name, text, SavedText(field), basedOn);
    }

    public sealed override async Task ResolveAsync(Field field, bool mine)
    {
        if (!conflicts.Remove(field.Name, out var conflict))
            return;
        Edition++;
        if (mine && Read(field, conflict.Mine) is { } edit)
            await SettleMineAsync(field, edit, conflict.Mine, SavedText(field));
        else
            Forget(field.Name);
    }

    /// <summary>Saves an edit that is no single field.</summary>
    /// <returns>False where it was refused or is in conflict, which <see cref="FieldDesk.Refusals"/> tells.</returns>
    public abstract Task<bool> SaveAsync(Func<TDocument, TDocument> edit);

    /// <summary>To be called when the document was saved here or by others.</summary>
    protected void Moved() => Edition++;

    /// <summary>Drops what is typed and already saved, here or by others.</summary>
    protected void DropSaved()
    {
        foreach (var (name, draft) in drafts.ToList())
        {
            // Where what it belongs to was taken out, an edit changes nothing either, and the draft waits.
            if (draft.Field.IsSame(draft.Edit(Saved), Saved, Text) && (SavedText(draft.Field).Length > 0 || draft.Typed.Trim().Length == 0))
            {
                drafts.Remove(name);
                Moved();
            }
        }
    }

    /// <summary>Leaves what is typed for what is saved.</summary>
    /// <param name="under">The beginning of the names of the fields that are left; all where it is empty.</param>
    protected void LeaveTyped(string under = "")
    {
        bool IsLeft(string name) => name.StartsWith(under, StringComparison.Ordinal);
        foreach (var (name, draft) in drafts.Where(each => IsLeft(each.Key)))
            left[name] = draft.Typed;
        foreach (var (name, text) in unread.Where(each => IsLeft(each.Key)))
            left[name] = text;
        foreach (var name in drafts.Keys.Concat(problems.Keys).Concat(conflicts.Keys).Where(IsLeft).ToList())
            Forget(name);
        Moved();
    }

    private readonly Dictionary<string, string> unread = new(StringComparer.Ordinal);

    private static Field<TDocument> Own(Field field) => (Field<TDocument>)field;

    private async Task SettleMineAsync(Field field, Func<TDocument, TDocument> edit, string text, string basedOn)
    {
        if (await SaveAsync(edit))
        {
            Forget(field.Name);
        }
        else
        {
            // The other's value may be heard of only now.
            if (IsThere && !IsSaved(field, basedOn))
                conflicts[field.Name] = new(field.Name, text, SavedText(field), basedOn);
            else
                problems[field.Name] = Refusals[0];
            Refusals = [];
        }

        Edition++;
    }

    private void Forget(string name)
    {
        drafts.Remove(name);
        problems.Remove(name);
        conflicts.Remove(name);
        unread.Remove(name);
    }

    // What is typed as an edit; null where it cannot be taken, which is said beside the field.
    private Func<TDocument, TDocument>? Read(Field field, string text)
    {
        var own = Own(field);
        var (edit, problem) = text.Trim().Length > 0 ? own.Read(text, Text)
            : field.IsOptional ? new(own.Without, null)
            : new(null, $"{field.Label} is needed: type {(field.IsFigure ? "a length" : "its words")}.");
        if (problem is null)
        {
            problems.Remove(field.Name);
            unread.Remove(field.Name);
        }
        else
        {
            problems[field.Name] = problem;
            unread[field.Name] = text;
        }

        return edit;
    }

    private sealed record Draft(Field<TDocument> Field, string Typed, Func<TDocument, TDocument> Edit);
}
