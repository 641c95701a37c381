using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Doors;

/// <summary>Sizes the front of one opening: what its edges do, its width and height, and the size of every leaf.</summary>
internal sealed class FrontSizing
{
    private static readonly Side[] Sides = [Side.Left, Side.Right, Side.Top, Side.Bottom];

    private readonly Opening opening;
    private readonly TapeReadings tape;
    private readonly StandardInForce standard;
    private readonly List<Finding> findings;
    private readonly Dictionary<Side, Worked> reach = [];

    /// <summary>The least that a front may lap over the frame here.</summary>
    public Length LeastOverlay => standard[Settings.LeastOverlay].Length;

    public FrontSizing(OpeningSite site, StandardInForce standard, string label, List<Finding> findings)
    {
        Site = site;
        Label = label;
        opening = site.Opening;
        tape = new(opening);
        this.standard = standard;
        this.findings = findings;
        Figure = MeasureOpening();
        foreach (var side in Sides)
            reach[side] = EdgeReach(side);
    }

    public OpeningSite Site { get; }
    public string Label { get; }

    /// <summary>Null where the opening is not measured: then it has no edges and no size, only what is asked for on each side.</summary>
    public OpeningFigure? Figure { get; }

    /// <summary>What is known of an opening that has no figure; null where it has one.</summary>
    public UnmeasuredOpening? Unmeasured => Figure is not null ? null
        : new(tape.All, !tape.Widths.IsRead && Site.Width is null, !tape.Heights.IsRead && Site.Height is null);

    /// <summary>True where the front's edges lie outside the opening.</summary>
    public bool LapsOver => opening.Filling.Mount != Mount.Inset;

    /// <summary>Where the front lies, from the opening's bottom left corner, once <see cref="Size"/> has run.</summary>
    public Rectangle Outline { get; private set; }

    private Place Here(string? field = null) => new(opening.Id, field);

    // A quantity that has the name already is not named twice.
    internal static Worked Called(Worked quantity, string label, string key) =>
        quantity is Named named && named.Label == label ? named : quantity.As(label, key);

    private OpeningFigure? MeasureOpening()
    {
        if (tape.All.Count == 0 && Site is { Width: { } laidWidth, Height: { } laidHeight })
            return OpeningFigure.Square(Called(laidWidth, "opening width", "opening/width"), Called(laidHeight, "opening height", "opening/height"), "by the layout");
        var figure = OpeningFigure.Of(Site, tape, standard, findings);
        if (figure is not null && Site is { Width: { } width, Height: { } height })
        {
            var limit = standard[Settings.ReadingTolerance].Length * 2;
            if (Length.Abs(figure.Width.Length - width.Length) > limit || Length.Abs(figure.Height.Length - height.Length) > limit)
            {
                findings.Add(new(Rules.LayoutDiffers, Here("readings"),
                    $"Measured {figure.Width} × {figure.Height}, by the layout {width.Length} × {height.Length}. The readings are used.",
                    $"Measure again, or correct the layout."));
            }
        }

        return figure;
    }

