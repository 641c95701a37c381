using System.Globalization;
using Stilewright.Findings;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Wood;

namespace Stilewright.Doors;

/// <summary>Works out a whole course: each project's fronts first, then what they do to their neighbours, then the parts.</summary>
internal sealed class BreakdownBuilder
{
    private static readonly Length LeastAtWall = Length.FromInches(new Fractions.Fraction(1, 2));
    private static readonly Side[] Sides = [Side.Left, Side.Right, Side.Top, Side.Bottom];

    private readonly Course course;
    private readonly StandardInForce courseStandard;
    private readonly List<Finding> findings = [];
    private readonly Dictionary<string, string> labels = [];
    private readonly Dictionary<string, int> order = [];

    private BreakdownBuilder(Course course, HouseStandard standard)
    {
        this.course = course;
        courseStandard = new StandardInForce(standard).With(OriginKind.Course, course.Id, course.Overrides);
    }

    public static Breakdown Build(Course course, HouseStandard standard) => new BreakdownBuilder(course, standard).Build();

    private Breakdown Build()
    {
        NumberFronts();
        var projects = course.Projects.Select(BuildProject).ToList();
        findings.AddRange(HangingPlan.Of(course, projects).Findings);
        var sorted = findings
            .OrderBy(finding => order.GetValueOrDefault(FirstSegment(finding.Place.Path), int.MaxValue))
            .ToList();
        return new(course, courseStandard.Standard, projects, sorted);
    }

    // Fronts without a number of their own are counted through the bench in the order of the document.
    private void NumberFronts()
    {
        foreach (var bench in course.Projects.GroupBy(project => project.Bench))
        {
            var fronts = bench.SelectMany(project => project.Pieces).SelectMany(piece => piece.Faces)
                .SelectMany(face => OpeningsOf(face).Select(opening => (opening.Id, opening.Number))
                    .Concat(face.Fronts.Select(front => (front.Id, front.Number)))).ToList();
            var taken = fronts.Select(front => front.Number).OfType<int>().ToHashSet();
            var next = 1;
            foreach (var (id, number) in fronts)
            {
                while (number is null && !taken.Add(next))
                    next++;
                labels[id] = string.Create(CultureInfo.InvariantCulture, $"{bench.Key}·{number ?? next}");
            }
        }
    }

    internal static IEnumerable<Opening> OpeningsOf(Face face)
    {
        return [.. face.Layout is null ? [] : In(face.Layout.Space), .. face.Openings];

        static IEnumerable<Opening> In(Space space) =>
        [
            .. space.Opening is null ? Array.Empty<Opening>() : [space.Opening],
            .. (space.Columns?.Spaces ?? space.Rows?.Spaces ?? []).SelectMany(In),
        ];
    }

    private static string FirstSegment(string path) => path.IndexOf('/') is var slash && slash < 0 ? path : path[..slash];

