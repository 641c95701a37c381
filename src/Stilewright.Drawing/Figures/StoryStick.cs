using Stilewright.Doors;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Figures;

/// <summary>Sticks of a leaf at full size, across and up, marked wherever a maker marks from.</summary>
/// <remarks>A mark stands exactly at its distance from the zero end; its words may stand beside it, tied to it by a leader.</remarks>
public static class StoryStick
{
    private const double MarkHeight = 7;
    private const double FanHeight = 5;
    private const double Air = 1;
    private const double Overlap = 20;
    private const double CrossReach = 3;
    private static readonly TextStyle TitleStyle = new(2.5, Weight.Strong);
    // From the comfortable to the dense: type size and height of the words' field.
    private static readonly (double Size, double Field)[] Densities = [(2.5, 18), (2.2, 18), (2.2, 30), (2.2, 45)];

    /// <summary>Whole sticks: across the leaf, then up it.</summary>
    public static IReadOnlyList<Scene> Draw(SizedLeaf leaf, LeafDetail detail, LengthFormat format) =>
        [Whole(leaf, detail, format, StickDirection.Across), Whole(leaf, detail, format, StickDirection.Up)];

    /// <summary>The sticks cut into strips for sheets of paper; neighbours overlap and are laid cross on cross.</summary>
    /// <param name="usableLengthMillimetres">The longest strip; 60 mm and more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="usableLengthMillimetres"/> is less than 60 mm.</exception>
    public static IReadOnlyList<Scene> Strips(SizedLeaf leaf, LeafDetail detail, LengthFormat format, double usableLengthMillimetres)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(usableLengthMillimetres, 60);
        List<Scene> strips = [];
        foreach (var direction in new[] { StickDirection.Across, StickDirection.Up })
        {
            var length = Scale.FullSize.OnPaper(LengthOf(leaf, direction));
            var piece = usableLengthMillimetres - 4 * Air;
            var count = length <= piece ? 1 : 1 + (int)Math.Ceiling((length - piece) / (piece - Overlap));
            for (var i = 0; i < count; i++)
            {
                var from = i * (piece - Overlap);
                strips.Add(Strip(leaf, detail, format, direction, from, Math.Min(from + piece, length), i, count));
            }
        }

