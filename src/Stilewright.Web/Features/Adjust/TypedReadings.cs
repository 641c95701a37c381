using Stilewright.Hanging.Adjusting;
using Stilewright.Measure;

namespace Stilewright.Web.Features.Adjust;

/// <summary>What is typed for the gaps and corners of one row, and what can be read of it.</summary>
public sealed class TypedReadings(HungRow row)
{
    private readonly Dictionary<GapPlace, string> gaps = [];
    private readonly Dictionary<(string Leaf, LeafCorner Corner), string> corners = [];

    public bool IsEmpty => gaps.Values.Concat(corners.Values).All(text => text.Length == 0);

    public string this[GapPlace place]
    {
        get => gaps.GetValueOrDefault(place, "");
        set => gaps[place] = value.Trim();
    }

    public string this[string leaf, LeafCorner corner]
    {
        get => corners.GetValueOrDefault((leaf, corner), "");
        set => corners[(leaf, corner)] = value.Trim();
    }

    public void Clear()
    {
        gaps.Clear();
        corners.Clear();
    }

    /// <summary>Why a text is no reading; null where it is one, or nothing.</summary>
    public static string? ProblemOf(string text, LengthUnit unit) =>
        text.Length == 0 ? null : LengthReader.Read(text, unit, allowNegative: true) is ParseResult<Length>.Failed failed ? failed.Message : null;

    /// <summary>The row as it is read; places with nothing, or with what cannot be read, are left out.</summary>
    public AdjustingTask Task(LengthUnit unit, Length tolerance)
    {
        return row.With(
            row.Places.Select(place => Read(this[place]) is { } gap ? place.Read(gap) : null).OfType<GapReading>(),
            corners.Select(each => Read(each.Value) is { } proud ? new ProudReading(each.Key.Leaf, each.Key.Corner, proud) : null).OfType<ProudReading>(),
            AdjustingTask.UsualStep(unit), tolerance);

        Length? Read(string text) => LengthReader.Read(text, unit, allowNegative: true) is ParseResult<Length>.Parsed parsed ? parsed.Value : null;
    }
}
