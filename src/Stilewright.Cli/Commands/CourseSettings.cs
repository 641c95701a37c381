using System.ComponentModel;
using Spectre.Console.Cli;

namespace Stilewright.Cli.Commands;

/// <summary>A verb that reads a course file.</summary>
internal abstract class CourseSettings : ReaderSettings
{
    [CommandArgument(0, "<FILE>")]
    [Description("The course file.")]
    public required string File { get; init; }
}