    private ProjectBreakdown BuildProject(Project project)
    {
        var standard = courseStandard.With(OriginKind.Project, project.Id, project.Overrides);
        var designs = course.Designs.Concat(project.Designs).GroupBy(design => design.Id).ToDictionary(group => group.Key, group => group.Last());
        var firstFinding = findings.Count;
        var frames = new Dictionary<string, FrameFigure?>();
        var faces = new Dictionary<string, List<OpeningSite>>();
        foreach (var face in project.Pieces.SelectMany(piece => piece.Faces))
            (faces[face.Id], frames[face.Id]) = FaceSites.Of(face, findings);
        JoinRuns(project, faces);

        var fronts = new Dictionary<string, FrontSizing>();
        foreach (var face in project.Pieces.SelectMany(piece => piece.Faces))
        {
            order[face.Id] = order.Count;
            foreach (var site in faces[face.Id])
            {
                order[site.Opening.Id] = order.Count;
                fronts.Add(site.Opening.Id, new(site, standard.With(OriginKind.Opening, site.Opening.Id, site.Opening.Overrides), labels[site.Opening.Id], findings));
            }

            KeepInLine(faces[face.Id], fronts);
        }

        var sized = fronts.ToDictionary(front => front.Key, front => front.Value.Size(LeafStandard));
        foreach (var face in project.Pieces.SelectMany(piece => piece.Faces))
            CheckFace(face, faces[face.Id], fronts, standard);

        var pieces = project.Pieces.Select(piece => new PieceBreakdown(piece,
        [
            .. piece.Faces.Select(face => new FaceBreakdown(face, frames[face.Id],
            [
                .. faces[face.Id].Select(site => Finish(fronts[site.Opening.Id], sized[site.Opening.Id], fronts, designs)),
                .. face.Fronts.Select(front => Loose(face, front, standard, designs)),
            ])),
        ])).ToList();
        AcceptHazards(project, firstFinding);
        return Withhold(new(project, standard, pieces), firstFinding);

        static StandardInForce LeafStandard(string path, StandardInForce opening, LeafEntry? leaf) =>
            leaf is null ? opening : opening.With(OriginKind.Leaf, path, leaf.Overrides);
    }

    // Across a run the outer stiles of two faces and the filler between them make one member.
    private static void JoinRuns(Project project, Dictionary<string, List<OpeningSite>> faces)
    {
        foreach (var run in project.Runs)
        {
            string? left = null;
            var fillers = new List<Worked>();
            for (var i = 0; i < run.Items.Count; i++)
            {
                if (run.Items[i] is RunFiller filler)
                {
                    fillers.Add(new Given($"run/filler.{i + 1}", "filler", filler.Width.Value, new(OriginKind.Project, $"{run.Id}/items/{i + 1}/width")));
                }
                else if (run.Items[i] is RunFace next && faces.ContainsKey(next.Face))
                {
                    if (left is not null)
                        Join(faces[left], faces[next.Face], fillers);
                    left = next.Face;
                    fillers = [];
                }
            }
        }

        static void Join(List<OpeningSite> left, List<OpeningSite> right, List<Worked> fillers)
        {
            var leftEnds = left.Where(site => site.Right is { Beyond: BeyondKind.FrameEdge, Member: not null }).ToList();
            var rightEnds = right.Where(site => site.Left is { Beyond: BeyondKind.FrameEdge, Member: not null }).ToList();
            if (leftEnds.Count == 0 || rightEnds.Count == 0)
                return;
            Replace(left, leftEnds, Side.Right, rightEnds, Side.Left);
            Replace(right, rightEnds, Side.Left, leftEnds, Side.Right);

            void Replace(List<OpeningSite> sites, List<OpeningSite> ends, Side side, List<OpeningSite> others, Side othersSide)
            {
                foreach (var site in ends)
                {
                    var facing = others.Where(other => site.Place is not { } one || other.Place is not { } two || (one.Y < two.Top && two.Y < one.Top)).ToList();
                    if (facing.Count == 0)
                        continue;
                    var member = site.Edge(side).Member!;
                    var across = (side == Side.Right
                        ? Worked.Total([member, .. fillers, facing[0].Edge(othersSide).Member!])
                        : Worked.Total([facing[0].Edge(othersSide).Member!, .. fillers, member])).As("frame between the openings", "run/member");
                    sites[sites.IndexOf(site)] = site.With(side, new(BeyondKind.Opening, member, across, [.. facing.Select(other => other.Opening.Id)]));
                }
            }
        }
    }

