using Spectre.Console.Cli;
using Stilewright.Cli.Commands;

namespace Stilewright.Cli;

/// <summary>The verbs of the program and how their errors are told.</summary>
internal static class CommandLine
{
    public static int Run(string[] arguments)
    {
        var screen = Screen.OfProcess();
        using var stop = new CancellationTokenSource();
        Console.CancelKeyPress += (_, pressed) =>
        {
            // The verb ends by itself and leaves no half-written file; a second Ctrl+C ends the process at once.
            pressed.Cancel = !stop.IsCancellationRequested;
            stop.Cancel();
        };
        var code = Run(arguments, screen, TimeProvider.System, stop.Token);
        screen.Plain.Flush();
        return code;
    }

    public static int Run(IEnumerable<string> arguments, Screen screen, TimeProvider? clock = null, CancellationToken cancellation = default)
    {
        var app = new CommandApp();
        app.Configure(configuration => Configure(configuration, screen, clock ?? TimeProvider.System));
        return app.Run(arguments, cancellation);
    }

    public static void Configure(IConfigurator configuration, Screen screen, TimeProvider clock)
    {
        configuration.SetApplicationName("stilewright");
        configuration.SetApplicationVersion(ProgramVersion.Text);
        configuration.UseStrictParsing();
        configuration.ConfigureConsole(screen.Console);
        configuration.SetHelpProvider(new Help(configuration.Settings));
        configuration.Settings.Registrar.RegisterInstance(screen);
        configuration.Settings.Registrar.RegisterInstance(clock);
        configuration.SetExceptionHandler((fault, _) => Tell(fault, screen));

        configuration.AddCommand<SampleCommand>("sample")
            .WithDescription("Write a sample course and its house standard into a folder.")
            .WithExample("sample", "class");
        configuration.AddCommand<CheckCommand>("check")
            .WithDescription("Read a file and list its errors, or all findings; the exit code tells the worst.")
            .WithExample("check", "evening-course.json");
        configuration.AddCommand<SizesCommand>("sizes")
            .WithDescription("Sizes of fronts and leaves, and what every edge and corner leaves.")
            .WithExample("sizes", "evening-course.json", "--bench", "3");
        configuration.AddCommand<SheetCommand>("sheet")
            .WithDescription("Everything for each leaf: sizes, parts, thicknesses, check sums, working and findings.")
            .WithExample("sheet", "evening-course.json", "--bench", "3")
            .WithExample("sheet", "evening-course.json", "--leaf", "3.1L", "--mm");
        configuration.AddCommand<WoodCommand>("wood")
            .WithDescription("How panels, gaps and overlays fare through the year, which panel widths work, and what leaves weigh.")
            .WithExample("wood", "evening-course.json", "--bench", "3")
            .WithExample("wood", "evening-course.json", "--leaf", "1.2L", "--boards", "\"4 1/2, 5, 6 1/4\"");
        configuration.AddCommand<MoistureCommand>("moisture")
            .WithDescription("What moisture air brings wood to, which air keeps it there, and how far a width moves from one moisture to another.")
            .WithExample("moisture", "--temperature", "70F", "--humidity", "45")
            .WithExample("moisture", "--temperature", "21C", "--moisture", "8")
            .WithExample("moisture", "--wood", "\"red oak\"", "--width", "\"11 1/2\"", "--from", "8", "--to", "12");
        configuration.AddCommand<WorkCommand>("work")
            .WithDescription("How a size was found, in words and figures, and where each figure was entered.")
            .WithExample("work", "evening-course.json", "3.1L.TR", "--figure", "length");
        configuration.AddCommand<CutListCommand>("cutlist")
            .WithDescription("The cut list as a table, CSV or JSON.")
            .WithExample("cutlist", "evening-course.json", "--by", "course")
            .WithExample("cutlist", "evening-course.json", "--format", "csv", "--out", "cuts.csv");
        configuration.AddCommand<ChangesCommand>("changes")
            .WithDescription("What is no longer as it was handed out, told from the file beside a packet.")
            .WithExample("changes", "evening-course.json", "bench-3.handed-out.json");
        configuration.AddCommand<MarkCommand>("mark")
            .WithDescription("Check a maker's own cut list, CSV or JSON, for a leaf or a bench: which lines are right, what was missed, and what wood that is already cut can still become.")
            .WithExample("mark", "evening-course.json", "my-list.csv", "--leaf", "1.2L")
            .WithExample("mark", "evening-course.json", "my-list.csv", "--bench", "1", "--stage", "rough", "--tell", "hint")
            .WithExample("mark", "evening-course.json", "my-list.csv", "--leaf", "1.2L", "--tell", "all", "--already-cut");
        configuration.AddCommand<HangCommand>("hang")
            .WithDescription("How many hinges each leaf gets and why, where they go, what is bored and at which stop.")
            .WithExample("hang", "evening-course.json", "--bench", "1")
            .WithExample("hang", "evening-course.json", "--leaf", "1.2L", "--work", "--steps");
        configuration.AddCommand<BoredCommand>("bored")
            .WithDescription("Whether a leaf is bored right: which door it is now, what went wrong, and what can be done.")
            .WithExample("bored", "evening-course.json", "1.2L", "--edge", "left", "--at", "\"3 1/8,23 5/8\"");
        configuration.AddCommand<AdjustCommand>("adjust")
            .WithDescription("Which hinge screw to turn, which way and how far, from the gaps read on hung doors.")
            .WithExample("adjust", "evening-course.json", "--bench", "1", "--blank", "readings.csv")
            .WithExample("adjust", "evening-course.json", "readings.csv", "--bench", "1", "--draw", "row.svg");
        configuration.AddCommand<DrawCommand>("draw")
            .WithDescription("Draw a face, run, leaf or part as SVG, to scale and dimensioned.")
            .WithExample("draw", "evening-course.json")
            .WithExample("draw", "evening-course.json", "1.2L", "--out", "leaf.svg")
            .WithExample("draw", "evening-course.json", "1.2L", "--view", "stick-up", "--out", "stick.svg");
        configuration.AddCommand<PacketCommand>("packet")
            .WithDescription("Print the packet of a bench or of the whole course as PDF, and record what it tells.")
            .WithExample("packet", "evening-course.json", "--bench", "1", "--out", "bench-1.pdf")
            .WithExample("packet", "evening-course.json", "--paper", "a4", "--out", "course.pdf");
        configuration.AddCommand<LabelsCommand>("labels")
            .WithDescription("Print labels for parts as PDF, on plain paper or on bought label sheets.")
            .WithExample("labels", "evening-course.json", "--bench", "1", "--label-sheet", "letter-30", "--out", "labels.pdf");
        configuration.AddCommand<PatternCommand>("pattern")
            .WithDescription("Print full-size patterns of arched parts as PDF or SVG, tiled where they are larger than the paper, and list their points and arcs.")
            .WithExample("pattern", "evening-course.json")
            .WithExample("pattern", "evening-course.json", "1.2L", "--out", "pattern.pdf", "--paper", "letter")
            .WithExample("pattern", "evening-course.json", "1.2L.TR", "--bearing", "1/4", "--cutter", "3/8", "--out", "guide.svg");
        configuration.AddCommand<CalibrateCommand>("calibrate")
            .WithDescription("Record how long the rules of a print came out, so that the next pattern is corrected for the printer.")
            .WithExample("calibrate", "office.json", "--feed", "short", "--across", "149.2 mm", "--along", "150.4 mm");
        configuration.AddCommand<WorksheetCommand>("worksheet")
            .WithDescription("Make worksheets with blanks in the worked lines, a different one for each bench, and their key: at random by level, or of a course's own doors.")
            .WithExample("worksheet", "--level", "2", "--benches", "24", "--out", "worksheets.pdf")
            .WithExample("worksheet", "--level", "3", "--seed", "7", "--bench", "4", "--answer", "\"c=11 1/4\"")
            .WithExample("worksheet", "evening-course.json", "--bench", "3", "--out", "bench-3-worksheet.pdf");
        configuration.AddCommand<DrillCommand>("drill")
            .WithDescription("Make drills: rules to read, fractions to add, subtract, halve and double, inches and millimetres; with their key.")
            .WithExample("drill", "--finest", "16", "--benches", "24", "--out", "drills.pdf")
            .WithExample("drill", "--kinds", "add,halve", "--seed", "7", "--answer", "\"2=5 3/8\"");
        configuration.AddCommand<StandardCommand>("standard")
            .WithDescription("Write a house standard as shipped, in full, to start your own from.")
            .WithExample("standard", "--mm", "--out", "shop.json");
        configuration.AddCommand<SchemaCommand>("schema")
            .WithDescription("Write the JSON Schema of a kind of file.")
            .WithExample("schema", "course")
            .WithExample("schema", "handed-out");
        configuration.AddCommand<RulesCommand>("rules")
            .WithDescription("List every rule that is checked, with its severity and source.")
            .WithExample("rules");
    }

    private static int Tell(Exception fault, Screen screen)
    {
        switch (fault)
        {
            case RefusalException refusal:
                foreach (var line in refusal.Lines)
                    screen.Error.WriteLine(line);
                return refusal.ExitCode;
            case OperationCanceledException:
                screen.Error.WriteLine("Stopped; nothing was written.");
                return ExitCode.Stopped;
            case CommandAppException wrong:
                screen.Error.WriteLine(wrong.Message);
                screen.Error.WriteLine("`stilewright --help` lists the verbs; `stilewright VERB --help` tells one of them.");
                return ExitCode.WrongUse;
            default:
                screen.Error.WriteLine($"The program failed: {fault.Message.ReplaceLineEndings(" ")}");
                screen.Error.WriteLine("This is a fault of the program and not of your file; please report it with the file and the command.");
                return ExitCode.ProgramFault;
        }
    }
}
