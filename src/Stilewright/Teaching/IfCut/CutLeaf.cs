using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Teaching.Checking;

namespace Stilewright.Teaching.IfCut;

/// <summary>One leaf as a list would have it cut.</summary>
internal sealed partial class CutLeaf
{
    /// <param name="Raw">Told less right, at the stage of the list.</param>
    /// <param name="Allowance">What the stage has over the finished size.</param>
    private sealed record Off(CheckedNumber Number, Length Raw, Length Allowance)
    {
        /// <summary>What of it shows in the finished part: an allowance takes off what is over, and gives what is short.</summary>
        public Length Finished => Made(Raw, Allowance);
    }

    private sealed record LightRow(Part Below, Part Above, IReadOnlyList<Part> Fills, IReadOnlyList<Part> MidStiles, bool IsTop)
    {
        public int Lights => MidStiles.Count + 1;
    }

    private readonly SizedFront front;
    private readonly SizedLeaf leaf;
    private readonly CutStage stage;
    private readonly Dictionary<(string Path, bool IsAcross), Off> offs = [];

    public CutLeaf(CheckedList found, SizedFront front, SizedLeaf leaf)
    {
        (this.front, this.leaf, stage) = (front, leaf, found.List.Stage);
        foreach (var line in found.Lines)
        {
            foreach (var number in line.Numbers.Where(number => number.Measure != ListMeasure.Thickness && number.Standing != NumberStanding.Right && !number.Difference.IsZero))
            {
                // One figure stands for all like pieces of its line.
                foreach (var item in line.Items.Where(item => item.Kind == number.Item.Kind && item.Width.Equals(number.Item.Width) && item.Length.Equals(number.Item.Length)))
                    offs.TryAdd((item.Path, IsAcross(item, number.Measure)), new(number, number.Difference, AllowanceOf(item.Part, number.Measure)));
            }
        }
    }

    private static Length Made(Length raw, Length allowance) =>
        allowance.IsZero ? raw : raw.IsPositive ? default : Length.Least(default, raw + allowance);

    private static bool IsAcross(KeyItem item, ListMeasure measure) => item.Part is { } part ? IsAcross(part, measure) : measure == ListMeasure.Width;

    private static bool IsAcross(Part part, ListMeasure measure) =>
        (part.Kind is PartKind.Rail or PartKind.MidRail || part.Grain == GrainDirection.Horizontal && part.Kind is PartKind.Panel or PartKind.Slab) == (measure == ListMeasure.Length);

    private Length AllowanceOf(Part? part, ListMeasure measure)
    {
        if (part is null)
            return default;
        var (now, finished) = (ListKey.At(part, stage), part.Finished);
        return measure == ListMeasure.Width ? now.Width.Length - finished.Width.Length : now.Length.Length - finished.Length.Length;
    }

    private Length AllowanceOf(Part part, bool isAcross) => AllowanceOf(part, IsAcross(part, ListMeasure.Width) == isAcross ? ListMeasure.Width : ListMeasure.Length);

    private Length Of(Part part, bool isAcross) => offs.GetValueOrDefault((part.Path, isAcross))?.Finished ?? default;

    private Length Raw(Part part, bool isAcross) => offs.GetValueOrDefault((part.Path, isAcross))?.Raw ?? default;

    private List<CheckedNumber> NumbersOf(IEnumerable<Part> parts, bool isAcross) =>
        [.. parts.Select(part => offs.GetValueOrDefault((part.Path, isAcross))?.Number).OfType<CheckedNumber>().Distinct()];

    private IEnumerable<Part> All(params PartKind[] kinds) => leaf.Parts.Where(part => kinds.Contains(part.Kind));

