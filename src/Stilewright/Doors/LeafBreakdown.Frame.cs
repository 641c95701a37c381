using Fractions;
using Stilewright.Curves;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Doors;

internal sealed partial class LeafBreakdown
{
    private Quotient? halved;

    private sealed record Light(int Number, Worked Width, Worked Height, Length X, Length Y, ArchShape? Top, ArchShape? Bottom);

    private sealed record Members(Worked Left, Worked Right, Worked Top, Worked Bottom);

    private void Frame(CutterSet cutters, Stock stock)
    {
        var members = FrameMembers();
        var clearWidth = Width.LessBoth(members.Left, members.Right).As("clear width", "leaf/clear.width");
        var clearHeight = Height.LessBoth(members.Top, members.Bottom).As("clear height", "leaf/clear.height");
        var depth = Cut(cutters, "groove.depth", "groove depth", cutters.GrooveDepth);
        if (!FrameFits(members, clearWidth, clearHeight, cutters, depth))
            return;

        var (joint, reach) = Joint(cutters);
        if (!AcrossPair(design.TopArch, "top", members, clearWidth, out var topPart) | !AcrossPair(design.BottomArch, "bottom", members, clearWidth, out var bottomPart))
            return;
        if (topPart?.Lower is not null || bottomPart?.Lower is not null)
        {
            members = members with { Top = Narrowest(members.Top, topPart, "top"), Bottom = Narrowest(members.Bottom, bottomPart, "bottom") };
            clearHeight = Height.LessBoth(members.Top, members.Bottom).As("clear height", "leaf/clear.height");
        }

        var topRise = topPart?.Rise ?? Rise(design.TopArch, "top", Span(design.TopArch, "top", clearWidth));
        var bottomRise = bottomPart?.Rise ?? Rise(design.BottomArch, "bottom", Span(design.BottomArch, "bottom", clearWidth));
        if (!ArchesFit(topRise, bottomRise, topPart, bottomPart, clearWidth, clearHeight))
            return;
        var topArch = topRise is null ? null : Shape(design.TopArch!, topPart?.Span ?? Span(design.TopArch, "top", clearWidth), topRise, "top") with { OfPair = topPart?.Part };
        var bottomArch = bottomRise is null ? null : Shape(design.BottomArch!, bottomPart?.Span ?? Span(design.BottomArch, "bottom", clearWidth), bottomRise, "bottom") with { OfPair = bottomPart?.Part };
        if (!ArchDraws(topArch, "top") | !ArchDraws(bottomArch, "bottom"))
            return;

        var midRails = MidRailLayout(clearHeight, members, out var lightHeights);
        if (midRails is null || !ArchesClear(topRise, bottomRise, lightHeights))
            return;
        var rows = RowLayout(clearWidth, lightHeights.Count, out var rowWidths);
        if (rows is null || !JointsFit(members, midRails, rows, reach))
            return;

        var railLength = reach is null
            ? Width.LessBoth(members.Left, members.Right).As("rail length", "leaf/rail.length")
            : (Width.LessBoth(members.Left, members.Right) + (2 * reach)).As("rail length", "leaf/rail.length");
        var mitred = design.Construction == Construction.Mitred;
        var shoulder = Shoulder(clearWidth);

        AddOuterMembers(stock, members, clearWidth, railLength, reach, joint, topArch, bottomArch, mitred, shoulder, midRails.Count > 0);

        // From the bottom up: each row of lights, its mid stiles, the mid rail above it.
        var lights = new List<Light>();
        var y = members.Bottom.Length;
        var midStileNumber = 0;
        var midStileCount = rowWidths.Sum(row => row.Count - 1);
        for (var row = 0; row < lightHeights.Count; row++)
        {
            var x = members.Left.Length;
            for (var i = 0; i < rowWidths[row].Count; i++)
            {
                lights.Add(LightAt(lights.Count + 1, x, y, rowWidths[row][i], lightHeights[row],
                    row == lightHeights.Count - 1 ? topArch : null, row == 0 ? bottomArch : null, clearWidth));
                x += rowWidths[row][i].Length;
                if (i < rowWidths[row].Count - 1)
                {
                    midStileNumber++;
                    AddMidStile(stock, midStileNumber, midStileCount, rows[row]!, lightHeights[row], reach, joint, x, y, row, lightHeights.Count, topArch, bottomArch, clearWidth);
                    x += rows[row]!.Length;
                }
            }

            y += lightHeights[row].Length;
            if (row < midRails.Count)
            {
                AddMidRail(stock, row + 1, midRails.Count, midRails[row], railLength, reach, joint, clearWidth, members.Left, y, shoulder);
                y += midRails[row].Length;
            }
        }

        foreach (var light in lights)
            AddFilling(light, lights.Count, cutters, depth);
        CheckPanelCurves(cutters);

        AddCheckSums(members, railLength, reach, mitred, midRails, lightHeights, rows, rowWidths);
        CheckLeaf(midRails.Count > 0, rowWidths.Any(row => row.Count > 1), lights.Count > 1);
        CheckStock(stock, cutters);
        CheckMachines();
        if (design.Lights.Where(choice => choice.Light > lights.Count).ToList() is [var missing, ..])
        {
            Report(Rules.NoSuchLight, $"The design fills light {missing.Light}; this leaf has {lights.Count}.",
                $"Count lights row by row from the bottom left.", "lights");
        }
    }

