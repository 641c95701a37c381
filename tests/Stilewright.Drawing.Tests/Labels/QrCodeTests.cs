using System.Globalization;
using Stilewright.Doors;
using Stilewright.Drawing.Labels;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Tests.Figures;
using Stilewright.Drawing.Tests.Writing;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Shop;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Stilewright.Drawing.Tests.Labels;

/// <summary>Labels as a printer puts them on paper, read by a reader that did not write them.</summary>
public sealed class QrCodeTests : IDisposable
{
    private const double MillimetresPerInch = 25.4;
    private const string Revision = "7K3M-Q9";

    private readonly string folder = Directory.CreateTempSubdirectory("stilewright-labels-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("letter-30", 300)]
    [InlineData("letter-30", 150)]
    [InlineData("plain-a4", 300)]
    [InlineData("plain-a4", 150)]
    public void Every_code_of_a_sheet_is_read_as_its_part_and_revision(string id, int dotsPerInch)
    {
        var sheet = ShippedLabelSheets.All.Single(each => each.Id == id);
        Part[] parts = [.. Drawn.Sample().SelectMany(drawn => drawn.Leaf.Parts).Take(sheet.Count)];
        Assert.Equal(sheet.Count, parts.Length);
        var file = Path.Combine(folder, "labels.pdf");
        using (var output = File.Create(file))
        {
            PdfWriter.Write(output, new("Labels", "", null, "", "", DateTimeOffset.UnixEpoch),
                LabelPages.Of(parts.Select(part => new LabelledPart(part, Revision)), sheet, new(sheet.Unit, 32), new()).Select(scene => new PdfPage(scene, [])));
        }

        var picture = Path.Combine(folder, "labels");
        Installed.Run(["pdftoppm"], "-gray", "-singlefile", "-r", dotsPerInch.ToString(CultureInfo.InvariantCulture), file, picture);
        var page = GreyPicture.Read(File.ReadAllBytes($"{picture}.pgm"));

        List<string?> read = [];
        for (var i = 0; i < parts.Length; i++)
        {
            var (right, down) = sheet.Corner(i);
            var label = page.Part(Dots(right), Dots(down), Dots(sheet.Width.Value), Dots(sheet.Height.Value));
            var source = new RGBLuminanceSource(label.Dots, label.Width, label.Height, RGBLuminanceSource.BitmapFormat.Gray8);
            read.Add(new QRCodeReader().decode(new(new HybridBinarizer(source)))?.Text);
        }

        Assert.Equal(parts.Select(part => PartLabel.Code(part, Revision)), read);

        int Dots(Length length) => (int)Math.Round(Scale.FullSize.OnPaper(length) / MillimetresPerInch * dotsPerInch);
    }
}
