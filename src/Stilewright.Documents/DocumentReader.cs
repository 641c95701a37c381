using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Stilewright.Documents.Json;
using Stilewright.Documents.Lists;
using Stilewright.Prints;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Documents;

/// <summary>Reads files. Never throws for what a file holds; a refusal lists every fault that was found.</summary>
/// <remarks>The files are read in full before anything is judged: structure, limits, ids, references, then what must go together.
/// Where a record cannot be read, the rules that need all of it wait until it can.</remarks>
public static class DocumentReader
{
    /// <summary>The largest file read, in bytes.</summary>
    public const int MostBytes = 8 * 1024 * 1024;

    /// <summary>How deep lists and objects may be nested.</summary>
    public const int MostDepth = 64;

    private const string OtherProgram = "check that it is a file of this program";

    /// <param name="utf8">The bytes of the file, with or without a byte order mark.</param>
    /// <param name="format">The format to read as, where it is not <see cref="DocumentFormat.Course"/> as shipped.</param>
    public static DocumentResult<Course> ReadCourse(ReadOnlySpan<byte> utf8, DocumentFormat? format = null) =>
        Read<Course>(utf8, format ?? DocumentFormat.Course);

    public static DocumentResult<Course> ReadCourse(string text, DocumentFormat? format = null) =>
        ReadCourse(Encoding.UTF8.GetBytes(text), format);

    /// <summary>Reads a course that stands as a tree, such as one put together from its projects. Errors tell no lines.</summary>
    /// <param name="tree">The whole course with its format and version; it is not altered.</param>
    /// <inheritdoc cref="ReadCourse(ReadOnlySpan{byte}, DocumentFormat?)" path="/param[@name='format']"/>
    public static DocumentResult<Course> ReadCourse(JsonObject tree, DocumentFormat? format = null)
    {
        ArgumentNullException.ThrowIfNull(tree);
        return ReadCourse(Encoding.UTF8.GetBytes(tree.ToJsonString()), format) switch
        {
            DocumentResult<Course>.Refused refused => new DocumentResult<Course>.Refused(
                [.. refused.Errors.Select(error => error with { Line = null, Column = null })]),
            var read => read,
        };
    }

    /// <summary>Reads a house standard. One without cutters, machines or stocks has those of the shipped standard it is based on.</summary>
    /// <inheritdoc cref="ReadCourse(ReadOnlySpan{byte}, DocumentFormat?)" path="/param"/>
    public static DocumentResult<HouseStandard> ReadStandard(ReadOnlySpan<byte> utf8, DocumentFormat? format = null) =>
        Read<HouseStandard>(utf8, format ?? DocumentFormat.Standard) switch
        {
            DocumentResult<HouseStandard>.Read read => StandardInFull.WithShippedLists(read.Document),
            var refused => refused,
        };

    public static DocumentResult<HouseStandard> ReadStandard(string text, DocumentFormat? format = null) =>
        ReadStandard(Encoding.UTF8.GetBytes(text), format);

    /// <summary>Reads what was handed out.</summary>
    /// <inheritdoc cref="ReadCourse(ReadOnlySpan{byte}, DocumentFormat?)" path="/param"/>
    public static DocumentResult<HandedOut> ReadHandedOut(ReadOnlySpan<byte> utf8, DocumentFormat? format = null) =>
        Read<HandedOut>(utf8, format ?? DocumentFormat.HandedOut);

    public static DocumentResult<HandedOut> ReadHandedOut(string text, DocumentFormat? format = null) =>
        ReadHandedOut(Encoding.UTF8.GetBytes(text), format);

    /// <summary>Reads how a sheet of labels is divided.</summary>
    /// <inheritdoc cref="ReadCourse(ReadOnlySpan{byte}, DocumentFormat?)" path="/param"/>
    public static DocumentResult<LabelSheet> ReadLabelSheet(ReadOnlySpan<byte> utf8, DocumentFormat? format = null) =>
        Read<LabelSheet>(utf8, format ?? DocumentFormat.LabelSheet);

    public static DocumentResult<LabelSheet> ReadLabelSheet(string text, DocumentFormat? format = null) =>
        ReadLabelSheet(Encoding.UTF8.GetBytes(text), format);

    /// <summary>Reads what was measured on the prints of a printer.</summary>
    /// <inheritdoc cref="ReadCourse(ReadOnlySpan{byte}, DocumentFormat?)" path="/param"/>
    public static DocumentResult<Printer> ReadPrinter(ReadOnlySpan<byte> utf8, DocumentFormat? format = null) =>
        Read<Printer>(utf8, format ?? DocumentFormat.Printer);

    public static DocumentResult<Printer> ReadPrinter(string text, DocumentFormat? format = null) =>
        ReadPrinter(Encoding.UTF8.GetBytes(text), format);

    /// <summary>Reads a maker's own cut list in JSON; <see cref="MakersListReader"/> reads CSV too.</summary>
    /// <inheritdoc cref="ReadCourse(ReadOnlySpan{byte}, DocumentFormat?)" path="/param"/>
    public static DocumentResult<WrittenList> ReadWrittenList(ReadOnlySpan<byte> utf8, DocumentFormat? format = null) =>
        Read<WrittenList>(utf8, format ?? DocumentFormat.MakersList);