    // How far the front reaches past the used rectangle on that side; for inset the gap it keeps.
    private Worked EdgeReach(Side side)
    {
        var name = side.ToString().ToLowerInvariant();
        switch (opening.Filling.Mount)
        {
            case Mount.Inset:
                return standard[Settings.InsetGap];
            case Mount.Lipped:
                var lip = (standard[Settings.LipRabbet] - standard[Settings.LipClearance]).As("lip over the frame", "front/lip.cover");
                if (!lip.Amount.IsPositive && side == Side.Left)
                {
                    findings.Add(new(Rules.LipCoversNothing, Here("overrides/lip.rabbet"),
                        $"The lip of {standard[Settings.LipRabbet]} less {standard[Settings.LipClearance]} clearance covers no frame.",
                        $"Make the rabbet wider than {standard[Settings.LipClearance]}."));
                }

                return lip;
        }

        var edges = opening.Filling.Edges;
        var rule = side switch
        {
            Side.Left => edges?.Left,
            Side.Right => edges?.Right,
            Side.Top => edges?.Top,
            _ => edges?.Bottom,
        };
        var edge = Site.Edge(side);
        Given Typed(string field, string label, LengthEntry entry) => new(
            $"front/edge.{name}.{field}", label, entry.Value, new(OriginKind.Opening, $"{opening.Id}/filling/edges/{name}/{field}"));

        switch (rule)
        {
            case FixedOverlay given:
                return Typed("overlay", $"{name} overlay", given.Overlay);
            case ShareMember share:
                var gap = share.Gap is { } typed ? Typed("gap", "gap between neighbours", typed) : standard[Settings.GapBetweenNeighbours];
                if (edge.Shared is { } member)
                    return NotNegative(((member - gap) / 2).As($"{name} overlay", $"front/edge.{name}.overlay"), member, gap);
                return Unknown("shares a member");
            case ToFrameEdge toEdge:
                var reveal = toEdge.Reveal is { } left ? Typed("reveal", "reveal", left) : standard[Settings.Reveal];
                if (edge.Member is { } outer)
                    return NotNegative((outer - reveal).As($"{name} overlay", $"front/edge.{name}.overlay"), outer, reveal);
                return Unknown("runs to the frame's edge");
            default:
                return standard[Settings.Overlay];
        }

        Worked Unknown(string what)
        {
            findings.Add(new(Rules.MemberUnknown, Here($"filling/edges/{name}"),
                $"The {name} edge {what} whose width nobody entered.",
                $"Say what lies beside the opening and how wide the member is, or give a fixed overlay."));
            return standard[Settings.Overlay];
        }

        Worked NotNegative(Worked overlay, Worked member, Worked air)
        {
            if (overlay.Amount.IsNegative)
            {
                findings.Add(new(Rules.NothingToShare, Here($"filling/edges/{name}"),
                    $"The member on the {name} is {member.Length} wide and must leave {air.Length}.", $"Leave less, or use a fixed overlay."));
            }

            return overlay;
        }
    }

    /// <summary>Moves an edge out to the line of its column.</summary>
    public void MoveOut(Side side, Worked by) =>
        reach[side] = (reach[side] + by).As($"{side.ToString().ToLowerInvariant()} overlay in line", $"front/edge.{side.ToString().ToLowerInvariant()}.overlay");

    /// <summary>Edges of the front as asked for, from the opening's bottom left corner.</summary>
    public (Length Left, Length Right) NaturalEdges => LapsOver
        ? (Figure!.Offset.X - reach[Side.Left].Length, Figure.Offset.X + Figure.Width.Length + reach[Side.Right].Length)
        : (Figure!.Offset.X + reach[Side.Left].Length, Figure.Offset.X + Figure.Width.Length - reach[Side.Right].Length);

    public Worked FrontWidth => LapsOver
        ? Figure!.Width.PlusBoth(reach[Side.Left], reach[Side.Right]).As("front width", "front/width")
        : Figure!.Width.LessBoth(reach[Side.Left], reach[Side.Right]).As("front width", "front/width");

    private Worked FrontHeight => LapsOver
        ? Figure!.Height.PlusBoth(reach[Side.Top], reach[Side.Bottom]).As("front height", "front/height")
        : Figure!.Height.LessBoth(reach[Side.Top], reach[Side.Bottom]).As("front height", "front/height");

    private StepDirection Direction => LapsOver ? StepDirection.Nearest : StepDirection.Down;

    /// <summary>Sizes the leaves. Their places are from the opening's bottom left corner. There are none, and no size, where the opening is not measured.</summary>
    public (Worked? Width, Worked? Height, Worked? Gap, IReadOnlyList<LeafPlan> Leaves) Size(Func<string, StandardInForce, LeafEntry?, StandardInForce> leafStandard)
    {
        if (Figure is null)
            return (null, null, null, []);
        var width = FrontWidth;
        var height = FrontHeight;
        if (!width.Amount.IsPositive || !height.Amount.IsPositive)
        {
            findings.Add(new(Rules.NothingLeft, Here(), $"The front comes to {width} × {height}.", $"Check the opening and the gaps."));
            return (width, height, null, []);
        }

        return opening.Filling switch
        {
            DoorFilling doors => Doors(doors, width, height, leafStandard),
            DrawerFilling drawers => Drawers(drawers, width, height),
            _ => throw new InvalidOperationException("A filling is doors or drawers."),
        };
    }

