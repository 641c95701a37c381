using System.Globalization;
using Stilewright.Documents.Changes;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Features.Standard;

/// <summary>Where a record of the house standard lies, or a part of one: how it is found and put back. Where it is not there, an edit changes nothing.</summary>
/// <param name="Name">Its path, by which figures tell where they were entered, such as <c>standard/hinges/compact/cup</c>.</param>
internal sealed record Place<T>(string Name, Func<HouseStandard, T?> Find, Func<HouseStandard, Func<T, T>, HouseStandard> Edit)
    where T : class
{
    /// <summary>A record that lies in this one.</summary>
    public Place<TPart> At<TPart>(string key, Func<T, TPart?> get, Func<T, TPart, T> set)
        where TPart : class => new(
        $"{Name}/{key}", standard => Find(standard) is { } there ? get(there) : null,
        (standard, edit) => Edit(standard, there => get(there) is { } part ? set(there, edit(part)) : there));

    /// <summary>A row of a list of this record.</summary>
    public Place<TRow> Row<TRow>(string key, int index, Func<T, IReadOnlyList<TRow>> get, Func<T, IReadOnlyList<TRow>, T> set)
        where TRow : class => new(
        string.Create(CultureInfo.InvariantCulture, $"{Name}/{key}/{index}"), standard => Find(standard) is { } there ? get(there).ElementAtOrDefault(index) : null,
        (standard, edit) => Edit(standard, there => index < get(there).Count ? set(there, [.. get(there).Select((row, i) => i == index ? edit(row) : row)]) : there));

    /// <summary>A length that must be there.</summary>
    public LengthField<HouseStandard> Needed(string key, Func<T, LengthEntry> get, Func<T, LengthEntry, T> set) => new(
        $"{Name}/{key}", LabelOf(key), standard => Find(standard) is { } there ? get(there) : null,
        (standard, entry) => entry is { } length ? Edit(standard, there => set(there, length)) : standard)
    {
        IsOptional = false,
    };

    /// <summary>A length that may be left out.</summary>
    public LengthField<HouseStandard> Length(string key, Func<T, LengthEntry?> get, Func<T, LengthEntry?, T> set) => new(
        $"{Name}/{key}", LabelOf(key), standard => Find(standard) is { } there ? get(there) : null, (standard, entry) => Edit(standard, there => set(there, entry)))
    {
        Otherwise = AbsentOf(key),
    };

    public WordField<HouseStandard> Words(string key, Func<T, string?> get, Func<T, string?, T> set, bool isOptional = true) => new(
        $"{Name}/{key}", LabelOf(key), standard => Find(standard) is { } there ? get(there) : null, (standard, words) => Edit(standard, there => set(there, words)))
    {
        IsOptional = isOptional,
        Otherwise = AbsentOf(key),
    };

    /// <summary>A whole number.</summary>
    public WordField<HouseStandard> Whole(string key, int least, int greatest, Func<T, int?> get, Func<T, int?, T> set, bool isOptional = false) => new(
        $"{Name}/{key}", LabelOf(key), standard => Find(standard) is { } there && get(there) is { } number ? number.ToString(CultureInfo.InvariantCulture) : null,
        (standard, words) => words is null && !isOptional ? standard : Edit(standard, there => set(there, words is null ? null : int.Parse(words, NumberStyles.None, CultureInfo.InvariantCulture))))
    {
        IsOptional = isOptional,
        Otherwise = AbsentOf(key),
        Check = words => int.TryParse(words, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least && number <= greatest
            ? null : string.Create(CultureInfo.InvariantCulture, $"Type a whole number from {least} to {greatest}."),
    };

    /// <summary>A number that is no length, as it is typed.</summary>
    /// <param name="says">What it may be, such as "a percentage from 0 to 30".</param>
    public WordField<HouseStandard> Number(string key, NumberKind kind, string says, Func<T, NumberEntry?> get, Func<T, NumberEntry?, T> set, bool isOptional = true) => new(
        $"{Name}/{key}", LabelOf(key), standard => Find(standard) is { } there ? get(there)?.Text : null,
        (standard, words) => words is null && !isOptional ? standard : Edit(standard, there => set(there, words is null ? null : Numbers.Entry(words, kind, standard.Unit))))
    {
        IsOptional = isOptional,
        Otherwise = AbsentOf(key),
        // What a bare temperature is hangs on the standard's unit; whether it can be read does not.
        Check = words => NumberReader.Read(words, kind, LengthUnit.Inch) is ParseResult<Fractions.Fraction>.Parsed ? null : $"Type {says}.",
    };

    private static string LabelOf(string key) => FieldLabels.Of(typeof(T), key) is var label ? char.ToUpperInvariant(label[0]) + label[1..] : "";

    private static string AbsentOf(string key) => FieldLabels.Absent(typeof(T), key) ?? "not said";
}

internal static class Place
{
    /// <summary>A record of a list of the standard.</summary>
    /// <param name="list">The key of the list in documents.</param>
    public static Place<T> Of<T>(string list, string id, Func<HouseStandard, IReadOnlyList<T>> get, Func<HouseStandard, IReadOnlyList<T>, HouseStandard> set, Func<T, string> idOf)
        where T : class => new(
        $"standard/{list}/{id}", standard => get(standard).FirstOrDefault(each => idOf(each) == id),
        (standard, edit) => set(standard, [.. get(standard).Select(each => idOf(each) == id ? edit(each) : each)]));
}
