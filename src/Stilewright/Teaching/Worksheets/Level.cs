using Stilewright.Measure;

namespace Stilewright.Teaching.Worksheets;

/// <summary>A step of the course: what is asked, how much of it is left to the maker, and what numbers occur.</summary>
/// <param name="Number">From 1, the first door.</param>
/// <param name="Name">A few words.</param>
/// <param name="Teaches">What is new in it, in one sentence.</param>
/// <param name="Unit">The unit of its problems.</param>
/// <param name="Asked">The kinds of sizes that are asked. A size that leans on an asked one is always asked too.</param>
/// <param name="Limits">Of its random problems.</param>
public sealed record Level(
    int Number, string Name, string Teaches, LengthUnit Unit, BlankStyle Style, IReadOnlyList<SizeKind> Asked, ProblemLimits Limits);