    private (Worked, Worked, Worked?, IReadOnlyList<LeafPlan>) Doors(
        DoorFilling doors, Worked width, Worked height, Func<string, StandardInForce, LeafEntry?, StandardInForce> leafStandard)
    {
        var count = doors.Leaves.Count;
        var names = LeafNames.Doors(count);
        var step = standard[Settings.Step];
        var leafHeight = height.On(step, Direction).As("leaf height", "leaf/height");
        var widths = new Worked[count];
        Worked? gap = null;
        if (count == 1)
        {
            widths[0] = width.On(step, Direction).As("leaf width", "leaf/width");
        }
        else
        {
            var air = doors.Lapped ? standard[Settings.Lap] : standard[LapsOver ? Settings.GapOfPair : Settings.InsetGapOfPair];
            var air0 = count == 2 ? air : (count - 1) * air;
            var rest = doors.Lapped ? width + air0 : width - air0;
            var typed = doors.Leaves.Select((leaf, i) => leaf.Width is { } entry
                ? new Given("leaf/width", "leaf width", entry.Value, new(OriginKind.Leaf, $"{opening.Id}/{names[i]}/width")) : null).ToArray();
            if (typed.Any(given => given is not null))
                rest -= Worked.Total([.. typed.OfType<Worked>()]);
            var free = typed.Count(given => given is null);
            var share = free == 0 ? null : (free == 1 ? rest : rest / free).On(step, Direction).As("leaf width", "leaf/width");
            for (var i = 0; i < count; i++)
                widths[i] = typed[i]?.As("leaf width", "leaf/width") ?? share!;
            if (!doors.Lapped)
            {
                var over = width - Worked.Total(widths);
                gap = (count == 2 ? over : over / (count - 1)).As(count == 2 ? "gap left between the leaves" : "gap left between leaves", "front/gap");
                if (!gap.Amount.IsPositive && widths.All(leaf => leaf.Amount.IsPositive))
                {
                    findings.Add(new(Rules.NoGapInPair, Here("overrides/gap.pair"),
                        $"The leaves meet with {gap.Length} between them.", $"Leave a gap of {standard[LapsOver ? Settings.GapOfPair : Settings.InsetGapOfPair]}, or lap the meeting edges."));
                }
            }
        }

        if (!Remains(widths, leafHeight))
            return (width, height, gap, []);

        // A single leaf keeps the overlay asked for at its hinges; what the step moves shows on the other edge.
        var edges = NaturalEdges;
        var total = count == 1 ? widths[0].Length : edges.Right - edges.Left;
        var x = count == 1 && doors.Leaves[0].Hinge == HingeSide.Right ? edges.Right - total : edges.Left;
        var bottom = Bottom();
        Outline = new(x, bottom, total, leafHeight.Length);
        CheckHinges(doors, names);

        var leaves = new List<LeafPlan>();
        for (var i = 0; i < count; i++)
        {
            var entry = doors.Leaves[i];
            var path = $"{opening.Id}/{names[i]}";
            var place = new Rectangle(x, bottom, widths[i].Length, leafHeight.Length);
            List<Side> rabbeted = [];
            if (doors.Mount == Mount.Lipped)
            {
                rabbeted.AddRange([Side.Top, Side.Bottom]);
                if (i == 0)
                    rabbeted.Add(Side.Left);
                if (i == count - 1)
                    rabbeted.Add(Side.Right);
            }

            if (doors.Lapped)
                rabbeted.Add(i == 0 ? Side.Right : Side.Left);
            leaves.Add(new(path, $"{Label}{LeafNames.Code(names[i])}", LeafNames.Words(names[i], count, entry.Hinge), widths[i], leafHeight, entry.Hinge, false,
                entry.Design ?? doors.Design, leafStandard(path, standard, entry), place, rabbeted)
            {
                LeavesOfFront = count,
                Tapers = doors.Mount == Mount.Inset && opening.Readings?.Fit == OutOfSquareFit.PlaneToFit ? Figure!.Tapers : new Dictionary<Side, Length>(),
            });
            x += widths[i].Length + (doors.Lapped ? -standard[Settings.Lap].Length : gap?.Length ?? default);
        }

        if (leaves is [var left, var right])
        {
            var between = gap ?? standard[Settings.Lap];
            leaves = [left with { Mate = new(right, Side.Right, between, doors.Lapped) }, right with { Mate = new(left, Side.Left, between, doors.Lapped) }];
        }

        return (width, height, gap, leaves);
    }