    // A light wholly under a straight shoulder is clear to the spring line only.
    private Light LightAt(int number, Length x, Length y, Worked width, Worked height, ArchShape? top, ArchShape? bottom, Worked clearWidth)
    {
        if (top is not null && IsUnderShoulder(top, x, width, clearWidth))
        {
            height = (height - top.Rise).As("light height under the shoulder", "leaf/light.shoulder.height");
            top = null;
        }

        if (bottom is not null && IsUnderShoulder(bottom, x, width, clearWidth))
        {
            height = (height - bottom.Rise).As("light height over the shoulder", "leaf/light.shoulder.height");
            y += bottom.Rise.Length;
            bottom = null;
        }

        return new(number, width, height, x, y, top, bottom);
    }

    // An arch across a pair has its shoulders beside the hinge stiles only.
    private bool IsUnderShoulder(ArchShape arch, Length x, Worked width, Worked clearWidth)
    {
        var flat = arch.Shoulder?.Length ?? default;
        return arch.Repeats == 1 && (arch.OfPair?.Meeting != Side.Left && x - FrameLeft + width.Length <= flat
            || arch.OfPair?.Meeting != Side.Right && x - FrameLeft >= clearWidth.Length - flat);
    }

    private Members FrameMembers()
    {
        var stiles = design.Stiles;
        Worked left, right;
        if (stiles is { Hinge: { } hingeEntry, Pull: { } pullEntry })
        {
            var hinge = Entered("stile.hinge.width", "hinge stile width", hingeEntry, "stiles/hinge");
            var pull = Entered("stile.pull.width", "pull stile width", pullEntry, "stiles/pull");
            (left, right) = plan.Hinge == HingeSide.Right ? (pull, hinge) : (hinge, pull);
            if (plan.Hinge is not (HingeSide.Left or HingeSide.Right) && hingeEntry.Value != pullEntry.Value)
            {
                Report(Rules.StilesWithoutHand,
                    $"Its stiles are {hingeEntry.Value} at the hinges and {pullEntry.Value} at the pull, but it has no hinges left or right; the left stile is taken as the hinge stile.",
                    $"Give this leaf a design with equal stiles.", "stiles");
            }
        }
        else
        {
            left = right = Entered("stile.width", "stile width", stiles?.Both, "stiles/both", Settings.Stile);
        }

        if (plan.NarrowStile is { } narrow)
        {
            if (narrow.Side == Side.Left)
                left = (left - narrow.Loss).As("stile beside the face frame", "leaf/stile.frame.width");
            else
                right = (right - narrow.Loss).As("stile beside the face frame", "leaf/stile.frame.width");
        }

        Worked top, bottom;
        if (design.TopRail is null && design.BottomRail is null)
            top = bottom = standard[Settings.Rail];
        else if (design.TopRail == design.BottomRail)
            top = bottom = Entered("rail.width", "rail width", design.TopRail!.Value, "topRail");
        else
        {
            top = Entered("rail.top.width", "top rail width", design.TopRail, "topRail", Settings.Rail);
            bottom = Entered("rail.bottom.width", "bottom rail width", design.BottomRail, "bottomRail", Settings.Rail);
        }

        return new(left, right, top, bottom);
    }

    private (EdgeWork Joint, Worked? Reach) Joint(CutterSet cutters) => design.Construction switch
    {
        Construction.MortiseAndTenon => (EdgeWork.TenonBothEnds, Entered("tenon.length", "tenon length", design.Tenon, "tenon", Settings.Tenon)),
        // A butted rail ends at its shoulder, so it reaches past the sight line by what is cut back there.
        Construction.Dowelled => (EdgeWork.DowelBothEnds, CutBack()),
        Construction.LooseTenon => (EdgeWork.LooseTenonBothEnds, CutBack()),
        _ => (EdgeWork.CopeBothEnds, Cut(cutters, "cope.length", "cope length", cutters.CopeLength)),
    };