    // One width and one centre for all fronts of a column: each edge moves out to the outermost of them.
    private void KeepInLine(List<OpeningSite> sites, Dictionary<string, FrontSizing> fronts)
    {
        foreach (var column in sites.Where(site => site.Opening.Column is not null).GroupBy(site => site.Opening.Column))
        {
            var ofColumn = column.Select(site => fronts[site.Opening.Id]).Where(front => front.LapsOver).ToList();
            var members = ofColumn.Where(front => front.Figure is not null).ToList();
            if (members.Count < ofColumn.Count)
                WarnOfColumn(column.Key!, members, ofColumn.Except(members));
            if (members.Count < 2)
                continue;
            if (members.All(front => front.Site.Place is not null))
            {
                var left = members.Min(front => front.Site.Place!.Value.X + front.NaturalEdges.Left);
                var right = members.Max(front => front.Site.Place!.Value.X + front.NaturalEdges.Right);
                foreach (var front in members)
                {
                    var place = front.Site.Place!.Value;
                    Move(front, Side.Left, place.X + front.NaturalEdges.Left - left);
                    Move(front, Side.Right, right - place.X - front.NaturalEdges.Right);
                }
            }
            else
            {
                var widest = members.MaxBy(front => front.FrontWidth.Amount)!.FrontWidth.As("widest front of the column", "column/width");
                foreach (var front in members.Where(front => front.FrontWidth.Amount != widest.Amount))
                {
                    // The width it would have had, written out: its own front width is found from this.
                    var half = (widest - front.FrontWidth.Operands[0]) / 2;
                    front.MoveOut(Side.Left, half);
                    front.MoveOut(Side.Right, half);
                }
            }

            void Move(FrontSizing front, Side side, Length by)
            {
                if (!by.IsZero)
                {
                    front.MoveOut(side, new Given($"front/edge.{side.ToString().ToLowerInvariant()}.line", $"moved out to the line of column {column.Key}", by,
                        new(OriginKind.Opening, $"{front.Site.Opening.Id}/column")));
                }
            }
        }
    }

    private void WarnOfColumn(string column, IEnumerable<FrontSizing> measured, IEnumerable<FrontSizing> unmeasured)
    {
        var others = string.Join(" and ", unmeasured.Select(front => front.Label));
        findings.AddRange(measured.Select(front => new Finding(Rules.ColumnNotMeasured, new(front.Site.Opening.Id, "column"),
            $"Column {column} is kept in line without {others}, whose opening is not measured; this front may still become wider.",
            $"Measure {others} before this front is cut.")));
    }

    private SizedFront Finish(
        FrontSizing front, (Worked? Width, Worked? Height, Worked? Gap, IReadOnlyList<LeafPlan> Leaves) size,
        Dictionary<string, FrontSizing> fronts, Dictionary<string, DoorDesign> designs)
    {
        var (edges, corners) = size.Leaves.Count == 0 ? ([], []) : front.Left(fronts);
        var opening = front.Site.Opening;
        var origin = front.Site.Place is { } place ? new Point(place.X, place.Y) : default;
        var leaves = size.Leaves.Select(plan => LeafBreakdown.Of(
            plan with { Place = plan.Place.Shifted(origin.X, origin.Y) }, designs.GetValueOrDefault(plan.Design), findings)).ToList();
        SizedFront sized = new(opening.Id, front.Label, opening.Name ?? (opening.Filling is DrawerFilling ? "drawer opening" : "door opening"),
            opening.Filling.Mount, front.Figure, size.Width, size.Height, size.Gap, edges, corners,
            front.Site.Place is null ? null : front.Outline.Shifted(origin.X, origin.Y), leaves)
        { Unmeasured = front.Unmeasured };
        CheckSeason(sized, front);
        return sized;
    }

