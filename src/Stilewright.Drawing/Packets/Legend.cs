using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>How to read a packet: line styles, hand lines, labels, sizes.</summary>
internal static class Legend
{
    private const double SampleWidth = 26;
    private const double Gap = 6;

    private static readonly (LineStyle Style, string Words)[] Lines =
    [
        (LineStyle.Visible, "outlines that are seen"),
        (LineStyle.Edge, "moulded edges and meeting faces"),
        (LineStyle.Hidden, "hidden: tongues, tenons, panels in their grooves, openings behind a leaf"),
        (LineStyle.Centre, "centre lines"),
        (LineStyle.Adjacent, "outlines of what stands beside"),
        (LineStyle.Dimension, "dimensions, with strokes at their ends"),
    ];

    /// <summary>The legend, all on one sheet.</summary>
    public static IEnumerable<Strip> Of(double width, LengthFormat format, LengthUnit standardUnit)
    {
        Strip[] strips = [.. Lay(width, format, standardUnit)];
        return strips.Select((strip, i) => strip with { KeepWithNext = i < strips.Length - 1 });
    }

    private static IEnumerable<Strip> Lay(double width, LengthFormat format, LengthUnit standardUnit)
    {
        foreach (var strip in Prose.Heading("How to read this packet", width))
            yield return strip;
        foreach (var (style, words) in Lines)
            yield return Sample(words, width, Outline.Line(new(0, 2), new(SampleWidth, 2)), style);
        yield return Hand(width);
        string[] sentences =
        [
            "Hand: dashed lines run from the two corners of the free edge to the middle of the hinge edge, so their point shows the hinges. A leaf without them is fixed or a drawer front.",
            "Labels are chalked on the parts: 7·2L·TR is bench 7, opening 2, left leaf, top rail. Left and right are seen from the front, also on the back of a leaf.",
            "Sizes of parts are width × length along the grain; of fronts, leaves, openings and glass, width × height. Finished: in the finished leaf. Into the clamps: as it is glued up, with what is trimmed off afterwards. Rough: the blank that is sawn first.",
            $"All sizes are in {(format.Unit == LengthUnit.Inch ? "inches" : "millimetres")}{(format.Unit == standardUnit ? "" : $", the house standard being in {(standardUnit == LengthUnit.Inch ? "inches" : "millimetres")}")}. {Remarks.Rounded}",
            "Work to the figures; do not measure the drawings. Scales are true on paper only when it is printed at 100 %, not fitted to the page.",
        ];
        foreach (var sentence in sentences)
        {
            foreach (var strip in Prose.Paragraph(sentence, width, above: 1.8))
                yield return strip;
        }
    }

    private static Strip Sample(string words, double width, Outline outline, LineStyle style)
    {
        var line = Typesetter.Wrap(words, TextStyle.Body, width - SampleWidth - Gap)[0];
        return new(line.Pitch, [new Shape(outline, style), Strip.Put(line, SampleWidth + Gap, 0)]);
    }

    // A leaf that is hinged on the left.
    private static Strip Hand(double width)
    {
        var leaf = new PaperBox(5, 1.5, 11, 15);
        var middle = new PaperPoint(leaf.Left, leaf.Centre.Y);
        List<SceneNode> nodes =
        [
            new Shape(Outline.Box(leaf), LineStyle.Visible),
            new Shape(Outline.Line(new(leaf.Right, leaf.Top), middle), LineStyle.Hand),
            new Shape(Outline.Line(new(leaf.Right, leaf.Bottom), middle), LineStyle.Hand),
        ];
        var line = Typesetter.Wrap("hand: this leaf is hinged on the left", TextStyle.Body, width - SampleWidth - Gap)[0];
        nodes.Add(Strip.Put(line, SampleWidth + Gap, leaf.Centre.Y - (line.Ascent + line.Descent) / 2));
        return new(leaf.Bottom + 1.5, nodes);
    }
}
