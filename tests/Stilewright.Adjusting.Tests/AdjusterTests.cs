using CsCheck;
using Stilewright.Hanging.Adjusting;
using Stilewright.Measure;
using static Stilewright.Adjusting.Tests.Rows;

namespace Stilewright.Adjusting.Tests;

public class AdjusterTests
{
    /// <summary>Most that a told travel is from the wanted one; the far ends of a leaf move by little more than twice that.</summary>
    private static readonly Length Rounding = Step * 3;

    [Fact]
    public void A_row_that_is_even_is_left_alone()
    {
        var leaves = Side(3);
        var plan = Adjuster.Plan(Moved(leaves, [.. leaves.Select(_ => LeafMoves.None)]));

        Assert.All(plan.After.Moves, moves => Assert.True(moves.IsNone));
        Assert.True(plan.IsWithin);
    }

    [Fact]
    public void Screws_turned_within_their_range_are_found_and_turned_back() =>
        Moves(7).Array[1, 4].Sample(moves =>
        {
            var leaves = Side(moves.Length);
            var plan = Adjuster.Plan(Moved(leaves, moves));

            Assert.True(plan.After.WorstGap <= Rounding, $"{plan.After.WorstGap}");
        }, iter: 150);

    [Fact]
    public void Predicted_gaps_are_those_of_rigid_leaves_that_turn() =>
        Moves(20).Array[1, 4].Sample(moves =>
        {
            var leaves = Side(moves.Length);
            var task = Moved(leaves, moves);
            var plan = Adjuster.Plan(task);

            // What a turn leaves out of a linear gap: half its square times the leaf; two turns of 5/8 in over 24 in, on a 30 in leaf.
            foreach (var gap in plan.After.Gaps)
                Assert.Equal(RigidRow.After(task, plan.After.Moves, gap.Reading), Of(gap.After), 0.012);
        }, iter: 150);

    [Fact]
    public void No_setting_of_a_grid_is_better() =>
        Gen.Select(Moves(16), Gen.Int[-6, 6], Gen.Int[-6, 6]).Sample((moves, widths, heights) =>
        {
            IReadOnlyList<RowLeaf> leaves = [Leaf("1", 0, 12, 24, true)];
            var moved = Moved(leaves, [moves]);
            var task = moved with
            {
                Gaps = [.. moved.Gaps.Select(reading => reading with { Gap = reading.Gap + (reading.Edge == Doors.Side.Right ? In(widths, 64) : reading.Edge == Doors.Side.Top ? In(heights, 64) : default) })],
            };
            var best = double.PositiveInfinity;
            for (var top = -8; top <= 8; top++)
            {
                for (var bottom = -8; bottom <= 8; bottom++)
                {
                    for (var height = -8; height <= 8; height++)
                        best = Math.Min(best, Worst(task, new(In(top, 64), In(bottom, 64), In(height, 64), default, default)));
                }
            }

            Assert.True(Of(Adjuster.Plan(task).After.WorstGap) <= best + Of(Rounding), $"{best}");
        }, iter: 25);

    private static double Worst(AdjustingTask task, LeafMoves moves) => task.Gaps.Max(reading => Math.Abs(RigidRow.After(task, [moves], reading) - Of(Gap)));

    [Fact]
    public void Without_targets_the_gaps_are_brought_to_one_figure()
    {
        var leaves = Side(2);
        var task = Moved(leaves, [new(In(1, 16), In(-1, 16), In(1, 32), default, default), LeafMoves.None], targets: false);
        var plan = Adjuster.Plan(task);

        Assert.All(plan.After.Gaps.Where(gap => gap.Reading.IsUpright), gap => Assert.True(gap.Miss <= Rounding));
        Assert.True(plan.After.WorstGap < plan.Before.WorstGap);
    }

    [Fact]
    public void What_one_leaf_cannot_reach_leaves_the_others_even()
    {
        // The first leaf is 1/4 out and has 1/16 of screw; the third, two leaves on, is 1/16 out and can be set right.
        var leaves = Side(4).Select((leaf, index) => index == 0 ? leaf with { Sideways = new(In(1, 16), In(1, 16)) } : leaf).ToList();
        var shifted = new LeafMoves(In(-1, 4), In(-1, 4), default, default, default);
        var plan = Adjuster.Plan(Moved(leaves, [shifted, LeafMoves.None, LeafMoves.None, new(default, default, In(1, 16), default, default)]));

        Assert.False(plan.IsWithin);
        Assert.All(plan.After.Gaps.Where(gap => gap.Reading.Leaf == "4" && !gap.Reading.IsUpright), gap => Assert.True(gap.Miss <= Step));
    }

