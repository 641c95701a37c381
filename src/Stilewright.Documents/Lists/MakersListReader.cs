using System.Text;
using System.Text.Unicode;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;

namespace Stilewright.Documents.Lists;

/// <summary>Reads a maker's own cut list: CSV as spreadsheets save it, or JSON. Never throws for what the file holds; a refusal lists every fault.</summary>
public static class MakersListReader
{
    /// <summary>The most lines of one list; the parts of a whole kitchen, gathered, are a fraction of that.</summary>
    public const int MostLines = 400;

    /// <summary>The most pieces of one line.</summary>
    public const int MostPieces = 400;

    /// <summary>The largest list read, in bytes.</summary>
    public const int MostBytes = 1024 * 1024;

    /// <param name="bytes">The file, UTF-8 with or without a byte order mark.</param>
    /// <param name="unit">The unit of bare numbers, where the list does not say.</param>
    /// <param name="stage">The stage that was asked for; null where the list is to say, the finished one where it does not.</param>
    public static DocumentResult<ReadList> Read(byte[] bytes, LengthUnit unit, CutStage? stage = null)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        var utf8 = WithoutMark(bytes);
        var text = utf8.Span.Trim(" \t\r\n"u8);
        if (bytes.Length > MostBytes)
            return Refuse($"the list is larger than {MostBytes / 1024} KB", "check that it is the right file; a cut list takes a small part of that");
        if (text.Contains((byte)0))
            return Refuse("the file holds no text", "save the list as CSV UTF-8; a spreadsheet's own files and UTF-16 text are not read");
        if (!Utf8.IsValid(text))
            return Refuse("the file is not UTF-8 text", "save the list as CSV UTF-8");
        if (text.IsEmpty)
            return Refuse("the list is empty", "write a line for each part: name, count, width, length");
        return text[0] is (byte)'{' or (byte)'[' ? ReadJson(utf8.Span, stage) : MakersListCsv.Read(utf8, unit, stage);
    }

    /// <inheritdoc cref="Read(byte[], LengthUnit, CutStage?)"/>
    public static DocumentResult<ReadList> Read(string text, LengthUnit unit, CutStage? stage = null) => Read(Encoding.UTF8.GetBytes(text), unit, stage);

    /// <summary>Reads as <see cref="Read(byte[], LengthUnit, CutStage?)"/> does, and keeps of comma-separated values the lines without a fault.</summary>
    /// <returns>What could be read, and every fault; a list is whole where there is none.</returns>
    public static (ReadList Readable, IReadOnlyList<DocumentError> Errors) ReadReadable(byte[] bytes, LengthUnit unit, CutStage? stage = null)
    {
        switch (Read(bytes, unit, stage))
        {
            case DocumentResult<ReadList>.Read read:
                return (read.Document, []);
            case DocumentResult<ReadList>.Refused when IsCsv(bytes):
                return MakersListCsv.ReadReadable(WithoutMark(bytes), unit, stage);
            case DocumentResult<ReadList>.Refused refused:
                return (new(new(stage ?? CutStage.Finished, []), unit, []), refused.Errors);
            default:
                throw new InvalidOperationException();
        }
    }

    private static bool IsCsv(byte[] bytes) => WithoutMark(bytes).Span.Trim(" \t\r\n"u8) is { IsEmpty: false } text
        && bytes.Length <= MostBytes && !text.Contains((byte)0) && Utf8.IsValid(text) && text[0] is not ((byte)'{' or (byte)'[');

    private static ReadOnlyMemory<byte> WithoutMark(byte[] bytes) => bytes.AsMemory(bytes.AsSpan().StartsWith("\uFEFF"u8) ? 3 : 0);

    private static DocumentResult<ReadList> ReadJson(ReadOnlySpan<byte> utf8, CutStage? asked)
    {
        switch (DocumentReader.ReadWrittenList(utf8))
        {
            case DocumentResult<WrittenList>.Refused refused:
                return new DocumentResult<ReadList>.Refused(refused.Errors);
            case DocumentResult<WrittenList>.Read { Document: var list }:
                var said = (CutStage?)(int?)list.Stage;
                return said is { } own && asked is { } other && own != other
                    ? new DocumentResult<ReadList>.Refused([StagesDiffer("$.stage", own, other, null)])
                    : new DocumentResult<ReadList>.Read(new(list.ToMakersList(said ?? asked ?? CutStage.Finished), list.Unit, []));
            default:
                throw new InvalidOperationException();
        }
    }

    internal static DocumentError StagesDiffer(string place, CutStage said, CutStage asked, int? line) =>
        new(place, $"the list says that its sizes are {Words(said)}, and {Words(asked)} was asked for", "ask for the stage that the list is of", line);

    /// <summary>The word by which a list and the command line name the stage.</summary>
    public static string Words(CutStage stage) => stage switch
    {
        CutStage.Finished => "finished",
        CutStage.IntoClamps => "clamps",
        _ => "rough",
    };

    private static DocumentResult<ReadList>.Refused Refuse(string problem, string fix) => new([new("the list", problem, fix)]);
}
