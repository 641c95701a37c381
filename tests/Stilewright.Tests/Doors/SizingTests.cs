using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Doors;

public class SizingTests
{
    // 15 × 20, diagonals 25 3/16 and 24 13/16: lean (D1² − D2²) / (4 × 15) = 50 × 3/8 / 60 = 5/16, by the geometry of a parallelogram.
    private static SizedFront Leaning(Mount mount, bool toTheLeft = false, OutOfSquareFit fit = OutOfSquareFit.Upright)
    {
        var (rising, falling) = toTheLeft ? ("24 13/16", "25 3/16") : ("25 3/16", "24 13/16");
        var opening = Opening("15", "20", Single(mount: mount));
        return Break(Course(Design(), SettingValues.None, opening with
        {
            Readings = opening.Readings! with { Rising = In(rising), Falling = In(falling), Fit = fit },
        })).Fronts.Single();
    }

    private static void Is(string expected, Length actual) => Assert.Equal(
        expected.StartsWith('-') ? -In(expected[1..]).Value : In(expected).Value, actual);

    [Fact]
    public void An_overlay_front_goes_round_a_leaning_opening()
    {
        var front = Leaning(Mount.Overlay);
        Is("5/16", front.Figure!.Lean!.Length);
        Is("15 5/16", front.Figure.Width.Length);
        Is("16 1/16", front.Leaves[0].Width.Length);
        Is("20 3/4", front.Leaves[0].Height.Length);
        Assert.Equal(["3/8", "11/16", "3/8", "11/16"], front.Corners.Select(corner => LengthFormat.InchesTo32.Print(corner.Sideways)));
        Assert.All(front.Corners, corner => Is("3/8", corner.Upright));
    }

    [Fact]
    public void A_lean_to_the_left_mirrors_a_lean_to_the_right()
    {
        var front = Leaning(Mount.Overlay, toTheLeft: true);
        Is("-5/16", front.Figure!.Lean!.Length);
        Is("-5/16", front.Figure.Offset.X);
        Is("16 1/16", front.Leaves[0].Width.Length);
        Assert.Equal(["11/16", "3/8", "11/16", "3/8"], front.Corners.Select(corner => LengthFormat.InchesTo32.Print(corner.Sideways)));
    }

    [Fact]
    public void An_upright_inset_front_stays_inside_a_leaning_opening()
    {
        var front = Leaning(Mount.Inset);
        Is("14 11/16", front.Figure!.Width.Length);
        Is("5/16", front.Figure.Offset.X);
        Is("14 1/2", front.Leaves[0].Width.Length);
        Is("19 13/16", front.Leaves[0].Height.Length);
        // Bottom left 5/16 + 3/32; the same gap at top right, 3/32 at the others. Gaps are negative reaches.
        Assert.Equal(["−13/32", "−3/32", "−13/32", "−3/32"], front.Corners.Select(corner => LengthFormat.InchesTo32.Print(corner.Sideways)));
    }

    [Fact]
    public void An_inset_front_planed_to_fit_takes_the_largest_reading_and_states_its_tapers()
    {
        var front = Leaning(Mount.Inset, fit: OutOfSquareFit.PlaneToFit);
        Is("15 5/16", front.Figure!.Width.Length);
        Is("15 1/8", front.Leaves[0].Width.Length);
        var tapers = front.Leaves[0].Tapers;
        Is("5/16", tapers[Side.Left]);
        Is("5/16", tapers[Side.Right]);
        Is("0", tapers[Side.Top]);
        Is("0", tapers[Side.Bottom]);
        Assert.Empty(Leaning(Mount.Inset).Leaves[0].Tapers);
    }

    [Theory]
    [InlineData(Mount.Overlay, "15 7/8", "21")]
    [InlineData(Mount.Inset, "14 13/16", "19 13/16")]
    public void Tapered_openings_are_covered_or_cleared(Mount mount, string width, string height)
    {
        // 15 at the top, 15 1/8 at the bottom; 20 on the left, 20 1/4 on the right.
        var opening = Opening("15", "20", Single(mount: mount));
        var leaf = Break(Course(Design(), SettingValues.None, opening with
        {
            Readings = opening.Readings! with { WidthBottom = In("15 1/8"), HeightRight = In("20 1/4") },
        })).Leaves.Single();
        Is(width, leaf.Width.Length);
        Is(height, leaf.Height.Length);
    }

