using Stilewright.Doors;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Drawing.Labels;

/// <summary>How a printer puts a label sheet beside where it should be.</summary>
/// <param name="RightMillimetres">Moves the print to the right; to the left when negative.</param>
/// <param name="DownMillimetres">Moves the print down; up when negative.</param>
/// <param name="FirstLabel">The first label used, counted from 1 along the rows, for a sheet that was begun.</param>
public sealed record LabelPrint(double RightMillimetres = 0, double DownMillimetres = 0, int FirstLabel = 1);

/// <summary>A part to be labelled with the revision of its project.</summary>
public sealed record LabelledPart(Part Part, string Revision);

/// <summary>Labels put on sheets.</summary>
public static class LabelPages
{
    /// <summary>One scene for every sheet of paper, in the order of the parts.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The first label is not on the sheet.</exception>
    public static IEnumerable<Scene> Of(IEnumerable<LabelledPart> parts, LabelSheet sheet, LengthFormat format, LabelPrint print)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(print.FirstLabel, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(print.FirstLabel, sheet.Count);
        return Draw(parts, sheet, format, print);
    }

    private static IEnumerable<Scene> Draw(IEnumerable<LabelledPart> parts, LabelSheet sheet, LengthFormat format, LabelPrint print)
    {
        var full = Scale.FullSize;
        List<SceneNode> nodes = [];
        List<string> labels = [];
        var at = print.FirstLabel - 1;
        foreach (var labelled in parts)
        {
            if (at == sheet.Count)
            {
                yield return Page();
                (nodes, labels, at) = ([], [], 0);
            }

            var (right, down) = sheet.Corner(at++);
            var corner = new PaperPoint(full.OnPaper(right) + print.RightMillimetres, full.OnPaper(down) + print.DownMillimetres);
            var (width, height) = (full.OnPaper(sheet.Width.Value), full.OnPaper(sheet.Height.Value));
            if (sheet.CutLines)
                nodes.Add(new Shape(Outline.Box(new(corner.X, corner.Y, width, height)), LineStyle.Rule));
            nodes.Add(PartLabel.Draw(labelled.Part, labelled.Revision, format, width, height) with { At = corner });
            labels.Add(labelled.Part.Label);
        }

        if (labels.Count > 0)
            yield return Page();

        Scene Page() => new(
            $"Labels {labels[0]} to {labels[^1]}", $"Labels of parts: {string.Join(", ", labels)}.",
            full.OnPaper(sheet.Paper.Width), full.OnPaper(sheet.Paper.Height), nodes)
        {
            Scale = full,
        };
    }
}
