using CsCheck;
using Fractions;
using NetTopologySuite.Geometries;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Tests.Measure;
using Point = Stilewright.Doors.Point;

namespace Stilewright.Tests.Doors;

/// <summary>What must hold of every breakdown, whatever is entered.</summary>
public class PropertyTests
{
    private static readonly LengthFormat Inches = new(LengthUnit.Inch, 64);
    private static readonly LengthFormat Millimetres = LengthFormat.MillimetresToTenth;
    private static readonly Gen<int[]> Choices = Gen.Int[0, 9999].Array[240];

    private static void Hold(Action<Breakdown> property, int courses = 100) => Choices.Sample(choices =>
    {
        var (course, standard) = new CourseMaker(choices).Make();
        property(Breakdown.Of(course, standard));
    }, iter: courses);

    private static DoorDesign DesignOf(Breakdown breakdown, SizedLeaf leaf) => breakdown.Course.Designs.Single(design => design.Name == leaf.DesignName);

    private static bool IsFramed(SizedLeaf leaf) => leaf.Parts.Any(part => part.Kind == PartKind.Stile);

    // The properties below say nothing about what is never made.
    [Fact]
    public void Random_courses_have_every_construction_filling_mount_and_count_with_parts()
    {
        var seen = new HashSet<string>();
        var random = new Random(20);
        for (var i = 0; i < 300; i++)
        {
            var (course, standard) = new CourseMaker([.. Enumerable.Range(0, 240).Select(_ => random.Next(10_000))]).Make();
            var breakdown = Breakdown.Of(course, standard);
            foreach (var front in breakdown.Fronts)
            {
                foreach (var leaf in front.Leaves.Where(leaf => leaf.Parts.Count > 0))
                {
                    var design = DesignOf(breakdown, leaf);
                    seen.UnionWith([$"{design.Construction}", $"{front.Mount}", $"{leaf.Hinge}", $"{front.Leaves.Count} leaves", $"drawer {leaf.IsDrawerFront}", standard.Id]);
                    seen.UnionWith(leaf.Parts.Select(part => $"{part.Kind}"));
                    seen.UnionWith(leaf.Parts.Where(part => part.Arch is not null).Select(part => $"{part.Arch!.Family}"));
                    if (leaf.Parts.Any(part => part.Arch?.OfPair is not null))
                        seen.Add("across a pair");
                    if (design.Panel is { } panel)
                        seen.Add($"{panel.Kind}");
                }
            }
        }

        string[] wanted =
        [
            .. Enum.GetNames<Construction>(), .. Enum.GetNames<Mount>(), .. Enum.GetNames<HingeSide>(), .. Enum.GetNames<PartKind>(), .. Enum.GetNames<PanelKind>(),
            .. Enum.GetNames<ArchFamily>().Except([nameof(ArchFamily.Drawn)]), "across a pair", "1 leaves", "2 leaves", "3 leaves", "4 leaves", "5 leaves", "drawer True", "drawer False", "inch", "millimetre",
        ];
        Assert.Empty(wanted.Except(seen));
    }

    [Fact]
    public void Check_sums_hold_exactly_and_their_print_within_its_rounding() => Hold(breakdown =>
    {
        foreach (var leaf in breakdown.Leaves)
        {
            Assert.Equal(IsFramed(leaf) || leaf.IsWithheld && leaf.CheckSums.Count > 0, leaf.CheckSums.Count > 0);
            foreach (var sum in leaf.CheckSums)
            {
                Assert.True(sum.Holds, sum.Text(Inches));
                PrintedLine.AssertHolds(sum.Text(Inches), Inches);
                PrintedLine.AssertHolds(sum.Text(Millimetres), Millimetres);
            }
        }
    });

    [Fact]
    public void With_all_entries_on_the_step_check_sums_hold_in_the_printed_figures() => Choices.Sample(choices =>
    {
        var (course, standard) = new CourseMaker(choices) { OnStep = true }.Make();
        foreach (var sum in Breakdown.Of(course, standard).Leaves.SelectMany(leaf => leaf.CheckSums))
        {
            var text = sum.Text(LengthFormat.InchesTo32);
            Assert.DoesNotContain("≈", text, StringComparison.Ordinal);
            PrintedLine.AssertHolds(text, LengthFormat.InchesTo32);
        }
    }, iter: 80);

