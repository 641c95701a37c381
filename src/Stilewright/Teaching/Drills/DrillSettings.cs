using Stilewright.Measure;

namespace Stilewright.Teaching.Drills;

/// <summary>What a drill holds.</summary>
public sealed record DrillSettings
{
    /// <summary>The greatest number of items of one kind.</summary>
    public const int MostOfKind = 40;

    /// <exception cref="ArgumentException">There is no such fineness in that unit, no kind, one kind twice, or too few or too many items.</exception>
    public DrillSettings(LengthUnit unit, int finest, IReadOnlyList<DrillKind> kinds, int eachCount = 4)
    {
        ArgumentNullException.ThrowIfNull(kinds);
        if (!FinestOf(unit).Contains(finest))
            throw new ArgumentException($"The finest step is one of {string.Join(", ", FinestOf(unit))}, not {finest}.", nameof(finest));
        if (kinds.Count == 0 || kinds.Distinct().Count() != kinds.Count)
            throw new ArgumentException("A drill has at least one kind of item, and each kind once.", nameof(kinds));
        if (eachCount is < 1 or > MostOfKind)
            throw new ArgumentException($"A kind has from 1 to {MostOfKind} items, not {eachCount}.", nameof(eachCount));
        Unit = unit;
        Finest = finest;
        Kinds = [.. kinds];
        EachCount = eachCount;
    }

    /// <summary>Of rules and of the arithmetic; conversions go both ways whatever it is.</summary>
    public LengthUnit Unit { get; }

    /// <summary>The finest fraction of an inch: 2, 4, 8, 16 or 32. In millimetres, 1 for whole ones and 2 for halves.</summary>
    public int Finest { get; }

    /// <summary>In the order in which they are printed.</summary>
    public IReadOnlyList<DrillKind> Kinds { get; }

    /// <summary>How many items of each kind there are.</summary>
    public int EachCount { get; }

    public static IReadOnlyList<int> FinestOf(LengthUnit unit) => unit == LengthUnit.Inch ? [2, 4, 8, 16, 32] : [1, 2];

    /// <summary>The step that rules are divided to and that all figures lie on.</summary>
    public Length Step => Unit == LengthUnit.Inch ? Length.FromInches(new(1, Finest)) : Length.FromMillimetres(new(1, Finest));
}