    // Moulding cut back at the joint lets the shoulder pass the sight line on each side.
    private Worked? Shoulder(Worked clearWidth) =>
        (design.Construction is Construction.MortiseAndTenon or Construction.Dowelled or Construction.LooseTenon) && CutBack() is { } cutBack
            ? (clearWidth + (2 * cutBack)).As("shoulder to shoulder", "leaf/rail.shoulder")
            : clearWidth;

    private Worked? CutBack() => design.CutBack is { Value.IsZero: false } cutBack ? Entered("joint.cut-back", "moulding cut back", cutBack, "cutBack") : null;

    // Sight line to sight line: of the leaf, or of the narrowest light where each has its own arch, so that one curve serves all.
    private Worked Span(Arch? arch, string end, Worked clearWidth)
    {
        if (arch is not { PerLight: true } || MidStilesUnder(end) is not { } row)
            return clearWidth;
        var (_, each, rest) = LightWidths(row, clearWidth);
        return rest.Length < each.Length ? rest : each;
    }

    private MidStileRow? MidStilesUnder(string end)
    {
        var rows = (design.MidRails is null ? 0 : design.MidRails.Places.Count > 0 ? design.MidRails.Places.Count : design.MidRails.Count ?? 0) + 1;
        return design.MidStiles.FirstOrDefault(each => each.Row == (end == "top" ? rows : 1));
    }

    private Worked? Rise(Arch? arch, string end, Worked span)
    {
        if (arch is null)
            return null;
        if (arch.Family == ArchFamily.HalfRound)
        {
            var shoulder = arch.Shoulder is { } flat && !flat.Value.IsZero ? Entered($"arch.{end}.shoulder", "shoulder", flat, $"{end}Arch/shoulder") : null;
            return ((shoulder is null ? span : span - (2 * shoulder)) / 2).As("rise", $"leaf/arch.{end}.rise");
        }

        if (arch.Family == ArchFamily.Drawn)
        {
            return CurveOf(arch, end) is not { Chain: not null } drawn ? null : standard.Once(design.Id, $"{end}Arch/curve/rise", () =>
                new Given($"leaf/arch.{end}.rise", "rise of the drawn curve", drawn.Rise, new(OriginKind.Design, $"design/{design.Id}/{end}Arch/curve")));
        }

        return arch.Rise is { } rise ? Entered($"arch.{end}.rise", "rise", rise, $"{end}Arch/rise") : null;
    }

