using Stilewright.Measure;

namespace Stilewright.Curves;

/// <summary>One hard pattern for rail and panel: on the panel it is moved by a constant instead of being offset, so the panel
/// stands deeper in the groove at the crown than on the flanks. All in inches.</summary>
/// <param name="Lift">How far the panel's edge lies above the sight line, straight up.</param>
/// <param name="Inches">The set-down: how far the pattern moves down on the panel from where its crown would touch the bottom of the groove, d − lift.</param>
/// <param name="Least">Least engagement: distance of the panel's edge into the groove, square to the sight line.</param>
/// <param name="Greatest">Greatest engagement.</param>
/// <param name="True">Engagement that a true offset has everywhere: d − ca.</param>
/// <param name="Bottoms">Whether the greatest engagement reaches the bottom of the groove.</param>
public sealed record SetDown(
    double Lift, double Inches, double Least, CurvePoint LeastPlace, double Greatest, CurvePoint GreatestPlace, double True, bool Bottoms)
{
    private const int PlacesPerSegment = 32;

    /// <summary>The set-down with which least and greatest engagement lie equally far from that of a true offset,
    /// (least + greatest) / 2 = d − ca; none, so that the panel just bottoms, where that would go deeper than the groove.</summary>
    public static SetDown Balanced(ArchCurve sightLine, double grooveDepthInches, double archClearanceInches)
    {
        var aim = grooveDepthInches - archClearanceInches;
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(aim, nameof(archClearanceInches));

        // The mean engagement grows with the lift and is never more than it.
        var (low, high) = (aim, Math.Max(aim, grooveDepthInches));
        if (Mean(high) < aim)
            return Of(sightLine, high, grooveDepthInches, archClearanceInches);
        while (high - low > CurveTolerance.SamePlaceInches)
        {
            var middle = (low + high) / 2;
            if (Mean(middle) < aim)
                low = middle;
            else
                high = middle;
        }

        return Of(sightLine, low, grooveDepthInches, archClearanceInches);

        double Mean(double lift)
        {
            var found = Of(sightLine, lift, grooveDepthInches, archClearanceInches);
            return (found.Least + found.Greatest) / 2;
        }
    }

    /// <summary>The balanced set-down as it can be set by a rule: on the nearest step, never nothing, so that the panel does
    /// not bottom, and never the whole groove.</summary>
    /// <param name="step">Less than the depth of the groove.</param>
    public static Length Settable(ArchCurve sightLine, Length grooveDepth, Length archClearance, Length step)
    {
        var balanced = Balanced(sightLine, CurveLength.Inches(grooveDepth), CurveLength.Inches(archClearance)).Inches;
        var nearest = CurveLength.ToLength(balanced, StepDirection.Nearest).OnStep(step, StepDirection.Nearest);
        return nearest >= grooveDepth ? nearest - step : nearest.IsPositive ? nearest : step;
    }

    /// <summary>What a stated lift leaves, measured at the ends, the top and 31 even places of every segment.</summary>
    /// <param name="liftInches">Above the sight line; positive.</param>
    public static SetDown Of(ArchCurve sightLine, double liftInches, double grooveDepthInches, double archClearanceInches)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(liftInches);
        // Of places that stand equally deep the one nearest to the middle is told.
        var middle = (sightLine.Chain.Start.X + sightLine.Chain.End.X) / 2;
        var (least, leastPlace) = (double.PositiveInfinity, sightLine.Chain.Start);
        var (greatest, greatestPlace) = (double.NegativeInfinity, sightLine.Chain.Start);
        foreach (var segment in sightLine.Chain.Segments)
        {
            for (var i = 0; i <= PlacesPerSegment; i++)
                Measure(segment.PointAt(segment.Length * i / PlacesPerSegment));
            if (segment is ArcSegment arc)
                Measure(arc.Top);
        }

        return new(liftInches, grooveDepthInches - liftInches, least, leastPlace, greatest, greatestPlace,
            grooveDepthInches - archClearanceInches, greatest >= grooveDepthInches - CurveTolerance.MeetingInches);

        bool IsNearer(CurvePoint place, CurvePoint other) => Math.Abs(place.X - middle) < Math.Abs(other.X - middle) - CurveTolerance.SamePlaceInches;

        void Measure(CurvePoint onCurve)
        {
            var place = onCurve + new CurvePoint(0, liftInches);
            var depth = sightLine.Chain.ClosestTo(place).Distance;
            if (depth < least - CurveTolerance.MeetingInches || (depth <= least + CurveTolerance.MeetingInches && IsNearer(place, leastPlace)))
                (least, leastPlace) = (depth, place);
            if (depth > greatest + CurveTolerance.MeetingInches || (depth >= greatest - CurveTolerance.MeetingInches && IsNearer(place, greatestPlace)))
                (greatest, greatestPlace) = (depth, place);
        }
    }
}
