using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;
using Stilewright.Documents.Lists;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

internal sealed class CutListCommand(Screen screen) : Command<CutListCommand.Settings>
{
    internal sealed class Settings : LeafSettings
    {
        [CommandOption("--by <WHAT>")]
        [Description("Gather identical parts by leaf, bench or course; bench when absent.")]
        public string By { get; init; } = "bench";

        [CommandOption("--format <FORMAT>")]
        [Description("table, csv or json; table when absent.")]
        public string Format { get; init; } = "table";

        [CommandOption("--out <FILE>")]
        [Description("Write to this file.")]
        public string? Out { get; init; }

        [CommandOption("--replace")]
        [Description("Write over the file of --out when it is there.")]
        public bool Replace { get; init; }

        public override ValidationResult Validate()
        {
            if (By is not ("leaf" or "bench" or "course"))
                return ValidationResult.Error($"--by takes leaf, bench or course, not \"{By}\".");
            return Format is "table" or "csv" or "json"
                ? base.Validate() : ValidationResult.Error($"--format takes table, csv or json, not \"{Format}\".");
        }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var breakdown = CourseFile.Open(settings.File);
        var selection = Selection.Of(breakdown, settings.BenchNumber, settings.Leaf).OrRefuse();
        var format = settings.FormatFor(breakdown, selection.Projects);
        var groups = CutListGroups.Of(selection, settings.By switch
        {
            "leaf" => CutListBy.Leaf,
            "course" => CutListBy.Course,
            _ => CutListBy.Bench,
        });
        var text = settings.Format switch
        {
            "csv" => CutListCsv.Of(groups, format),
            "json" => CutListJson.Of(breakdown, groups),
            _ => null,
        };
        if (settings.Out is { } path)
            OutputFile.Write(path, text ?? PlainTable(selection, groups, format), settings.Replace);
        else if (text is not null)
            screen.Plain.Write(text);
        else
            PageWriter.Write(CutListPage.Of(selection, groups, format), screen);

        // The table says it itself; a file for another program has no place for it.
        var withheld = selection.Withheld;
        if (withheld.Count > 0 && text is not null)
            screen.Error.WriteLine($"Left out because they cannot be built: {string.Join(", ", withheld)}. `stilewright check` says why.");
        return ExitCode.Good;
    }

    private static string PlainTable(Selection selection, IReadOnlyList<CutListGroup> groups, Measure.LengthFormat format)
    {
        using var writer = new StringWriter();
        PageWriter.WritePlain(CutListPage.Of(selection, groups, format), writer);
        return writer.ToString();
    }
}