        return strips;
    }

    /// <summary>Where a stick of the leaf is marked, from its zero end on.</summary>
    public static IReadOnlyList<StoryMark> Marks(SizedLeaf leaf, LeafDetail detail, StickDirection direction)
    {
        var isAcross = direction == StickDirection.Across;
        List<(Length At, string What, string Who, string Kind, bool IsHidden)> places = [];
        void Mark(Length at, string what, string who, string kind, bool isHidden = false) => places.Add((at, what, who, kind, isHidden));

        var whole = LengthOf(leaf, direction);
        Mark(default, isAcross ? "left edge" : "bottom edge", "", "");
        Mark(whole, isAcross ? "right edge" : "top edge", "", "");
        foreach (var (side, width) in detail.Rabbets.Concat(detail.Laps))
        {
            if ((side is Side.Left or Side.Right) == isAcross)
                Mark(side is Side.Left or Side.Bottom ? width : whole - width, "rabbet", "", "");
        }

        foreach (var part in leaf.Parts)
        {
            var seen = isAcross ? (part.VisibleBounds.X, part.VisibleBounds.Right) : (part.VisibleBounds.Y, part.VisibleBounds.Top);
            var outline = isAcross ? (part.Outline.X, part.Outline.Right) : (part.Outline.Y, part.Outline.Top);
            if (part.Kind == PartKind.Slab)
                continue;
            if (part.Kind is PartKind.Panel or PartKind.Glass)
            {
                var (kind, edge) = part.Kind == PartKind.Panel ? ("panels", "panel edge") : ("panes", "glass edge");
                Mark(outline.Item1, edge, part.Name, kind, isHidden: true);
                Mark(outline.Item2, edge, part.Name, kind, isHidden: true);
            }
            else if (part.StandsUpright == isAcross)
            {
                Edges(part, seen, outline);
            }
            else if (!part.IsMitred)
            {
                Ends(part, seen, outline);
            }
        }

        return
        [
            .. places.GroupBy(place => place.At).OrderBy(group => group.Key).Select(group => new StoryMark(group.Key,
            [
                .. group.GroupBy(place => (place.What, place.Kind)).Select(same => same.Select(place => place.Who).Distinct().ToList() is { Count: > 1 }
                    ? $"{same.Key.What}, {same.Key.Kind}"
                    : same.First().Who.Length == 0 ? same.Key.What : $"{same.Key.What}, {same.First().Who}"),
            ], group.All(place => place.IsHidden))),
        ];

        // A member lying across the stick: its sight lines, and behind them the bottom of its groove.
        void Edges(Part part, (Length From, Length To) seen, (Length From, Length To) outline)
        {
            var kind = isAcross ? "stiles" : "rails";
            var depth = detail.Cutters?.GrooveDepth.Value ?? default;
            var edge = part.Arch is null ? "sight line" : "crown";
            if (!seen.From.IsZero)
            {
                Mark(seen.From, edge, part.Name, kind);
                if (!depth.IsZero)
                    Mark(seen.From + depth, "groove bottom", part.Name, kind, isHidden: true);
            }

            if (seen.To != whole)
            {
                Mark(seen.To, edge, part.Name, kind);
                if (!depth.IsZero)
                    Mark(seen.To - depth, "groove bottom", part.Name, kind, isHidden: true);
            }

            if (part.Arch is not null)
                Mark(outline.From < seen.From ? outline.From : outline.To, "spring line", part.Name, kind);
        }

        // A member lying along the stick: its ends, and where they are shouldered.
        void Ends(Part part, (Length From, Length To) seen, (Length From, Length To) outline)
        {
            if (part.Kind == PartKind.Stile)
                return;
            var kind = isAcross ? "rails" : "mid stiles";
            var end = part.Work.Contains(EdgeWork.TenonBothEnds) ? "tenon end" : part.Work.Contains(EdgeWork.CopeBothEnds) ? "tongue end" : "end";
            Mark(outline.From, end, part.Name, kind, isHidden: end != "end");
            Mark(outline.To, end, part.Name, kind, isHidden: end != "end");
            if (part.Shoulder is not { } shoulder || shoulder.Length >= outline.To - outline.From)
                return;
            var before = (outline.To - outline.From - shoulder.Length) / 2;
            Mark(outline.From + before, "shoulder", part.Name, kind);
            Mark(outline.To - before, "shoulder", part.Name, kind);
        }
    }

    private static Length LengthOf(SizedLeaf leaf, StickDirection direction) =>
        direction == StickDirection.Across ? leaf.Width.Length : leaf.Height.Length;

    private static Scene Whole(SizedLeaf leaf, LeafDetail detail, LengthFormat format, StickDirection direction) =>
        Strip(leaf, detail, format, direction, 0, Scale.FullSize.OnPaper(LengthOf(leaf, direction)), 0, 1);

    private static Scene Strip(
        SizedLeaf leaf, LeafDetail detail, LengthFormat format, StickDirection direction, double from, double to, int index, int count)
    {
        const double TouchingMillimetres = 1e-6;
        var words = direction == StickDirection.Across ? "across" : "up";
        var title = count == 1 ? $"{leaf.Label} {words}, story stick" : $"{leaf.Label} {words}, strip {index + 1} of {count}";
        StoryMark[] marks =
        [
            .. Marks(leaf, detail, direction).Where(mark => Scale.FullSize.OnPaper(mark.At) is var at
                && at >= from - TouchingMillimetres && at <= to + TouchingMillimetres),
        ];

        List<SceneNode> nodes = [];
        var blocks = Words(marks, format, to - from);
        var places = Callouts.Spread([.. marks.Zip(blocks).Select(pair => (Scale.FullSize.OnPaper(pair.First.At) - from, Thickness(pair.Second)))], 0, to - from);
        for (var i = 0; i < marks.Length; i++)
            nodes.Add(new SceneGroup(null, string.Join("; ", marks[i].Names), [.. Draw(marks[i], blocks[i], Scale.FullSize.OnPaper(marks[i].At) - from, places[i])]));

        for (var joint = Math.Max(index - 1, 0); joint < Math.Min(index + 1, count - 1); joint++)
        {
            // Strips overlap evenly, so a cross stands at the middle of each overlap.
            nodes.Add(Cross(index == joint ? to - from - Overlap / 2 : Overlap / 2, $"{(char)('A' + joint % 26)}"));
        }

        // A strip without a mark only carries length.
        var height = MarkHeight + (marks.Length == 0 ? 0 : FanHeight + blocks.SelectMany(block => block).Max(line => line.Width));
        var bounds = (Drafting.BoundsOf(nodes) ?? default).With(new(0, -height, to - from, height));
        var name = Typesetter.Set(title, TitleStyle);
        Lettering heading = new(new(Air, bounds.Top - Air - name.Descent), name);
        nodes.Add(heading);
        // Marks run out to the edge that is laid on the wood.
        var around = bounds.With(heading.Box).Grown(Air / 2);
        var frame = around with { Height = -around.Top };
        nodes.Add(new Shape(Outline.Box(frame), LineStyle.Rule));
        var size = $"{format.PrintWithUnit(LengthOf(leaf, direction))}";
        return Drafting.Scene(title,
            $"Story stick {words} {leaf.Name} {leaf.Label}, {size}, at full size from the {(direction == StickDirection.Across ? "left" : "bottom")} end: "
            + string.Join("; ", marks.Select(mark => $"{format.Print(mark.At)} {string.Join(" and ", mark.Names)}")) + ".",
            Scale.FullSize, leaf.Path, nodes);
    }

    // Words read upwards beside their mark: the distance first, then what lies there.
    private static SetLine[][] Words(StoryMark[] marks, LengthFormat format, double room)
    {
        foreach (var (size, field) in Densities)
        {
            var style = new TextStyle(size);
            SetLine[][] blocks =
            [
                .. marks.Select(mark => (SetLine[])
                [
                    Typesetter.Set(format.Print(mark.At), style.Bold),
                    .. mark.Names.SelectMany(name => Typesetter.Wrap(name, style, field)),
                ]),
            ];
            if ((size, field) == Densities[^1] || blocks.Sum(Thickness) <= room)
                return blocks;
        }

        throw new InvalidOperationException("The last density is always taken.");
    }

    private static double Thickness(SetLine[] block) => block.Sum(line => line.Height) + Air;

    private static IEnumerable<SceneNode> Draw(StoryMark mark, SetLine[] block, double at, double wordsAt)
    {
        yield return new Shape(Outline.Line(new(at, 0), new(at, -MarkHeight)), mark.IsHidden ? LineStyle.Hidden : LineStyle.Edge);
        yield return new Shape(Outline.Through(false, new(at, -MarkHeight), new(wordsAt, -MarkHeight - FanHeight + Air), new(wordsAt, -MarkHeight - FanHeight + Air / 2)), LineStyle.Rule);
        var left = wordsAt - Thickness(block) / 2 + Air / 2;
        foreach (var line in block)
        {
            yield return new Lettering(new(left + line.Ascent, -MarkHeight - FanHeight), line, IsUpright: false);
            left += line.Height;
        }
    }

    private static SceneGroup Cross(double at, string name)
    {
        var middle = -MarkHeight / 2;
        var letter = Typesetter.Set(name, TitleStyle);
        return new(null, $"match mark {name}",
        [
            new Shape(Outline.Line(new(at - CrossReach, middle), new(at + CrossReach, middle)), LineStyle.Edge),
            new Shape(Outline.Line(new(at, middle - CrossReach), new(at, middle + CrossReach)), LineStyle.Edge),
            new Lettering(new(at + 0.6, middle - 0.5), letter),
        ]);
    }
}