    [Fact]
    public void Leaves_and_the_gaps_between_them_make_the_front() => Hold(breakdown =>
    {
        var openings = Openings(breakdown.Course).ToDictionary(opening => opening.Id);
        foreach (var front in breakdown.Fronts.Where(front => front.Leaves.Count > 0 && openings.ContainsKey(front.Path)))
        {
            var step = breakdown.Projects[0].Standard[Settings.Step].Length;
            var direction = front.Mount == Mount.Inset ? StepDirection.Down : StepDirection.Nearest;
            var stepped = (Width: front.Width!.Length.OnStep(step, direction), Height: front.Height!.Length.OnStep(step, direction));
            var air = (front.Gap?.Length ?? default) * (front.Leaves.Count - 1);
            if (openings[front.Path].Filling is DrawerFilling)
            {
                Assert.All(front.Leaves, leaf => Assert.Equal(stepped.Width, leaf.Width.Length));
                Assert.Equal(stepped.Height, Total(front.Leaves, leaf => leaf.Height) + air);
            }
            else
            {
                Assert.All(front.Leaves, leaf => Assert.Equal(stepped.Height, leaf.Height.Length));
                if (front.Leaves.Count == 1)
                    Assert.Equal(stepped.Width, front.Leaves[0].Width.Length);
                else if (front.Gap is not null)
                    Assert.Equal(front.Width.Length, Total(front.Leaves, leaf => leaf.Width) + air);
            }
        }

        static Length Total(IEnumerable<SizedLeaf> leaves, Func<SizedLeaf, Worked> measure) =>
            leaves.Aggregate(default(Length), (sum, leaf) => sum + measure(leaf).Length);
    });

    private static IEnumerable<Opening> Openings(Course course)
    {
        return course.Projects.SelectMany(project => project.Pieces).SelectMany(piece => piece.Faces)
            .SelectMany(face => face.Openings.Concat(face.Layout is null ? [] : In(face.Layout.Space)));

        static IEnumerable<Opening> In(Space space) =>
            (space.Opening is null ? [] : new[] { space.Opening }).Concat((space.Columns?.Spaces ?? space.Rows?.Spaces ?? []).SelectMany(In));
    }

    [Fact]
    public void A_larger_opening_never_makes_a_smaller_front_or_leaf() => Gen.Select(Choices, Gen.Int[1, 64]).Sample(drawn =>
    {
        var (course, standard) = new CourseMaker(drawn.Item1) { WithoutDiagonals = true }.Make();
        var more = Length.FromInches(new(drawn.Item2, 64));
        var (small, large) = (Breakdown.Of(Measured(course, default), standard), Breakdown.Of(Measured(course, more), standard));
        foreach (var (front, larger) in small.Fronts.Zip(large.Fronts))
        {
            // An opening that is not measured is not measured by growing.
            Assert.Equal((front.Width is null, front.Height is null), (larger.Width is null, larger.Height is null));
            Assert.True(front.Width is null || (front.Width.Amount <= larger.Width!.Amount && front.Height!.Amount <= larger.Height!.Amount), front.Path);
            // In a bank one front takes what the step leaves over, which may shrink by a step while the others grow.
            var doors = front.Leaves.Where(leaf => !leaf.IsDrawerFront).Zip(larger.Leaves);
            Assert.All(doors, pair => Assert.True(
                pair.First.Width.Amount <= pair.Second.Width.Amount && pair.First.Height.Amount <= pair.Second.Height.Amount, pair.First.Path));
        }

        static Course Measured(Course course, Length more)
        {
            LengthEntry? Grown(LengthEntry? read) => read is { } entry ? new(entry.Text, entry.Value + more) : null;
            return WithOpenings(course, opening => opening with
            {
                Readings = opening.Readings is not { } read ? null : read with
                {
                    WidthTop = Grown(read.WidthTop),
                    WidthMiddle = Grown(read.WidthMiddle),
                    WidthBottom = Grown(read.WidthBottom),
                    HeightLeft = Grown(read.HeightLeft),
                    HeightMiddle = Grown(read.HeightMiddle),
                    HeightRight = Grown(read.HeightRight),
                },
            });
        }
    }, iter: 60);

    private static Course WithOpenings(Course course, Func<Opening, Opening> change) => course with
    {
        Projects = [.. course.Projects.Select(project => project with
        {
            Pieces = [.. project.Pieces.Select(piece => piece with
            {
                Faces = [.. piece.Faces.Select(face => face with { Layout = null, Fronts = [], Openings = [.. face.Openings.Select(change)] })],
            })],
        })],
    };

