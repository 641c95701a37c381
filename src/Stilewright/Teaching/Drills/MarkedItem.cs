namespace Stilewright.Teaching.Drills;

/// <summary>One item, marked.</summary>
/// <param name="IsRight">Null where nothing was written.</param>
/// <param name="Slip">The known slip that gives the answer written; null where none does.</param>
/// <param name="Fault">Why the text could not be read, with the fix; null where it could.</param>
public sealed record MarkedItem(DrillItem Item, string? Text, bool? IsRight, DrillSlip? Slip = null, string? Fault = null);
