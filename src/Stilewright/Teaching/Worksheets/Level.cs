using System.Globalization;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Teaching.Worksheets;

/// <summary>A step of the course: what is asked, how much of it is left to the maker, and what numbers occur.</summary>
/// <param name="Number">From 1, the first door.</param>
/// <param name="Name">A few words.</param>
/// <param name="Teaches">What is new in it, in one sentence.</param>
/// <param name="Unit">The unit of its problems.</param>
/// <param name="Asked">The kinds of sizes that are asked. A size that leans on an asked one is always asked too.</param>
/// <param name="Limits">Of its random problems.</param>
public sealed record Level(
    int Number, string Name, string Teaches, LengthUnit Unit, BlankStyle Style, IReadOnlyList<SizeKind> Asked, ProblemLimits Limits)
{
    /// <summary>What differs from the level as shipped, such as "readings 1/8, pair"; a seed repeats a problem only together with it.</summary>
    public string Changed { get; private init; } = "";

    /// <summary>Number, name and what differs: "level 2: Frame and panel, with readings 1/8".</summary>
    public string Words => string.Create(CultureInfo.InvariantCulture, $"level {Number}: {Name}{(Changed.Length == 0 ? "" : $", with {Changed}")}");

    /// <summary>The level with just these features in every problem, and asking what they bring.</summary>
    public Level With(IReadOnlyCollection<ProblemFeature> features)
    {
        SizeKind[] brought =
        [
            .. features.Contains(ProblemFeature.TrimAllowance) ? [SizeKind.IntoClamps] : Array.Empty<SizeKind>(),
            .. features.Contains(ProblemFeature.Arch) ? [SizeKind.ArchedBlank] : Array.Empty<SizeKind>(),
            .. features.Contains(ProblemFeature.MidRails) ? [SizeKind.Light] : Array.Empty<SizeKind>(),
        ];
        return this with
        {
            Asked = [.. Asked.Union(brought)],
            Limits = Limits with { Always = [.. features.Distinct().Order()], Sometimes = [], Finest = FinestPrinted },
            Changed = And(features.Count == 0 ? "single" : string.Join(", ", features.Distinct().Order().Select(feature => TradeWords.Words(feature)))),
        };
    }

    /// <summary>The level with openings measured on another step.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The step is not positive, is over an inch or 25 mm, or finer than is printed.</exception>
    public Level WithReadings(Length step)
    {
        if (!step.IsPositive || step > LargestReading || !(step / FinestPrinted).Reduce().Denominator.IsOne)
            throw new ArgumentOutOfRangeException(nameof(step), step, "Readings are on a step that can be printed, of an inch or 25 mm at most.");
        return this with { Limits = Limits with { Reading = step, Finest = FinestPrinted }, Changed = And($"readings {new LengthFormat(Unit, 64).Print(step)}") };
    }

    /// <summary>The level with other blanks.</summary>
    public Level WithBlanks(BlankStyle style) => this with { Style = style };

    private Length FinestPrinted => Unit == LengthUnit.Inch ? Length.FromInches(new(1, 64)) : Length.FromMillimetres(new(1, 10));

    private Length LargestReading => Unit == LengthUnit.Inch ? 1.Inches : 25.Millimetres;

    private string And(string change) => Changed.Length == 0 ? change : $"{Changed}, {change}";
}