    [Fact]
    public void Inches_and_millimetres_of_the_same_value_make_the_same_parts() => Choices.Sample(choices =>
    {
        var (course, standard) = new CourseMaker(choices, LengthUnit.Inch).Make();
        var (metric, _) = new CourseMaker(choices, LengthUnit.Millimetre).Make();
        var (one, other) = (Breakdown.Of(course, standard), Breakdown.Of(metric, standard));
        Assert.Equal(Amounts(one), Amounts(other));
        Assert.Equal(one.Findings.Select(finding => (finding.Rule.Code, finding.Place)), other.Findings.Select(finding => (finding.Rule.Code, finding.Place)));

        static IEnumerable<(string, Fraction?)> Amounts(Breakdown breakdown) =>
        [
            .. breakdown.Fronts.SelectMany(front => new[] { (front.Path, front.Width?.Amount), (front.Path, front.Height?.Amount) }),
            .. breakdown.Parts.SelectMany(part => part.Quantities.Select(quantity => (part.Path, (Fraction?)quantity.Amount))),
        ];
    }, iter: 60);

    [Fact]
    public void Ten_inches_and_254_millimetres_are_one_entry()
    {
        LengthEntry Read(string text) => new(text, LengthReader.ReadOwn(text, LengthUnit.Inch));
        Assert.Equal(Read("10 in").Value, Read("254 mm").Value);
    }

    // Overlaps thinner than the error of floating-point areas are none; the least real one is a step long and wide.
    private const double AreaTolerance = 1e-6;

    [Fact]
    public void Visible_faces_of_the_parts_tile_the_leaf() => Hold(breakdown =>
    {
        foreach (var leaf in breakdown.Leaves.Where(leaf => leaf.Parts.Count > 0))
        {
            var faces = leaf.Parts.Select(part => AsPolygon(part.Visible)).ToList();
            for (var i = 0; i < faces.Count; i++)
            {
                for (var j = 0; j < i; j++)
                {
                    if (faces[i].EnvelopeInternal.Intersects(faces[j].EnvelopeInternal))
                        Assert.True(faces[i].Intersection(faces[j]).Area < AreaTolerance, $"{leaf.Parts[i].Path} and {leaf.Parts[j].Path}");
                }
            }

            var whole = (leaf.Width.Amount * leaf.Height.Amount).ToDouble();
            var design = DesignOf(breakdown, leaf);
            var union = faces.Sum(face => face.Area);
            if (design.Panel?.Kind == PanelKind.Open || design.Lights.Any(light => light.Filling.Kind == PanelKind.Open))
                Assert.True(union <= whole + AreaTolerance, leaf.Path);
            else
                Assert.Equal(whole, NetTopologySuite.Operation.Union.UnaryUnionOp.Union(faces.Cast<Geometry>().ToArray()).Area, AreaTolerance);
            var bounds = new Envelope(0, leaf.Width.Amount.ToDouble(), 0, leaf.Height.Amount.ToDouble());
            Assert.All(faces, face => Assert.True(bounds.Covers(face.EnvelopeInternal)));
        }
    }, courses: 50);

    private static Polygon AsPolygon(IReadOnlyList<Point> corners) => new(new LinearRing(
        [.. corners.Append(corners[0]).Select(corner => new Coordinate(corner.X.Inches.ToDouble(), corner.Y.Inches.ToDouble()))]));

    [Fact]
    public void Rails_reach_into_the_stiles_by_their_tongues_or_tenons() => Hold(breakdown =>
    {
        foreach (var leaf in breakdown.Leaves.Where(IsFramed))
        {
            var design = DesignOf(breakdown, leaf);
            var reach = design.Construction switch
            {
                Construction.MortiseAndTenon => design.Tenon?.Value ?? breakdown.Projects[0].Standard[Settings.Tenon].Length,
                // A butted rail ends at its shoulder, which a moulding that is cut back moves past the sight line.
                Construction.Dowelled or Construction.LooseTenon => design.CutBack?.Value ?? default,
                _ => breakdown.Standard.Cutter(design.Cutters!)!.CopeLength.Value,
            };
            var (left, right) = (Ending(leaf, "/stile.left"), Ending(leaf, "/stile.right"));
            var rails = leaf.Parts.Where(part => part.Kind == PartKind.MidRail || part.Kind == PartKind.Rail && design.Construction != Construction.Mitred);
            foreach (var rail in rails)
            {
                if (design.Construction is Construction.Dowelled or Construction.LooseTenon)
                    Assert.Equal(rail.Finished.Length.Length, rail.Shoulder!.Length);
                Assert.Equal((reach, reach), (left.Outline.Right - rail.Outline.X, rail.Outline.Right - right.Outline.X));
                Assert.Equal((rail.Finished.Length.Length, rail.Finished.Width.Length), (rail.Outline.Width, rail.Outline.Height));
            }

            // A mid stile reaches as far into a rail below and above it.
            foreach (var mid in leaf.Parts.Where(part => part.Kind == PartKind.MidStile))
            {
                var flat = leaf.Parts.Where(part => part.Kind is PartKind.Rail or PartKind.MidRail).Select(part => part.Outline).ToList();
                Assert.Contains(flat, rail => rail.Top - mid.Outline.Y == reach);
                Assert.Contains(flat, rail => mid.Outline.Top - rail.Y == reach);
            }
        }
    });