    public IEnumerable<Consequence> Find()
    {
        if (offs.Count == 0)
            return [];
        List<Consequence> found = [];
        Part[] stiles = [.. All(PartKind.Stile).OrderBy(part => part.VisibleBounds.X)];
        Part[] rails = [.. All(PartKind.Rail, PartKind.MidRail).OrderBy(part => part.VisibleBounds.Y)];
        if (All(PartKind.Slab).FirstOrDefault() is { } slab)
        {
            foreach (var isAcross in new[] { true, false })
                AddSize(found, isAcross, Of(slab, isAcross), NumbersOf([slab], isAcross), [slab], SlabLaid(slab, isAcross));
        }
        else if (stiles is [var left, var right] && rails.Length >= 2)
        {
            LightRow[] rows = [.. Rows(rails)];
            Across(found, left, right, rails, rows);
            Upwards(found, left, right, rails, rows);
            Widths(found, rails, rows);
        }

        OwnSizes(found);
        found.AddRange(Allowances());
        return found;
    }

    private IEnumerable<LightRow> Rows(Part[] rails)
    {
        for (var i = 0; i + 1 < rails.Length; i++)
        {
            var (bottom, top) = (rails[i].VisibleBounds.Top, rails[i + 1].VisibleBounds.Y);
            bool IsHere(Part part) => part.VisibleBounds is var seen && seen.Y < top && seen.Top > bottom;
            yield return new(rails[i], rails[i + 1], [.. All(PartKind.Panel, PartKind.Glass).Where(IsHere)],
                [.. All(PartKind.MidStile).Where(IsHere).OrderBy(part => part.VisibleBounds.X)], i + 2 == rails.Length);
        }
    }

