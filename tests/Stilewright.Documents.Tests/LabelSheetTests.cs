using System.Text;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Documents.Tests;

public class LabelSheetTests
{
    private const string Sheet = """
        {
          "format": "stilewright/label-sheet",
          "version": 1,
          "id": "ours",
          "name": "the roll-off sheets in the finishing room",
          "unit": "mm",
          "paper": "a4",
          "columns": 3,
          "rows": 7,
          "width": "63.5",
          "height": "38.1",
          "columnGap": "2.5"
        }
        """;

    public static TheoryData<string> Shipped => [.. ShippedLabelSheets.All.Select(sheet => sheet.Id)];

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Shipped_sheets_are_written_and_read_again_and_fit_their_paper(string id)
    {
        var sheet = ShippedLabelSheets.All.Single(one => one.Id == id);
        var read = Assert.IsType<DocumentResult<LabelSheet>.Read>(DocumentReader.ReadLabelSheet(DocumentWriter.Write(sheet))).Document;
        Assert.Equal(sheet.Corner(sheet.Count - 1), read.Corner(read.Count - 1));
        Assert.Equal(sheet, read);
        var (right, down) = sheet.Corner(sheet.Count - 1);
        Assert.True(right + sheet.Width.Value <= sheet.Paper.Width && down + sheet.Height.Value <= sheet.Paper.Height);
    }

    /// <summary>Margins of two sheets as their packages are commonly printed: 3/16 and 1/2 in; 7.25 and 15.15 mm. Common practice, no source.</summary>
    [Fact]
    public void Centred_labels_have_the_margins_of_the_usual_sheets()
    {
        var thirty = ShippedLabelSheets.All.Single(sheet => sheet.Id == "letter-30");
        Assert.Equal((Length.FromInches(new(3, 16)), Length.FromInches(new(1, 2))), (thirty.LeftMargin, thirty.TopMargin));
        Assert.Equal((Length.FromInches(new(3, 16)) + Length.FromInches(new(11, 4)), Length.FromInches(new(3, 2))), thirty.Corner(4));
        var twentyOne = ShippedLabelSheets.All.Single(sheet => sheet.Id == "a4-21");
        Assert.Equal((Length.FromMillimetres(new(725, 100)), Length.FromMillimetres(new(1515, 100))), (twentyOne.LeftMargin, twentyOne.TopMargin));
    }

    [Fact]
    public void A_sheet_of_ones_own_is_read()
    {
        var sheet = Assert.IsType<DocumentResult<LabelSheet>.Read>(DocumentReader.ReadLabelSheet(Sheet)).Document;
        Assert.Equal(21, sheet.Count);
        Assert.Equal(Length.FromMillimetres(new(381, 10)), sheet.Height.Value);
        Assert.False(sheet.CutLines);
    }

    [Theory]
    [InlineData("\"columns\": 3", "\"columns\": 4", "width", "wider than the paper")]
    [InlineData("\"rows\": 7", "\"rows\": 9", "height", "higher than the paper")]
    [InlineData("\"columns\": 3", "\"columns\": 0", "columns", "0")]
    [InlineData("\"width\": \"63.5\"", "\"width\": \"wide\"", "width", "wide")]
    [InlineData("\"paper\": \"a4\"", "\"paper\": \"a5\"", "paper", "a5")]
    public void Faults_name_the_field(string sound, string faulty, string field, string words)
    {
        var refused = Assert.IsType<DocumentResult<LabelSheet>.Refused>(DocumentReader.ReadLabelSheet(Sheet.Replace(sound, faulty, StringComparison.Ordinal)));
        var error = Assert.Single(refused.Errors);
        Assert.Equal($"$.{field}", error.Path);
        Assert.Contains(words, error.ToString(), StringComparison.Ordinal);
    }

    /// <summary>Files of version 1 are read for ever; this one is never changed.</summary>
    [Fact]
    public void Version_1_is_read()
    {
        var file = File.ReadAllBytes(Path.Combine(Files.Root, "tests/Stilewright.Documents.Tests/versions/label-sheet-1.json"));
        var sheet = Assert.IsType<DocumentResult<LabelSheet>.Read>(DocumentReader.ReadLabelSheet(file)).Document;
        Assert.Equal(("ours", 21), (sheet.Id, sheet.Count));
        Assert.Equal(DocumentFormat.LabelSheet, DocumentReader.FormatOf(Encoding.UTF8.GetBytes(Sheet)));
    }
}
