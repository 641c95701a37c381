using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Serving;

/// <summary>Healthy where the data file answers.</summary>
internal sealed class StoreHealth(IDbContextFactory<StoreContext> store) : IHealthCheck
{
    public async Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        await using var db = await store.CreateDbContextAsync(cancellationToken);
        return await db.Database.CanConnectAsync(cancellationToken)
            ? HealthCheckResult.Healthy() : HealthCheckResult.Unhealthy("The data file does not answer.");
    }
}