    // The cutting step may take the little that gaps and given widths leave.
    private bool Remains(IReadOnlyList<Worked> widths, Worked height)
    {
        var narrowest = widths.Min(width => width.Length);
        if (narrowest > default(Length) && height.Amount.IsPositive)
            return true;
        findings.Add(new(Rules.NothingLeft, Here("filling"),
            narrowest > default(Length)
                ? (FormattableString)$"On the cutting step the front comes to {height.Length} high."
                : $"Nothing is left of a leaf: the narrowest comes to {narrowest} wide.",
            $"Check the opening, the widths given and the gaps."));
        return false;
    }

    private Length Bottom() => Figure!.Offset.Y + (LapsOver ? -reach[Side.Bottom].Length : reach[Side.Bottom].Length);

    private void CheckHinges(DoorFilling doors, IReadOnlyList<string> names)
    {
        for (var i = 0; i < doors.Leaves.Count; i++)
        {
            var leaf = doors.Leaves[i];
            var onFrame = leaf.Hinge switch
            {
                HingeSide.Left => i == 0,
                HingeSide.Right => i == doors.Leaves.Count - 1,
                _ => true,
            };
            var beside = leaf.Hinge switch
            {
                HingeSide.Left when i > 0 => names[i - 1],
                HingeSide.Right when i < names.Count - 1 => names[i + 1],
                _ => null,
            };
            var named = leaf.HingedTo is null ? null
                : int.TryParse(leaf.HingedTo, out var number) && number >= 1 && number <= names.Count ? names[number - 1] : $"leaf.{leaf.HingedTo}";
            if (named is null ? !onFrame : named != beside)
            {
                findings.Add(new(Rules.HingedToNothing, new($"{opening.Id}/{names[i]}", "hinge"),
                    named is null
                        ? (FormattableString)$"It is hinged on its {leaf.Hinge.ToString().ToLowerInvariant()}, where there is no frame."
                        : $"It is hinged to {leaf.HingedTo}, which is not the leaf on that side.",
                    beside is null ? (FormattableString)$"Hinge it to the frame." : $"Hinge it to the frame, or name the leaf beside it: \"hingedTo\": \"{beside[5..]}\"."));
            }
        }
    }

    private (Worked, Worked, Worked?, IReadOnlyList<LeafPlan>) Drawers(DrawerFilling drawers, Worked width, Worked height)
    {
        var count = drawers.Count;
        var step = standard[Settings.Step];
        var leafWidth = width.On(step, Direction).As("front width on the step", "leaf/width");
        var whole = height.On(step, Direction).As(count == 1 ? "front height on the step" : "bank height on the step", count == 1 ? "leaf/height" : "front/height.stepped");
        var gap = LapsOver ? standard[Settings.GapInBank] : standard[Settings.InsetGapOfPair];
        if (!Remains([leafWidth], whole))
            return (width, height, null, []);
        var heights = count == 1 ? [whole] : BankHeights(drawers, whole, gap, step);
        var failed = heights.Any(each => !each.Amount.IsPositive);
        if (failed)
        {
            findings.Add(new(Rules.BankTooTall, Here("filling/heights"),
                $"The bank is {whole} high; its given fronts and gaps leave nothing for the rest.", $"Reduce a given height or the number of fronts."));
            return (width, height, null, []);
        }

        var edges = NaturalEdges;
        var bottom = Bottom();
        Outline = new(edges.Left, bottom, leafWidth.Length, whole.Length);
        var top = bottom + whole.Length;
        var leaves = new List<LeafPlan>();
        for (var i = 0; i < count; i++)
        {
            var segment = count == 1 ? "front.1" : $"front.{i + 1}";
            var place = new Rectangle(edges.Left, top - heights[i].Length, leafWidth.Length, heights[i].Length);
            var code = count == 1 ? "" : LeafNames.Code(segment);
            List<Side> rabbeted = drawers.Mount == Mount.Lipped ? [Side.Left, Side.Right] : [];
            if (drawers.Mount == Mount.Lipped && i == 0)
                rabbeted.Add(Side.Top);
            if (drawers.Mount == Mount.Lipped && i == count - 1)
                rabbeted.Add(Side.Bottom);
            leaves.Add(new($"{opening.Id}/{segment}", $"{Label}{code}", LeafNames.Words(segment, count, HingeSide.None), leafWidth, heights[i], HingeSide.None, true,
                drawers.Design, standard, place, rabbeted)
            { GrainRunsThrough = drawers.GrainRunsThrough });
            top -= heights[i].Length + gap.Length;
        }

        return (width, height, count > 1 ? gap : null, leaves);
    }

