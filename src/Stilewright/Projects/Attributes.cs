using Stilewright.Measure;

namespace Stilewright.Projects;

/// <summary>What an entered field or record means, in a sentence without a full stop; shown in the schema, on pages and in differences.</summary>
[AttributeUsage(AttributeTargets.Parameter | AttributeTargets.Property | AttributeTargets.Class | AttributeTargets.Enum | AttributeTargets.Field)]
public sealed class MeaningAttribute(string text) : Attribute
{
    public string Text { get; } = text;
}

/// <summary>One of the cases of a closed set of records, told apart in documents by its <c>kind</c>.</summary>
/// <param name="kind">The value of <c>kind</c> in a document.</param>
[AttributeUsage(AttributeTargets.Class, AllowMultiple = true)]
public sealed class CaseAttribute(string kind, Type type) : Attribute
{
    public string Kind { get; } = kind;
    public Type Type { get; } = type;
}

/// <summary>The id by which its record is addressed: made once, never reused, unique among records of every type in its document.</summary>
[AttributeUsage(AttributeTargets.Parameter)]
public sealed class IdAttribute : Attribute;

/// <summary>A field that holds the id of a record of the given type in the same document, or in the house standard.</summary>
[AttributeUsage(AttributeTargets.Parameter)]
public sealed class RefersToAttribute(Type type) : Attribute
{
    public Type Type { get; } = type;
}

/// <summary>Limits of a number, a length in inches, or the count of a list's items.</summary>
[AttributeUsage(AttributeTargets.Parameter)]
public sealed class BetweenAttribute(double least, double greatest = double.MaxValue) : Attribute
{
    public double Least { get; } = least;
    public double Greatest { get; } = greatest;

    /// <summary>True where the least value itself is not allowed: a width above zero.</summary>
    public bool Above { get; init; }
}

/// <summary>What a number that is no length counts; without it, it is a plain number.</summary>
[AttributeUsage(AttributeTargets.Parameter)]
public sealed class CountsAttribute(NumberKind kind) : Attribute
{
    public NumberKind Kind { get; } = kind;
}

/// <summary>A word of an enum as documents spell it, where it is not simply its name in kebab case.</summary>
[AttributeUsage(AttributeTargets.Field)]
public sealed class SpelledAttribute(string word) : Attribute
{
    public string Word { get; } = word;
}

/// <summary>A number that no two records within one record of the given type may share, such as bench numbers in a course.</summary>
/// <param name="within">The record, one with a unit of its own, that holds them all.</param>
/// <param name="what">What the number is called, such as "bench".</param>
[AttributeUsage(AttributeTargets.Parameter)]
public sealed class UniqueWithinAttribute(Type within, string what) : Attribute
{
    public Type Within { get; } = within;
    public string What { get; } = what;
}

/// <summary>What people call a field, a record or a word in a sentence, where its name written in words reads badly.</summary>
[AttributeUsage(AttributeTargets.Parameter | AttributeTargets.Class | AttributeTargets.Field)]
public sealed class LabelAttribute(string text) : Attribute
{
    public string Text { get; } = text;

    /// <summary>What holds where a field is absent, unless its meaning ends with that: "absent, as the standard says".</summary>
    public string? Absent { get; init; }

    /// <summary>True for a field that sentences leave out, since what stands inside says it all.</summary>
    public bool IsSilent { get; init; }
}

/// <summary>A path of something that is computed, which begins with the id of a record in the same document.</summary>
[AttributeUsage(AttributeTargets.Parameter)]
public sealed class BeginsWithIdAttribute : Attribute;
