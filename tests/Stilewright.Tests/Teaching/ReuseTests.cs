using CsCheck;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Reuse;
using Stilewright.Testing;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Teaching;

/// <summary>What a wrong piece can become. What a shop would do with it is common practice, no source; the arithmetic is by hand.</summary>
public class ReuseTests
{
    // Leaves as large as their openings; stiles and rails 2 1/4, groove and cope 3/8: a rail is the leaf less 4 1/2 and more by 3/4.
    private static Breakdown Doors(DoorDesign? design, params (string Width, string Height)[] sizes) => Break(CourseOf(design, sizes));

    private static Course CourseOf(DoorDesign? design, params (string Width, string Height)[] sizes) => Course(
        design ?? Design() with { Panel = new(PanelKind.FlatSheet, "maple", "ply", GluedIn: true) },
        Set((Settings.Overlay, "0"), (Settings.TrimWidth, "0"), (Settings.TrimHeight, "0")),
        [.. sizes.Select((size, i) => Opening(size.Width, size.Height, Single(), $"hole-{(char)('a' + i)}"))]);

    private static Part PartOf(Breakdown breakdown, string end) => breakdown.Parts.First(part => part.Path.EndsWith(end, StringComparison.Ordinal));

    private static ReuseAdvice Advise(Breakdown breakdown, string part, string width, string length, bool isWorked = true, params string[] served) => ReuseFinder.Of(
        new(PartOf(breakdown, part), CutStage.Finished, In(width).Value, In(length).Value, isWorked), breakdown,
        served.Select(end => PartOf(breakdown, end).Path).ToHashSet());

    private static string Told(ReuseOption option) => $"{option.Rung} {string.Join(" ", option.Parts.Select(part => part.Path[(part.Path.IndexOf('-') + 1)..]))}: "
        + string.Join(" ", option.Steps.Select(step => FindingText.Say(step, LengthFormat.InchesTo32)));

    [Fact]
    public void A_rail_too_long_is_cut_at_one_end_and_coped_anew()
    {
        // 20 − 4 1/2 + 3/4 = 16 1/4.
        var advice = Advise(Doors(null, ("20", "32")), "a/leaf/rail.top", "2 1/4", "17");
        Assert.Equal(
        [
            "CutSmaller a/leaf/rail.top a/leaf/rail.bottom: Length: 17 − 16 1/4 = 3/4 in off from one end. Then cope the new end.",
            "Remake a/leaf/rail.top: Cut it again at 2 1/4 × 16 1/4 in, from a blank 2 1/2 × 17 1/4 in, and keep this piece for set-ups.",
        ], advice.Options.Select(Told));
        Assert.Empty(advice.Unsafe);
    }

    [Fact]
    public void A_rail_without_its_tongues_is_that_of_a_door_narrower_by_both()
    {
        // The 20 in door's rail made 15 1/2; a door of 19 1/4 has rails of 19 1/4 − 4 1/2 + 3/4 = 15 1/2.
        var advice = Advise(Doors(null, ("20", "32"), ("19 1/4", "40")), "a/leaf/rail.top", "2 1/4", "15 1/2");
        Assert.Equal("AsItIs b/leaf/rail.top b/leaf/rail.bottom: It has the size: 2 1/4 × 15 1/2 in.", Told(advice.Options[0]));
        Assert.Equal([ReuseRung.AsItIs, ReuseRung.Remake], advice.Options.Select(option => option.Rung));
    }