    [Fact]
    public void A_leaf_that_is_too_wide_has_its_error_shared_by_both_sides()
    {
        var task = Moved([Leaf("1", 0, 12, 24, true)], [LeafMoves.None]);
        var tight = task with { Gaps = [.. task.Gaps.Select(reading => reading.Edge == Doors.Side.Right ? reading with { Gap = reading.Gap - In(3, 32) } : reading)] };
        var plan = Adjuster.Plan(tight);

        Assert.All(plan.After.Gaps.Where(gap => gap.Reading.IsUpright), gap => Assert.Equal(In(3, 64), Gap - gap.After));
        var trim = Assert.Single(plan.Remedies, remedy => remedy.Does);
        Assert.Equal(RemedyKind.Trim, trim.Kind);
        Assert.True(trim.Hang.WorstGap <= Tolerance);

        // Nothing is planed that need not be: what is over the tolerance on both sides, and no more than half of it besides.
        Assert.True(trim.Trims.Sum(edge => Of(edge.AtStart)) is >= 1 / 32.0 and <= 5 / 64.0, string.Join(", ", trim.Trims));
    }

    [Fact]
    public void A_leaf_beyond_its_screws_is_told_to_have_its_plates_moved()
    {
        var away = new LeafMoves(In(5, 16), In(5, 16), default, default, default);
        var plan = Adjuster.Plan(Moved([Leaf("1", 0, 12, 24, true)], [away]));

        Assert.Equal(In(-1, 8), plan.After.Moves[0].SidewaysTop);
        Assert.False(plan.IsWithin);
        var remedy = Assert.Single(plan.Remedies, remedy => remedy.Kind == RemedyKind.MovePlates);
        Assert.True(remedy.Does);
        Assert.All(remedy.Plates, plate => Assert.True(plate.Sideways.IsNegative));
    }

    [Fact]
    public void Travel_is_told_in_quarter_turns_where_the_thread_is_known()
    {
        var thread = new ScrewRange(In(1, 8), In(1, 8), 1.Millimetres);
        var leaf = Leaf("1", 0, 12, 24, false, thread);
        var plan = Adjuster.Plan(Moved([leaf], [new(In(1, 16), In(1, 32), In(-1, 16), default, default)]));

        Assert.All(new[] { plan.After.Moves[0].SidewaysTop, plan.After.Moves[0].SidewaysBottom, plan.After.Moves[0].Height },
            travel => Assert.True((travel / 1.Millimetres * 4).Reduce().Denominator.IsOne));
        Assert.True(plan.After.WorstGap <= In(1, 64));
    }

    [Theory]
    [InlineData(1, 16)]
    [InlineData(1, 8)]
    public void A_twist_is_split_over_the_corners(int numerator, int denominator)
    {
        // One corner of the free edge stands off, the other rests; the hinge corners lie flush. Source: rigid plane through three corners.
        var leaf = Leaf("1", 0, 12, 24, true);
        var twist = In(numerator, denominator);
        var task = new AdjustingTask([leaf], [],
            [new("1", LeafCorner.HingeTop, default), new("1", LeafCorner.HingeBottom, default), new("1", LeafCorner.FreeTop, twist), new("1", LeafCorner.FreeBottom, default)], Step, In(1, 64));
        var after = Adjuster.Plan(task).After;

        // The free edge rests on its lower corner whatever is turned, so three corners share what is left.
        Assert.True(after.WorstCorner < twist);
        Assert.Equal(twist / 3, after.WorstCorner, (left, right) => Length.Abs(left - right) <= Step);
    }

    [Fact]
    public void A_stop_that_is_too_thick_is_told_to_be_thinner()
    {
        var leaf = Leaf("1", 0, 12, 24, true);
        var task = new AdjustingTask([leaf], [],
            [new("1", LeafCorner.HingeTop, default), new("1", LeafCorner.HingeBottom, default), new("1", LeafCorner.FreeTop, In(1, 8)), new("1", LeafCorner.FreeBottom, In(1, 8))], Step, Tolerance);
        var plan = Adjuster.Plan(task);

        Assert.False(plan.IsWithin);
        var remedy = Assert.Single(plan.Remedies, remedy => remedy.Does);
        Assert.Equal(RemedyKind.SetBumper, remedy.Kind);
        Assert.True(Assert.Single(remedy.Bumpers).Thicker.IsNegative);
    }

