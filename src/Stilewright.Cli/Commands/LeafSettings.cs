using System.ComponentModel;
using Spectre.Console.Cli;

namespace Stilewright.Cli.Commands;

/// <summary>A verb that can be held to one bench or one leaf.</summary>
internal abstract class LeafSettings : BenchSettings
{
    [CommandOption("--leaf <LABEL>")]
    [Description("Only this leaf, by label such as 7.2L or by path.")]
    public string? Leaf { get; init; }
}