    // Gaps that close by the wettest, and overlay that a slab loses by the driest.
    private void CheckSeason(SizedFront sized, FrontSizing front)
    {
        if (sized.Mount != Mount.Inset && sized.Gap is null && !sized.Leaves.Any(leaf => leaf.Parts is [{ Kind: PartKind.Slab }]))
            return;
        var movement = FrontMovement.Of(sized);
        var air = Length.FromInches(new Fractions.Fraction(1, 64));
        foreach (var gap in movement.Gaps.Where(gap => gap.AtMaking.Amount.IsPositive && !gap.AtWettest.Amount.IsPositive))
        {
            findings.Add(new(Rules.GapCloses, new(gap.Path),
                $"Of {gap.Words}, {gap.AtMaking.Length.OnStep(air, StepDirection.Nearest)} at making, nothing is left at the wettest: what moves and its finish take {(gap.AtMaking.Length - gap.AtWettest.Length).OnStep(air, StepDirection.Up)}.",
                $"Leave {(gap.AtMaking.Length - gap.AtWettest.Length).OnStep(air, StepDirection.Up)} there, use narrower or quartersawn stock, or make it nearer the wettest moisture."));
        }

        var least = front.LeastOverlay;
        foreach (var overlay in movement.Overlays.Where(overlay => overlay.AtMaking.Length >= least && overlay.AtDriest.Length < least))
        {
            findings.Add(new(Rules.OverlayShrinks, new(overlay.Path),
                $"At the driest the slab laps {overlay.AtDriest.Length.OnStep(air, StepDirection.Nearest)} over the frame on the {overlay.Side.ToString().ToLowerInvariant()}; the least is {least}.",
                $"Take {(least - overlay.AtDriest.Length).OnStep(air, StepDirection.Up)} more overlay there, or make it a framed door."));
        }
    }

    private SizedFront Loose(Face face, LooseFront front, StandardInForce standard, Dictionary<string, DoorDesign> designs)
    {
        order[front.Id] = order.Count;
        var label = labels[front.Id];
        var inForce = standard.With(OriginKind.Opening, front.Id, front.Overrides);
        Given Typed(string key, string words, LengthEntry entry) => new($"front/{key}", words, entry.Value, new(OriginKind.Opening, $"{front.Id}/{key}"));

        Worked width, height;
        var hinge = HingeSide.None;
        (Side, Worked)? narrow = null;
        string name;
        if (front is StatedFront stated)
        {
            (width, height) = (Typed("width", "stated width", stated.Width), Typed("height", "stated height", stated.Height));
            hinge = stated.Hinge;
            name = stated.Name ?? "front of stated size";
        }
        else
        {
            var end = (AppliedEnd)front;
            var edge = Typed("frameEdge", "visible edge of the face frame", end.FrameEdge);
            width = end.FrameEdge.Value.IsZero ? Typed("sideWidth", "width of the side", end.SideWidth) : Typed("sideWidth", "width of the side", end.SideWidth) - edge;
            height = Typed("sideHeight", "height of the side", end.SideHeight);
            if (end is { Reaches: EndReach.Toe, ToeHeight: { } toe })
                height -= Typed("toeHeight", "toe space", toe);
            // Looking at the left end of a case its front is on the right, and the other way round.
            if (!end.FrameEdge.Value.IsZero)
                narrow = (face.Side == FaceSide.RightEnd ? Side.Left : Side.Right, edge);
            name = end.Name ?? "applied end";
            if (end is { Reaches: EndReach.Floor, ToeHeight: { Value.IsZero: false } notch })
            {
                findings.Add(new(Rules.EndNotched, new(end.Id, "toeHeight"), $"The end runs to the floor past a toe space {notch.Value} high.",
                    $"Notch the stile at the front for the toe after squaring."));
            }
        }

        width = width.As("leaf width", "leaf/width");
        height = height.As("leaf height", "leaf/height");
        var place = new Rectangle(default, default, width.Length, height.Length);
        if (!width.Amount.IsPositive || !height.Amount.IsPositive)
        {
            findings.Add(new(Rules.NothingLeft, new(front.Id), $"The front comes to {width} × {height}.", $"Check the side, the frame's edge and the toe space."));
            return new(front.Id, label, name, null, null, width, height, null, [], [], null, []);
        }

        var plan = new LeafPlan($"{front.Id}/leaf", label, name, width, height, hinge, false, front.Design, inForce, place, []) { NarrowStile = narrow };
        return new(front.Id, label, name, null, null, width, height, null, [], [], null,
            [LeafBreakdown.Of(plan, designs.GetValueOrDefault(front.Design), findings)]);
    }