    private void AddOuterMembers(
        Stock stock, Members members, Worked clearWidth, Worked railLength, Worked? reach, EdgeWork joint,
        ArchShape? topArch, ArchShape? bottomArch, bool mitred, Worked? shoulder, bool hasMidRails)
    {
        var (trimWidth, trimHeight) = Trim(mitred);
        var (w, h) = (Width.Length, Height.Length);
        var (l, r, t, b) = (members.Left.Length, members.Right.Length, members.Top.Length, members.Bottom.Length);
        IReadOnlyList<EdgeWork> stileWork = mitred ? [EdgeWork.StickInnerEdge, EdgeWork.MitreBothEnds] : design.Construction switch
        {
            Construction.MortiseAndTenon => [EdgeWork.StickInnerEdge, EdgeWork.MortiseForRails],
            Construction.Dowelled => [EdgeWork.StickInnerEdge, EdgeWork.BoreForDowels],
            Construction.LooseTenon => [EdgeWork.StickInnerEdge, EdgeWork.MortiseForLooseTenons],
            _ => [EdgeWork.StickInnerEdge],
        };
        // Joints cut at places along a stile make left and right unlike unless the leaf is the same both ways up.
        var placed = design.Construction is Construction.MortiseAndTenon or Construction.Dowelled or Construction.LooseTenon
            || mitred && hasMidRails;
        var handed = placed && !SameBothWaysUp(members);

        PartSize StileGlueUp(Worked width) => new(
            Grown(width, trimWidth, "stile width into the clamps", "leaf/stile.width.glue"),
            Plus(Height, trimHeight, "stile length into the clamps", "leaf/stile.length.glue"));
        var faceDown = standard.Standard.Cutter(design.Cutters!)!.FaceDown;
        var leftGlueUp = StileGlueUp(members.Left);
        var leftFinished = new PartSize(members.Left, Height);
        var alike = members.Left.Equals(members.Right);

        foreach (var side in new[] { Side.Left, Side.Right })
        {
            var isLeft = side == Side.Left;
            var width = isLeft ? members.Left : members.Right;
            var name = isLeft ? "left stile" : "right stile";
            var visible = mitred
                ? isLeft
                    ? (Point[])[new(default, default), new(l, b), new(l, h - t), new(default, h)]
                    : [new(w, default), new(w, h), new(w - r, h - t), new(w - r, b)]
                : new Rectangle(isLeft ? default : w - r, default, width.Length, h).Corners;
            Add(isLeft ? "stile.left" : "stile.right", isLeft ? "LS" : "RS", PartKind.Stile, name, design.Species, stock,
                isLeft || alike ? leftFinished : new(width, Height), isLeft || alike ? leftGlueUp : StileGlueUp(width),
                true, GrainDirection.Vertical, faceDown, stileWork, handed ? side : null, null, null,
                new(isLeft ? default : w - r, default, width.Length, h), visible);
        }

        foreach (var end in new[] { Side.Top, Side.Bottom })
        {
            var isTop = end == Side.Top;
            var narrow = isTop ? members.Top : members.Bottom;
            var shape = isTop ? topArch : bottomArch;
            var rise = shape?.Rise;
            var label = isTop ? "top rail" : "bottom rail";
            var key = isTop ? "rail.top" : "rail.bottom";
            var width = rise is null ? narrow : (narrow + rise).As($"{label} width, arched blank", $"leaf/{key}.width.blank");
            var length = mitred ? Width : railLength;
            List<EdgeWork> work = [mitred ? EdgeWork.MitreBothEnds : joint];
            if (rise is not null)
                work.Add(EdgeWork.SawArch);
            work.Add(EdgeWork.StickInnerEdge);
            var glueUp = mitred
                ? new PartSize(Grown(width, trimHeight, $"{label} width into the clamps", $"leaf/{key}.width.glue"),
                    Plus(length, trimWidth, "rail length into the clamps, long point to long point", $"leaf/{key}.length.glue"))
                : new PartSize(Grown(width, trimHeight, $"{label} width into the clamps", $"leaf/{key}.width.glue"), length);
            var extent = reach?.Length ?? default;
            var outline = mitred
                ? new Rectangle(default, isTop ? h - t : default, w, t)
                : new Rectangle(l - extent, isTop ? h - width.Length : default, railLength.Length, width.Length);
            if (mitred)
                outline = outline with { Height = narrow.Length };
            var visible = mitred
                ? isTop
                    ? (Point[])[new(default, h), new(l, h - t), new(w - r, h - t), new(w, h)]
                    : [new(default, default), new(w, default), new(w - r, b), new(l, b)]
                : new Rectangle(l, isTop ? h - t : default, w - l - r, narrow.Length).Corners;
            Add(key, isTop ? "TR" : "BR", PartKind.Rail, rise is null ? label : $"{label}, arched", design.Species, stock,
                new(width, length), glueUp, true, GrainDirection.Horizontal, standard.Standard.Cutter(design.Cutters!)!.FaceDown, work, HandOf(shape), shape,
                mitred ? null : shoulder, outline, visible);
            if (shape is not null)
            {
                CheckCrown(narrow, key, label);
                CheckBlank(parts[^1], shape, stock, isTop ? "top" : "bottom", key);
                CheckRailCurve(shape, isTop ? "top" : "bottom", key, reach);
                CheckRack(shape, isTop ? "top" : "bottom", key);
            }
        }
    }

    private bool SameBothWaysUp(Members members) =>
        members.Top.Length == members.Bottom.Length && design.TopArch is null && design.BottomArch is null
        && (design.MidRails is null || design.MidRails.Places.Count == 0 && design.MidRails.Count == 1 && !LeavesRemainder);

    // One mid rail is in the middle only when the cutting step leaves nothing over.
    private bool LeavesRemainder { get; set; }

    // A drawn curve goes by the hinges, as stile widths do; across a pair it is one curve, seen as it was drawn.
    private ArchShape Shape(Arch arch, Worked span, Worked rise, string end) => new(
        arch.Family, span, rise,
        arch.Shoulder is { } shoulder ? Entered($"arch.{end}.shoulder", "shoulder", shoulder, $"{end}Arch/shoulder") : null,
        arch.PerLight && !IsAcross(arch) ? (MidStilesUnder(end)?.Count ?? 0) + 1 : 1)
    {
        ReverseToCrown = arch.ReverseToCrown is { } ratio ? new(ratio.Reverse, ratio.Crown) : Fraction.One,
        Drawn = arch.Family != ArchFamily.Drawn ? null : plan.Hinge == HingeSide.Right && !IsAcross(arch) ? CurveOf(arch, end).Mirrored : CurveOf(arch, end).Chain,
    };

