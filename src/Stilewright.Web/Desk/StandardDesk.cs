using Stilewright.Documents;
using Stilewright.Documents.Changes;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Desk;

/// <summary>A house standard on one screen. What is typed waits until it is applied, since it alters every bench.</summary>
public sealed class StandardDesk(Workshop workshop, string authorId, OpenStandard standard, LengthUnit? readerUnit) : FieldDesk<HouseStandard>(readerUnit)
{
    private List<WaitingChange> waiting = [];
    private int rows;

    /// <summary>The standard as it is saved.</summary>
    public OpenStandard Standard { get; private set; } = standard;

    /// <summary>What was added, removed or switched and waits to be applied, in the order in which it was done.</summary>
    public IReadOnlyList<WaitingChange> Waiting => waiting;

    /// <summary>Whether anything waits to be applied or could not be read.</summary>
    public bool HasChanges => HasDrafts || waiting.Count > 0;

    public override string Id => Standard.Standard.Id;

    public override LengthUnit OwnUnit => Standard.Standard.Unit;

    public override LengthFormat Format => new(ReaderUnit ?? OwnUnit, new StandardInForce(Standard.Standard).Format.FinestDenominator);

    /// <summary>The standard that the fields begin from: as it is saved, with what waits that is no single field.</summary>
    public override HouseStandard Saved => waiting.Aggregate(Standard.Standard, (there, change) => change.Edit(there));

    /// <summary>What is typed waits to be applied.</summary>
    public override Task SettleAsync(Field field, string text, string basedOn)
    {
        Typed(field, text);
        return Task.CompletedTask;
    }

    public override async Task<bool> SaveAsync(Func<HouseStandard, HouseStandard> edit) => Accept(await workshop.SaveStandardAsync(Standard, authorId, edit));

    /// <summary>The standard as it would be, or why it cannot be.</summary>
    public DocumentResult<HouseStandard> Proposed => DocumentReader.ReadStandard(DocumentWriter.Write(Tried));

    /// <summary>Lets an edit that is no single field wait with what is typed.</summary>
    /// <param name="key">What it is about; an edit about the same that waits already is dropped.</param>
    public void Propose(string key, Func<HouseStandard, HouseStandard> edit)
    {
        waiting.RemoveAll(each => each.Key == key);
        waiting.Add(new(key, "", edit));
        Sift();
    }

    /// <summary>Lets a row that is added to a record or taken out of one wait, and leaves what is typed about the rows, which may be others now.</summary>
    /// <param name="list">Whose rows they are, as in <c>hinges/compact/gaps</c>.</param>
    public void ProposeRow(string list, Func<HouseStandard, HouseStandard> edit)
    {
        LeaveTyped($"standard/{list}/");
        Propose(FormattableString.Invariant($"{list}{RowMark}{++rows}"), edit);
    }

    /// <summary>Lets the removal of a record wait, and leaves what is typed about it.</summary>
    /// <param name="key">Its list and id, as in <c>machines/jointer</c>.</param>
    public void ProposeRemoval(string key, Func<HouseStandard, HouseStandard> edit)
    {
        LeaveTyped($"standard/{key}/");
        Propose(key, edit);
    }

    /// <summary>Leaves one of the changes that wait.</summary>
    public void Withdraw(string key)
    {
        waiting.RemoveAll(each => each.Key == key);
        // What was typed about something that was only to be added goes with it.
        if (key.Split(RowMark) is [var list, _])
            LeaveTyped($"standard/{list}/");
        else if (!Ids(Saved).Contains(key))
            LeaveTyped($"standard/{key}/");
        Sift();
    }

    /// <summary>Whether a record is not in the standard yet.</summary>
    /// <param name="key">Its list and id, as in <c>machines/jointer</c>.</param>
    public bool IsNew(string key) => !Ids(Standard.Standard).Contains(key);

    /// <summary>Saves everything that waits, as one revision.</summary>
    public async Task<bool> ApplyAsync()
    {
        if (!await SaveAsync(_ => Tried))
            return false;
        waiting.Clear();
        DropSaved();
        return true;
    }

    /// <summary>Leaves everything that waits.</summary>
    public void Leave()
    {
        Refusals = [];
        waiting.Clear();
        LeaveTyped();
    }

    /// <summary>Takes back the maker's own last change of the standard, or makes it again.</summary>
    public async Task TakeBackAsync(ProjectHistory history, bool isRedo)
    {
        if ((isRedo ? history.Redo : history.Undo) is { } number)
            Accept(await workshop.TakeBackAsync(Standard, number, authorId, isRedo ? Storage.RevisionCause.Redo : Storage.RevisionCause.Undo));
    }

    /// <summary>Brings the standard back to a revision.</summary>
    public async Task RestoreAsync(int number) => Accept(await workshop.RestoreAsync(Standard, number, authorId));

    /// <summary>Takes over what others saved.</summary>
    public void Follow(OpenStandard now)
    {
        if (now == Standard)
            return;
        Standard = now;
        Sift();
        DropSaved();
    }

    // Keeps the changes that still do something, and says what.
    private void Sift()
    {
        List<WaitingChange> kept = [];
        var (there, tree) = (Standard.Standard, Standard.Tree);
        foreach (var change in waiting)
        {
            var next = change.Edit(there);
            var nextTree = Workshop.TreeOf(next);
            if (DocumentChanges.Between(tree, nextTree, typeof(HouseStandard)) is { Count: > 0 } changes)
            {
                var words = new ChangeWords(typeof(HouseStandard), tree, nextTree);
                kept.Add(change with { Words = string.Join("; ", changes.Select(words.Of)) });
                (there, tree) = (next, nextTree);
            }
        }

        waiting = kept;
        Moved();
    }

    // Stands between the path of a list and the number of a change to its rows.
    private const char RowMark = '#';

    private static IEnumerable<string> Ids(HouseStandard there) =>
    [
        .. there.Cutters.Select(each => $"cutters/{each.Id}"), .. there.Machines.Select(each => $"machines/{each.Id}"),
        .. there.Stocks.Select(each => $"stocks/{each.Id}"), .. there.Patterns.Select(each => $"patterns/{each.Id}"),
        .. there.Hinges.Select(each => $"hinges/{each.Id}"), .. there.HingeCounts.Select(each => $"hingeCounts/{each.Id}"), .. there.BoringMachines.Select(each => $"boringMachines/{each.Id}"),
        .. there.Species.Select(each => $"species/{each.Id}"), .. there.Climates.Select(each => $"climates/{each.Id}"),
    ];

    private bool Accept(StandardResult result)
    {
        Refusals = [];
        Moved();
        switch (result)
        {
            case StandardResult.Saved(var now):
                Standard = now;
                Message = FormattableString.Invariant($"Saved, revision {now.Head}");
                return true;
            case StandardResult.Conflicted(_, var now):
                Standard = now;
                Refusals = ["Someone else changed the same value meanwhile. The page shows it now; apply yours again if it is still wanted."];
                return false;
            case StandardResult.Refused(var errors):
                Refusals = [.. errors.Select(error => $"{error.Problem}; {error.Fix}.")];
                return false;
            default:
                throw new InvalidOperationException("A save is kept, refused or in conflict.");
        }
    }
}
