using Stilewright.Measure;
using Stilewright.Teaching.Checking;

namespace Stilewright.Teaching.Telling;

/// <summary>A cause in words.</summary>
/// <param name="Missed">What was missed, a sentence.</param>
/// <param name="Rule">The rule, in sentences.</param>
/// <param name="Hint">A question that leads to it.</param>
/// <param name="Ask">The end of the question "did you …".</param>
internal sealed record CauseWords(string Missed, string Rule, string Hint, string Ask)
{
    /// <summary>How the words of an earlier size begin where paper told it, such as "handed out on 2026-03-05".</summary>
    internal const string HandedOut = "handed out";

    private const string ReadAgain = "Look at the figure on the tape or the paper once more, and then at the one you wrote: are they the same?";

    public static CauseWords Of(Cause cause, IReadOnlyList<MadeSlip> slips)
    {
        var about = SubjectWords.Of(cause.Subject);
        var were = about.IsPlural ? "were" : "was";
        var isWritten = cause.Subject == Subjects.Written;
        // A figure that the step takes, or the one it ends in.
        var figure = isWritten ? "this figure" : $"the {cause.Instead}";
        return cause.Kind switch
        {
            SlipKind.LeftOut => New($"{about.Name} {were} left out", $"leave out {about.Name}"),
            SlipKind.SignTurned => cause.Instead == SlipMaker.TakenOff
                ? New($"{about.Name} {were} taken off instead of added", $"take off {about.Name} instead of adding {(about.IsPlural ? "them" : "it")}")
                : New($"{about.Name} {were} added instead of taken off", $"add {about.Name} instead of taking {(about.IsPlural ? "them" : "it")} off"),
            SlipKind.CountedOnce => New($"only one {about.One} was counted{(cause.Subject is "gap" or "mid rail" or "mid stile" ? "" : "; there is one on each side")}", $"count only one {about.One}"),
            SlipKind.CountedTwice => New($"{about.Name} {were} counted twice over", $"count {about.Name} twice over"),
            SlipKind.OneTooMany => New($"one {about.One} too many was counted", $"count one {about.One} too many"),
            SlipKind.OneTooFew => New($"one {about.One} too few was counted", $"count one {about.One} too few"),
            SlipKind.OneSideOnly => new($"{Capital(StepName())} was reckoned for one side only.",
                "What is taken off or added on one side is taken off or added on the other side too.", "How many sides has this piece, and what happens on each?", "reckon for one side only"),
            SlipKind.StepLeftOut => StepLeftOut(),
            SlipKind.LikeQuantity => LikeQuantity(),
            SlipKind.DoesNotBelong => cause.Instead == SlipMaker.TakenOff
                ? New($"{about.Name} {were} taken off, and {(about.IsPlural ? "do" : "does")} not belong in this figure", $"take {about.Name} off")
                : New($"{about.Name} {were} added, and {(about.IsPlural ? "do" : "does")} not belong in this figure", $"add {about.Name}"),
            SlipKind.NotDivided => cause.Subject is "trim" or "rough"
                ? New($"the whole of {about.Name} was added, where half belongs", $"add the whole of {about.Name} instead of half")
                : cause.Subject == "leaf" ? New("the front was not divided among its leaves", "forget to divide the front among its leaves")
                : New($"what {about.Name} share was not divided", "forget to divide"),
            SlipKind.DividedTooEarly => cause.Subject is "gap" or "lap"
                ? New($"{about.Name} was taken from each leaf instead of once from both together", $"divide first and then take {about.Name} from each")
                : New($"it was divided before {about.Name} {were} reckoned in", $"divide before reckoning {about.Name} in"),
            SlipKind.DividedByAnother => New("it was divided by the wrong number", "divide by one more or one less than there are"),
            SlipKind.AnotherOfSeveral => New(cause.Subject == "opening" ? "another reading was used than the one that counts" : $"another of several figures was used for {about.Name}", "use another of the readings"),
            SlipKind.AnotherStage => new($"This is the size {StageWords(cause.Instead)}.",
                "A part has three sizes: rough as it is cut from the board, into the clamps with what is still to be trimmed, and finished. A list must keep to one of them.",
                "At which stage of the work is the part this size?", $"write the size {StageWords(cause.Instead)}"),
            SlipKind.EarlierSize => new(cause.Instead.Length == 0 ? "This is the size that went with an earlier measurement."
                : cause.Instead.StartsWith(HandedOut, StringComparison.Ordinal) ? $"This is what was {cause.Instead}: the opening was measured again, or something else that the size follows from was changed, since."
                : $"This was right before: the opening was measured again, or something else that the size follows from was changed, {cause.Instead}, after your figures.",
                "When an opening is measured again, or a standard changed, every part that follows from it changes too; a list must be of one revision.",
                "When was this size worked out, and what was measured again or changed since?", "take the size of an earlier list"),
            SlipKind.TrimmedOneSide => new("All the trim came off one side, so that the two differ by the whole allowance.", about.Rule,
                "How much comes off each of the two edges?", "trim one side only"),
            SlipKind.Exchanged => new("Width and height are exchanged.",
                "Write the two sizes in one order throughout: width across the grain first, then length along the grain. Exchanged, the grain runs the wrong way, and a panel or front cannot be turned to mend it.",
                "Which way does the grain run in this piece, and which of the two sizes lies along it?", "exchange width and height"),
            SlipKind.AnotherPart => new($"These are the sizes of {cause.Instead}.", "Chalk the label on each piece as soon as it is cut, and copy line by line.",
                "Whose piece is this? Compare it with the other lines.", $"copy the line of {cause.Instead}"),
            SlipKind.RoundedCoarsely => new("The figure is rounded more coarsely than the shop cuts.", "Keep the figure to the cutting step; round once, at the end.",
                "How finely does the shop cut, and how finely is your figure written?", "round it"),
            SlipKind.TapeFromOne => new($"{Capital(figure)} is off by one whole mark, as when a tape is read from its first inch or its hook is lost.",
                "Who measures from the first whole mark to spare the hook must take that mark off again. Say it aloud each time, or use a rule that starts at its end.",
                "Where on the tape did you start?", isWritten ? "start at the first mark of the tape and not take it off" : $"start at the first mark of the tape for {figure}"),
            SlipKind.FractionMisread => new($"One fraction was taken for another in {figure}.",
                "Name a mark by counting what the inch is divided into: halves, quarters, eighths, sixteenths, each mark shorter than the one before.", ReadAgain, isWritten ? "write another fraction than you found" : $"read another fraction for {figure}"),
            SlipKind.FractionDropped => new($"The fraction of {figure} was left off.", "Write the fraction with the number at once; say both aloud.", ReadAgain, isWritten ? "leave the fraction off when you wrote it down" : $"leave the fraction of {figure} off"),
            SlipKind.FractionAsDecimal => new($"The fraction of {figure} was written or keyed as a decimal.",
                "3/4 is three divided by four, 0.75; its two numbers are not the digits of a decimal.", "What is this fraction as a decimal? Divide it out.", isWritten ? "write the fraction as a decimal" : $"key the fraction of {figure} as a decimal"),
            SlipKind.DigitsTransposed => new($"Two digits of {figure} changed places.", "Read back each figure after writing it.", ReadAgain, isWritten ? "exchange two digits when you wrote it down" : $"exchange two digits of {figure}"),
            SlipKind.UnitExchanged => new($"{Capital(figure)} is in another unit.", "Keep one unit throughout: 1 in is 25.4 mm.", "In which unit is this figure, and in which are the others?", isWritten ? "write it in another unit" : $"read {figure} in another unit"),
            SlipKind.ThinnerThanGroove => new("This panel is thinner than its groove is wide, so it sits loose and rattles: it is slack by what the two differ.",
                "The panel and its groove go together: a sheet that sells as 1/4 in is often 7/32 in, so measure it and set the groove to it. One that is cut already is shimmed at the back.",
                "Put a piece of this sheet into the groove: does it fill it?", "take a sheet thinner than the groove is wide"),
            SlipKind.ThickerThanGroove => new("This panel is thicker than its groove is wide and is not raised, so it does not go in.",
                "A flat panel goes into the groove as thick as it is: the groove's width is the sheet's thickness, or its back is rabbeted to fit.",
                "Put a piece of this sheet to the groove: does it go in?", "take a sheet thicker than the groove is wide"),
            SlipKind.AnotherStock => cause.Instead == "frame"
                ? new("The panel was made as thick as the frame.", about.Rule, about.Hint, "take the stock of the frame for the panel")
                : new("The frame was made as thick as the panel.", about.Rule, about.Hint, "take the stock of the panel for the frame"),
            SlipKind.KerfLost => new("Each piece is shorter than the one before by the width of a saw cut.",
                "Pieces marked out one after another along a board lose a kerf at every cut. Mark and cut one at a time, or cut all against a stop.",
                "How were these pieces marked out, and where did the sawdust come from?", "mark all pieces along the board before cutting"),
            _ => new($"The figures that come from {figure} are all off by as much: something went wrong there.", "Work that step once more, figure by figure; all later ones follow from it.",
                "Which figure do all these have in common?", $"slip in reckoning {figure}"),
        };

        string StepName() => slips.FirstOrDefault(slip => slip.Cause == cause) is { } slip ? $"the {WorkedText.Label(slip.Right)}" : about.Name;

        CauseWords New(string missed, string ask) => new($"{Capital(missed)}.", about.Rule, about.Hint, ask);

        CauseWords StepLeftOut()
        {
            var step = slips.FirstOrDefault(slip => slip.Cause == cause);
            var taken = step?.AsWorked is Named { Inner: { } inner } ? WorkedText.Label(inner) : null;
            var missed = cause.Subject switch
            {
                "panel" => "the panel was cut to what can be seen of it",
                "glass" => "the glass was taken as what can be seen of it",
                "rail" when taken == "leaf width" => "the rail was made as long as the leaf is wide",
                "front" => "the front was made as large as the opening",
                _ when step is not null && taken is not null => $"the {WorkedText.Label(step.Right)} was taken as the {taken}",
                _ => $"the step of {about.Name} was left out",
            };
            var rule = cause.Subject == "rail" && taken == "leaf width"
                ? "A rail stands between the stiles and reaches into the groove of each: both stiles come off the width of the leaf, both tongues are added." : about.Rule;
            var hint = cause.Subject == "rail" && taken == "leaf width" ? SubjectWords.Of("stile").Hint : about.Hint;
            return new($"{Capital(missed)}.", rule, hint, $"take the {taken ?? "figure before"} as it is");
        }

        CauseWords LikeQuantity()
        {
            var other = SubjectWords.Of(cause.Instead);
            return cause.Instead == cause.Subject
                ? New($"the other of two like figures for {about.Name} was taken", $"take the other of two like figures for {about.Name}")
                : New($"{other.Name} {(other.IsPlural ? "were" : "was")} taken where {about.Name} belong{(about.IsPlural ? "" : "s")}", $"take {other.Name} for {about.Name}");
        }
    }

    private static string StageWords(string stage) => stage switch
    {
        nameof(CutStage.Finished) => "of the finished part",
        nameof(CutStage.IntoClamps) => "into the clamps",
        _ => "of the rough blank",
    };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
