namespace Stilewright.Bench;

/// <summary>The program as published, ready to run: a new process for every run, from the sample to its cut list.</summary>
internal static class CommandLineMeasurement
{
    /// <returns>False when the program cannot be published or run.</returns>
    public static bool Run()
    {
        var folder = Directory.CreateTempSubdirectory("stilewright-bench-").FullName;
        try
        {
            if (Published.Program("Stilewright.Cli", folder) is not { } program)
                return false;
            string[] arguments = ["cutlist", Path.Combine(Published.Root(), "samples", "evening-course.json")];
            var exitCode = 0;
            var lines = 0;
            void Once()
            {
                var (code, output) = Published.Run(program, arguments);
                exitCode = Math.Max(exitCode, code);
                lines = output.Split('\n').Length;
            }

            var first = Timing.Of(0, 1, Once, settle: false);
            var later = Timing.Of(2, 21, Once, settle: false);
            if (exitCode != 0)
            {
                Console.Error.WriteLine($"cli: the program ended with exit code {exitCode}.");
                return false;
            }

            Console.WriteLine($"cli: published ready to run, sample to cut list ({lines} lines), a new process each time, files cached by the system");
            Console.WriteLine($"  first start: {first}");
            Console.WriteLine($"  later starts: {later.Against(400)}");
            return true;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
