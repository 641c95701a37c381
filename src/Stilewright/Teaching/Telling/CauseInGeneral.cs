using Stilewright.Teaching.Checking;

namespace Stilewright.Teaching.Telling;

/// <summary>A cause in words that hold for any list, apart from the figures and parts of one.</summary>
/// <param name="Missed">What was missed, a sentence.</param>
/// <param name="Rule">The rule, in sentences; causes with one rule are one lesson.</param>
public sealed record CauseInGeneral(string Missed, string Rule)
{
    public static CauseInGeneral Of(SlipKind kind, string subject)
    {
        var about = SubjectWords.Of(subject);
        var (were, they, belong) = about.IsPlural ? ("were", "they", "do") : ("was", "it", "does");
        // What these say of one list names another figure, stage or part besides.
        return kind switch
        {
            SlipKind.SignTurned => New($"{about.Name} {were} added where {they} should be taken off, or the other way round."),
            SlipKind.LikeQuantity => New($"another figure was taken for {about.Name}."),
            SlipKind.DoesNotBelong => New($"{about.Name} {were} reckoned in where {they} {belong} not belong."),
            SlipKind.AnotherStage => With("The size at another stage of the wood was written."),
            SlipKind.AnotherStock => With("The stock of the panel and that of the frame were taken for each other."),
            SlipKind.AnotherPart => With("The sizes of another part were written."),
            SlipKind.Reckoning => With($"A slip was made in reckoning {about.Name}, and later figures carried it on."),
            SlipKind.TapeFromOne or SlipKind.FractionMisread or SlipKind.FractionDropped or SlipKind.FractionAsDecimal or SlipKind.DigitsTransposed or SlipKind.UnitExchanged =>
                OfAny(Told(Subjects.Written)),
            _ => Told(subject),
        };

        CauseInGeneral New(string missed) => new(char.ToUpperInvariant(missed[0]) + missed[1..], about.Rule);

        CauseInGeneral Told(string of)
        {
            var words = CauseWords.Of(new(kind, of), []);
            return new(words.Missed, words.Rule);
        }

        CauseInGeneral With(string missed) => Told(subject) with { Missed = missed };

        static CauseInGeneral OfAny(CauseInGeneral one) => one with
        {
            Missed = one.Missed.Replace("This figure", "A figure", StringComparison.Ordinal).Replace("this figure", "a figure", StringComparison.Ordinal),
        };
    }
}