    private void CheckFace(Face face, List<OpeningSite> sites, Dictionary<string, FrontSizing> fronts, StandardInForce standard)
    {
        foreach (var site in sites)
        {
            var front = fronts[site.Opening.Id];
            if (front.Outline == default)
                continue;
            CheckEdges(front, fronts, standard);
            if (site.Opening.Filling.Mount == Mount.Overlay)
                CheckOverlay(front, standard);
            if (face.Layout is { } layout)
                CheckToe(layout, front);
            if (front.LapsOver)
                CheckColumn(site, front, fronts, standard);
        }
    }

    private void CheckEdges(FrontSizing front, Dictionary<string, FrontSizing> fronts, StandardInForce standard)
    {
        var opening = front.Site.Opening;
        var step = standard[Settings.Step].Length;
        foreach (var side in Sides)
        {
            var edge = front.Site.Edge(side);
            var reach = front.ReachOn(side);
            var words = side.ToString().ToLowerInvariant();
            if (edge.Beyond is BeyondKind.FrameEdge or BeyondKind.Wall && edge.Member is { } member)
            {
                if (reach > member.Length)
                {
                    findings.Add(new(Rules.BeyondFrame, Touching(front, side), $"On the {words} it laps {reach} over a member {member} wide.",
                        $"Lap at most {member.Length.OnStep(step, StepDirection.Down)}."));
                }
                else if (edge.Beyond == BeyondKind.Wall && HingedOn(opening, side) && member.Length - reach < LeastAtWall)
                {
                    findings.Add(new(Rules.WallClearance, Touching(front, side), $"Only {member.Length - reach} of frame is left between its hinge edge and the wall.",
                        $"Keep at least {LeastAtWall}: a wider stile, a filler, or less overlay."));
                }
            }

            // Each pair of neighbours is looked at once, from its left or lower front where both name each other.
            foreach (var id in edge.Neighbours)
            {
                if (!fronts.TryGetValue(id, out var other) || other.Outline == default)
                    continue;
                var back = FrontSizing.Opposite(side);
                if (side is Side.Left or Side.Top && other.Site.Edge(back).Neighbours.Contains(opening.Id))
                    continue;
                CheckPair(front, side, other, back, edge.Shared!, standard, step);
            }
        }

        if (opening.Filling.Mount == Mount.Overlay)
        {
            var unknown = Sides.Where(side => front.Site.Edge(side).Beyond == BeyondKind.Unknown).Select(side => side.ToString().ToLowerInvariant()).ToList();
            if (unknown.Count > 0)
            {
                findings.Add(new(Rules.NeighboursUnknown, new(opening.Id, "beside"),
                    $"Nothing says what lies beyond its {(unknown.Count == 4 ? "edges" : string.Join(" and ", unknown) + (unknown.Count == 1 ? " edge" : " edges"))}.",
                    $"Enter the face's layout, or what lies beside the opening and how wide the member is."));
            }
        }
    }

    private void CheckPair(FrontSizing one, Side side, FrontSizing other, Side back, Worked member, StandardInForce standard, Length step)
    {
        if (!one.LapsOver && !other.LapsOver)
            return;
        var gap = standard[Settings.GapBetweenNeighbours].Length;
        var (reach, otherReach) = (one.ReachOn(side), other.ReachOn(back));
        if (reach + otherReach + gap <= member.Length)
            return;
        var even = Down((member.Length - gap) / 2);
        var ifOtherStays = Down(member.Length - gap - otherReach);
        findings.Add(new(Rules.NeighboursCollide, Touching(one, side),
            $"It laps {Shown(reach)} and its neighbour {other.Label} {Shown(otherReach)} over a member of {member.Length}; with {gap} of air they need {reach + otherReach + gap}.",
            one.LapsOver && other.LapsOver
                ? $"Let both lap {even}, or keep the neighbour's {Shown(otherReach)} and let this one lap {ifOtherStays}."
                : (FormattableString)$"Let {(one.LapsOver ? one : other).Label} lap at most {Down(member.Length - gap - (one.LapsOver ? otherReach : reach))}; its neighbour is inset.")
        { AlsoAt = [Touching(other, back)] });

        Length Down(Length length) => Length.Greatest(default, length).OnStep(step, StepDirection.Down);
        static Length Shown(Length reach) => Length.Greatest(default, reach);
    }