    private void Across(List<Consequence> found, Part left, Part right, Part[] rails, LightRow[] rows)
    {
        // Everything between the stiles off by the same makes a leaf of another width that goes together.
        var first = Of(rails[0], true);
        var goesTogether = rails.All(rail => Of(rail, true) == first)
            && rows.All(row => row.Fills.Count == row.Lights && Sum(row.Fills, true) + Sum(row.MidStiles, true) == first);
        var spread = goesTogether ? first : Length.Greatest(default, rails.Max(rail => Of(rail, true)));
        foreach (var group in rails.Where(rail => Of(rail, true) < spread).GroupBy(rail => Of(rail, true)))
            JointsOpen(found, [.. group], rails, left, right, spread, rows);

        // The leaf is trimmed as a whole; a rough blank has its allowance for itself.
        var isTrimmed = stage == CutStage.IntoClamps;
        var (outLeft, outRight) = isTrimmed ? (Raw(left, true), Raw(right, true)) : (Of(left, true), Of(right, true));
        var allowance = isTrimmed ? AllowanceOf(left, true) + AllowanceOf(right, true) : default;
        var change = Made(spread + outLeft + outRight, allowance);
        List<CheckedNumber> numbers = [.. spread.IsZero ? [] : NumbersOf(rails.Where(rail => Of(rail, true) == spread), true), .. NumbersOf([left, right], true)];
        var half = spread / 2;
        var ends = change - spread;
        var (leftEnd, rightEnd) = allowance.IsZero ? (outLeft, outRight) : (ends / 2, ends / 2);
        if (allowance.IsZero || change.IsNegative)
        {
            AddSize(found, true, change, numbers, [.. rails.Where(rail => !Of(rail, true).IsZero), .. new[] { left, right }.Where(stile => !Raw(stile, true).IsZero)],
            [
                In(left) with { Left = new(default, -half - leftEnd), Right = new(left.VisibleBounds.Right, -half) },
                In(right) with { Left = new(right.VisibleBounds.X, half), Right = new(leaf.Width.Length, half + rightEnd) },
                .. rails.Where(rail => rail.VisibleBounds is var box && box.X > default(Length)).Select(rail => Moved(rail, true, -Of(rail, true) / 2, Of(rail, true) / 2)),
                .. goesTogether && rows.All(row => row.Lights == 1) ? rows.SelectMany(row => row.Fills).Select(fill => Moved(fill, true, -half, half)) : [],
            ]);
        }
        else if (!spread.IsZero)
        {
            var wide = Length.Abs(spread);
            found.Add(new(ConsequenceKind.WithinAllowance, leaf, numbers, [left, right], wide / 2,
                $"The leaf goes into the clamps {wide} {(spread.IsPositive ? "wider" : "narrower")} than it should; trimmed to its width, each stile comes out {wide / 2} {(spread.IsPositive ? "narrow" : "wide")}.")
            {
                Faults = [Strip(spread.IsPositive ? FaultKind.Missing : FaultKind.TooMuch, true, default, half), Strip(spread.IsPositive ? FaultKind.Missing : FaultKind.TooMuch, true, leaf.Width.Length, -half)],
            });
        }

        if (allowance.IsZero && outLeft != outRight)
        {
            var off = (outLeft - outRight) / 2;
            found.Add(new(ConsequenceKind.LightOffMiddle, leaf, NumbersOf([left, right], true), [left, right], Length.Abs(off),
                $"The left stile would be {left.VisibleBounds.Width + outLeft:figure} wide and the right one {right.VisibleBounds.Width + outRight}, where {left.VisibleBounds.Width:figure} and {right.VisibleBounds.Width} belong: what they frame sits {Length.Abs(off)} off to the {(off.IsPositive ? "right" : "left")}.")
            {
                Laid = [In(left) with { Left = new(default, -outLeft) }, In(right) with { Right = new(leaf.Width.Length, outRight) }],
                Faults = [.. SideStrips(true, outLeft, outRight)],
            });
        }

        foreach (var stile in new[] { left, right }.Where(stile => !allowance.IsZero && change.IsZero && !Of(stile, true).IsZero))
        {
            var (off, box) = (Of(stile, true), stile.VisibleBounds);
            found.Add(new(ConsequenceKind.MemberWidth, leaf, NumbersOf([stile], true), [stile], Length.Abs(off), $"The {stile.Name} comes out {Length.Abs(off)} narrow, since it has not enough to trim.")
            {
                Laid = [In(stile) with { Left = new(box.X, stile == left ? -off : default), Right = new(box.Right, stile == left ? default : off) }],
                Faults = [new(FaultKind.Missing, true, new(stile == left ? box.X : box.Right, default), new(stile == left ? box.X : box.Right, stile == left ? -off : off), box.Y, box.Top)],
            });
        }

        // Stiles and what is between them make up for one another.
        if (allowance.IsZero && change.IsZero && outLeft == outRight && !outLeft.IsZero)
        {
            var (kind, wide) = (outLeft.IsNegative ? FaultKind.Missing : FaultKind.TooMuch, Length.Abs(outLeft));
            found.Add(new(ConsequenceKind.MemberWidth, leaf, NumbersOf([left, right], true), [left, right], wide,
                $"The stiles show {wide} {(outLeft.IsNegative ? "narrower" : "wider")} than they should, in a leaf of the right width.")
            {
                Laid = [Moved(left, true, default, outLeft), Moved(right, true, -outLeft, default), .. rails.Select(rail => Moved(rail, true, outLeft, -outLeft))],
                Faults =
                [
                    new(kind, true, new(left.VisibleBounds.Right, default), new(left.VisibleBounds.Right, outLeft), default, leaf.Height.Length),
                    new(kind, true, new(right.VisibleBounds.X, default), new(right.VisibleBounds.X, -outLeft), default, leaf.Height.Length),
                ],
            });
        }

        foreach (var row in rows)
        {
            var light = (spread - Sum(row.MidStiles, true)) / row.Lights;
            var causes = NumbersOf([.. spread.IsZero ? [] : rails, .. row.MidStiles], true);
            foreach (var fill in row.Fills)
                Fills(found, fill, true, light, causes, row);
        }
    }

    private Length Sum(IEnumerable<Part> parts, bool isAcross) => parts.Aggregate(default(Length), (sum, part) => sum + Of(part, isAcross));

