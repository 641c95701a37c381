using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Wood;

/// <summary>What one part weighs.</summary>
/// <param name="Volume">In cubic inches, of its true section where that is known.</param>
/// <param name="Weight">In pounds; null where nothing is known of its density.</param>
/// <param name="Centre">Its centre of gravity, in from the leaf's bottom left corner, X to the right, Y up.</param>
public sealed record PartWeight(Part Part, Worked Volume, Worked? Weight, (double X, double Y) Centre);