    private static Part Ending(SizedLeaf leaf, string segment) => leaf.Parts.Single(part => part.Path.EndsWith(segment, StringComparison.Ordinal));

    [Fact]
    public void Every_size_is_positive_and_no_outline_leaves_the_leaf() => Hold(breakdown =>
    {
        foreach (var leaf in breakdown.Leaves)
        {
            foreach (var part in leaf.Parts)
            {
                Assert.All(part.Quantities, quantity => Assert.True(quantity.Amount.IsPositive, $"{part.Path}: {quantity}"));
                Assert.True(!part.Outline.X.IsNegative && !part.Outline.Y.IsNegative && part.Outline.Right <= leaf.Width.Length && part.Outline.Top <= leaf.Height.Length, part.Path);
            }
        }
    }, courses: 400);

    [Fact]
    public void The_other_hand_makes_the_mirrored_parts() => Choices.Sample(choices =>
    {
        var (course, standard) = new CourseMaker(choices).Make();
        var plain = course with { Designs = [.. course.Designs.Select(design => design with { Lights = [] })] };
        var left = Breakdown.Of(Hinged(plain, HingeSide.Left), standard);
        var right = Breakdown.Of(Hinged(plain, HingeSide.Right), standard);
        foreach (var (one, other) in left.Leaves.Zip(right.Leaves))
        {
            Assert.Equal((one.Width.Amount, one.Height.Amount), (other.Width.Amount, other.Height.Amount));
            Assert.Equal(one.Parts.Select(part => Told(part, null)).Order(), other.Parts.Select(part => Told(part, other.Width.Length)).Order());
        }

        static Course Hinged(Course course, HingeSide hinge) => WithOpenings(course, opening => opening with
        {
            Column = null,
            Filling = new DoorFilling(opening.Filling.Mount, [new(hinge, null, null, null, SettingValues.None)], "one"),
        });

        // A part's kind, sizes, hand and places, seen in a mirror when a width to mirror in is given.
        static string Told(Part part, Length? mirror)
        {
            Length Across(Length x) => mirror is { } width ? width - x : x;
            var hand = part.Hand is { } side && mirror is not null ? side == Side.Left ? Side.Right : Side.Left : part.Hand;
            var visible = part.Visible.Select(corner => $"{Across(corner.X)} {corner.Y}").Order();
            var outline = part.Outline with { X = mirror is null ? part.Outline.X : Across(part.Outline.Right) };
            return $"{part.Kind} {hand} {string.Join(' ', part.Quantities.Select(quantity => quantity.Amount))} {outline} {string.Join(' ', visible)}";
        }
    }, iter: 60);

    [Fact]
    public void Squaring_brings_outer_members_to_design_width_and_the_frame_to_the_leaf() => Hold(breakdown =>
    {
        var standard = breakdown.Projects[0].Standard;
        foreach (var leaf in breakdown.Leaves.Where(IsFramed))
        {
            var mitred = DesignOf(breakdown, leaf).Construction == Construction.Mitred;
            var (across, upright) = (standard[Settings.TrimWidth].Length, standard[Settings.TrimHeight].Length);
            if (mitred)
                across = upright = Length.Greatest(across, upright);
            foreach (var part in leaf.Parts.Where(part => part.Kind is PartKind.Stile or PartKind.Rail))
            {
                var trim = part.Kind == PartKind.Stile ? across : upright;
                Assert.Equal(part.Finished.Width.Length, part.GlueUp.Width.Length - (trim / 2));
                // Squaring takes the whole allowance from what runs from edge to edge, and nothing from what ends at a joint.
                var along = part.Kind == PartKind.Stile ? upright : mitred ? across : default;
                Assert.Equal(part.Finished.Length.Length, part.GlueUp.Length.Length - along);
            }

            foreach (var part in leaf.Parts.Where(part => part.Kind is not (PartKind.Stile or PartKind.Rail)))
                Assert.Equal((part.Finished.Width.Amount, part.Finished.Length.Amount), (part.GlueUp.Width.Amount, part.GlueUp.Length.Amount));
        }
    });