    // The leaf along that side; the whole opening where several leaves lie along it.
    private static Place Touching(FrontSizing front, Side side)
    {
        var id = front.Site.Opening.Id;
        switch (front.Site.Opening.Filling)
        {
            case DoorFilling doors when side is Side.Left or Side.Right || doors.Leaves.Count == 1:
                var names = LeafNames.Doors(doors.Leaves.Count);
                return new($"{id}/{(side == Side.Right ? names[^1] : names[0])}");
            case DrawerFilling drawers when side is Side.Top or Side.Bottom:
                return new($"{id}/front.{(side == Side.Top ? 1 : drawers.Count)}");
            default:
                return new(id);
        }
    }

    private static bool HingedOn(Opening opening, Side side) => opening.Filling is DoorFilling doors && side switch
    {
        Side.Left => doors.Leaves[0].Hinge == HingeSide.Left,
        Side.Right => doors.Leaves[^1].Hinge == HingeSide.Right,
        _ => false,
    };

    private void CheckOverlay(FrontSizing front, StandardInForce standard)
    {
        var opening = front.Site.Opening;
        var (_, corners) = front.Left(new Dictionary<string, FrontSizing>());
        var least = standard[Settings.LeastOverlay].Length;
        var worst = corners.MinBy(corner => Length.Least(corner.Sideways, corner.Upright))!;
        if (Length.Least(worst.Sideways, worst.Upright) is var found && found < least)
        {
            var shown = found.OnStep(standard[Settings.Step].Length, StepDirection.Down);
            findings.Add(new(Rules.OverlayBelowLeast, new(opening.Id),
                $"At the {worst.Upper.ToString().ToLowerInvariant()} {worst.Hand.ToString().ToLowerInvariant()} corner only {shown} laps over the frame; the least is {least}.",
                $"Take {least - shown} more overlay on that edge, or square the opening."));
        }

        CheckOpposite(front, Side.Left, Side.Right);
        CheckOpposite(front, Side.Top, Side.Bottom);
    }

    private void CheckOpposite(FrontSizing front, Side one, Side other)
    {
        var opening = front.Site.Opening;
        var edges = opening.Filling.Edges;
        EdgeRule? RuleOf(Side side) => side switch
        {
            Side.Left => edges?.Left,
            Side.Right => edges?.Right,
            Side.Top => edges?.Top,
            _ => edges?.Bottom,
        };
        var (first, second) = (front.Site.Edge(one), front.Site.Edge(other));
        var asked = (RuleOf(one), RuleOf(other));
        if (asked is not (FixedOverlay or null, FixedOverlay or null) || asked is (null, null) || opening.Column is not null
            || first.Beyond == BeyondKind.Wall || second.Beyond == BeyondKind.Wall)
            return;
        var (reach, otherReach) = (front.AskedOn(one), front.AskedOn(other));
        var membersDiffer = first.Member is { } a && second.Member is { } b && a.Length != b.Length;
        if (reach == otherReach || membersDiffer)
            return;
        findings.Add(new(Rules.OverlayUnexplained, new(opening.Id, "filling/edges"),
            $"It laps {reach} on the {one.ToString().ToLowerInvariant()} and {otherReach} on the {other.ToString().ToLowerInvariant()}, and no member, wall or policy explains why.",
            $"Check which is meant, or enter the members beside the opening."));
    }

