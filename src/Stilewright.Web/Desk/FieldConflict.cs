namespace Stilewright.Web.Desk;

/// <summary>A field that two people changed: what each of them entered.</summary>
/// <param name="Field">The name of the field.</param>
/// <param name="Mine">What is typed here.</param>
/// <param name="Theirs">What was saved meanwhile.</param>
/// <param name="Base">What the field said when the typing began here.</param>
public sealed record FieldConflict(string Field, string Mine, string Theirs, string Base);
