using System.ComponentModel;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;
using Stilewright.Documents;
using Stilewright.Prints;

namespace Stilewright.Cli.Commands;

internal sealed class ChangesCommand(Screen screen) : Command<ChangesCommand.Settings>
{
    internal sealed class Settings : CourseSettings
    {
        [CommandArgument(1, "<HANDED-OUT>")]
        [Description("The file that was written beside the packet.")]
        public required string HandedOut { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var then = HandedOutFile.Read(settings.HandedOut);
        var now = CourseFile.Open(settings.File);
        if (then.Course != now.Course.Id)
        {
            throw new RefusalException(ExitCode.FileFailed,
                $"{settings.HandedOut} was handed out of the course {then.Course} ({then.CourseName}), and {settings.File} is the course {now.Course.Id}: name the file of that course.");
        }

        var differences = Differences.Since(then, now, Fingerprint.Of(now), ProgramVersion.Text);
        var benches = then.Projects.Select(project => project.Id).ToHashSet();
        var format = settings.FormatFor(now, now.Projects.Where(project => benches.Contains(project.Project.Id)));
        PageWriter.Write(ChangesPage.Of(then, differences, format), screen);
        return differences.PaperHolds ? ExitCode.Good : ExitCode.Changed;
    }
}