    [Theory]
    [InlineData(Mount.Overlay, "15 1/4", "16")]
    [InlineData(Mount.Overlay, "14 3/4", "15 3/4")]
    [InlineData(Mount.Inset, "15 1/4", "14 13/16")]
    [InlineData(Mount.Inset, "14 3/4", "14 9/16")]
    public void A_bow_outwards_is_covered_and_a_bow_inwards_cleared(Mount mount, string middle, string width)
    {
        var opening = Opening("15", "20", Single(mount: mount));
        Is(width, Break(Course(Design(), SettingValues.None, opening with
        {
            Readings = opening.Readings! with { WidthMiddle = In(middle), WidthBottom = In("15") },
        })).Leaves.Single().Width.Length);
    }

    [Theory]
    // Two stiles of 1 1/2 and a filler of 1 are 4; less 1/8, halved.
    [InlineData("1", "1 15/16")]
    [InlineData(null, "1 7/16")]
    public void Fronts_share_what_stands_between_two_faces_of_a_run(string? filler, string overlay)
    {
        var course = Faces(SettingValues.None,
            Face("left", Layout("18", "27", new(Opening: Hole(Single() with { Edges = new(Right: new ShareMember()) }, "one")))),
            Face("right", Layout("18", "27", new(Opening: Hole(Single() with { Edges = new(Left: new ShareMember()) }, "two")))));
        List<RunItem> items = [new RunFace("left"), new RunFace("right")];
        if (filler is not null)
            items.Insert(1, new RunFiller(In(filler)));
        var breakdown = Break(course with { Projects = [course.Projects[0] with { Runs = [new("run", items)] }] });
        var fronts = breakdown.Fronts.ToList();
        Is(overlay, fronts[0].Edges.Single(edge => edge.Side == Side.Right).Reach);
        Is(overlay, fronts[1].Edges.Single(edge => edge.Side == Side.Left).Reach);
        Is("1/8", fronts[0].Edges.Single(edge => edge.Side == Side.Right).Reveal!.Value);
        Assert.DoesNotContain(breakdown.Findings, finding => finding.Severity == Stilewright.Findings.Severity.CannotBuild);
    }

    [Fact]
    public void Edges_share_a_mullion_or_run_to_the_edge_of_the_frame()
    {
        // Mullion 1 1/2: (1 1/2 − 1/8) / 2 = 11/16. Overlay widths page of a supplier: 1 1/2 stile less 1/4 is 1 1/4.
        DoorFilling Ruled(EdgeRules edges) => Single() with { Edges = edges };
        var fronts = Break(Faces(SettingValues.None, Face("face", Layout("34 1/2", "27", new(Columns: new(
        [
            new(Opening: Hole(Ruled(new(Left: new ToFrameEdge(), Right: new ShareMember())), "one")),
            new(Opening: Hole(Ruled(new(Left: new ShareMember(), Right: new ToFrameEdge())), "two")),
        ], In("1 1/2"), [])))))).Fronts.ToList();
        Assert.All(fronts, front => Is("16 15/16", front.Width!.Length));
        Is("1 1/4", fronts[0].Edges.Single(edge => edge.Side == Side.Left).Reach);
        Is("11/16", fronts[0].Edges.Single(edge => edge.Side == Side.Right).Reach);
        Is("11/16", fronts[1].Edges.Single(edge => edge.Side == Side.Left).Reach);
        Is("1 1/4", fronts[1].Edges.Single(edge => edge.Side == Side.Right).Reach);
    }

    [Fact]
    public void A_measured_column_is_kept_at_one_width_and_one_centre()
    {
        var breakdown = Break(Course(Design(), SettingValues.None,
            Opening("15", "20", Single(), "upper") with { Column = "a" }, Opening("14 3/4", "20", Single(), "lower") with { Column = "a" }));
        Assert.All(breakdown.Leaves, leaf => Is("15 3/4", leaf.Width.Length));
        var lower = breakdown.Fronts.Last();
        Is("1/2", lower.Edges.Single(edge => edge.Side == Side.Left).Reach);
        Is("1/2", lower.Edges.Single(edge => edge.Side == Side.Right).Reach);
    }

