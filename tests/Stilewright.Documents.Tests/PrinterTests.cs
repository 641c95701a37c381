using Fractions;
using Stilewright.Shop;

namespace Stilewright.Documents.Tests;

public class PrinterTests
{
    private static readonly string File1 = Path.Combine(Files.Root, "tests/Stilewright.Documents.Tests/versions/printer-1.json");

    /// <summary>Files of version 1 are read for ever; this one is never changed.</summary>
    [Fact]
    public void Version_1_is_read()
    {
        var printer = Assert.IsType<DocumentResult<Printer>.Read>(DocumentReader.ReadPrinter(File.ReadAllBytes(File1))).Document;
        Assert.Equal(("office", 3), (printer.Id, printer.Measured.Count));
        Assert.Equal(DocumentFormat.Printer, DocumentReader.FormatOf(File.ReadAllBytes(File1)));

        // By hand: 150/149.2 and 150/150 across; 150/150.4 and 150/149.9 along.
        Assert.Equal((new Fraction(1500, 1492), new Fraction(1500, 1504) * new Fraction(1500, 1499)), printer.Correction(PaperFeed.ShortEdge));
        Assert.Equal((new Fraction(384, 385), Fraction.One), printer.Correction(PaperFeed.LongEdge));
    }

    [Fact]
    public void A_printer_is_written_and_read_again_as_it_was_typed()
    {
        var printer = Assert.IsType<DocumentResult<Printer>.Read>(DocumentReader.ReadPrinter(File.ReadAllBytes(File1))).Document;
        var read = Assert.IsType<DocumentResult<Printer>.Read>(DocumentReader.ReadPrinter(DocumentWriter.Write(printer))).Document;
        Assert.Equal(printer.Measured, read.Measured);
        Assert.Equal(printer.Measured.Select(print => print.Across.Text), read.Measured.Select(print => print.Across.Text));
    }

    [Theory]
    [InlineData("\"across\": \"149.2\"", "\"across\": \"145\"", "$.measured[0].across", "print at 100 %")]
    [InlineData("\"feed\": \"long-edge\"", "\"feed\": \"sideways\"", "$.measured[2].feed", "sideways")]
    [InlineData("\"nominal\": \"6 in\"", "\"nominal\": \"six\"", "$.measured[2].nominal", "six")]
    public void Faults_name_the_field(string sound, string faulty, string field, string words)
    {
        var refused = Assert.IsType<DocumentResult<Printer>.Refused>(DocumentReader.ReadPrinter(File.ReadAllText(File1).Replace(sound, faulty, StringComparison.Ordinal)));
        var error = Assert.Single(refused.Errors);
        Assert.Equal(field, error.Path);
        Assert.Contains(words, error.ToString(), StringComparison.Ordinal);
    }
}
