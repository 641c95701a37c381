namespace Stilewright.Documents.Rules;

/// <summary>A record whose fields are sound one by one but do not go together.</summary>
internal sealed record RuleFault(DocumentPath Path, string Problem, string Fix);
