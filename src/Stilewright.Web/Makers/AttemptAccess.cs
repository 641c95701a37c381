using System.Security.Claims;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Makers;

/// <summary>The one place that decides who may see whose results, and who may set how much is told.</summary>
/// <remarks>A maker sees own results only. The instructor, who sits at the shop's own computer until people sign in, sees those of the class.</remarks>
public sealed class AttemptAccess
{
    private readonly string makerId;

    private AttemptAccess(string makerId, bool isInstructor) => (this.makerId, IsInstructor) = (makerId, isInstructor);

    public bool IsInstructor { get; }

    public static async Task<AttemptAccess> OfAsync(Asker asker) => new(await asker.IdAsync(), await asker.IsAtThisComputerAsync());

    public static AttemptAccess Of(ClaimsPrincipal user) => new(Asker.IdOf(user), Asker.IsAtThisComputer(user));

    /// <summary>Those of the maker who asks, the instructor too.</summary>
    internal IQueryable<T> Own<T>(IQueryable<T> results) where T : class, IStoredResult => results.Where(result => result.AuthorId == makerId);

    /// <summary>Those of everyone, for the instructor; of the maker who asks, for a maker.</summary>
    internal IQueryable<T> Seen<T>(IQueryable<T> results) where T : class, IStoredResult => IsInstructor ? results : Own(results);
}