    private bool IsAcross(Arch arch) => arch.AcrossPair is not null && plan.Mate is not null;

    // Parts whose mirror image is another part.
    private Side? HandOf(ArchShape? shape) => shape switch
    {
        { OfPair: { } part } => part.Meeting == Side.Right ? Side.Left : Side.Right,
        { Drawn: { } chain } when !DrawnCurve.IsSymmetric(chain) => plan.Hinge == HingeSide.Right ? Side.Right : Side.Left,
        _ => null,
    };

    private DrawnCurve CurveOf(Arch arch, string end) =>
        standard.Once(design.Id, $"{end}Arch/curve", () => DrawnCurve.Of(arch.Curve ?? []));

    private Worked Grown(Worked width, Worked trim, string label, string key) =>
        trim.Amount.IsZero ? width : (width + Half(trim)).As(label, key);

    private Worked Half(Worked trim) =>
        ReferenceEquals(trim, halved?.Left) ? halved! : halved = new Quotient(trim, standard.Once("numbers", "2", () => new Number(2)));

    private (Worked Width, Worked Height) Trim(bool mitred)
    {
        var (width, height) = (standard[Settings.TrimWidth], standard[Settings.TrimHeight]);
        if (!mitred || width.Length == height.Length)
            return mitred ? (width, width) : (width, height);
        Report(Rules.UnequalTrim,
            $"Its trim allowances are {width} on width and {height} on height; the greater is used both ways.",
            $"Give both the same allowance.", "overrides/trim.width");
        var one = new Chosen("a mitred frame is trimmed alike on all edges",
            width.Length > height.Length ? width : height, width.Length > height.Length ? height : width).As("trim allowance", "leaf/trim");
        return (one, one);
    }

    private void AddMidRail(
        Stock stock, int number, int count, Worked width, Worked railLength, Worked? reach, EdgeWork joint, Worked clearWidth, Worked leftStile, Length y, Worked? shoulder)
    {
        var extent = reach?.Length ?? default;
        Add(count == 1 ? "rail.mid" : $"rail.mid.{number}", count == 1 ? "MR" : $"MR{number}", PartKind.MidRail,
            count == 1 ? "mid rail" : $"mid rail {number} from the bottom", design.Species, stock,
            new(width, railLength), new(width, railLength), true, GrainDirection.Horizontal, standard.Standard.Cutter(design.Cutters!)!.FaceDown,
            [joint, EdgeWork.StickBothEdges], null, null, shoulder,
            new(leftStile.Length - extent, y, railLength.Length, width.Length),
            new Rectangle(leftStile.Length, y, clearWidth.Length, width.Length).Corners);
    }

    private void AddMidStile(
        Stock stock, int number, int count, Worked width, Worked lightHeight, Worked? reach, EdgeWork joint, Length x, Length y,
        int row, int rowCount, ArchShape? topArch, ArchShape? bottomArch, Worked clearWidth)
    {
        var segment = count == 1 ? "stile.mid" : $"stile.mid.{number}";
        var height = lightHeight;
        var bottom = y;
        // Under an arch the mid stile stands where the rail is straight, at the spring line.
        if (row == rowCount - 1 && topArch is not null)
        {
            CheckMidStile(topArch, "top", segment, x, width, clearWidth);
            height -= topArch.Rise;
        }

        if (row == 0 && bottomArch is not null)
        {
            CheckMidStile(bottomArch, "bottom", segment, x, width, clearWidth);
            height -= bottomArch.Rise;
            bottom += bottomArch.Rise.Length;
        }

        var length = (reach is null ? height : height + (2 * reach)).As("mid stile length", $"leaf/{segment}.length");
        var extent = reach?.Length ?? default;
        Add(segment, count == 1 ? "MS" : $"MS{number}", PartKind.MidStile, count == 1 ? "mid stile" : $"mid stile {number} from the bottom left", design.Species, stock,
            new(width, length), new(width, length), true, GrainDirection.Vertical, standard.Standard.Cutter(design.Cutters!)!.FaceDown,
            [joint, EdgeWork.StickBothEdges], null, null, height,
            new(x, bottom - extent, width.Length, length.Length),
            new Rectangle(x, y, width.Length, lightHeight.Length).Corners);
    }

