using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;
using Stilewright.Documents.Lists;
using Stilewright.Hanging;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

internal sealed class HangCommand(Screen screen) : Command<HangCommand.Settings>
{
    internal sealed class Settings : LeafSettings
    {
        [CommandOption("--work")]
        [Description("Show how each figure was found.")]
        public bool Work { get; init; }

        [CommandOption("--steps")]
        [Description("Tell how each leaf is bored and hung, step by step, with cautions.")]
        public bool Steps { get; init; }

        [CommandOption("--json")]
        [Description("Write JSON.")]
        public bool Json { get; init; }

        public override ValidationResult Validate() =>
            Json && (Work || Steps) ? ValidationResult.Error("--json writes everything; --work and --steps are for reading.") : base.Validate();
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var breakdown = CourseFile.Open(settings.File);
        var selection = Selection.Of(breakdown, settings.BenchNumber, settings.Leaf).OrRefuse();
        HungLeaf[] leaves = [.. selection.Hung(HangingPlan.Of(breakdown))];
        if (leaves.Length == 0)
            throw new RefusalException(ExitCode.WrongUse, "No leaf here has hinges: name the hinge with the setting hinge.usual, of the standard or under \"overrides\", or ask for another bench.");
        if (settings.Json)
            screen.Plain.Write(HangingJson.Of(breakdown.Course.Name, leaves));
        else
            PageWriter.Write(HangPage.Of(leaves, settings.FormatFor(breakdown, selection.Projects), settings.Work, settings.Steps), screen);
        return ExitCode.Good;
    }
}
