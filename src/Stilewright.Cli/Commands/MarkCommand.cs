using System.ComponentModel;
using System.Globalization;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;
using Stilewright.Documents;
using Stilewright.Documents.Lists;
using Stilewright.Doors;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Worksheets;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Reuse;
using Stilewright.Teaching.Telling;
using Stilewright.Wording;

namespace Stilewright.Cli.Commands;

internal sealed class MarkCommand(Screen screen, TimeProvider clock) : Command<MarkCommand.Settings>
{
    private const double SheetMargin = 5;

    internal sealed class Settings : LeafSettings
    {
        [CommandArgument(1, "<LIST>")]
        [Description("The maker's list: CSV with or without headings (part, count, width, length), or JSON (`stilewright schema makers-list`).")]
        public required string List { get; init; }

        [CommandOption("--stage <STAGE>")]
        [Description("What the sizes are: finished, clamps (with the trim allowance) or rough; as the list says, or finished, when absent.")]
        public string? Stage { get; init; }

        [CommandOption("--unit <UNIT>")]
        [Description("The unit of the list's bare numbers: in or mm; that of the project when absent.")]
        public string? Unit { get; init; }

        [CommandOption("--earlier <FILE>")]
        [Description("An earlier file of the same course, or the file of what was handed out that lies beside a packet: figures that were right by it are told as such, as where an opening was measured again since.")]
        public string? Earlier { get; init; }

        [CommandOption("--tell <HOW-MUCH>")]
        [Description("right-or-wrong tells no size and no reason; hint asks a question; rule says what was missed; all shows the right sizes and the working. right-or-wrong when absent.")]
        public string Tell { get; init; } = "right-or-wrong";

        [CommandOption("--already-cut")]
        [Description("The pieces are cut as the list says: tell what the wrong ones can still become. It shows right sizes, so it takes --tell all.")]
        public bool AlreadyCut { get; init; }

        [CommandOption("--worked")]
        [Description("With --already-cut: the joints are cut and the edges moulded or raised too.")]
        public bool Worked { get; init; }

        [CommandOption("--draw <FILE>")]
        [Description("Write an SVG of what would happen if it were cut so. It shows right sizes, so it takes --tell all.")]
        public string? Draw { get; init; }

        [CommandOption("--pdf <FILE>")]
        [Description("Write the answer as a PDF, a page or more for each leaf; with --tell all it has the drawings of --draw.")]
        public string? Pdf { get; init; }

        [CommandOption("--paper <PAPER>")]
        [Description("Of the PDF: letter or a4; when absent, letter for inches and a4 for millimetres.")]
        public string? PaperName { get; init; }

        [CommandOption("--replace")]
        [Description("Write over files that are there.")]
        public bool Replace { get; init; }

        [CommandOption("--json")]
        [Description("Write JSON.")]
        public bool Json { get; init; }

        public CutStage? CutStage => Stage switch
        {
            "finished" => Teaching.Checking.CutStage.Finished,
            "clamps" => Teaching.Checking.CutStage.IntoClamps,
            "rough" => Teaching.Checking.CutStage.Rough,
            _ => null,
        };

        public Telling Telling => Tell switch
        {
            "hint" => Telling.Hint,
            "rule" => Telling.Rule,
            "all" => Telling.All,
            _ => Telling.RightOrWrong,
        };

