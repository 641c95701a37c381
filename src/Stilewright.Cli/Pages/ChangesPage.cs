using System.Globalization;
using Stilewright.Cli.Layout;
using Stilewright.Measure;
using Stilewright.Prints;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>What is no longer as it was handed out.</summary>
internal static class ChangesPage
{
    public static Page Of(HandedOut then, Differences differences, LengthFormat format)
    {
        var time = then.Time.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
        var page = new Page().Title($"{then.CourseName}: changes since the {then.What} was handed out, {time} UTC");
        if (differences.PaperHolds)
        {
            page.Line($"Nothing has changed: {TradeWords.Count(then.PartCount, "part is", "parts are")} as handed out.");
        }
        else
        {
            page.Heading(TradeWords.Count(differences.OnPaper.Count, "change", "changes"));
            foreach (var change in differences.OnPaper)
                page.Line(change.Text(format), Tone.Caution, 2);
        }

        if (differences.Origins.Count > 0)
        {
            page.Heading(differences.PaperHolds ? "Also of another revision, without a change to a part" : "Where changes come from");
            foreach (var change in differences.Origins)
                page.Line(change.Text(format), Tone.Plain, 2);
        }

        return page.Footnotes();
    }
}
