using Microsoft.EntityFrameworkCore;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Tests.Running;

/// <summary>Contexts on one data file, beside whatever runs on it.</summary>
public sealed class DataFiles(string path) : IDbContextFactory<StoreContext>
{
    public async Task<int> CountAsync<T>(Func<StoreContext, IQueryable<T>> of)
    {
        await using var db = CreateDbContext();
        return await of(db).CountAsync();
    }

    public StoreContext CreateDbContext() => new(new DbContextOptionsBuilder<StoreContext>().UseSqlite(DataFile.ConnectionTo(path)).Options);
}
