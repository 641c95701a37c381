namespace Stilewright.Curves;

/// <summary>A place where two curves meet, with its distance along each, in.</summary>
public readonly record struct Crossing(double OnFirst, double OnSecond, CurvePoint Place);