    // Widths of the mid rails from the bottom up, and the clear heights of the rows of lights; null where they do not fit.
    private List<Worked>? MidRailLayout(Worked clearHeight, Members members, out List<Worked> lightHeights)
    {
        lightHeights = [];
        if (design.MidRails is not { } midRails)
        {
            lightHeights.Add(clearHeight);
            return [];
        }

        var usual = Entered("rail.mid.width", "mid rail width", midRails.Width, "midRails/width", Settings.MidRail);
        var step = standard[Settings.Step];
        if (midRails.Places.Count == 0)
        {
            var count = midRails.Count ?? 1;
            var rails = Enumerable.Repeat(usual, count).ToList();
            var free = clearHeight - Worked.Total(rails);
            var each = (free / (count + 1)).On(step, StepDirection.Nearest).As("light height", "leaf/light.height");
            var rest = (free - (count == 1 ? each : count * each)).As("light height with the remainder", "leaf/light.remainder.height");
            LeavesRemainder = rest.Amount != each.Amount;
            if (!LeavesRemainder)
                rest = each;
            var bottomTakes = standard.Word(Settings.LightRemainder) == "bottom";
            for (var i = 0; i <= count; i++)
                lightHeights.Add(i == (bottomTakes ? 0 : count) ? rest : each);
            return LightsFit(lightHeights) ? rails : null;
        }

        var widths = new List<Worked>();
        Worked below = members.Bottom;
        for (var i = 0; i < midRails.Places.Count; i++)
        {
            var place = midRails.Places[i];
            var width = place.Width is { } own ? Entered($"rail.mid.{i + 1}.width", "mid rail width", own, $"midRails/places/{i + 1}/width") : usual;
            var height = Entered($"rail.mid.{i + 1}.height", place.To switch
            {
                MeasuredTo.Centre => "height of the mid rail's centre",
                MeasuredTo.TopEdge => "height of the mid rail's top edge",
                _ => "height of the mid rail's bottom edge",
            }, place.Height, $"midRails/places/{i + 1}/height");
            var bottomEdge = (place.To switch
            {
                MeasuredTo.Centre => height - (width / 2),
                MeasuredTo.TopEdge => height - width,
                _ => (Worked)height,
            }).As("bottom edge of the mid rail", $"leaf/rail.mid.{i + 1}.bottom");
            lightHeights.Add((bottomEdge - below).As("light height", $"leaf/light.{i + 1}.height"));
            below = (bottomEdge + width).As("top edge of the mid rail", $"leaf/rail.mid.{i + 1}.top");
            widths.Add(width);
        }

        lightHeights.Add((Height - members.Top - below).As("light height", $"leaf/light.{midRails.Places.Count + 1}.height"));
        return LightsFit(lightHeights) ? widths : null;

        bool LightsFit(List<Worked> heights)
        {
            var bad = heights.FindIndex(height => !height.Amount.IsPositive);
            if (bad < 0)
            {
                var least = standard[Settings.LeastLight];
                var low = heights.FindIndex(height => height.Length < least.Length);
                if (low < 0)
                    return true;
                Report(Rules.LightTooSmall, $"Row {low + 1} of lights, counted from the bottom, comes to {heights[low].Length}; the standard's least is {least}.",
                    $"Move or narrow the mid rails.", "midRails");
                return false;
            }

            Report(Rules.MidRailMisplaced, $"Row {bad + 1} of lights, counted from the bottom, comes to {heights[bad].Length}.",
                $"Move or narrow the mid rails; the leaf is clear by {clearHeight.Length} between its outer rails.", "midRails");
            return false;
        }
    }

    // Width of the mid stiles of each row (null without), and the clear widths of its lights; null where they do not fit.
    private List<Worked?>? RowLayout(Worked clearWidth, int rowCount, out List<List<Worked>> rowWidths)
    {
        rowWidths = [];
        var rows = new List<Worked?>();
        if (design.MidStiles.FirstOrDefault(row => row.Row > rowCount) is { } missing)
        {
            Report(Rules.NoSuchLight, $"The design divides row {missing.Row} of lights; this leaf has {rowCount}.", $"Count rows from the bottom.", "midStiles");
            return null;
        }

        for (var row = 0; row < rowCount; row++)
        {
            if (design.MidStiles.FirstOrDefault(each => each.Row == row + 1) is not { } divided)
            {
                rows.Add(null);
                rowWidths.Add([clearWidth]);
                continue;
            }

            var (width, each, rest) = LightWidths(divided, clearWidth);
            if (Length.Least(each.Length, rest.Length) is var narrowest && narrowest < standard[Settings.LeastLight].Length)
            {
                Report(Rules.LightTooSmall, $"The lights of row {row + 1} come to {narrowest} in width; the standard's least is {standard[Settings.LeastLight]}.",
                    $"Use fewer or narrower mid stiles.", "midStiles");
                return null;
            }

            // The light beside the hinges takes what the step leaves over, so that a pair is mirrored.
            var first = plan.Hinge == HingeSide.Right ? divided.Count : 0;
            rowWidths.Add([.. Enumerable.Range(0, divided.Count + 1).Select(i => i == first ? rest : each)]);
            rows.Add(width);
        }

        return rows;
    }

