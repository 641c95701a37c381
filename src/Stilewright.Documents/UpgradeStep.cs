using System.Text.Json.Nodes;

namespace Stilewright.Documents;

/// <summary>One change of a file format: brings a file from a version to the next.</summary>
/// <param name="From">The version it starts at; it ends at the next.</param>
/// <param name="Apply">A pure function of the file's tree. The file may be faulty: what the step does not find it leaves alone,
/// since faults are reported after the last step. It need not set <c>version</c>.</param>
public sealed record UpgradeStep(int From, Func<JsonObject, JsonObject> Apply);
