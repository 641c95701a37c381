namespace Stilewright.Documents;

/// <summary>One fault of a file that keeps it from being read: where it is, what it is and what to do.</summary>
/// <param name="Path">The place as a JSON path, such as <c>$.projects[2].pieces[0].name</c>; <c>$</c> is the whole file. In a list of lines, the column's heading.</param>
/// <param name="Problem">What is wrong, in a sentence without a full stop.</param>
/// <param name="Fix">What to do about it, in a sentence without a full stop.</param>
/// <param name="Line">The line in the file, from 1; absent where the file was upgraded before it was read.</param>
/// <param name="Column">The character in that line, from 1; absent where the place says enough.</param>
public sealed record DocumentError(string Path, string Problem, string Fix, int? Line = null, int? Column = null)
{
    /// <summary>One line for a person: the place, the problem and the fix.</summary>
    public override string ToString() => Line is null
        ? $"{Path}: {Problem}; {Fix}"
        : Column is null ? $"line {Line}, {Path}: {Problem}; {Fix}"
        : $"{Path} (line {Line}, column {Column}): {Problem}; {Fix}";
}