    [Fact]
    public void A_part_that_has_its_piece_is_not_offered()
    {
        var advice = Advise(Doors(null, ("20", "32"), ("19 1/4", "40")), "a/leaf/rail.top", "2 1/4", "15 1/2", true, "b/leaf/rail.top");
        Assert.StartsWith("AsItIs b/leaf/rail.bottom:", Told(advice.Options[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void A_stile_too_short_becomes_a_rail_and_is_coped_at_both_ends()
    {
        var advice = Advise(Doors(null, ("20", "32")), "a/leaf/stile.left", "2 1/4", "30");
        Assert.Equal("CutSmaller a/leaf/rail.top a/leaf/rail.bottom: Length: 30 − 16 1/4 = 13 3/4 in off from one end. Then cope both ends.", Told(advice.Options[0]));
    }

    [Fact]
    public void A_rail_becomes_a_stile_only_where_both_tongues_can_come_off()
    {
        // Tongues of 3/8 at both ends: a stile of 16 needs 16 3/4.
        Assert.Contains("CutSmaller b/leaf/stile.left b/leaf/stile.right: Length: 16 3/4 − 16 = 3/4 in off, both old ends with it.",
            Advise(Doors(null, ("20", "32"), ("20", "16")), "a/leaf/rail.top", "2 1/4", "16 3/4").Options.Select(Told));
        Assert.DoesNotContain(Advise(Doors(null, ("20", "32"), ("20", "16")), "a/leaf/rail.top", "2 1/4", "16 11/16").Options, option => option.Parts.Any(part => part.Kind == PartKind.Stile));
    }

    [Fact]
    public void A_piece_that_is_only_sawn_serves_what_it_holds()
    {
        // As a blank: 2 1/2 − 2 1/4 and 17 − 16 1/4.
        var advice = Advise(Doors(null, ("20", "32")), "a/leaf/rail.top", "2 1/2", "17", isWorked: false);
        Assert.Equal("CutSmaller a/leaf/rail.top a/leaf/rail.bottom: Length: 17 − 16 1/4 = 3/4 in off. Width: 2 1/2 − 2 1/4 = 1/4 in off.", Told(advice.Options[0]));
    }

    [Fact]
    public void Nothing_under_the_shapers_least_is_coped_anew()
    {
        // A door of 15 has rails of 11 1/4, and the shaper as shipped takes nothing under 12.
        var advice = Advise(Doors(null, ("20", "32"), ("15", "40")), "a/leaf/rail.top", "2 1/4", "15 1/2");
        Assert.Equal([ReuseRung.Remake], advice.Options.Select(option => option.Rung));
        var option = Assert.Single(advice.Unsafe);
        Assert.StartsWith("CutSmaller b/leaf/rail.top b/leaf/rail.bottom: Length: 15 1/2 − 11 1/4 = 4 1/4 in off from one end.", Told(option), StringComparison.Ordinal);
        var limit = Assert.Single(option.Limits);
        Assert.Equal("It would be 11 1/4 in long when it is coped; the shaper takes nothing under 12 in for coping by hand.", limit.ProblemText(LengthFormat.InchesTo32));
        Assert.Contains("shaper", limit.Rule.Source.ToString(), StringComparison.Ordinal);
        // At 12 it is done: a door of 15 3/4.
        Assert.Contains(Advise(Doors(null, ("20", "32"), ("15 3/4", "40")), "a/leaf/rail.top", "2 1/4", "15 1/2").Options, other => other.Rung == ReuseRung.CutSmaller);
    }

    [Fact]
    public void A_short_stile_is_stuck_while_the_piece_is_long()
    {
        var doors = Doors(null, ("20", "32"), ("20", "10"));
        Assert.Contains("CutSmaller b/leaf/stile.left b/leaf/stile.right: Length: 13 − 10 = 3 in off. Stick it before it is cut to length: the shaper takes nothing under 12 in by hand.",
            Advise(doors, "a/leaf/stile.left", "2 1/4", "13", isWorked: false).Options.Select(Told));
        Assert.Contains(Advise(doors, "a/leaf/stile.left", "2 1/4", "11", isWorked: false).Unsafe, option => option.Limits.Any(limit => limit.Rule == Rules.ShortForSticking));
    }

    [Fact]
    public void What_the_instructor_accepted_is_offered_with_the_reason()
    {
        var course = Accepting(CourseOf(null, ("20", "32"), ("15", "40")), "rail.short-for-coping", "hole-b", "In the sled.");
        var option = Advise(Break(course), "a/leaf/rail.top", "2 1/4", "15 1/2").Options[0];
        Assert.Equal((ReuseRung.CutSmaller, "In the sled."), (option.Rung, Assert.Single(option.Limits).AcceptedBecause));
    }

    [Fact]
    public void A_narrow_stile_takes_a_strip_and_sheet_does_not()
    {
        var doors = Doors(null, ("20", "32"));
        Assert.Contains("AddEdging a/leaf/stile.left: Width: 2 1/4 − 2 = 1/4 in is missing: glue on a strip of the same wood a little wider to the outer edge, and rip to 2 1/4 in. The joint shows; ask the instructor first.",
            Advise(doors, "a/leaf/stile.left", "2", "32").Options.Select(Told));
        Assert.Equal([ReuseRung.Remake], Advise(doors, "a/leaf/stile.left", "1 5/8", "32").Options.Select(option => option.Rung));
        Assert.Equal([ReuseRung.Remake], Advise(doors, "a/leaf/panel", "16 1/8", "28 1/4", isWorked: false).Options.Select(option => option.Rung));
    }

    [Fact]
    public void A_panel_is_sawn_smaller_for_a_smaller_door()
    {
        // Glued-in sheet without clearance: 20 − 4 1/2 + 3/4 by 32 − 4 1/2 + 3/4, and 16 − 3 3/4 by 30 − 3 3/4.
        var advice = Advise(Doors(null, ("20", "32"), ("16", "30")), "a/leaf/panel", "16", "28 1/4", isWorked: false);
        Assert.Equal("CutSmaller b/leaf/panel: Length: 28 1/4 − 26 1/4 = 2 in off. Width: 16 − 12 1/4 = 3 3/4 in off.", Told(advice.Options[0]));
    }

    [Fact]
    public void Mortised_stiles_and_arched_rails_that_are_worked_serve_nothing_else()
    {
        var tenoned = Doors(Design() with { Construction = Construction.MortiseAndTenon }, ("20", "32"), ("20", "30"));
        Assert.Equal([ReuseRung.Remake], Advise(tenoned, "a/leaf/stile.left", "2 1/4", "32 1/2").Options.Select(option => option.Rung));
        Assert.Contains(Advise(tenoned, "a/leaf/stile.left", "2 1/4", "32 1/2", isWorked: false).Options, option => option.Rung == ReuseRung.CutSmaller);
        var arched = Doors(Design() with { TopArch = new(ArchFamily.Eyebrow, In("2")), TopRail = In("2 1/4"), BottomRail = In("2 1/4") }, ("20", "32"), ("20", "30"));
        Assert.Equal([ReuseRung.Remake], Advise(arched, "a/leaf/rail.top", "4 1/4", "17").Options.Select(option => option.Rung));
    }

    [Fact]
    public void Every_piece_that_is_offered_holds_the_part_and_is_of_its_wood()
    {
        var offered = 0;
        Gen.Select(Gen.Int, Gen.Int[0, 1000], Gen.Int[-64, 256], Gen.Int[-64, 256], Gen.Enum<CutStage>(), Gen.Bool).Sample((seed, which, wider, longer, stage, isWorked) =>
        {
            var course = RandomCourse.Of(seed, 2);
            var breakdown = Breakdown.Of(course, ShippedStandards.For(course.Unit));
            var parts = breakdown.Leaves.Where(leaf => !leaf.IsWithheld).SelectMany(leaf => leaf.Parts).ToList();
            if (parts.Count == 0)
                return;
            var meant = parts[which % parts.Count];
            var right = SizeAt(meant, stage);
            var piece = new CutPiece(meant, stage, right.Width.Length + Length.FromInches(new(wider, 32)), right.Length.Length + Length.FromInches(new(longer, 32)), isWorked);
            var advice = ReuseFinder.Of(piece, breakdown);
            var half = new StandardInForce(breakdown.Standard)[Settings.Step].Length / 2;

            Assert.Equal(ReuseRung.Remake, advice.Options[^1].Rung);
            Assert.True(advice.Options.Zip(advice.Options.Skip(1)).All(pair => pair.First.Rung <= pair.Second.Rung));
            Assert.All(advice.Options, option => Assert.True(option.IsSafe));
            Assert.All(advice.Unsafe, option => Assert.False(option.IsSafe));
            foreach (var option in advice.Options.SkipLast(1).Concat(advice.Unsafe))
            {
                Assert.NotEmpty(option.Parts);
                foreach (var part in option.Parts)
                {
                    var needs = SizeAt(part, stage);
                    Assert.Equal((meant.Material, meant.Stock), (part.Material, part.Stock));
                    Assert.Equal(meant.Thickness?.Planed.Amount, part.Thickness?.Planed.Amount);
                    Assert.Equal(meant.Thickness?.Final.Amount, part.Thickness?.Final.Amount);
                    Assert.True(piece.Length + half >= needs.Length.Length);
                    Assert.True(option.Rung == ReuseRung.AddEdging ? piece.Width < needs.Width.Length : piece.Width + half >= needs.Width.Length);
                    Assert.True(Length.Abs(piece.Length - option.OffLength - needs.Length.Length) <= half);
                    Assert.True(option.Rung == ReuseRung.AddEdging || Length.Abs(piece.Width - option.OffWidth - needs.Width.Length) <= half);
                    if (option.Rung == ReuseRung.AsItIs)
                        Assert.NotEqual(meant.Path, part.Path);
                    // What is coped is not under the shaper's least, unless it was accepted.
                    if (option.IsSafe && option.Steps.Any(step => step.Format.Length > 0 && FindingText.Say(step, LengthFormat.InchesTo32).Contains("cope", StringComparison.Ordinal)))
                        Assert.True(needs.Length.Length >= 12.Inches || option.Limits.Any(limit => limit.AcceptedBecause is not null));
                    Interlocked.Increment(ref offered);
                }
            }
        }, iter: 400);
        Assert.True(offered > 200, $"only {offered} were offered");
    }

    private static PartSize SizeAt(Part part, CutStage stage) =>
        stage == CutStage.Finished ? part.Finished : stage == CutStage.IntoClamps ? part.GlueUp : part.Rough ?? part.GlueUp;
}