    public static DocumentResult<WrittenList> ReadWrittenList(string text, DocumentFormat? format = null) =>
        ReadWrittenList(Encoding.UTF8.GetBytes(text), format);

    /// <summary>Which format a file says it is of, or null when it is none of this program's.</summary>
    public static DocumentFormat? FormatOf(ReadOnlySpan<byte> utf8) => JsonTree.Read(WithoutMark(utf8), new())?.Find("format") is { Kind: JsonValueKind.String } name
        ? DocumentFormat.All.FirstOrDefault(format => format.Name == name.Text) : null;

    private static DocumentResult<T> Read<T>(ReadOnlySpan<byte> utf8, DocumentFormat format)
    {
        utf8 = WithoutMark(utf8);
        ErrorList errors = new();
        var tree = JsonTree.Read(utf8, errors);
        if (tree is null || VersionOf(tree, format, errors) is not { } version)
            return Refuse(errors, tree, utf8, false);

        if (version < format.Version)
        {
            RefuseDuplicates(tree, DocumentPath.Root, errors);
            if (!errors.IsEmpty)
                return Refuse(errors, tree, utf8, false);
            switch (Upgrades.Run(format, version, (JsonObject)JsonNode.Parse(utf8)!))
            {
                case DocumentResult<JsonObject>.Refused refused:
                    return new DocumentResult<T>.Refused(refused.Errors);
                case DocumentResult<JsonObject>.Read upgraded:
                    tree = JsonTree.Read(Encoding.UTF8.GetBytes(upgraded.Document.ToJsonString()), errors);
                    break;
            }

            if (tree is null)
                return Refuse(errors, tree, utf8, true);
        }

        var document = new DocumentWalk(format, errors).Read(tree);
        return errors.IsEmpty ? new DocumentResult<T>.Read((T)document!) : Refuse(errors, tree, utf8, version < format.Version);

        static DocumentResult<T> Refuse(ErrorList errors, JsonPiece? tree, ReadOnlySpan<byte> utf8, bool isUpgraded) =>
            new DocumentResult<T>.Refused(errors.Placed(tree, utf8, isUpgraded));
    }

    private static ReadOnlySpan<byte> WithoutMark(ReadOnlySpan<byte> utf8) => utf8.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8;

    /// <summary>The version of a file of the right format, or null when an error was added.</summary>
    private static int? VersionOf(JsonPiece tree, DocumentFormat format, ErrorList errors)
    {
        if (tree.Kind != JsonValueKind.Object)
        {
            errors.Add(DocumentPath.Root, $"the file holds {tree.Words} where an object belongs", $"{OtherProgram}; it starts with {{ \"format\": \"{format.Name}\"");
            return null;
        }

        var isOther = false;
        if (CheckFormat(tree.Find("format"), format) is var (problem, fix))
        {
            errors.Add(DocumentPath.Root.Field("format"), problem, fix);
            isOther = tree.Find("format") is { Kind: JsonValueKind.String };
        }

        // Without a sound version the rest is read as the newest, so that its faults are told too.
        var version = format.Version;
        var place = DocumentPath.Root.Field("version");
        if (tree.Find("version") is not { } piece)
        {
            errors.Add(place, "\"version\" is missing", string.Create(CultureInfo.InvariantCulture, $"add \"version\": {format.Version}"));
        }
        else if (piece.Kind != JsonValueKind.Number || !int.TryParse(piece.Text, NumberStyles.None, CultureInfo.InvariantCulture, out version) || version < 1)
        {
            errors.Add(place, "the version is not a whole number from 1", string.Create(CultureInfo.InvariantCulture, $"write \"version\": {format.Version}"));
            version = format.Version;
        }
        else if (version > format.Version)
        {
            errors.Add(place, $"the file was made by a newer program: it is of version {version}, and this program reads up to {format.Version}", "get a newer program");
            return null;
        }

        return isOther ? null : version;
    }

    private static (string Problem, string Fix)? CheckFormat(JsonPiece? piece, DocumentFormat format)
    {
        if (piece is null)
            return ("\"format\" is missing", $"{OtherProgram}, and add \"format\": \"{format.Name}\"");
        if (piece.Kind != JsonValueKind.String)
            return ($"{piece.Words} stands here", $"write \"format\": \"{format.Name}\"");
        if (piece.Text == format.Name)
            return null;
        return DocumentFormat.All.Any(known => known.Name == piece.Text)
            ? ($"this is another kind of file, {piece.Text}", $"choose a file of format {format.Name}")
            : ($"unknown format \"{Quote.Shown(piece.Text)}\"", $"{OtherProgram}; its format is \"{format.Name}\"");
    }

    /// <summary>Duplicate keys are looked for before a file is upgraded, since the upgrade's tree cannot hold them.</summary>
    private static void RefuseDuplicates(JsonPiece piece, DocumentPath path, ErrorList errors)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (var field in piece.Fields)
        {
            if (!seen.Add(field.Name))
                errors.Add(path.Field(field.Name), $"the key \"{Quote.Shown(field.Name)}\" stands here twice", "keep one of the two", field.Offset);
            RefuseDuplicates(field.Value, path.Field(field.Name), errors);
        }

        for (var index = 0; index < piece.Items.Count; index++)
            RefuseDuplicates(piece.Items[index], path.Item(index), errors);
    }
}