    [Fact]
    public void Every_printed_line_of_every_quantity_comes_to_its_value() => Hold(breakdown =>
    {
        foreach (var front in breakdown.Fronts)
        {
            IReadOnlyList<Worked> quantities =
            [
                .. new[] { front.Width, front.Height, front.Gap }.OfType<Worked>(),
                .. front.Leaves.SelectMany(leaf => leaf.Parts.SelectMany(part => part.Quantities).Concat(leaf.CheckSums.SelectMany(sum => sum.Terms))),
            ];
            foreach (var format in new[] { Inches, Millimetres })
            {
                foreach (var step in WorkedText.Steps(format, quantities))
                    PrintedLine.AssertHolds(step.Arithmetic, format);
            }
        }
    }, courses: 60);

    [Fact]
    public void Labels_and_paths_are_given_once() => Hold(breakdown =>
    {
        Once(breakdown.Fronts.Select(front => front.Path));
        Once(breakdown.Fronts.Select(front => front.Label));
        Once(breakdown.Leaves.Select(leaf => leaf.Path));
        Once(breakdown.Leaves.Select(leaf => leaf.Label));
        Once(breakdown.Parts.Select(part => part.Path));
        Once(breakdown.Parts.Select(part => part.Label));

        static void Once(IEnumerable<string> names) => Assert.All(names.GroupBy(name => name), group => Assert.Single(group));
    });

    [Fact]
    public void A_cut_list_counts_every_part_once_from_large_to_small() => Hold(breakdown =>
    {
        var lines = CutList.Of(breakdown.Parts);
        var leafOf = breakdown.Leaves.SelectMany(leaf => leaf.Parts.Select(part => (part.Path, leaf.Label))).ToDictionary();
        Assert.Equal(breakdown.Parts.Select(part => part.Path).Order(), lines.SelectMany(line => line.Parts).Select(part => part.Path).Order());
        Assert.Equal(breakdown.Parts.Count(), lines.Sum(line => line.Count));
        foreach (var line in lines)
        {
            Assert.All(line.Parts, part => Assert.Equal(Alike(line.Part), Alike(part)));
            Assert.Equal(line.Leaves, line.Parts.Select(part => leafOf[part.Path]).Distinct());
        }

        Assert.Equal(lines.Count, lines.Select(line => Alike(line.Part)).Distinct().Count());
        foreach (var (line, after) in lines.Zip(lines.Skip(1)))
            Assert.True(Key(line.Part).CompareTo(Key(after.Part)) <= 0, $"{line.Part.Path} before {after.Part.Path}");

        static string Alike(Part part) => string.Join('|',
        [
            part.Material, part.Stock, part.Kind is PartKind.Panel or PartKind.Glass or PartKind.Slab ? part.Kind : "member", part.Hand, part.FaceDown, part.Shoulder?.Amount,
            .. new[] { part.Arch, part.TopArch, part.BottomArch }.Select(arch =>
                (object?)(arch is null ? null : (arch.Family, arch.Span.Amount, arch.Rise.Amount, arch.Shoulder?.Amount, arch.Repeats, arch.ReverseToCrown, arch.OfPair?.Rise.Amount, arch.OfPair?.Width.Amount))),
            .. part.Work.Order().Cast<object>(), .. part.Quantities.Select(quantity => (object)quantity.Amount),
        ]);

        static (bool, Ordinal, Fraction, Fraction, Fraction) Key(Part part) => (part.Kind == PartKind.Glass, new(part.Material),
            -(part.Thickness?.Planed.Amount ?? default), -part.GlueUp.Width.Amount, -part.GlueUp.Length.Amount);
    });

    private readonly record struct Ordinal(string Text) : IComparable<Ordinal>
    {
        public int CompareTo(Ordinal other) => string.CompareOrdinal(Text, other.Text);
    }
}
