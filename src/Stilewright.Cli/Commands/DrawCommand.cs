using System.ComponentModel;
using System.Globalization;
using Spectre.Console;
using Spectre.Console.Cli;
using Stilewright.Cli.Files;
using Stilewright.Cli.Layout;
using Stilewright.Cli.Pages;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Writing;

namespace Stilewright.Cli.Commands;

internal sealed class DrawCommand(Screen screen) : Command<DrawCommand.Settings>
{
    private const double SheetMargin = 5;

    internal sealed class Settings : CourseSettings
    {
        /// <summary>Leaves a margin round the drawing on the paper of either system.</summary>
        private const double DefaultWidth = 180;
        private const double DefaultHeight = 220;
        private const int Largest = 5000;

        [CommandArgument(1, "[PLACE]")]
        [Description("A face, run, leaf or part, by path or label such as 7.2L; without one, all that can be drawn is listed.")]
        public string? Place { get; init; }

        [CommandOption("--view <VIEW>")]
        [Description("Of a leaf: front, back, stick-across or stick-up (story sticks at full size), or boring (its boring sheet); of a solid panel: panel-fit, panel-play or glue-up; front when absent.")]
        public string View { get; init; } = LeafViews.Front;

        [CommandOption("--scale <NUMBER>")]
        [Description("How many times smaller than the thing: 4 draws at 1:4. Absent, the largest standard scale that fits.")]
        public string? ScaleText { get; init; }

        [CommandOption("--width <MM>")]
        [Description("Room on paper, in millimetres; 180 when absent.")]
        public string? WidthText { get; init; }

        [CommandOption("--height <MM>")]
        [Description("Room on paper, in millimetres; 220 when absent.")]
        public string? HeightText { get; init; }

        [CommandOption("--out <FILE>")]
        [Description("Write the SVG to this file.")]
        public string? Out { get; init; }

        [CommandOption("--replace")]
        [Description("Write over the file of --out when it is there.")]
        public bool Replace { get; init; }

        public Scale? Scale => ScaleText is null ? null : new Scale(Whole(ScaleText)!.Value);
        public double Width => Whole(WidthText) ?? DefaultWidth;
        public double Height => Whole(HeightText) ?? DefaultHeight;

        public override ValidationResult Validate()
        {
            if (!LeafViews.All.Contains(View))
                return ValidationResult.Error($"--view takes {string.Join(", ", LeafViews.All)}, not \"{View}\".");
            foreach (var (option, text, least) in new[] { ("--scale", ScaleText, 1), ("--width", WidthText, 20), ("--height", HeightText, 20) })
            {
                if (text is not null && (Whole(text) is not { } number || number < least || number > Largest))
                    return ValidationResult.Error($"{option} takes a whole number from {least} to {Largest}, not \"{text}\".");
            }

            return base.Validate();
        }

        private static int? Whole(string? text) =>
            int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var breakdown = CourseFile.Open(settings.File);
        if (settings.Place is null)
        {
            PageWriter.Write(DrawablesPage.Of(breakdown), screen);
            return ExitCode.Good;
        }

        var thing = Drawable.Find(breakdown, settings.Place, settings.View, settings.Width).OrRefuse();
        var format = settings.FormatFor(breakdown, [thing.Project]);
        Scene scene;
        if (settings.Scale is { } scale)
        {
            scene = thing.Draw(thing.IsFullSize ? Scale.FullSize : scale, format);
        }
        else if (thing.IsFullSize)
        {
            scene = thing.Draw(Scale.FullSize, format);
        }
        else
        {
            var fitted = Fit.Largest(format.Unit, settings.Width, settings.Height, each => thing.Draw(each, format), scales: thing.Scales);
            scene = fitted.Scene;
            if (!fitted.Fits)
                screen.Error.WriteLine($"Even at {scene.Scale} the drawing is larger than {settings.Width:0} × {settings.Height:0} mm: give more room with --width and --height.");
        }

        var text = SvgWriter.Text(scene.OnSheet(SheetMargin));
        if (settings.Out is { } path)
        {
            OutputFile.Write(path, text, settings.Replace);
            screen.Error.WriteLine($"{path}: {scene.Title}{(scene.Scale is { } shown ? $", {shown}" : "")}.");
        }
        else
        {
            screen.Plain.Write(text);
        }

        return ExitCode.Good;
    }
}
