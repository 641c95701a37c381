using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Documents;

namespace Stilewright.Cli.Commands;

internal sealed class SchemaCommand(Screen screen) : Command<SchemaCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<KIND>")]
        [Description("course or standard.")]
        public required string Kind { get; init; }

        public override ValidationResult Validate() => Kind is "course" or "standard"
            ? ValidationResult.Success() : ValidationResult.Error($"There is a schema of course and of standard, not of \"{Kind}\".");
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        screen.Plain.Write(settings.Kind == "course" ? DocumentSchema.ForCourse() : DocumentSchema.ForStandard());
        return ExitCode.Good;
    }
}
