using Microsoft.EntityFrameworkCore;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Tests.Serving;

/// <summary>Looks into a data file.</summary>
internal sealed class Stored(string path) : IDbContextFactory<StoreContext>
{
    public StoreContext CreateDbContext() => new(new DbContextOptionsBuilder<StoreContext>().UseSqlite(DataFile.ConnectionTo(path)).Options);

    public async Task<int> CountAsync<T>(Func<StoreContext, IQueryable<T>> of)
    {
        await using var db = CreateDbContext();
        return await of(db).CountAsync();
    }
}
