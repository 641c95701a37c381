using Stilewright.Documents;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Desk;

/// <summary>A house standard on one screen. What is typed waits until it is applied, since it alters every bench.</summary>
public sealed class StandardDesk(Workshop workshop, string authorId, OpenStandard standard, LengthUnit? readerUnit) : FieldDesk<HouseStandard>(readerUnit)
{
    /// <summary>The standard as it is saved.</summary>
    public OpenStandard Standard { get; private set; } = standard;

    public override string Id => Standard.Standard.Id;

    public override LengthUnit OwnUnit => Standard.Standard.Unit;

    public override LengthFormat Format => new(ReaderUnit ?? OwnUnit, new StandardInForce(Standard.Standard).Format.FinestDenominator);

    public override HouseStandard Saved => Standard.Standard;

    /// <summary>What is typed waits to be applied.</summary>
    public override Task SettleAsync(Field field, string text, string basedOn)
    {
        Typed(field, text);
        return Task.CompletedTask;
    }

    public override async Task<bool> SaveAsync(Func<HouseStandard, HouseStandard> edit) => Accept(await workshop.SaveStandardAsync(Standard, authorId, edit));

    /// <summary>The standard as it would be, or why it cannot be.</summary>
    public DocumentResult<HouseStandard> Proposed => DocumentReader.ReadStandard(DocumentWriter.Write(Tried));

    /// <summary>Saves everything that is typed, as one revision.</summary>
    public async Task<bool> ApplyAsync()
    {
        if (!await SaveAsync(_ => Tried))
            return false;
        DropSaved();
        return true;
    }

    /// <summary>Leaves everything that is typed.</summary>
    public void Leave()
    {
        Refusals = [];
        LeaveAll();
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
        Moved();
        DropSaved();
    }

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
