using System.Globalization;
using Stilewright.Documents.Shapes;
using Stilewright.Measure;

namespace Stilewright.Documents;

/// <summary>What holds inside a record with a unit of its own: a course, a project, a standard.</summary>
/// <param name="unit">The unit of numbers that name none; null where the file's is unreadable.</param>
internal sealed class Scope(Scope? parent, RecordShape record, LengthUnit? unit)
{
    private readonly Dictionary<string, DocumentPath> numbers = new(StringComparer.Ordinal);

    public Scope? Parent { get; } = parent;
    public LengthUnit? Unit { get; } = unit;

    /// <summary>Takes the number, or gives the place that has taken it.</summary>
    public DocumentPath? Take(Type within, string what, int number, DocumentPath path)
    {
        if (record.Type != within)
            return Parent?.Take(within, what, number, path);
        var key = string.Create(CultureInfo.InvariantCulture, $"{what} {number}");
        return numbers.TryAdd(key, path) ? null : numbers[key];
    }

    /// <summary>Whether what belongs to <paramref name="other"/> may be named from here.</summary>
    public bool Sees(Scope other) => this == other || (Parent?.Sees(other) ?? false);
}
