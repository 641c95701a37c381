using Microsoft.EntityFrameworkCore;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Makers;

/// <summary>The makers who were here, and what they are called.</summary>
public sealed class MakerBook(IDbContextFactory<StoreContext> store, TimeProvider clock)
{
    /// <summary>Who saves what the program itself brings, such as the sample course.</summary>
    public const string ProgramId = "program";

    /// <summary>Longest name kept.</summary>
    public const int MostCharacters = 80;

    /// <summary>Enters a maker who is not in the book yet.</summary>
    public async Task EnterAsync(string id, string name, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        if (await db.Makers.AnyAsync(maker => maker.Id == id, stop))
            return;
        db.Makers.Add(new() { Id = id, Name = name, FirstSeenAt = clock.GetUtcNow().UtcDateTime });
        try
        {
            await db.SaveChangesAsync(stop);
        }
        catch (DbUpdateException) when (db.Makers.AsNoTracking().Any(maker => maker.Id == id))
        {
            // Two first requests of one browser at the same moment.
        }
    }

    public async Task<string> NameAsync(string id, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        return await db.Makers.Where(maker => maker.Id == id).Select(maker => maker.Name).SingleOrDefaultAsync(stop) ?? "someone";
    }

    public async Task RenameAsync(string id, string name, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        await db.Makers.Where(maker => maker.Id == id).ExecuteUpdateAsync(set => set.SetProperty(maker => maker.Name, name), stop);
    }
}