    private void JointsOpen(List<Consequence> found, IReadOnlyList<Part> shorts, Part[] rails, Part left, Part right, Length spread, LightRow[] rows)
    {
        var off = Of(shorts[0], true);
        var open = (spread - off) / 2;
        var tongue = shorts[0].VisibleBounds.X - shorts[0].Outline.X;
        var isShort = off.IsNegative;
        var numbers = NumbersOf(isShort ? shorts : rails.Where(rail => Of(rail, true) == spread), true);
        if (isShort && !spread.IsZero)
            numbers.AddRange(NumbersOf(rails.Where(rail => Of(rail, true) == spread), true).Except(numbers));
        var by = Length.Abs(off);
        FormattableString holds = !tongue.IsPositive ? (FormattableString)$"" : tongue <= open ? (FormattableString)$", and the tongue does not reach into the groove"
            : $", and {tongue - open} of the tongue is left in the groove instead of {tongue}";
        FormattableString words = (isShort, spread.IsPositive) switch
        {
            (true, true) => (FormattableString)$"The {Names(shorts)} {Is(shorts, "is", "are")} {by} short, and the longer rails hold the stiles apart: each joint there stands open {open}{holds}.",
            (false, _) => $"The longer rails hold the stiles apart: each joint of the {Names(shorts)} stands open {open}{holds}.",
            _ => $"The {Names(shorts)} {Is(shorts, "is", "are")} {by} short: with the stiles in place each joint stands open {open}{holds}; {DrawnUp(shorts, rails, by, rows)}.",
        };
        var half = spread / 2;
        found.Add(new(ConsequenceKind.JointOpen, leaf, numbers, shorts, open, words)
        {
            Working = isShort && spread.IsZero && Single(shorts[0], true) is { } number ? ((number.Right - Told(number)) / 2).As("open at each joint", "ifcut/open") : null,
            Laid =
            [
                .. shorts.Select(rail => Moved(rail, true, -off / 2, off / 2)),
                .. spread.IsZero ? [] : rails.Except(shorts).Select(rail => Moved(rail, true, -Of(rail, true) / 2, Of(rail, true) / 2)),
                .. spread.IsZero ? [] : new[] { Moved(left, true, -half, -half), Moved(right, true, half, half) },
            ],
            Faults =
            [
                .. shorts.SelectMany(rail => rail.VisibleBounds is var box ? new[]
                {
                    new Fault(FaultKind.Open, true, new(box.X, -half), new(box.X, -off / 2), box.Y, box.Top),
                    new Fault(FaultKind.Open, true, new(box.Right, half), new(box.Right, off / 2), box.Y, box.Top),
                } : []),
            ],
        });
    }

    private FormattableString DrawnUp(IReadOnlyList<Part> shorts, Part[] rails, Length by, LightRow[] rows)
    {
        if (shorts.Count < rails.Length)
            return $"drawn up there, the leaf is out of square";
        FormattableString narrow = $"drawn up, the leaf comes out {by} narrow";
        var bottoming = rows.Where(row => row.Lights == 1).SelectMany(row => row.Fills).Select(fill => (Fill: fill, Excess: Of(fill, true) + by - (Play(fill, true) ?? by))).ToList();
        return bottoming.Count > 0 && bottoming.MaxBy(each => each.Excess) is { Excess.IsPositive: true } first
            ? (FormattableString)$"they cannot be drawn up, for the {Noun(first.Fill)} bottoms before they close" : narrow;
    }

