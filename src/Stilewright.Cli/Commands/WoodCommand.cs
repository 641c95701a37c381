using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;
using Stilewright.Documents.Lists;
using Stilewright.Measure;
using Stilewright.Wood;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

internal sealed class WoodCommand(Screen screen) : Command<WoodCommand.Settings>
{
    internal sealed class Settings : LeafSettings
    {
        private const string Between = "..";

        [CommandOption("--glue-ups")]
        [Description("Add how solid panels and slabs are glued up from staves.")]
        public bool GlueUps { get; init; }

        [CommandOption("--staves <RANGE>")]
        [Description("Widths of staves to rip, such as 2..5; that when absent. Adds the glue-ups.")]
        public string? Staves { get; init; }

        [CommandOption("--boards <WIDTHS>")]
        [Description("Widths of the boards there are, such as \"4 1/2, 5, 6 1/4\": which make each panel with the least left over. Adds the glue-ups.")]
        public string? Boards { get; init; }

        [CommandOption("--joint <LENGTH>")]
        [Description("What jointing takes off each edge of a stave; 1/16 in when absent.")]
        public string? Joint { get; init; }

        [CommandOption("--rings-alike")]
        [Description("Lay all staves with the bark side up; in turn when absent. Which is better is contested.")]
        public bool RingsAlike { get; init; }

        [CommandOption("--json")]
        [Description("Write it as JSON, lengths as exact fractions of inches.")]
        public bool Json { get; init; }

        public override ValidationResult Validate() =>
            Staves is not null && Staves.Split(Between).Length != 2 ? ValidationResult.Error($"--staves takes two widths with two points between them, such as 2..5, not \"{Staves}\".")
            : Staves is not null && Boards is not null ? ValidationResult.Error("--staves are ripped to suit and --boards are as they are: give one of the two.")
            : base.Validate();

        /// <summary>Null where no glue-up is asked for.</summary>
        public GlueUpOrder? Order(LengthUnit unit)
        {
            var usual = GlueUpOrder.Usual;
            if (!GlueUps && Staves is null && Boards is null && Joint is null && !RingsAlike)
                return null;
            var range = Staves?.Split(Between).Select(text => TypedLength.Read("--staves", text.Trim(), unit)).ToList();
            // A comma may be a decimal mark; with a semicolon anywhere it is one.
            var boards = Boards?.Split(Boards.Contains(';', StringComparison.Ordinal) ? ';' : ',').Select(text => TypedLength.Read("--boards", text.Trim(), unit)).ToList();
            return new(range?[0] ?? usual.LeastStave, range?[1] ?? usual.GreatestStave, Joint is null ? usual.JointAllowance : TypedLength.Read("--joint", Joint, unit), boards ?? [], !RingsAlike);
        }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var breakdown = CourseFile.Open(settings.File);
        var selection = Selection.Of(breakdown, settings.BenchNumber, settings.Leaf).OrRefuse();
        var format = settings.FormatFor(breakdown, selection.Projects);
        var order = settings.Order(format.Unit);
        if (settings.Json)
            screen.Plain.Write(WoodJson.Of(selection, order));
        else
            PageWriter.Write(WoodPage.Of(selection, format, order), screen);
        return ExitCode.Good;
    }
}
