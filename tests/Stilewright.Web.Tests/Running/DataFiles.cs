using Microsoft.EntityFrameworkCore;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Tests.Running;

/// <summary>Contexts on one data file.</summary>
public sealed class DataFiles(string path) : IDbContextFactory<StoreContext>
{
    public StoreContext CreateDbContext() => new(new DbContextOptionsBuilder<StoreContext>().UseSqlite(DataFile.ConnectionTo(path)).Options);
}
