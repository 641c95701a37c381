using Stilewright.Doors;
using Stilewright.Drawing.Labels;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Tests.Figures;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Drawing.Tests.Labels;

public sealed class LabelPagesTests
{
    private const double Tolerance = 1e-6;
    private const double Shrunk = 0.05;
    private const string Revision = "7K3M-Q9";

    public static TheoryData<string> Sheets { get; } = [.. ShippedLabelSheets.All.Select(sheet => sheet.Id)];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Labels_made_by_chance_are_whole_and_in_their_places(string id)
    {
        var sheet = Sheet(id);
        foreach (var seed in Enumerable.Range(1, 5))
        {
            var random = new Random(seed);
            var print = new LabelPrint(random.Next(-30, 30) / 10.0, random.Next(-30, 30) / 10.0, random.Next(1, sheet.Count + 1));
            Check(Parts(seed), sheet, print);
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Labels_of_the_sample_are_whole_and_in_their_places(string id) =>
        Check([.. Drawn.Sample().SelectMany(drawn => drawn.Leaf.Parts)], Sheet(id), new());

    [Theory]
    [InlineData(0)]
    [InlineData(31)]
    public void A_first_label_that_is_not_on_the_sheet_is_refused(int first) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LabelPages.Of([], Sheet("letter-30"), new(LengthUnit.Inch, 32), new(FirstLabel: first)));

    private static void Check(List<Part> parts, LabelSheet sheet, LabelPrint print)
    {
        var format = new LengthFormat(sheet.Unit, 32);
        var full = Scale.FullSize;
        var scenes = LabelPages.Of(parts.Select(part => new LabelledPart(part, Revision)), sheet, format, print).ToList();
        Assert.Equal(parts.Count == 0 ? 0 : (print.FirstLabel - 1 + parts.Count + sheet.Count - 1) / sheet.Count, scenes.Count);
        Assert.All(scenes, scene =>
        {
            Assert.Equal((full.OnPaper(sheet.Paper.Width), full.OnPaper(sheet.Paper.Height)), (scene.WidthMillimetres, scene.HeightMillimetres));
            Assert.Equal(sheet.CutLines ? scene.Nodes.OfType<SceneGroup>().Count() : 0, scene.Nodes.OfType<Shape>().Count());
        });

        var labels = scenes.SelectMany(scene => scene.Nodes.OfType<SceneGroup>()).ToList();
        Assert.Equal(parts.Select(part => part.Path), labels.Select(label => label.Path));
        for (var i = 0; i < parts.Count; i++)
        {
            // By the sheet's own measures, in inches, and what the printer is off.
            var (row, column) = Math.DivRem((print.FirstLabel - 1 + i) % sheet.Count, sheet.Columns);
            var corner = new PaperPoint(
                full.OnPaper(sheet.LeftMargin) + column * full.OnPaper(sheet.Width.Value + (sheet.ColumnGap?.Value ?? default)) + print.RightMillimetres,
                full.OnPaper(sheet.TopMargin) + row * full.OnPaper(sheet.Height.Value + (sheet.RowGap?.Value ?? default)) + print.DownMillimetres);
            Assert.InRange(labels[i].At.DistanceTo(corner), 0, Tolerance);
            CheckLabel(parts[i], labels[i] with { At = default }, new(0, 0, full.OnPaper(sheet.Width.Value), full.OnPaper(sheet.Height.Value)), format, sheet.Name);
        }
    }

    private static void CheckLabel(Part part, SceneGroup label, PaperBox box, LengthFormat format, string where)
    {
        var texts = label.Children.OfType<Lettering>().ToList();
        var code = Assert.Single(label.Children.OfType<CellGrid>());
        var arrow = label.Children.OfType<Shape>().Select(shape => shape.Outline.Bounds).Aggregate((one, other) => one.With(other));
        where = $"{where}, {part.Label}";

        Assert.Equal(part.Label, texts[0].Line.Text);
        Assert.True(texts.Count(text => text.Line.Text.StartsWith($"{Size(part.Finished)} fin", StringComparison.Ordinal)) == 1, $"{where}: no finished size.");
        var isTrimmed = Size(part.Finished) != Size(part.GlueUp);
        Assert.True(!isTrimmed || texts.Count(text => text.Line.Text.StartsWith($"{Size(part.GlueUp)} in", StringComparison.Ordinal)) == 1, $"{where}: no size into the clamps.");
        Assert.Contains(texts, text => text.Line.Text.StartsWith("top", StringComparison.Ordinal));

        // Along the grain of a stile the label lies on its side.
        Assert.Equal(part.Kind is PartKind.Stile or PartKind.MidStile, arrow.Width > arrow.Height);
        Assert.Equal(code.Box.Width, code.Box.Height, Tolerance);

        List<(PaperBox Box, string Name)> all = [.. texts.Select(text => (text.Box, $"'{text.Line.Text}'")), (code.Box, "the code"), (arrow, "the arrow")];
        for (var i = 0; i < all.Count; i++)
        {
            Assert.True(box.Holds(all[i].Box), $"{where}: {all[i].Name} leaves the label.");
            for (var j = i + 1; j < all.Count; j++)
                Assert.False(all[i].Box.Grown(-Shrunk).Overlaps(all[j].Box.Grown(-Shrunk)), $"{where}: {all[i].Name} and {all[j].Name} overlap.");
        }

        string Size(PartSize size) => $"{WorkedText.Figure(size.Width, format)} × {WorkedText.Figure(size.Length, format)}";
    }

    private static LabelSheet Sheet(string id) => ShippedLabelSheets.All.Single(sheet => sheet.Id == id);

    private static List<Part> Parts(int seed) =>
        [.. Drawn.Leaves(seed).SelectMany(drawn => drawn.Leaf.Parts)];
}
