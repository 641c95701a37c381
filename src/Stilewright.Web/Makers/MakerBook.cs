using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Makers;

/// <summary>The makers who were here, and what they are called.</summary>
public sealed class MakerBook(IDbContextFactory<StoreContext> store, TimeProvider clock)
{
    /// <summary>Who saves what the program itself brings, such as the sample course.</summary>
    public const string ProgramId = "program";

    /// <summary>Who saves and prints what another program asks for that carries no cookie.</summary>
    public const string OtherProgramId = "other-program";

    /// <summary>What someone is called who has given no name.</summary>
    public const string Unnamed = "A maker";

    /// <summary>Longest name kept.</summary>
    public const int MostCharacters = 80;

    private readonly ConcurrentDictionary<string, bool> entered = new(StringComparer.Ordinal);

    /// <summary>Enters a maker who is not in the book yet.</summary>
    public async Task EnterAsync(string id, string name, CancellationToken stop = default)
    {
        if (entered.ContainsKey(id))
            return;
        await using var db = await store.CreateDbContextAsync(stop);
        // In one step, since two first requests of one browser may come at the same moment.
        await db.Database.ExecuteSqlAsync(
            $"""INSERT INTO "makers" ("Id", "Name", "FirstSeenAt") VALUES ({id}, {name}, {clock.GetUtcNow().UtcDateTime}) ON CONFLICT ("Id") DO NOTHING""", stop);
        entered[id] = true;
    }

    public async Task<string> NameAsync(string id, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        return await db.Makers.Where(maker => maker.Id == id).Select(maker => maker.Name).SingleOrDefaultAsync(stop) ?? "someone";
    }

    /// <summary>Gives a maker the name that was typed; one without letters is no name.</summary>
    /// <returns>The name as it is kept.</returns>
    public async Task<string> RenameAsync(string id, string typed, CancellationToken stop = default)
    {
        var words = string.Join(' ', string.Concat(typed.Select(letter => char.IsControl(letter) ? ' ' : letter)).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        var name = words.Length == 0 ? Unnamed : words.Length > MostCharacters ? words[..MostCharacters] : words;
        await using var db = await store.CreateDbContextAsync(stop);
        await db.Makers.Where(maker => maker.Id == id).ExecuteUpdateAsync(set => set.SetProperty(maker => maker.Name, name), stop);
        return name;
    }
}