    private void CheckToe(FaceLayout layout, FrontSizing front)
    {
        if (front.Site.Place is not { } place)
            return;
        foreach (var (side, stile) in new[] { (Side.Left, layout.LeftStile), (Side.Right, layout.RightStile) })
        {
            if (front.Site.Edge(side).Beyond is not (BeyondKind.FrameEdge or BeyondKind.Wall) || stile.ToeNotch is not { } notch)
                continue;
            var top = notch.Value - (stile.Below?.Value ?? default);
            var bottom = place.Y + front.Outline.Y;
            if (bottom < top)
            {
                findings.Add(new(Rules.ToeNotchCovered, Touching(front, Side.Bottom),
                    $"Its lower edge hangs {top - bottom} below the top of the toe notch.", $"Raise the lower edge, or lower the notch."));
            }
        }
    }

    private void CheckColumn(OpeningSite site, FrontSizing front, Dictionary<string, FrontSizing> fronts, StandardInForce standard)
    {
        var tolerance = standard[Settings.LineTolerance].Length;
        foreach (var id in site.ColumnMates.SkipWhile(id => id != site.Opening.Id).Skip(1))
        {
            if (!fronts.TryGetValue(id, out var other) || !other.LapsOver || other.Outline == default)
                continue;
            // Two measured openings that name each other are compared once.
            if (site.Place is null && other.Site.ColumnMates.Contains(site.Opening.Id) && string.CompareOrdinal(id, site.Opening.Id) < 0)
                continue;
            Length left, right;
            if (site.Place is { } one && other.Site.Place is { } two)
            {
                left = Length.Abs(one.X + front.Outline.X - two.X - other.Outline.X);
                right = Length.Abs(one.X + front.Outline.Right - two.X - other.Outline.Right);
            }
            else
            {
                left = right = Length.Abs(front.Outline.Width - other.Outline.Width) / 2;
            }

            if (Length.Greatest(left, right) > tolerance)
            {
                findings.Add(new(Rules.OutOfLine, new(site.Opening.Id, "column"),
                    $"Its edges stand {Length.Greatest(left, right).OnStep(standard[Settings.Step].Length, StepDirection.Up)} out of line with {other.Label}.",
                    $"Give both openings one column name, so that they are kept in line.")
                { AlsoAt = [new(id, "column")] });
            }
        }
    }

    private void AcceptHazards(Project project, int firstFinding)
    {
        foreach (var accepted in project.Accepted)
        {
            var found = false;
            for (var i = firstFinding; i < findings.Count; i++)
            {
                if (findings[i].Severity == Severity.Hazard && findings[i].Rule.Code == accepted.Rule && findings[i].Concerns(accepted.Place))
                {
                    findings[i] = findings[i] with { AcceptedBecause = accepted.Reason };
                    found = true;
                }
            }

            if (!found)
            {
                findings.Add(new(Rules.AcceptedNothing, new(accepted.Place), $"The hazard {accepted.Rule} is accepted here, but is not found.",
                    $"Remove the acceptance, or correct its rule or place."));
            }
        }
    }

    private ProjectBreakdown Withhold(ProjectBreakdown project, int firstFinding)
    {
        var stops = findings.Skip(firstFinding)
            .Where(finding => finding.Severity == Severity.CannotBuild)
            .SelectMany(finding => finding.AlsoAt.Prepend(finding.Place))
            .Select(place => place.Path.Split('/'))
            .Select(segments => segments.Length < 2 ? segments[0] : $"{segments[0]}/{segments[1]}")
            .ToHashSet();
        return stops.Count == 0 ? project : project with
        {
            Pieces = [.. project.Pieces.Select(piece => piece with
            {
                Faces = [.. piece.Faces.Select(face => face with
                {
                    Fronts = [.. face.Fronts.Select(front => front with
                    {
                        Leaves = [.. front.Leaves.Select(leaf => stops.Contains(front.Path) || stops.Contains(leaf.Path)
                            ? leaf with { Parts = [], IsWithheld = true } : leaf)],
                    })],
                })],
            })],
        };
    }
}
