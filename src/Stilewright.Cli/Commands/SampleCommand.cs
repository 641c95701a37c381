using System.ComponentModel;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;

namespace Stilewright.Cli.Commands;

internal sealed class SampleCommand(Screen screen) : Command<SampleCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "[FOLDER]")]
        [Description("Where the files go; made when it is not there. This folder, when absent.")]
        public string? Folder { get; init; }

        [CommandOption("--replace")]
        [Description("Write over files that are there.")]
        public bool Replace { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var folder = settings.Folder ?? ".";
        var files = SampleFiles.All();
        if (File.Exists(folder))
            throw new RefusalException(ExitCode.FileFailed, $"{folder} is a file: name a folder.");
        foreach (var (name, _) in files.Where(_ => Directory.Exists(folder)))
            OutputFile.RefuseExisting(Path.Combine(folder, name), settings.Replace);
        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new RefusalException(ExitCode.FileFailed, $"The folder {folder} cannot be made: {fault.Message.ReplaceLineEndings(" ")}");
        }

        var page = new Page();
        foreach (var (name, content) in files)
        {
            var path = Path.Combine(folder, name);
            OutputFile.Write(path, content, settings.Replace);
            page.Line($"Wrote {path}");
        }

        page.Line($"Next: stilewright sheet {Path.Combine(folder, files[0].Name)}");
        PageWriter.Write(page, screen);
        return ExitCode.Good;
    }
}
