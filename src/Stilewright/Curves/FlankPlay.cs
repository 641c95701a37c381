using Stilewright.Projects;

namespace Stilewright.Curves;

/// <summary>The play left between an arched edge of a panel and its groove when the panel is at its widest.</summary>
/// <param name="Least">Least distance left in the direction of swelling between the swollen panel's arched edge and the bottom of the
/// rail's groove, in; negative where it would bottom. Infinite where nothing of the arch stands beside the panel.</param>
/// <param name="Place">The place of the panel's edge, unswollen, where that is.</param>
/// <param name="ArchClearance">The least ca, in, that leaves no play below nothing; null where the one there is does, or where none
/// does short of leaving the groove.</param>
/// <remarks>
/// A panel with upright grain swells to both sides of its pin, one with level grain up and down; the pin is in its middle. A place
/// at the distance h from the pin moves h × growth / size. From each place of the panel's arched edge the play is the distance in
/// that direction to the bottom of the rail's groove, which runs on through its tongue, less that movement; the clearance of the
/// straight edges is not looked at. Flank and groove are parallel curves ca apart, so on a flank that leans φ from the direction of
/// swelling the distance is about ca / sin φ, and never less than ca. Swelling along the grain is left out (0.1 to 0.2 % from green
/// to oven-dry: FPL-GTR-190, chapter 4). Every segment is looked at in 17 even places and then between the two beside the tightest by thirds.
/// </remarks>
public sealed record FlankPlay(double Least, CurvePoint Place, double? ArchClearance)
{
    private const int PlacesPerSegment = 16;

    /// <param name="light">The arch to be looked at is its upper one.</param>
    /// <param name="growthInches">What the whole panel grows across its grain from making to the wettest.</param>
    public static FlankPlay Of(ArchedLight light, double growthInches, GrainDirection grain)
    {
        var search = new Search(light, growthInches, grain);
        var present = light.ArchClearance ?? light.EndClearance;
        var (least, place) = search.Tightest(present);
        if (least >= -CurveTolerance.MeetingInches || search.Tightest(light.GrooveDepth).Play < 0)
            return new(least, place, null);
        var (tooLittle, enough) = (present, light.GrooveDepth);
        while (enough - tooLittle > CurveTolerance.SamePlaceInches)
        {
            var middle = (tooLittle + enough) / 2;
            if (search.Tightest(middle).Play >= 0)
                enough = middle;
            else
                tooLittle = middle;
        }

        return new(least, place, enough);
    }

    /// <summary>Whether no flank can bottom, told without drawing anything: the play is at least ca over the greatest sine of a flank's lean, and no
    /// place of a flank moves more than the outermost one.</summary>
    /// <param name="arch">The sight line, middle at X = 0.</param>
    /// <param name="straightInches">Straight level length between its ends and its flanks, the lesser of the two.</param>
    /// <remarks>False says nothing. For upright grain only; with level grain the crown moves as far as the straight edge, so that ca must be its clearance.</remarks>
    public static bool SurelyNone(ArchCurve arch, double straightInches, double grooveDepthInches, double sideClearanceInches, double archClearanceInches, double growthInches)
    {
        var (reach, offset) = (grooveDepthInches - sideClearanceInches, grooveDepthInches - archClearanceInches);
        var half = (arch.Chain.End.X - arch.Chain.Start.X) / 2;
        var furthest = Math.Min(half + reach, half - straightInches + offset);
        var steepest = 0.0;
        foreach (var segment in arch.Chain.Segments)
        {
            steepest = Math.Max(steepest, segment switch
            {
                LineSegment line => Math.Abs(line.End.Y - line.Start.Y) / line.Length,
                ArcSegment arc => Steepest(arc),
                _ => 1,
            });
        }

        return archClearanceInches * 2 * (half + reach) >= growthInches * furthest * steepest;

        // An arc at the end is carried on to the panel's side, and one that is hollow gets a smaller radius on the panel.
        double Steepest(ArcSegment arc)
        {
            var radius = arc.SweepRadians < 0 ? arc.Radius : arc.Radius - offset;
            var (from, to) = (arc.Start.X - arc.Centre.X, arc.End.X - arc.Centre.X);
            if (radius <= 0 || arc.Box is var box && (box.Left < Math.Min(arc.Start.X, arc.End.X) || box.Right > Math.Max(arc.Start.X, arc.End.X)))
                return 1;
            var widest = Math.Max(Math.Abs(from), Math.Abs(to)) / arc.Radius;
            return Math.Min(1, ReferenceEquals(arc, arch.Chain.Segments[0]) || ReferenceEquals(arc, arch.Chain.Segments[^1]) ? widest + (reach / radius) : widest);
        }
    }

