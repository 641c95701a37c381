using Stilewright.Shop;

namespace Stilewright.Web.Desk;

/// <summary>A change of a house standard that is no single field and waits to be applied, such as a machine that is added.</summary>
/// <param name="Key">What it is about, such as <c>machines/jointer</c>; a later change about the same stands in its place.</param>
/// <param name="Words">What it does, in plain words.</param>
/// <param name="Edit">A pure function that gives the standard as it should be.</param>
public sealed record WaitingChange(string Key, string Words, Func<HouseStandard, HouseStandard> Edit);
