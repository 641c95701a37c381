using Stilewright.Projects;

namespace Stilewright.Curves;

/// <summary>Where an arch that goes across a pair has its crown.</summary>
public enum PairCrown
{
    /// <summary>In the middle of the gap: the curve runs across both meeting stiles unseen.</summary>
    MiddleOfGap,

    /// <summary>At the sight line of each meeting stile, so that each leaf shows a whole half.</summary>
    EachMeetingStile,
}

/// <summary>One arch across a pair, cut at the meeting stiles; X = 0 is the middle of the gap.</summary>
/// <param name="Left">The left leaf's sight line. The right leaf's is its mirror: one hard pattern serves both, turned over.</param>
/// <param name="RiseAtMeeting">Height of the curve over the spring line at the meeting sight line, in; there the rail is narrowest.</param>
public sealed record PairArch(ArchCurve Left, ArchCurve Right, double RiseAtMeeting)
{
    /// <param name="family">The arch over the whole span.</param>
    /// <param name="sizes">Span from hinge-stile sight line to hinge-stile sight line.</param>
    /// <param name="gapInches">Air between the leaves.</param>
    /// <param name="meetingStileInches">Width of each meeting stile, sticking included.</param>
    public static PairResult Draw(ArchFamily family, ArchSizes sizes, double gapInches, double meetingStileInches, PairCrown crown)
    {
        var meeting = (gapInches / 2) + meetingStileInches;
        var most = (sizes.Span - gapInches) / 2;
        if (!(meeting >= 0 && meeting < (sizes.Span / 2) - CurveTolerance.CrumbInches))
        {
            return new PairResult.Refused(
                $"A pair with {CurveLength.ToLength(sizes.Span, Measure.StepDirection.Nearest)} between its hinge stiles has no room for meeting stiles of {CurveLength.ToLength(meetingStileInches, Measure.StepDirection.Nearest)}.",
                new(ArchMeasure.StileWidth, LimitSide.AtMost, most));
        }

        var apart = crown == PairCrown.EachMeetingStile ? meeting : 0;
        return ArchFamilies.Draw(family, sizes with { Span = sizes.Span - (2 * apart) }) switch
        {
            ArchResult.Drawn(var whole) => Cut(whole, meeting, apart),
            ArchResult.Refused(var problem, var limit) => new PairResult.Refused(problem, limit),
            _ => throw new InvalidOperationException("An arch is drawn or refused."),
        };
    }

    private static PairResult.Drawn Cut(ArchCurve whole, double meeting, double apart)
    {
        var at = apart - meeting;
        var crossing = whole.Chain.CrossingsWithLine(new(at, 0), new(0, 1))[0];
        var chain = whole.Chain.Part(0, crossing.OnFirst).Translated(new(-apart, 0));
        var corners = whole.Corners.Where(corner => corner.X < at - CurveTolerance.SamePlaceInches).Select(corner => corner - new CurvePoint(apart, 0));
        var left = new ArchCurve(chain, [.. corners]);
        return new(new(left, left.Mirrored(), crossing.Place.Y));
    }
}

/// <summary>What became of an arch across a pair.</summary>
public abstract record PairResult
{
    private PairResult()
    {
    }

    public sealed record Drawn(PairArch Arch) : PairResult;

    /// <summary>As of <see cref="ArchResult.Refused"/>.</summary>
    public sealed record Refused(FormattableString Problem, ArchLimit Limit) : PairResult;
}
