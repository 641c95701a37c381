using Stilewright.Cli.Layout;
using Stilewright.Findings;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>Whether a leaf is bored right, what went wrong, and what can be done.</summary>
internal static class BoredPage
{
    public static Page Of(HungLeaf leaf, BoredRight answer, IReadOnlyList<BoringMistake> mistakes, LengthFormat format)
    {
        var page = new Page().Title($"{BoringWords.Name(leaf)}: is it bored right?");
        page.Line(FindingText.Say(answer.Words, format), answer.IsRight ? Tone.Plain : Tone.Danger);
        foreach (var mistake in mistakes)
        {
            page.Line(FindingText.Say(mistake.Words, format));
            if (mistake is { Right: { } right, Wrong: { } wrong })
            {
                page.Line($"right:     {WorkedText.Line(right, format)}", Tone.Plain, 2);
                page.Line($"as bored:  {WorkedText.Line(wrong, format)}", Tone.Plain, 2);
            }

            page.Line($"Do: {FindingText.Say(mistake.Salvage, format)}", Tone.Plain, 2);
        }

        if (answer.Remedies.Count == 0)
            return page.Footnotes();
        page.Heading("What can be done");
        foreach (var remedy in answer.Remedies)
            page.Line(FindingText.Say(remedy.Words, format), Tone.Plain, 2);
        return page.Footnotes();
    }
}