    private void Upwards(List<Consequence> found, Part left, Part right, Part[] rails, LightRow[] rows)
    {
        var (tall, other) = (Of(left, false), Of(right, false));
        var change = tall == other ? tall : default;
        if (tall == other)
        {
            var half = change / 2;
            AddSize(found, false, change, NumbersOf([left, right], false), [left, right],
            [
                Moved(left, false, -half, half), Moved(right, false, -half, half),
                Moved(rails[0], false, -half, -half), Moved(rails[^1], false, half, half),
                .. rows.Length == 1 ? rows[0].Fills.Where(fill => Of(fill, false) == change).Select(fill => Moved(fill, false, -half, half)) : [],
            ]);
        }
        else
        {
            foreach (var (stile, off) in new[] { (left, tall), (right, other) }.Where(each => !each.Item2.IsZero))
            {
                var box = stile.VisibleBounds;
                found.Add(new(ConsequenceKind.EndsUneven, leaf, NumbersOf([stile], false), [stile], Length.Abs(off),
                    $"The {stile.Name} ends {Length.Abs(off)} {(off.IsNegative ? "short of" : "above")} the top rail, and the other does not.")
                {
                    Laid = [Moved(stile, false, default, off)],
                    Faults = [new(off.IsNegative ? FaultKind.Missing : FaultKind.TooMuch, false, new(leaf.Height.Length, default), new(leaf.Height.Length, off), box.X, box.Right)],
                });
            }
        }

        foreach (var row in rows)
        {
            // Mid rails keep their height from the bottom; one of another width takes half from either side.
            Length Taken(Part rail) => rail.Kind == PartKind.Rail ? Of(rail, false) : Of(rail, false) / 2;
            var light = (row.IsTop ? change : default) - Taken(row.Below) - Taken(row.Above);
            List<CheckedNumber> causes = [.. NumbersOf([row.Below, row.Above], false), .. row.IsTop && !change.IsZero ? NumbersOf([left, right], false) : []];
            foreach (var fill in row.Fills)
                Fills(found, fill, false, light, causes, row);
            foreach (var group in row.MidStiles.GroupBy(mid => Of(mid, false) - light).Where(group => !group.Key.IsZero))
                MidStiles(found, [.. group], group.Key, causes);
        }
    }

    private void MidStiles(List<Consequence> found, IReadOnlyList<Part> mids, Length over, IReadOnlyList<CheckedNumber> causes)
    {
        var (half, own) = (Length.Abs(over) / 2, NumbersOf(mids, false));
        var kind = over.IsNegative ? ConsequenceKind.JointOpen : ConsequenceKind.HeldApart;
        found.Add(new(kind, leaf, own.Count > 0 ? own : causes, mids, half, over.IsNegative
            ? (FormattableString)$"The {Names(mids)} {Is(mids, "is", "are")} {Length.Abs(over)} too short for the light: each joint stands open {half}."
            : (FormattableString)$"The {Names(mids)} {Is(mids, "is", "are")} {over} too long for the light: {Is(mids, "it holds", "they hold")} the rails {over} too far apart, half at each end.")
        {
            Laid = [.. mids.Select(mid => Moved(mid, false, -over / 2, over / 2))],
            Faults =
            [
                .. mids.SelectMany(mid => mid.VisibleBounds is var box ? new[]
                {
                    new Fault(over.IsNegative ? FaultKind.Open : FaultKind.TooMuch, false, new(box.Y, default), new(box.Y, -over / 2), box.X, box.Right),
                    new Fault(over.IsNegative ? FaultKind.Open : FaultKind.TooMuch, false, new(box.Top, default), new(box.Top, over / 2), box.X, box.Right),
                } : []),
            ],
        });
    }

    // Members between the edges of the leaf: what shows of them, and what an arch leaves.
    private void Widths(List<Consequence> found, Part[] rails, LightRow[] rows)
    {
        foreach (var rail in rails.Where(rail => !Of(rail, false).IsZero))
        {
            var (off, box) = (Of(rail, false), rail.VisibleBounds);
            var isTop = ReferenceEquals(rail, rails[^1]);
            var inner = rail.Kind == PartKind.MidRail ? off / 2 : off;
            LaidPart laid = rail.Kind == PartKind.MidRail ? Moved(rail, false, -inner, inner) : isTop ? Moved(rail, false, -off, default) : Moved(rail, false, default, off);
            var at = isTop || rail.Kind == PartKind.MidRail ? new LaidEdge(box.Y, default) : new LaidEdge(box.Top, default);
            var to = at with { Off = isTop || rail.Kind == PartKind.MidRail ? -inner : off };
            var kind = off.IsNegative ? FaultKind.Missing : FaultKind.TooMuch;
            if (rail.Arch is { } arch)
                Crown(found, rail, arch, off, laid, kind, at, to);
            else
                Shown(found, rail, off, false, laid, [new(kind, false, at, to, box.X, box.Right), .. rail.Kind == PartKind.MidRail ? [new Fault(kind, false, new(box.Top, default), new(box.Top, inner), box.X, box.Right)] : Array.Empty<Fault>()]);
        }

        foreach (var mid in rows.SelectMany(row => row.MidStiles).Where(mid => !Of(mid, true).IsZero))
        {
            var (off, box) = (Of(mid, true), mid.VisibleBounds);
            var kind = off.IsNegative ? FaultKind.Missing : FaultKind.TooMuch;
            Shown(found, mid, off, true, Moved(mid, true, -off / 2, off / 2),
                [new(kind, true, new(box.X, default), new(box.X, -off / 2), box.Y, box.Top), new(kind, true, new(box.Right, default), new(box.Right, off / 2), box.Y, box.Top)]);
        }
    }