    private sealed class Search
    {
        private readonly ArchedLight light;
        private readonly double growth;
        private readonly bool isUpright;
        private readonly double left;
        private readonly double right;
        private readonly Chain groove;

        public Search(ArchedLight light, double growthInches, GrainDirection grain)
        {
            (this.light, growth, isUpright) = (light, growthInches, grain == GrainDirection.Vertical);
            (left, right) = (light.Top.Chain.Start.X, light.Top.Chain.End.X);
            groove = LightCurves.FittedArch(light.Top.Chain, light.GrooveDepth, left - light.GrooveDepth, right + light.GrooveDepth);
        }

        public (double Play, CurvePoint Place) Tightest(double clearance)
        {
            var (side, offset) = (light.GrooveDepth - light.SideClearance, light.GrooveDepth - clearance);
            var panel = LightCurves.FittedArch(light.Top.Chain, offset, left - side, right + side);
            var top = light.Top.Chain.Box.Top + offset;
            var bottom = (light.Bottom is { } hollow ? hollow.Chain.Box.Bottom - offset : light.EndClearance - light.GrooveDepth) - light.SideHeight;
            var (pin, size) = isUpright ? ((left + right) / 2, right - left + (2 * side)) : ((bottom + top) / 2, top - bottom);
            var strain = growth / size;

            var (tightest, at) = (double.PositiveInfinity, panel.Start);
            foreach (var segment in panel.Segments)
            {
                var (best, bestAt) = (double.PositiveInfinity, 0);
                for (var i = 0; i <= PlacesPerSegment; i++)
                {
                    if (Play(segment.PointAt(segment.Length * i / PlacesPerSegment)) is var play && play < best)
                        (best, bestAt) = (play, i);
                }

                if (double.IsInfinity(best))
                    continue;
                var (from, to) = (segment.Length * Math.Max(0, bestAt - 1) / PlacesPerSegment, segment.Length * Math.Min(PlacesPerSegment, bestAt + 1) / PlacesPerSegment);
                if (best < tightest)
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

            double Play(CurvePoint from)
            {
                var way = !isUpright ? new CurvePoint(0, 1) : new(from.X < pin ? -1 : 1, 0);
                var moved = isUpright ? Math.Abs(from.X - pin) : from.Y - pin;
                return Distance(from, way) - (moved * strain);
            }
        }

        // From a place to the groove's bottom in one direction; infinite where nothing of the groove lies that way.
        private double Distance(CurvePoint from, CurvePoint way)
        {
            var across = way.TurnedLeft();
            var nearest = double.PositiveInfinity;
            foreach (var segment in groove.Segments)
            {
                if (segment is LineSegment line)
                {
                    var (start, end) = (line.Start - from, line.End - from);
                    var (one, other) = (start.Dot(across), end.Dot(across));
                    if (one * other <= 0 && one != other)
                        Consider(start.Dot(way) + ((end - start).Dot(way) * one / (one - other)));
                }
                else if (segment is ArcSegment arc)
                {
                    var centre = arc.Centre - from;
                    var (foot, off) = (centre.Dot(way), centre.Dot(across));
                    if (Math.Abs(off) > arc.Radius)
                        continue;
                    var half = Math.Sqrt((arc.Radius - off) * (arc.Radius + off));
                    if (IsOn(arc, foot - half))
                        Consider(foot - half);
                    if (IsOn(arc, foot + half))
                        Consider(foot + half);
                }
            }

            return nearest;

            void Consider(double distance)
            {
                if (distance >= -CurveTolerance.MeetingInches && distance < nearest)
                    nearest = distance;
            }

            bool IsOn(ArcSegment arc, double distance)
            {
                var place = from + (way * distance);
                return arc.TurnTo(Math.Atan2(place.Y - arc.Centre.Y, place.X - arc.Centre.X)) <= Math.Abs(arc.SweepRadians);
            }
        }
    }
}
