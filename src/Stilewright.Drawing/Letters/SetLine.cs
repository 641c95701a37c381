namespace Stilewright.Drawing.Letters;

/// <summary>Letters of one size on a line.</summary>
/// <param name="Right">From the left end of the line to the left end of the run, in millimetres.</param>
/// <param name="Up">From the baseline of the line up to that of the run, in millimetres.</param>
/// <param name="Width">In millimetres.</param>
public sealed record LetterRun(string Text, TextStyle Style, double Right, double Up, double Width);

/// <summary>A line of text, set: where each run of letters stands. All measures in millimetres.</summary>
/// <param name="Text">The line as it was written, fractions as <c>3/16</c>.</param>
/// <param name="Ascent">From the baseline up to the top of capitals and figures, with a little air.</param>
/// <param name="Descent">From the baseline down to the foot of the lowest letter.</param>
public sealed record SetLine(string Text, IReadOnlyList<LetterRun> Runs, double Width, double Ascent, double Descent)
{
    /// <summary>From the foot of the lowest letter to the top of the line.</summary>
    public double Height => Ascent + Descent;

    /// <summary>Baseline to baseline of lines below one another.</summary>
    public double Pitch => Height * 1.25;
}