    private void Shown(List<Consequence> found, Part part, Length off, bool isAcross, LaidPart laid, IReadOnlyList<Fault> faults) =>
        found.Add(new(ConsequenceKind.MemberWidth, leaf, NumbersOf([part], isAcross), [part], Length.Abs(off),
            $"The {part.Name} shows {Length.Abs(off)} {(off.IsNegative ? "narrower" : "wider")} than it should, and the light beside it is that much {(off.IsNegative ? "larger" : "smaller")}.")
        {
            Laid = [laid],
            Faults = faults,
        });

    private void Crown(List<Consequence> found, Part rail, ArchShape arch, Length off, LaidPart laid, FaultKind kind, LaidEdge at, LaidEdge to)
    {
        var box = rail.VisibleBounds;
        var wood = box.Height + off;
        var third = box.Width / 3;
        var low = arch.OfPair switch { null => box.X + third, { Meeting: Side.Right } => box.Right - third, _ => box.X };
        found.Add(new(wood.IsPositive ? ConsequenceKind.CrownWood : ConsequenceKind.CrownBrokenThrough, leaf, NumbersOf([rail], false), [rail], wood,
            wood.IsPositive
                ? (FormattableString)$"With the arch of {arch.Rise} sawn out, {wood} of wood is left at the crown of the {PlainName(rail)} where {box.Height} belongs."
                : (FormattableString)$"The arch of {arch.Rise} does not go into the {PlainName(rail)}: sawn out, it breaks through the outer edge {(wood.IsZero ? (FormattableString)$"just so" : $"by {-wood}")}, where {box.Height} of wood belongs.")
        {
            Working = Single(rail, false) is { } number ? (Told(number) - arch.Rise).As("wood at the crown", "ifcut/crown") : null,
            Laid = [laid],
            Faults = [new(kind, false, at, to, low, low + third)],
        });
    }