    // The mid stiles' own width, that of every light but one, and that of the one which takes what the step leaves over.
    private (Worked MidStile, Worked Each, Worked Remainder) LightWidths(MidStileRow row, Worked clearWidth)
    {
        var width = Entered("stile.mid.width", "mid stile width", row.Width, $"midStiles/{row.Row}/width", Settings.MidStile);
        var free = clearWidth - (row.Count == 1 ? width : row.Count * width);
        var each = (free / (row.Count + 1)).On(standard[Settings.Step], StepDirection.Nearest).As("light width", $"leaf/row.{row.Row}.light.width");
        var rest = (free - (row.Count == 1 ? each : row.Count * each)).As("light width with the remainder", $"leaf/row.{row.Row}.light.remainder.width");
        return (width, each, rest.Amount == each.Amount ? each : rest);
    }

    private void AddFilling(Light light, int lightCount, CutterSet cutters, Worked depth)
    {
        var filling = design.Lights.FirstOrDefault(choice => choice.Light == light.Number)?.Filling ?? design.Panel;
        if (filling is null || filling.Kind == PanelKind.Open)
            return;
        var suffix = lightCount == 1 ? "" : $".{light.Number}";
        var number = lightCount == 1 ? "" : $"{light.Number}";
        var ofMany = lightCount == 1 ? "" : $" of light {light.Number}";
        var visible = new Rectangle(light.X, light.Y, light.Width.Length, light.Height.Length);

        if (filling.Kind == PanelKind.Glass)
        {
            var clearance = standard[Settings.GlassClearance];
            Worked Pane(Worked clear, string measure) => (clear + (2 * depth) - clearance)
                .On(standard[Settings.Step], StepDirection.Down).As($"glass {measure}", $"leaf/glass{suffix}.{measure}");
            var size = new PartSize(Pane(light.Width, "width"), Pane(light.Height, "height"));
            Add($"glass{suffix}", $"G{number}", PartKind.Glass, $"glass{ofMany}", filling.SafetyGlazing ?? "glass", null, size, size, false,
                null, null, [], null, null, null, Centred(visible, size.Width.Length, size.Length.Length), visible.Corners);
            Arch(light);
            if (string.IsNullOrWhiteSpace(filling.SafetyGlazing))
            {
                Report(Rules.NoSafetyGlazing, $"Nothing says whether this pane is safety glazing.",
                    $"Decide and note it; tempered glass must be ordered to size. Ask the local official.", "safetyGlazing", $"glass{suffix}");
            }

            return;
        }

        var stock = filling.Stock is null ? null : standard.Standard.StockOf(filling.Stock);
        if (stock is null)
        {
            Report(Rules.DesignMissing, $"The panel{ofMany} names stock that the house standard does not have.", $"Name stock of the standard.", "panel/stock");
            return;
        }

        var sheet = filling.Kind == PanelKind.FlatSheet;
        var grain = GrainOr(filling.Grain);
        var upright = grain == GrainDirection.Vertical;
        var material = filling.Species ?? design.Species;
        var segment = $"panel{suffix}";
        var wood = sheet ? null : WoodOf(material, segment);
        var clearAcross = upright ? light.Width : light.Height;
        var bySeason = SeasonWidth(wood, clearAcross, depth);
        var across = sheet ? filling.GluedIn ? null : standard[Settings.SheetClearance]
            : bySeason is null ? standard[Settings.ClearanceAcross]
            : ((clearAcross + (2 * depth) - bySeason) / 2).As("clearance across the grain, by season", $"leaf/panel{suffix}.clearance-across");
        var along = sheet ? across : standard[Settings.ClearanceAlong];
        var (sides, ends) = upright ? (across, along) : (along, across);
        var atArch = sheet || light.Top is null && light.Bottom is null ? null : standard.LengthOrWord(Settings.ClearanceAtArch);
        var bottom = light.Bottom is null ? ends : atArch ?? ends;
        var top = light.Top is null ? ends : atArch ?? ends;
        Worked Size(Worked clear, Worked? one, Worked? other, string measure)
        {
            var full = clear + (2 * depth);
            return ((Some(one), Some(other)) switch
            {
                ({ } first, { } second) => full.LessBoth(first, second),
                (null, null) => full,
                var (first, second) => full - (first ?? second!),
            }).As($"panel {measure}", $"leaf/panel{suffix}.{measure}");
        }

        static Worked? Some(Worked? play) => play is { Amount.IsZero: false } ? play : null;

        // By season the width comes first and its clearance follows, unless an arch has a clearance of its own.
        var horizontal = upright && bySeason is not null ? bySeason.As("panel width", $"leaf/panel{suffix}.width") : Size(light.Width, sides, sides, "width");
        var vertical = !upright && bySeason is not null && ReferenceEquals(bottom, top) ? bySeason.As("panel height", $"leaf/panel{suffix}.height") : Size(light.Height, bottom, top, "height");
        var finished = upright ? new PartSize(horizontal, vertical) : new PartSize(vertical, horizontal);
        IReadOnlyList<EdgeWork> work = filling.Kind == PanelKind.Raised ? [EdgeWork.JoinStaves, EdgeWork.RaiseFourEdges] : sheet ? [] : [EdgeWork.JoinStaves];
        Add(segment, $"P{number}", PartKind.Panel, filling.Kind switch
        {
            PanelKind.Raised => $"raised panel{ofMany}",
            PanelKind.FlatSheet => $"sheet panel{ofMany}",
            _ => $"flat panel{ofMany}",
        }, material, stock, finished, finished, !sheet, grain, filling.Kind == PanelKind.Raised ? cutters.FaceDown : null, work, null, null, null,
            new(visible.X - Into(sides), visible.Y - Into(bottom), horizontal.Length, vertical.Length), visible.Corners);
        Arch(light);
        if (!sheet)
        {
            parts[^1] = parts[^1] with
            {
                Groove = new(clearAcross, depth,
                    filling.Kind != PanelKind.Raised || cutters.RaiseWidth is null ? null
                        : cutters.TongueFlat is { } flat ? Cut(cutters, "tongue.flat", "tongue flat", flat) : depth,
                    standard[Settings.MidStile]),
            };
            if (filling.GluedIn)
            {
                Report(Rules.GluedAcross, $"A solid panel is to be glued into its groove, where it wants to move{(wood is null ? (FormattableString)$"" : $" by {Rounded(finished.Width.Amount * (wood.Swelling.Amount + wood.Shrinking.Amount))} over the year")}.",
                    $"Let it float, with one dab of glue or a pin in the middle of its width at most; or use sheet.", "panel/gluedIn", segment);
            }

            if (wood is not null)
                CheckFit(parts[^1], wood, segment);
        }

        CheckPanel(filling, segment, finished, horizontal, vertical, cutters, depth, across, along, atArch);

        Length Into(Worked? play) => depth.Length - (play?.Length ?? default);
    }