    [Fact]
    public void What_no_work_does_alone_is_done_together()
    {
        // Too wide for its opening by 1/8, and its stop 1/8 too thick.
        var moved = Moved([Leaf("1", 0, 12, 24, true)], [LeafMoves.None]);
        var task = moved with
        {
            Gaps = [.. moved.Gaps.Select(reading => reading.Edge == Doors.Side.Right ? reading with { Gap = default } : reading)],
            Corners = [new("1", LeafCorner.FreeTop, In(1, 8)), new("1", LeafCorner.FreeBottom, In(1, 8))],
        };
        var remedy = Assert.Single(Adjuster.Plan(task).Remedies, remedy => remedy.Does);

        Assert.Equal(RemedyKind.Together, remedy.Kind);
        Assert.NotEmpty(remedy.Trims);
        Assert.NotEmpty(remedy.Bumpers);
    }

    [Fact]
    public void Depth_brings_a_hinge_edge_flush_that_leans_out()
    {
        var leaf = Leaf("1", 0, 12, 24, true);
        var task = new AdjustingTask([leaf], [], [new("1", LeafCorner.HingeTop, In(1, 16)), new("1", LeafCorner.HingeBottom, In(-1, 16))], Step, Tolerance);
        var plan = Adjuster.Plan(task);

        Assert.True(plan.After.WorstCorner <= Tolerance);
        Assert.True(plan.After.Moves[0].DepthTop.IsNegative);
        Assert.True(plan.After.Moves[0].DepthBottom.IsPositive);
    }

    [Fact]
    public void Corners_rest_where_they_rested_before() =>
        Gen.Select(Travel(8), Travel(8), Travel(8), Travel(8), Travel(8), Travel(8)).Sample((hingeTop, hingeBottom, freeTop, freeBottom, top, bottom) =>
        {
            var leaf = Leaf("1", 0, 12, 24, true);
            ProudReading[] corners = [new("1", LeafCorner.HingeTop, hingeTop), new("1", LeafCorner.HingeBottom, hingeBottom), new("1", LeafCorner.FreeTop, freeTop), new("1", LeafCorner.FreeBottom, freeBottom)];
            var after = GapModel.After(leaf, corners, new(default, default, default, top, bottom));

            Assert.Equal(Twist(corners), Twist(after));
            Assert.Equal(Length.Least(freeTop, freeBottom), Length.Least(after[2].Proud, after[3].Proud));

            static Length Twist(IReadOnlyList<ProudReading> read) => read[0].Proud - read[1].Proud - read[2].Proud + read[3].Proud;
        }, iter: 500);

    [Fact]
    public void A_mirrored_row_is_adjusted_as_its_mirror_image() =>
        Moves(12).Sample(moves =>
        {
            var (left, right) = (Leaf("1", 0, 12, 24, true), Leaf("1", 0, 12, 24, false));
            var plan = Adjuster.Plan(Moved([left], [moves]));
            var mirrored = Adjuster.Plan(Moved([right], [moves]));

            Assert.Equal(Of(plan.After.WorstGap), Of(mirrored.After.WorstGap), Of(Step));
        }, iter: 150);

    [Fact]
    public void Bad_readings_are_told_with_place_and_fix()
    {
        var leaf = Leaf("7·2L", 0, 12, 24, true) with { Hinges = [3.Inches] };
        var task = new AdjustingTask([leaf],
            [new("7·2R", Doors.Side.Left, EdgeEnd.Start, null, Gap, null)], [new("7·2L", LeafCorner.FreeTop, default)], Step, Tolerance);

        Assert.Collection(task.Problems(),
            problem => Assert.Equal(("7·2L", "it does not have two hinges, from the bottom to the top"), (problem.Place, problem.Problem)),
            problem => Assert.Equal(("7·2R left edge", "there is no leaf 7·2R", "use one of 7·2L"), (problem.Place, problem.Problem, problem.Fix)),
            problem => Assert.Equal("one corner of the free edge is read and the other is not", problem.Problem));
        Assert.Contains("7·2L", Assert.Throws<ArgumentException>(() => Adjuster.Plan(task)).Message, StringComparison.Ordinal);
    }
}
