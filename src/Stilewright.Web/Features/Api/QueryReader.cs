using System.Globalization;
using Stilewright.Measure;

namespace Stilewright.Web.Features.Api;

/// <summary>Reads what stands in an address, and gathers all that is wrong with it.</summary>
public sealed class QueryReader
{
    /// <summary>Longest value that is looked at.</summary>
    public const int MostCharacters = 200;

    private const int HighestBench = 999;
    private readonly List<ApiError> errors = [];

    public IReadOnlyList<ApiError> Errors => errors;

    public bool IsSound => errors.Count == 0;

    /// <summary>What is to be answered where anything is wrong.</summary>
    public Wrong Wrong => new(errors is [var one] ? $"{one.Path}: {one.Problem}; {one.Fix}." : "The address has several faults.", errors);

    public void Refuse(string name, string problem, string fix) => errors.Add(new(name, problem, fix));

    /// <summary>A short text; null where it is absent.</summary>
    public string? Text(string name, string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        if (text.Length > MostCharacters || text.Any(char.IsControl))
            Refuse(name, "it is too long, or has characters that cannot be typed", FormattableString.Invariant($"give up to {MostCharacters} plain characters"));
        return errors.Count == 0 ? text.Trim() : null;
    }

    /// <summary>A text that must be there.</summary>
    public string Needed(string name, string? text, string fix)
    {
        if (string.IsNullOrWhiteSpace(text))
            Refuse(name, "it is missing", fix);
        return Text(name, text) ?? "";
    }

    public bool Flag(string name, string? text, bool otherwise)
    {
        switch (text)
        {
            case null or "":
                return otherwise;
            case "true" or "on" or "1":
                return true;
            case "false" or "off" or "0":
                return false;
            default:
                Refuse(name, "it is neither true nor false", "write true or false");
                return otherwise;
        }
    }

    public int Whole(string name, string? text, int otherwise, int least, int most)
    {
        if (string.IsNullOrEmpty(text))
            return otherwise;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most)
            return number;
        Refuse(name, "it is no such number", FormattableString.Invariant($"write a whole number from {least} to {most}"));
        return otherwise;
    }

    /// <summary>Millimetres within a distance on both sides of zero.</summary>
    public double Millimetres(string name, string? text, double most)
    {
        if (string.IsNullOrEmpty(text))
            return 0;
        if (double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && Math.Abs(number) <= most)
            return number;
        Refuse(name, "it is no such number of millimetres", FormattableString.Invariant($"write millimetres from -{most} to {most}, such as 1.5"));
        return 0;
    }

    /// <summary>Numbers with commas between; null where it is absent.</summary>
    public IReadOnlyList<int>? Numbers(string name, string? text, int most)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        List<int> numbers = [];
        foreach (var each in text.Length <= 4 * MostCharacters ? text.Split(',', StringSplitOptions.TrimEntries) : [""])
        {
            if (!int.TryParse(each, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number < 1 || number > most)
            {
                Refuse(name, "it is no list of numbers", FormattableString.Invariant($"write numbers from 1 to {most} with commas between, such as 1,3"));
                return null;
            }

            numbers.Add(number);
        }

        return [.. numbers.Distinct().Order()];
    }

    /// <summary>One of some words.</summary>
    /// <param name="otherwise">Where it is absent.</param>
    public T Word<T>(string name, string? text, T otherwise, params IReadOnlyList<(string Word, T Meaning)> words)
    {
        if (string.IsNullOrEmpty(text))
            return otherwise;
        foreach (var (word, meaning) in words)
        {
            if (word == text)
                return meaning;
        }

        Refuse(name, "it is no word that is known here", $"write {string.Join(", ", words.Select(each => each.Word))}");
        return otherwise;
    }

    /// <summary>Numbers of benches; null where they are absent.</summary>
    public IReadOnlyList<int>? Benches(string? text) => Numbers("bench", text, HighestBench);

    public LengthUnit? Unit(string? text) => Word<LengthUnit?>("unit", text, null, ("in", LengthUnit.Inch), ("mm", LengthUnit.Millimetre));

    /// <summary>A length as people write it; null where it is absent.</summary>
    /// <param name="unit">Of a number without one.</param>
    public LengthEntry? Length(string name, string? text, LengthUnit unit)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        switch (LengthReader.Read(text, unit))
        {
            case ParseResult<Length>.Parsed(var length):
                return new(text.Trim(), length);
            case ParseResult<Length>.Failed failed:
                Refuse(name, "it is no length", failed.Message);
                break;
        }

        return null;
    }
}