    private void Fills(List<Consequence> found, Part fill, bool isAcross, Length light, IReadOnlyList<CheckedNumber> causes, LightRow row)
    {
        var own = Of(fill, isAcross);
        var over = own - light;
        if (over.IsZero || Play(fill, isAcross) is not { } play || Groove(fill) is not { } groove)
            return;
        List<CheckedNumber> numbers = [.. NumbersOf([fill], isAcross), .. light.IsZero ? [] : causes];
        var depth = groove.Length;
        var rightReach = depth - play;
        var single = light.IsZero ? Single(fill, isAcross) : null;
        var (noun, way) = (Noun(fill), isAcross ? "wide" : "high");
        Worked room = new Given("ifcut/play", "play", play, Origin.Typed);
        FormattableString because = (own.IsZero, light.IsZero) switch
        {
            (true, _) => (FormattableString)$"The {noun} is right, but its light comes out {Length.Abs(light)} {(light.IsNegative ? "smaller" : "larger")}: it",
            (_, true) => $"The {noun} is {Length.Abs(own)} too {(own.IsPositive ? way : isAcross ? "narrow" : "low")}: it",
            _ => $"The {noun}, as cut, is {Length.Abs(over)} too {(over.IsPositive ? "large" : "small")} for the light as cut: it",
        };
        Consequence New(ConsequenceKind kind, Length amount, FormattableString then) => new(kind, leaf, numbers, [fill], amount, $"{because} {then}");
        GrooveFit Fit(Length reach, Length open) => new(fill, isAcross, depth, reach, rightReach, open);
        if (over > play)
        {
            var open = (over - play) / 2;
            found.Add(New(ConsequenceKind.PanelBottoms, open, isAcross
                ? (FormattableString)$"takes up the whole {play} of play and bottoms in the grooves, which holds the joint at each side open {open}."
                : $"takes up the whole {play} of play and bottoms in the grooves, which holds the rails above and below {open} out of place.") with
            {
                Working = single is null ? null : (play.IsZero ? (Told(single) - single.Right) / 2 : (Told(single) - single.Right - room) / 2).As("open at each side", "ifcut/bottoms"),
                Fit = Fit(depth, open),
                Laid = Pushed(fill, isAcross, open, row),
                Faults = Pressed(isAcross, open, row),
            });
            return;
        }

        var left = play - over;
        var reach = depth - left;
        Worked? working = single is null ? null
            : (play.IsZero ? groove - (single.Right - Told(single)) : groove - (room + (single.Right - Told(single)))).As("left in the groove", "ifcut/left");
        if (over.IsPositive)
        {
            found.Add(New(ConsequenceKind.PanelTight, left, left.IsZero ? (FormattableString)$"fills its grooves to the bottom, with no play where {play} belongs: swelling opens the joints."
                : (FormattableString)$"goes in with {left} of play where {play} belongs.") with
            {
                Working = single is null ? null : (room - (Told(single) - single.Right)).As("play left", "ifcut/play.left"),
                Fit = Fit(reach, default),
            });
            return;
        }

        if (reach.IsPositive)
        {
            var shows = reach < play / 2;
            found.Add(New(shows ? ConsequenceKind.PanelShowsLight : ConsequenceKind.PanelLoose, reach, shows
                ? (FormattableString)$"has {left} of play where {play} belongs; slid to one side, only {reach} stays in the groove opposite, and light may show when it shrinks."
                : (FormattableString)$"has {left} of play where {play} belongs; slid to one side, {reach} stays in the groove opposite instead of {rightReach}.") with
            { Working = working, Fit = Fit(reach, default) });
            return;
        }

        found.Add(New(ConsequenceKind.PanelFallsOut, -reach, reach.IsZero ? (FormattableString)$"slides out of the groove opposite when it lies against one side, and falls out."
            : (FormattableString)$"ends {-reach} short of the groove opposite when it lies against one side, and falls out.") with
        {
            Working = working,
            Fit = Fit(reach, default),
            Laid = Short(fill, isAcross, over, out var gaps),
            Faults = gaps,
        });
    }

    // Centred in its light, a panel smaller than that leaves a gap at either side.
    private static LaidPart[] Short(Part fill, bool isAcross, Length over, out IReadOnlyList<Fault> gaps)
    {
        var (seen, whole) = (fill.VisibleBounds, fill.Outline);
        var gap = isAcross ? (seen.Width - whole.Width - over) / 2 : (seen.Height - whole.Height - over) / 2;
        gaps = [];
        if (!gap.IsPositive)
            return [];
        var laid = In(fill);
        gaps = isAcross
            ? [new(FaultKind.Open, true, new(seen.X, default), new(seen.X, gap), seen.Y, seen.Top), new(FaultKind.Open, true, new(seen.Right, default), new(seen.Right, -gap), seen.Y, seen.Top)]
            : [new(FaultKind.Open, false, new(seen.Y, default), new(seen.Y, gap), seen.X, seen.Right), new(FaultKind.Open, false, new(seen.Top, default), new(seen.Top, -gap), seen.X, seen.Right)];
        return isAcross ? [laid with { Left = new(seen.X, gap), Right = new(seen.Right, -gap) }] : [laid with { Bottom = new(seen.Y, gap), Top = new(seen.Top, -gap) }];
    }

