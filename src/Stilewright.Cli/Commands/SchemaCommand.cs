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
        [Description("course, standard or handed-out.")]
        public required string Kind { get; init; }

        public override ValidationResult Validate() => Kind is "course" or "standard" or "handed-out"
            ? ValidationResult.Success() : ValidationResult.Error($"There is a schema of course, of standard and of handed-out, not of \"{Kind}\".");
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        screen.Plain.Write(settings.Kind switch
        {
            "course" => DocumentSchema.ForCourse(),
            "standard" => DocumentSchema.ForStandard(),
            _ => DocumentSchema.ForHandedOut(),
        });
        return ExitCode.Good;
    }
}
