using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Stilewright.Web.Storage;

/// <summary>Lets the migrations tool see the model without starting the application.</summary>
public sealed class StoreDesign : IDesignTimeDbContextFactory<StoreContext>
{
    public StoreContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<StoreContext>().UseSqlite(DataFile.ConnectionTo("design.db")).Options);
}