    private Worked[] BankHeights(DrawerFilling drawers, Worked whole, Worked gap, Worked step)
    {
        var count = drawers.Count;
        var heights = new Worked?[count];
        var gaps = count == 2 ? gap : (count - 1) * gap;
        var remainderIn = (drawers.RemainderIn ?? (standard.Word(Settings.BankRemainder) == "top" ? 1 : count)) - 1;
        switch (drawers.Heights)
        {
            case GivenHeights given:
                for (var i = 0; i < count; i++)
                {
                    heights[i] = given.Fronts[i].Height is { } entry
                        ? new Given($"bank/front.{i + 1}.height", $"height of front {i + 1}", entry.Value,
                            new(OriginKind.Opening, $"{opening.Id}/filling/heights/fronts/{i + 1}/height")).As("leaf height", "leaf/height")
                        : null;
                }

                remainderIn = Array.IndexOf(heights, null);
                break;
            case ProportionalHeights proportional:
                var sum = proportional.Shares.Sum();
                var available = (whole - gaps).As("height of all fronts", "bank/height");
                for (var i = 0; i < count; i++)
                {
                    heights[i] = i == remainderIn ? null
                        : (available * new Number(proportional.Shares[i]) / sum).On(step, StepDirection.Nearest).As("leaf height", "leaf/height");
                }

                break;
            default:
                var equal = ((whole - gaps) / count).On(step, StepDirection.Nearest).As("leaf height", "leaf/height");
                for (var i = 0; i < count; i++)
                    heights[i] = i == remainderIn ? null : equal;
                break;
        }

        var others = heights.OfType<Worked>().ToList();
        heights[remainderIn] = (whole - Worked.Total(others) - gaps).As("leaf height", "leaf/height");
        return heights!;
    }

    /// <summary>What the edges and corners leave, once every front of the project has its size.</summary>
    public (IReadOnlyList<EdgeReach> Edges, IReadOnlyList<CornerReach> Corners) Left(IReadOnlyDictionary<string, FrontSizing> others)
    {
        var edges = Sides.Select(side =>
        {
            var edge = Site.Edge(side);
            Length? reveal = edge.Beyond switch
            {
                BeyondKind.FrameEdge or BeyondKind.Wall => edge.Member!.Length - ReachOn(side),
                BeyondKind.Opening => edge.Shared!.Length - ReachOn(side) - edge.Neighbours
                    .Select(id => others.TryGetValue(id, out var other) ? other.ReachOn(Opposite(side)) : default)
                    .DefaultIfEmpty().Max(),
                _ => null,
            };
            return new EdgeReach(side, ReachOn(side), reach[side], edge.Beyond, reveal, edge.Neighbours) { Member = edge.Member?.Length };
        }).ToList();
        var figure = Figure!.Corners;
        CornerReach[] corners =
        [
            new(Side.Bottom, Side.Left, figure[0].X - Outline.X, figure[0].Y - Outline.Y),
            new(Side.Bottom, Side.Right, Outline.Right - figure[1].X, figure[1].Y - Outline.Y),
            new(Side.Top, Side.Right, Outline.Right - figure[2].X, Outline.Top - figure[2].Y),
            new(Side.Top, Side.Left, figure[3].X - Outline.X, Outline.Top - figure[3].Y),
        ];
        return (edges, corners);
    }

    /// <summary>How far the front reaches past the used rectangle on that side: overlay when positive, gap when negative. What is asked for, where the opening is not measured.</summary>
    public Length ReachOn(Side side) => side switch
    {
        _ when Figure is null => LapsOver ? reach[side].Length : -reach[side].Length,
        Side.Left => Figure.Offset.X - Outline.X,
        Side.Right => Outline.Right - Figure.Offset.X - Figure.Width.Length,
        Side.Top => Outline.Top - Figure.Offset.Y - Figure.Height.Length,
        _ => Figure.Offset.Y - Outline.Y,
    };

    /// <summary>What was asked for on that side, before the cutting step.</summary>
    public Length AskedOn(Side side) => reach[side].Length;

    public static Side Opposite(Side side) => side switch
    {
        Side.Left => Side.Right,
        Side.Right => Side.Left,
        Side.Top => Side.Bottom,
        _ => Side.Top,
    };
}
