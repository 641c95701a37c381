namespace Stilewright.Curves;

/// <summary>The play left beside the flanks of an arch when the panel is at its widest.</summary>
/// <param name="Least">Least horizontal distance left between the swollen panel's arched edge and the bottom of the rail's groove, in;
/// negative where it would bottom. Infinite where nothing of the arch stands beside the panel.</param>
/// <param name="Place">The place of the panel's edge, unswollen, where that is.</param>
/// <param name="ArchClearance">The least ca that leaves no play below nothing; null where the one there is does, or where none
/// does short of leaving the groove.</param>
/// <remarks>
/// A panel with upright grain swells to both sides of its pin: a place at the distance h from the pin moves h × growth / width.
/// From each place of the panel's arched edge the play is the distance, level and away from the pin, to the
/// bottom of the rail's groove, which runs on through its tongue, less that movement; the sides' own clearance is not looked at. Flank and groove are parallel curves ca apart, so on a flank that leans φ from level the
/// distance is about ca / sin φ, and ca itself where it is upright. Swelling along the grain is left out (0.1 to 0.2 %
/// from green to oven-dry: FPL-GTR-190, chapter 4). Every segment is looked at in 17 even places and then between the two
/// beside the tightest by thirds.
/// </remarks>
public sealed record FlankPlay(double Least, CurvePoint Place, double? ArchClearance)
{
    private const int PlacesPerSegment = 16;

    /// <param name="growthInches">What the whole panel grows across its width from making to the wettest.</param>
    /// <param name="pinX">Where the panel does not move; its middle unless stated.</param>
    public static FlankPlay Of(ArchedLight light, double growthInches, double? pinX = null)
    {
        var (left, right) = (light.Top.Chain.Start.X, light.Top.Chain.End.X);
        var side = light.GrooveDepth - light.SideClearance;
        var strain = growthInches / (right - left + (2 * side));
        var pin = pinX ?? (left + right) / 2;
        var groove = LightCurves.FittedArch(light.Top.Chain, light.GrooveDepth, left - light.GrooveDepth, right + light.GrooveDepth);

        var present = light.ArchClearance ?? light.EndClearance;
        var (least, place) = Tightest(present);
        if (least >= -CurveTolerance.MeetingInches)
            return new(least, place, null);
        if (Tightest(light.GrooveDepth).Play < 0)
            return new(least, place, null);
        var (tooLittle, enough) = (present, light.GrooveDepth);
        while (enough - tooLittle > CurveTolerance.SamePlaceInches)
        {
            var middle = (tooLittle + enough) / 2;
            if (Tightest(middle).Play >= 0)
                enough = middle;
            else
                tooLittle = middle;
        }

        return new(least, place, enough);

        (double Play, CurvePoint Place) Tightest(double clearance)
        {
            var panel = LightCurves.FittedArch(light.Top.Chain, light.GrooveDepth - clearance, left - side, right + side);
            var (tightest, at) = (double.PositiveInfinity, panel.Start);
            foreach (var segment in panel.Segments)
            {
                var (best, bestAt) = (double.PositiveInfinity, 0);
                for (var i = 0; i <= PlacesPerSegment; i++)
                {
                    if (Play(segment.PointAt(segment.Length * i / PlacesPerSegment)) is var play && play < best)
                        (best, bestAt) = (play, i);
                }

                if (best >= tightest)
                    continue;
                var (from, to) = (segment.Length * Math.Max(0, bestAt - 1) / PlacesPerSegment, segment.Length * Math.Min(PlacesPerSegment, bestAt + 1) / PlacesPerSegment);
                (tightest, at) = (best, segment.PointAt(segment.Length * bestAt / PlacesPerSegment));
                while (to - from > CurveTolerance.SamePlaceInches)
                {
                    var (one, other) = (from + ((to - from) / 3), to - ((to - from) / 3));
                    if (Play(segment.PointAt(one)) < Play(segment.PointAt(other)))
                        to = other;
                    else
                        from = one;
                }

                if (Play(segment.PointAt(from)) is var refined && refined < tightest)
                    (tightest, at) = (refined, segment.PointAt(from));
            }

            return (tightest, at);
        }

        double Play(CurvePoint from)
        {
            var way = from.X < pin ? -1 : 1;
            var gap = double.PositiveInfinity;
            foreach (var segment in groove.Segments)
            {
                if (segment is LineSegment line && (line.Start.Y - from.Y) * (line.End.Y - from.Y) <= 0 && line.Start.Y != line.End.Y)
                {
                    Consider(line.Start.X + ((line.End.X - line.Start.X) * (from.Y - line.Start.Y) / (line.End.Y - line.Start.Y)), null);
                }
                else if (segment is ArcSegment arc && Math.Abs(from.Y - arc.Centre.Y) <= arc.Radius)
                {
                    var up = from.Y - arc.Centre.Y;
                    var half = Math.Sqrt((arc.Radius - up) * (arc.Radius + up));
                    Consider(arc.Centre.X - half, arc);
                    Consider(arc.Centre.X + half, arc);
                }
            }

            return gap - (Math.Abs(from.X - pin) * strain);

            void Consider(double x, ArcSegment? arc)
            {
                var distance = (x - from.X) * way;
                if (distance >= -CurveTolerance.MeetingInches && distance < gap
                    && (arc is null || arc.TurnTo(Math.Atan2(from.Y - arc.Centre.Y, x - arc.Centre.X)) <= Math.Abs(arc.SweepRadians)))
                {
                    gap = distance;
                }
            }
        }
    }
}
