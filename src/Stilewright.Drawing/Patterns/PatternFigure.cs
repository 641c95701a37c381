using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Drawing.Patterns;

/// <summary>Full-size patterns of arched rails and of the panels and panes under and over them.</summary>
/// <param name="revision">Of the project, as its packet tells it.</param>
public sealed class PatternFigure(string revision, LengthFormat format)
{
    /// <summary>Whether a tall panel has one pattern of its whole outline; else it has one of each arched end, cut off below the curve.</summary>
    public bool IsWhole { get; init; }

    /// <summary>What the set-down of one pattern for rail and panel is worked out from; null where panels only have patterns of their own.</summary>
    public OnePattern? OnePattern { get; init; }

    /// <summary>The patterns of a leaf, from the bottom up, each rail with what fills its lights; none for a leaf without arches.</summary>
    /// <param name="guide">For patterns that guide a bearing; absent, patterns are the true lines.</param>
    public IEnumerable<PatternResult> Of(LeafCurves curves, GuideBearing? guide = null) =>
        [.. curves.Rails.Select(rail => Of(rail, guide)), .. curves.Panels.SelectMany(panel => Of(panel, guide))];

    /// <summary>The patterns of one part; none where it has no curve.</summary>
    public IReadOnlyList<PatternResult> Of(LeafCurves curves, Part part, GuideBearing? guide = null) =>
        curves.Of(part) is { } rail ? [Of(rail, guide)] : curves.Filling(part) is { } panel ? Of(panel, guide) : [];

    public PatternResult Of(RailCurve rail, GuideBearing? guide = null)
    {
        var isTop = rail.Spring < rail.Crown;
        var inside = 0.0;
        if (guide is { } bearing)
        {
            inside = CurveLength.Inches(bearing.Inward);
            if (Refused(isTop ? rail.Sight : rail.Sight.Reversed(), bearing) is { } refused)
                return refused;
        }

        return new PatternResult.Drawn(PatternDrawing.OfRail(rail, guide is null ? null : rail.Into(inside), Facts(guide)));
    }

    /// <summary>One pattern, or one of each arched end of a tall panel, the upper end first.</summary>
    public IReadOnlyList<PatternResult> Of(PanelCurve panel, GuideBearing? guide = null)
    {
        Chain? line = null;
        if (guide is { } bearing)
        {
            if (Refused(panel.Edge, bearing) is { } refused)
                return [refused];
            line = LightCurves.PatternLine(panel.Edge, CurveLength.Inches(bearing.BearingRadius), CurveLength.Inches(bearing.CutterRadius)).Whole!;
        }

        return [.. PatternDrawing.OfPanel(panel, line, Facts(guide), IsWhole).Select(pattern => new PatternResult.Drawn(pattern))];
    }

    private PatternFacts Facts(GuideBearing? guide) => new(revision, format, guide, OnePattern);

    // A pattern with an arc that the offset swallowed would leave another curve than the one that is wanted.
    private PatternResult.Refused? Refused(Chain edge, GuideBearing guide)
    {
        var line = LightCurves.PatternLine(edge, CurveLength.Inches(guide.BearingRadius), CurveLength.Inches(guide.CutterRadius));
        if (line.Whole is not null && line.Swallowed.Count == 0)
            return null;
        var least = edge.Segments.OfType<ArcSegment>().Where(arc => arc.SweepRadians > 0 == guide.Inward.IsPositive)
            .Select(arc => arc.Radius).DefaultIfEmpty(0).Min();
        var words = new TradeWords(format);
        var most = format.PrintWithUnit(CurveLength.ToLength(least, StepDirection.Down));
        return new($"No pattern guides a bearing of {words.Of(guide.BearingRadius)} with a cutter of {words.Of(guide.CutterRadius)} {words.Unit} along this curve: "
            + (least > 0 ? $"their radii must differ by less than {most}, the smallest radius on that side." : "the two are too far apart for its straight parts."));
    }
}

/// <summary>What a pattern says besides its curves.</summary>
internal sealed record PatternFacts(string Revision, LengthFormat Format, GuideBearing? Guide, OnePattern? OnePattern);