    private LaidPart[] Pushed(Part fill, bool isAcross, Length open, LightRow row)
    {
        if (!isAcross)
            return [Moved(fill, false, -open, open), Moved(row.Below, false, -open, -open), Moved(row.Above, false, open, open)];
        var stiles = All(PartKind.Stile).OrderBy(part => part.VisibleBounds.X).ToList();
        return [Moved(fill, true, -open, open), Moved(stiles[0], true, -open, -open), Moved(stiles[^1], true, open, open)];
    }

    // Across, the stiles stand off the shoulders of every rail; upwards, the rails stand past the ends of the stiles or off their places.
    private Fault[] Pressed(bool isAcross, Length open, LightRow row)
    {
        if (isAcross)
        {
            return
            [
                .. All(PartKind.Rail, PartKind.MidRail).SelectMany(rail => rail.VisibleBounds is var box ? new[]
                {
                    new Fault(FaultKind.Open, true, new(InnerLeft, -open), new(InnerLeft, default), box.Y, box.Top),
                    new Fault(FaultKind.Open, true, new(InnerRight, open), new(InnerRight, default), box.Y, box.Top),
                } : []),
            ];
        }

        var (below, above) = (row.Below.VisibleBounds, row.Above.VisibleBounds);
        return
        [
            new(FaultKind.TooMuch, false, new(below.Y, default), new(below.Y, -open), below.X, below.Right),
            new(FaultKind.TooMuch, false, new(above.Top, default), new(above.Top, open), above.X, above.Right),
        ];
    }

    private Length InnerLeft => All(PartKind.Stile).Min(part => part.VisibleBounds.Right);
    private Length InnerRight => All(PartKind.Stile).Max(part => part.VisibleBounds.X);

    private static Given? Groove(Part fill) =>
        new[] { fill.Finished.Width, fill.Finished.Length }.SelectMany(size => size.Distinct()).OfType<Given>().FirstOrDefault(given => given.Key == "cutters/groove.depth");

    /// <summary>What both edges together leave in their grooves, one way; null where no groove is known.</summary>
    private static Length? Play(Part fill, bool isAcross)
    {
        if (Groove(fill) is not { } groove)
            return null;
        var (seen, whole) = (fill.VisibleBounds, fill.Outline);
        return (2 * groove.Length) - (isAcross ? whole.Width - seen.Width : whole.Height - seen.Height);
    }

    // The figure of a part where it alone makes the difference, with nothing to be trimmed.
    private CheckedNumber? Single(Part part, bool isAcross) =>
        offs.GetValueOrDefault((part.Path, isAcross)) is { } off && off.Allowance.IsZero ? off.Number : null;

    private static Given Told(CheckedNumber number) => new("told", "as cut", number.Told.Value, Origin.Typed);

    private static LaidPart In(Part part) => LaidPart.InPlace(part);

    // The low and the high edge moved, one way.
    private static LaidPart Moved(Part part, bool isAcross, Length low, Length high)
    {
        var laid = In(part);
        return isAcross
            ? laid with { Left = laid.Left with { Off = low }, Right = laid.Right with { Off = high } }
            : laid with { Bottom = laid.Bottom with { Off = low }, Top = laid.Top with { Off = high } };
    }

    private static string Noun(Part fill) => fill.Kind == PartKind.Glass ? fill.Name.Replace("glass", "pane", StringComparison.Ordinal) : fill.Name;

    private static string Is(IReadOnlyList<Part> parts, string one, string many) => parts.Count == 1 ? one : many;

    private static string PlainName(Part part) => part.Name.Split(',')[0];

    private static string Names(IReadOnlyList<Part> parts) => parts.Count == 1 ? PlainName(parts[0]) : Plural(parts);

    private static string Plural(IReadOnlyList<Part> parts) => parts[0].Kind switch
    {
        PartKind.Stile => "stiles",
        PartKind.MidStile => "mid stiles",
        PartKind.MidRail when parts.All(part => part.Kind == PartKind.MidRail) => "mid rails",
        PartKind.Panel => "panels",
        PartKind.Glass => "panes",
        _ => "rails",
    };
}