        public override ValidationResult Validate()
        {
            if (Stage is not (null or "finished" or "clamps" or "rough"))
                return ValidationResult.Error($"--stage takes finished, clamps or rough, not \"{Stage}\".");
            if (Unit is not (null or "in" or "mm"))
                return ValidationResult.Error($"--unit takes in or mm, not \"{Unit}\".");
            if (Tell is not ("right-or-wrong" or "hint" or "rule" or "all"))
                return ValidationResult.Error($"--tell takes right-or-wrong, hint, rule or all, not \"{Tell}\".");
            if (AlreadyCut && Tell != "all")
                return ValidationResult.Error("--already-cut shows right sizes: give --tell all with it.");
            if (Draw is not null && Tell != "all")
                return ValidationResult.Error("--draw shows right sizes: give --tell all with it.");
            if (PaperName is not (null or "letter" or "a4"))
                return ValidationResult.Error($"--paper takes letter or a4, not \"{PaperName}\".");
            if (Pdf is null && PaperName is not null)
                return ValidationResult.Error("--paper is that of the PDF: name one with --pdf.");
            if (Worked && Stage == "rough")
                return ValidationResult.Error("--worked does not go with --stage rough: a rough blank is not worked yet.");
            return Worked && !AlreadyCut ? ValidationResult.Error("--worked goes with --already-cut.") : base.Validate();
        }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        foreach (var path in new[] { settings.Draw, settings.Pdf }.OfType<string>())
            OutputFile.RefuseExisting(path, settings.Replace);
        var breakdown = CourseFile.Open(settings.File);
        var selection = Selection.Of(breakdown, settings.BenchNumber, settings.Leaf).OrRefuse();
        ProjectBreakdown[] projects = [.. selection.Projects];
        if (projects is not [var project])
        {
            throw new RefusalException(ExitCode.WrongUse, projects.Length == 0 ? "There is nothing to check a list against: this bench has no fronts."
                : "Say what the list is for: --leaf 7.2L for one leaf, or --bench 7 for all leaves of a bench.");
        }

        SizedLeaf[] leaves = [.. selection.Leaves];
        if (settings.Leaf is not null && leaves.Length > 1)
            throw new RefusalException(ExitCode.WrongUse, $"Several leaves are called {settings.Leaf}: name one by its path, such as {leaves[0].Path}.");
        if (leaves.All(leaf => leaf.IsWithheld))
            throw new RefusalException(ExitCode.FileFailed, $"{string.Join(", ", leaves.Select(leaf => leaf.Label).DefaultIfEmpty("This bench"))} cannot be built as it stands, so no list can be right. `stilewright check` says why.");

        var unit = settings.Unit switch { "in" => LengthUnit.Inch, "mm" => LengthUnit.Millimetre, _ => project.Project.Unit ?? breakdown.Course.Unit };
        var read = Open(settings.List, unit, settings.CutStage);
        var only = settings.Leaf is null ? null : leaves[0];
        var (earlier, changed) = settings.Earlier is null ? (null, "") : EarlierKey(settings.Earlier, breakdown, project, only, read.List.Stage);
        var key = only is null ? ListKey.Of(project, read.List.Stage, earlier, changed) : ListKey.Of(project, only, read.List.Stage, earlier, changed);
        RefuseUnknownLeaves(settings.List, read.List, key);
        var found = ListCheck.Check(read.List, key, read.Unit, key.OthersOf(breakdown));
        var format = settings.FormatFor(breakdown, projects);
        var marked = new MarkedList(settings.Leaf is null ? $"bench {project.Project.Bench}, {project.Project.Name}" : $"leaf {leaves[0].Label}, {leaves[0].Name}",
            read, found, Answers.Of(found, settings.Telling, format), settings.AlreadyCut ? WrongPieces.Of(found, breakdown, settings.Worked) : []);
        if (settings.Draw is { } drawing)
            WriteDrawing(drawing, IfCutSheet.Draw(breakdown, project, found, format), settings.Replace);
        if (settings.Pdf is { } pdf)
        {
            var paper = settings.PaperName switch { "letter" => Paper.Letter, "a4" => Paper.A4, _ => format.Unit == LengthUnit.Inch ? Paper.Letter : Paper.A4 };
            var print = AnswerPrint.Of(breakdown, project, found, marked.Answer, format, paper, ProgramVersion.Text, clock.GetLocalNow());
            var count = PdfFile.Write(pdf, print.Facts, print.Pages, settings.Replace, screen, cancellationToken);
            screen.Error.WriteLine($"{pdf}: the answer on {TradeWords.Count(count, "sheet", "sheets")}.");
        }