    [Fact]
    public void A_column_of_a_layout_is_kept_in_line_on_the_face()
    {
        Opening Of(string id, string width) => Opening(width, "17 3/4", Single(), id) with { Column = "a" };
        var breakdown = Break(Faces(SettingValues.None, Face("face", Layout("18", "40", new(Rows: new(
            [new(Opening: Of("upper", "15")), new(Opening: Of("lower", "14 7/8"))], In("1 1/2"), []))))));
        var fronts = breakdown.Fronts.ToList();
        Assert.Equal(fronts[0].Place!.Value.X, fronts[1].Place!.Value.X);
        Assert.Equal(fronts[0].Place!.Value.Right, fronts[1].Place!.Value.Right);
        Is("1/2", fronts[1].Edges.Single(edge => edge.Side == Side.Right).Reach);
        Assert.DoesNotContain(breakdown.Findings, finding => finding.Rule == Stilewright.Findings.Rules.OutOfLine);
    }

    public static TheoryData<string, string[]> Banks => new()
    {
        // 20 + 2 × 3/8 − 2 × 1/8 = 20 1/2; a third is 6 5/6, on the step 6 27/32.
        { "equal", ["6 27/32", "6 27/32", "6 13/16"] },
        { "equal, remainder on top", ["6 13/16", "6 27/32", "6 27/32"] },
        // A sixth is 3 5/12, on the step 3 13/32; two are 6 27/32.
        { "proportional", ["3 13/32", "6 27/32", "10 1/4"] },
        { "given", ["5", "7 1/2", "8"] },
    };

    [Theory]
    [MemberData(nameof(Banks))]
    public void Heights_and_gaps_of_a_bank_make_its_height_exactly(string kind, string[] heights)
    {
        var filling = new DrawerFilling(Mount.Overlay, "plain", 3, kind switch
        {
            "proportional" => new ProportionalHeights([1, 2, 3]),
            "given" => new GivenHeights([new(In("5")), new(), new(In("8"))]),
            _ => null,
        }, RemainderIn: kind == "equal, remainder on top" ? 1 : null);
        var front = Break(Course(Design() with { Construction = Construction.Slab }, SettingValues.None, Opening("20", "20", filling))).Fronts.Single();
        Assert.Equal(heights, front.Leaves.Select(leaf => LengthFormat.InchesTo32.Print(leaf.Height.Length)));
        Is("20 3/4", front.Leaves.Aggregate(default(Length), (sum, leaf) => sum + leaf.Height.Length) + (front.Gap!.Length * 2));
        // And so they lie: each the gap below the one before, the last on the front's lower edge.
        Assert.All(front.Leaves.Zip(front.Leaves.Skip(1)), pair => Is("1/8", pair.First.Place.Y - pair.Second.Place.Top));
        Is("-3/8", front.Leaves[^1].Place.Y);
    }

    [Theory]
    [InlineData(HingeSide.Left, "2 1/2", "2")]
    [InlineData(HingeSide.Right, "2", "2 1/2")]
    public void Stile_widths_mirror_with_the_hand(HingeSide hinge, string left, string right)
    {
        var breakdown = Break(Course(Design() with { Stiles = new(null, In("2 1/2"), In("2")) }, SettingValues.None, Opening("20", "24", Single(hinge))));
        Is(left, breakdown.Part("hole/leaf/stile.left").Finished.Width.Length);
        Is(right, breakdown.Part("hole/leaf/stile.right").Finished.Width.Length);
    }

    [Fact]
    public void Stiles_of_a_pair_are_mirrored_about_the_middle()
    {
        var breakdown = Break(Course(Design() with { Stiles = new(null, In("2 1/2"), In("2")) }, SettingValues.None, Opening("40", "24", Pair())));
        string[] paths = ["hole/leaf.left/stile.left", "hole/leaf.left/stile.right", "hole/leaf.right/stile.left", "hole/leaf.right/stile.right"];
        Assert.Equal(["2 1/2", "2", "2", "2 1/2"], paths.Select(path => LengthFormat.InchesTo32.Print(breakdown.Part(path).Finished.Width.Length)));
    }
}