    // The part added last takes the curves of its light.
    private void Arch(Light light)
    {
        if (light.Top is not null || light.Bottom is not null)
        {
            // A pane has no face of its own, and may be turned over.
            var hand = parts[^1].Kind == PartKind.Glass ? null : HandOf(light.Top) ?? HandOf(light.Bottom);
            parts[^1] = parts[^1] with { TopArch = light.Top, BottomArch = light.Bottom, Hand = hand };
        }
    }

    private static Rectangle Centred(Rectangle visible, Length width, Length height) => new(
        visible.X + ((visible.Width - width) / 2), visible.Y + ((visible.Height - height) / 2), width, height);

    private void AddCheckSums(
        Members members, Worked railLength, Worked? reach, bool mitred, List<Worked> midRails, List<Worked> lightHeights,
        List<Worked?> rows, List<List<Worked>> rowWidths)
    {
        for (var row = 0; row < rowWidths.Count; row++)
        {
            List<Worked> terms = [members.Left];
            for (var i = 0; i < rowWidths[row].Count; i++)
            {
                if (i > 0)
                    terms.Add(rows[row]!);
                terms.Add(rowWidths[row][i]);
            }

            terms.Add(members.Right);
            checkSums.Add(new(rowWidths.Count == 1 ? "across" : $"across row {row + 1}", terms, Width));
        }

        if (!mitred)
        {
            var between = (reach is null ? railLength : railLength - (2 * reach)).As("rail between its shoulders", "leaf/rail.between");
            checkSums.Add(new("across a rail", [members.Left, between, members.Right], Width));
        }

        List<Worked> column = [members.Bottom];
        for (var row = 0; row < lightHeights.Count; row++)
        {
            column.Add(lightHeights[row]);
            if (row < midRails.Count)
                column.Add(midRails[row]);
        }

        column.Add(members.Top);
        checkSums.Add(new("upwards", column, Height));
    }
}
