using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;

namespace Stilewright.Teaching.Reuse;

/// <summary>A piece of wood that is already cut and came out wrong.</summary>
/// <param name="Part">The part it was meant for, which tells its material, stock, thickness and what is worked on it.</param>
/// <param name="Stage">Whether its size is that of a finished part, of one for the clamps or of a rough blank.</param>
/// <param name="Width">Across the grain, as it is.</param>
/// <param name="Length">Along the grain, as it is.</param>
/// <param name="IsWorked">Whether its joints are cut and its edges moulded or raised; false for a piece that is only sawn and planed.</param>
public sealed record CutPiece(Part Part, CutStage Stage, Length Width, Length Length, bool IsWorked);
