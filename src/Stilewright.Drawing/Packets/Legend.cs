using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>How to read a packet: line styles, hand lines, labels, sizes.</summary>
internal static class Legend
{
    private const double SampleWidth = 18;
    private const double Gap = 4;
    private const double BetweenColumns = 8;
    private const double SamplesShare = 0.36;
    private static readonly TextStyle Words = new(3);

    private static readonly (LineStyle Style, string Words)[] Lines =
    [
        (LineStyle.Visible, "outlines that are seen"),
        (LineStyle.Edge, "moulded edges and meeting faces"),
        (LineStyle.Hidden, "hidden: tongues, tenons, panels in their grooves, openings behind a leaf"),
        (LineStyle.Centre, "centre lines"),
        (LineStyle.Adjacent, "outlines of what stands beside"),
        (LineStyle.Dimension, "dimensions, with strokes at their ends"),
    ];

    /// <summary>The legend, all on one sheet: samples at the left, sentences at the right.</summary>
    public static IEnumerable<Strip> Of(double width, LengthFormat format, LengthUnit standardUnit)
    {
        var samples = width * SamplesShare;
        var sentencesAt = samples + BetweenColumns;
        return
        [
            .. Prose.Heading("How to read this packet", width),
            Strip.Beside((0, [.. Samples(samples)]), (sentencesAt, [.. Sentences(width - sentencesAt, format, standardUnit)])),
        ];
    }

    private static IEnumerable<Strip> Samples(double width)
    {
        foreach (var (style, words) in Lines)
            yield return Sample(words, width, Outline.Line(new(0, 1.7), new(SampleWidth, 1.7)), style);
        yield return Hand(width);
    }

    private static IEnumerable<Strip> Sentences(double width, LengthFormat format, LengthUnit standardUnit)
    {
        string[] sentences =
        [
            "Hand: dashed lines run from the two corners of the free edge to the middle of the hinge edge, so their point shows the hinges. A leaf without them is fixed or a drawer front.",
            "Labels are chalked on the parts: 7·2L·TR is bench 7, opening 2, left leaf, top rail. Left and right are seen from the front, also on the back of a leaf.",
            "A paper label sits on the face of its part; its arrow points to the top of the hung leaf. Its QR code holds the label and the revision of the project.",
            "Sizes of parts are width × length along the grain; of fronts, leaves, openings and glass, width × height. Finished: in the finished leaf. Into the clamps: as it is glued up, with what is trimmed off afterwards. Rough: the blank that is sawn first.",
            $"All sizes are in {(format.Unit == LengthUnit.Inch ? "inches" : "millimetres")}{(format.Unit == standardUnit ? "" : $", the house standard being in {(standardUnit == LengthUnit.Inch ? "inches" : "millimetres")}")}. {Remarks.Rounded}",
            "Work to the figures; do not measure the drawings. Scales are true on paper only when it is printed at 100 %, not fitted to the page.",
        ];
        foreach (var sentence in sentences)
        {
            foreach (var strip in Prose.Paragraph(sentence, width, Words, above: 1.2))
                yield return strip;
        }
    }

    private static Strip Sample(string words, double width, Outline outline, LineStyle style)
    {
        var lines = Typesetter.Wrap(words, Words, width - SampleWidth - Gap);
        return new(lines.Sum(line => line.Pitch) + 0.6,
            [new Shape(outline, style), .. lines.Select((line, i) => Strip.Put(line, SampleWidth + Gap, i * line.Pitch))]);
    }

    // A leaf that is hinged on the left.
    private static Strip Hand(double width)
    {
        var leaf = new PaperBox(4, 1, 10, 13.5);
        var middle = new PaperPoint(leaf.Left, leaf.Centre.Y);
        List<SceneNode> nodes =
        [
            new Shape(Outline.Box(leaf), LineStyle.Visible),
            new Shape(Outline.Line(middle, new(leaf.Right, leaf.Top)), LineStyle.Hand),
            new Shape(Outline.Line(middle, new(leaf.Right, leaf.Bottom)), LineStyle.Hand),
        ];
        var lines = Typesetter.Wrap("hand: this leaf is hinged on the left", Words, width - SampleWidth - Gap);
        var top = leaf.Centre.Y - lines.Sum(line => line.Pitch) / 2;
        nodes.AddRange(lines.Select((line, i) => Strip.Put(line, SampleWidth + Gap, top + i * line.Pitch)));
        return new(leaf.Bottom + 1, nodes);
    }
}
