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
        [Description("course, standard, handed-out, label-sheet, printer or makers-list.")]
        public required string Kind { get; init; }

        public override ValidationResult Validate() => Kind is "course" or "standard" or "handed-out" or "label-sheet" or "printer" or "makers-list"
            ? ValidationResult.Success() : ValidationResult.Error($"There is a schema of course, standard, handed-out, label-sheet, printer and makers-list, not of \"{Kind}\".");
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        screen.Plain.Write(settings.Kind switch
        {
            "course" => DocumentSchema.ForCourse(),
            "standard" => DocumentSchema.ForStandard(),
            "handed-out" => DocumentSchema.ForHandedOut(),
            "label-sheet" => DocumentSchema.ForLabelSheet(),
            "printer" => DocumentSchema.ForPrinter(),
            _ => DocumentSchema.ForMakersList(),
        });
        return ExitCode.Good;
    }
}
