using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;
using Stilewright.Doors;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

internal sealed class BoredCommand(Screen screen) : Command<BoredCommand.Settings>
{
    internal sealed class Settings : CourseSettings
    {
        [CommandArgument(1, "<LEAF>")]
        [Description("The leaf that is bored, by label such as 7.2L or by path.")]
        public string Leaf { get; init; } = "";

        [CommandOption("--edge <SIDE>")]
        [Description("The edge that is bored, left or right, as the leaf stands with its top up.")]
        public string? Edge { get; init; }

        [CommandOption("--seen-from <FACE>")]
        [Description("The face you look at: front or back; back when absent.")]
        public string SeenFrom { get; init; } = "back";

        [CommandOption("--from <END>")]
        [Description("The end that you measure from: top or bottom; top when absent.")]
        public string From { get; init; } = "top";

        [CommandOption("--at <LENGTHS>")]
        [Description("From that end to the centre of each cup, with commas: \"3 1/8,22 1/2\".")]
        public string? At { get; init; }

        [CommandOption("--distance <LENGTH>")]
        [Description("From the edge to the near edge of the cup, where you measured it.")]
        public string? Distance { get; init; }

        public override ValidationResult Validate()
        {
            foreach (var (option, text, words) in new[] { ("--edge", Edge ?? "", new[] { "left", "right" }), ("--seen-from", SeenFrom, ["front", "back"]), ("--from", From, ["top", "bottom"]) })
            {
                if (!words.Contains(text))
                    return ValidationResult.Error($"{option} takes {words[0]} or {words[1]}{(text.Length == 0 ? "; name the edge that is bored" : $", not \"{text}\"")}.");
            }

            return string.IsNullOrWhiteSpace(At) ? ValidationResult.Error("--at takes the distance of each cup, with commas: --at \"3 1/8,22 1/2\".") : base.Validate();
        }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var breakdown = CourseFile.Open(settings.File);
        var selection = Selection.Of(breakdown, null, settings.Leaf).OrRefuse();
        var format = settings.FormatFor(breakdown, selection.Projects);
        var plan = HangingPlan.Of(breakdown);
        var label = selection.Leaves.First().Label;
        if (selection.Hung(plan).FirstOrDefault() is not { } leaf)
            throw new RefusalException(ExitCode.WrongUse, $"Leaf {label} has no hinges: the setting hinge.usual names none for it, or it is fixed or cannot be built.");
        if (BoredLeaf.Wanted(leaf) is null)
            throw new RefusalException(ExitCode.WrongUse, $"Leaf {label} has no cups on an upright edge; only such borings are looked at.");
        Length[] at = [.. settings.At!.Split(',').Select(text => TypedLength.Read("--at", text.Trim(), format.Unit))];
        var reading = new BoredReading(settings.SeenFrom == "front" ? LeafFace.Front : LeafFace.Back, settings.Edge == "left" ? Side.Left : Side.Right,
            settings.From == "top" ? Side.Top : Side.Bottom, at, settings.Distance is { } distance ? TypedLength.Read("--distance", distance, format.Unit) : null);
        if (reading.Problem(leaf, format) is { } problem)
            throw new RefusalException(ExitCode.WrongUse, problem);
        var answer = BoredRight.Of(leaf, reading, plan);
        PageWriter.Write(BoredPage.Of(leaf, answer, BoringDiagnosis.Of(leaf, reading), format), screen);
        return answer.IsRight ? ExitCode.Good : ExitCode.BoredWrong;
    }
}
