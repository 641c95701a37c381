using Stilewright.Documents.Json;

namespace Stilewright.Documents;

/// <summary>The errors of one file as they are found.</summary>
internal sealed class ErrorList
{
    /// <summary>More than anyone will read; a file of the wrong kind may hold millions.</summary>
    private const int MostErrors = 1000;

    private readonly List<Fault> found = [];
    private int dropped;

    public bool IsEmpty => found.Count == 0;

    /// <param name="offset">The byte at fault, where it is not the start of the value at that path.</param>
    public void Add(DocumentPath path, string problem, string fix, int? offset = null)
    {
        if (found.Count < MostErrors)
            found.Add(new(path, problem, fix, offset));
        else
            dropped++;
    }

    /// <summary>The errors in the order of the file, with lines and columns.</summary>
    /// <param name="isUpgraded">True when the tree is no longer that of the file, so that its places are not told.</param>
    public IReadOnlyList<DocumentError> Placed(JsonPiece? root, ReadOnlySpan<byte> utf8, bool isUpgraded)
    {
        List<DocumentError> errors = [];
        var line = 1;
        var lineStart = 0;
        var reached = 0;
        foreach (var (path, problem, fix, known) in found.Select(error => error with { Offset = error.Offset ?? (root is null ? null : error.Path.PieceIn(root).Offset) })
            .OrderBy(error => error.Offset))
        {
            if (known is not { } offset || isUpgraded)
            {
                errors.Add(new(path.ToString(), problem, fix));
                continue;
            }

            var passed = utf8[reached..offset];
            line += passed.Count((byte)'\n');
            if (passed.LastIndexOf((byte)'\n') is >= 0 and var lastBreak)
                lineStart = reached + lastBreak + 1;
            reached = offset;
            errors.Add(new(path.ToString(), problem, fix, line, Characters(utf8[lineStart..offset]) + 1));
        }

        if (dropped > 0)
            errors.Add(new("$", $"{dropped} more errors are not listed", "mend these first, then check the file again"));
        return errors;
    }

    private sealed record Fault(DocumentPath Path, string Problem, string Fix, int? Offset);

    /// <summary>Every character has one byte that does not continue another.</summary>
    private static int Characters(ReadOnlySpan<byte> utf8)
    {
        var count = 0;
        foreach (var one in utf8)
            count += (one & 0b1100_0000) == 0b1000_0000 ? 0 : 1;
        return count;
    }
}