        if (settings.Json)
            screen.Plain.Write(MarkJson.Of(breakdown, marked, format));
        else
            PageWriter.Write(MarkPage.Of(breakdown, marked, format), screen);
        return found.IsRight ? ExitCode.Good : ExitCode.ListWrong;
    }

    private static (ListKey Key, string Changed) EarlierKey(string path, Breakdown now, ProjectBreakdown project, SizedLeaf? leaf, CutStage stage)
    {
        if (DocumentReader.FormatOf(InputFile.Read(path)) == DocumentFormat.HandedOut)
            return HandedOutKey(path, now, project, leaf, stage);
        return (OfCourse(path, now, project, leaf, stage), "");
    }

    private static (ListKey Key, string Changed) HandedOutKey(string path, Breakdown now, ProjectBreakdown project, SizedLeaf? leaf, CutStage stage)
    {
        var told = HandedOutFile.Read(path);
        if (told.Course != now.Course.Id)
            throw new RefusalException(ExitCode.FileFailed, $"{path} was handed out of the course {told.Course}, not {now.Course.Id}: name what was handed out of the same course.");
        if (told.Projects.FirstOrDefault(each => each.Id == project.Project.Id) is not { } before)
            throw new RefusalException(ExitCode.FileFailed, $"{path} tells nothing of the project {project.Project.Id}, so no size of the list can be from it.");
        var key = ListKey.Of(before, stage, project.Standard[Shop.Settings.Step], leaf?.Path);
        return key.Items.Count > 0 ? (key, $"handed out on {told.Time.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}")
            : throw new RefusalException(ExitCode.FileFailed, $"{path} tells nothing of the leaf {leaf?.Path}, so no size of the list can be from it.");
    }

    private static ListKey OfCourse(string path, Breakdown now, ProjectBreakdown project, SizedLeaf? leaf, CutStage stage)
    {
        var then = CourseFile.Open(path);
        if (then.Course.Id != now.Course.Id)
            throw new RefusalException(ExitCode.FileFailed, $"{path} is the course {then.Course.Id}, not {now.Course.Id}: name an earlier file of the same course.");
        if (then.Projects.FirstOrDefault(each => each.Project.Id == project.Project.Id) is not { } before)
            throw new RefusalException(ExitCode.FileFailed, $"{path} has no project {project.Project.Id}, so no size of the list can be from it.");
        if (leaf is null)
            return ListKey.Of(before, stage);
        return before.Fronts.SelectMany(front => front.Leaves).FirstOrDefault(each => each.Path == leaf.Path) is { } same ? ListKey.Of(before, same, stage)
            : throw new RefusalException(ExitCode.FileFailed, $"{path} has no leaf {leaf.Path}, so no size of the list can be from it.");
    }

    private void WriteDrawing(string path, Scene? scene, bool replace)
    {
        if (scene is null)
        {
            screen.Error.WriteLine($"{path} is not written: nothing would happen that a drawing could show.");
            return;
        }

        OutputFile.Write(path, SvgWriter.Text(scene.OnSheet(SheetMargin)), replace);
        screen.Error.WriteLine($"{path}: {scene.Description}.");
    }

    private static ReadList Open(string path, LengthUnit unit, CutStage? stage) => CourseFile.Use(path, MakersListReader.Read(InputFile.Read(path, "the list"), unit, stage));

    // A leaf that is misspelled would make every line of it wrong.
    private static void RefuseUnknownLeaves(string path, MakersList list, ListKey key)
    {
        var unknown = key.StrayLines(list);
        if (unknown.Count == 0)
            return;
        var labels = key.Items.Select(item => item.Leaf).Distinct().ToList();
        throw new RefusalException(ExitCode.FileFailed,
        [
            $"{path} cannot be used: {TradeWords.Count(unknown.Count, "line is", "lines are")} for a leaf that is not here.",
            .. unknown.Select(line => $"  {line.Name}: there is no leaf {line.Leaf}; {PlaceName.Suggest(line.Leaf!, labels)}"),
        ]);
    }
}
