using System.ComponentModel;
using System.Text;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Documents;
using Stilewright.Shop;

namespace Stilewright.Cli.Commands;

internal sealed class StandardCommand(Screen screen) : Command<StandardCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandOption("--mm")]
        [Description("The millimetre standard; the inch standard when absent.")]
        public bool Millimetres { get; init; }

        [CommandOption("--out <FILE>")]
        [Description("Write to this file.")]
        public string? Out { get; init; }

        [CommandOption("--replace")]
        [Description("Write over the file of --out when it is there.")]
        public bool Replace { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var bytes = DocumentWriter.Write(StandardInFull.Of(settings.Millimetres ? ShippedStandards.Millimetre : ShippedStandards.Inch));
        if (settings.Out is { } path)
            OutputFile.Write(path, bytes, settings.Replace);
        else
            screen.Plain.Write(Encoding.UTF8.GetString(bytes));
        return ExitCode.Good;
    }
}
