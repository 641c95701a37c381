using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Doors;

/// <summary>Finds where each opening of a face lies and what stands beside it, from the layout or from what was stated, and draws the frame.</summary>
internal sealed class FaceSites
{
    private readonly Face face;
    private readonly List<Finding> findings;
    private readonly List<Laid> laid = [];
    private readonly List<FrameMember> members = [];
    private readonly List<FrameOpening> openings = [];
    private bool hasRoom = true;

    private FaceSites(Face face, List<Finding> findings)
    {
        this.face = face;
        this.findings = findings;
    }

    // The outline is the space before any bead; adjacency is told by it.
    private sealed record Laid(
        Opening Opening, Worked Width, Worked Height, Rectangle Outline, Rectangle Clear, Worked? Bead, List<string> ColumnMates);

    /// <summary>The openings of a face in the order in which they are listed, and its frame where a layout has room for all its spaces.</summary>
    public static (List<OpeningSite> Sites, FrameFigure? Frame) Of(Face face, List<Finding> findings) =>
        new FaceSites(face, findings).Find();

    private (List<OpeningSite>, FrameFigure?) Find()
    {
        var sites = new List<OpeningSite>();
        FrameFigure? frame = null;
        if (face.Layout is { } layout)
        {
            LayOut(layout);
            sites.AddRange(laid.Select(opening => Site(layout, opening)));
            frame = hasRoom ? new(layout.Width.Value, layout.Height.Value, members, openings) : null;
        }

        sites.AddRange(face.Openings.Select(Measured));
        return (sites, frame);
    }

    private Given Entered(string key, string label, LengthEntry entry) =>
        new(key, label, entry.Value, new(OriginKind.Project, $"{face.Id}/{key}"));

    private void LayOut(FaceLayout layout)
    {
        var left = Entered("layout/left-stile.width", "left stile of the frame", layout.LeftStile.Width);
        var right = Entered("layout/right-stile.width", "right stile of the frame", layout.RightStile.Width);
        var top = Entered("layout/top-rail.width", "top rail of the frame", layout.TopRail);
        var bottom = Entered("layout/bottom-rail.width", "bottom rail of the frame", layout.BottomRail);
        var width = Entered("layout/width", "face width", layout.Width).LessBoth(left, right).As("width inside the frame", "layout/inside.width");
        var height = (Entered("layout/height", "face height", layout.Height) - top - bottom).As("height inside the frame", "layout/inside.height");
        if (!width.Amount.IsPositive || !height.Amount.IsPositive)
        {
            NoRoom(new(face.Id, "layout"), $"The outer members leave {width} × {height} inside the frame.", $"Make the frame larger or its members narrower.");
            return;
        }

        var inside = new Rectangle(left.Length, bottom.Length, width.Length, height.Length);
        Stile("left stile", layout.LeftStile, default);
        Stile("right stile", layout.RightStile, inside.Right);
        Add(new("top rail", FrameMemberKind.OuterRail, inside with { Y = inside.Top, Height = top.Length }));
        Add(new("bottom rail", FrameMemberKind.OuterRail, inside with { Y = default, Height = bottom.Length }));
        Lay(layout.Space, width, height, inside, [], "layout/space");

        void Stile(string name, OuterStile stile, Length x)
        {
            var below = stile.Below?.Value ?? default;
            var above = stile.Above?.Value ?? default;
            Add(new(name, FrameMemberKind.OuterStile, new(x, -below, stile.Width.Value, below + layout.Height.Value + above),
                NotZero(stile.Scribe), NotZero(stile.ToeNotch)));
        }

        static Length? NotZero(LengthEntry? entry) => entry is { Value.IsZero: false } given ? given.Value : null;
    }

    // A rail of no width, where the edge of the case takes its place, is no member.
    private void Add(FrameMember member)
    {
        if (member.Place is { Width.IsPositive: true, Height.IsPositive: true })
            members.Add(member);
    }

    private void NoRoom(Place place, FormattableString problem, FormattableString advice)
    {
        hasRoom = false;
        findings.Add(new(Rules.NoRoom, place, problem, advice));
    }

    private void Lay(Space space, Worked width, Worked height, Rectangle outline, List<string> mates, string path)
    {
        if (space.Opening is { } opening)
        {
            var bead = (opening.Bead ?? face.Layout!.Bead) is { } entry && !entry.Value.IsZero
                ? Entered($"{path}.bead", "bead", entry) : null;
            var clear = outline;
            var (clearWidth, clearHeight) = (width, height);
            if (bead is not null)
            {
                clearWidth = (width - (2 * bead)).As("opening width", "opening/width");
                clearHeight = (height - (2 * bead)).As("opening height", "opening/height");
                clear = new(outline.X + bead.Length, outline.Y + bead.Length, clearWidth.Length, clearHeight.Length);
            }

            if (!clearWidth.Amount.IsPositive || !clearHeight.Amount.IsPositive)
            {
                NoRoom(new(opening.Id, "bead"), $"The beads leave {clearWidth} × {clearHeight}.", $"Make the bead narrower.");
                return;
            }

            mates.Add(opening.Id);
            laid.Add(new(opening, clearWidth, clearHeight, outline, clear, bead, mates));
            openings.Add(new(opening.Id, outline, clear));
        }
        else if (space.Columns is { } columns)
        {
            var x = outline.X;
            foreach (var (part, size, gap, partPath) in Divide(columns, width, "column", "width", path))
            {
                Lay(part, size, height, outline with { X = x, Width = size.Length }, [], partPath);
                x += size.Length;
                Add(new(Member("column"), FrameMemberKind.Mullion, outline with { X = x, Width = gap }));
                x += gap;
            }
        }
        else if (space.Rows is { } rows)
        {
            var top = outline.Top;
            var column = new List<string>();
            foreach (var (part, size, gap, partPath) in Divide(rows, height, "row", "height", path))
            {
                Lay(part, width, size, outline with { Y = top - size.Length, Height = size.Length }, column, partPath);
                top -= size.Length + gap;
                Add(new(Member("row"), FrameMemberKind.RailBetween, outline with { Y = top, Height = gap }));
            }
        }
        else
        {
            openings.Add(new(null, outline, outline));
        }
    }

    private List<(Space Space, Worked Size, Length MemberAfter, string Path)> Divide(
        Division division, Worked whole, string kind, string measure, string path)
    {
        var members = Enumerable.Range(0, division.Spaces.Count - 1)
            .Select(i => division.Members.Count > 0
                ? Entered($"{path}.{kind}s.members.{i + 1}", $"{Member(kind)} {i + 1}", division.Members[i])
                : Entered($"{path}.{kind}s.member", Member(kind), division.Member!.Value))
            .ToList<Worked>();
        var sizes = division.Spaces
            .Select((space, i) => space.Size is { } size ? Entered($"{path}.{kind}.{i + 1}.size", $"{kind} {i + 1} {measure}", size) : null)
            .ToList<Worked?>();
        var free = sizes.Count(size => size is null);
        var rest = whole - Worked.Total(members);
        var given = sizes.OfType<Worked>().ToList();
        if (given.Count > 0)
            rest -= Worked.Total(given);
        if (free > 0 && !rest.Amount.IsPositive || free == 0 && !rest.Amount.IsZero)
        {
            NoRoom(new(face.Id, path),
                $"The {kind}s and the members between them leave {rest} of {whole}.",
                $"Change a given size; leave one {kind} without a size to let it take the rest.");
            return [];
        }

        var share = free > 0 ? (free == 1 ? rest : rest / free).As($"opening {measure}", $"opening/{measure}") : null;
        return [.. division.Spaces.Select((space, i) =>
            (space, sizes[i] ?? share!, i < members.Count ? members[i].Length : default, $"{path}.{kind}.{i + 1}"))];
    }

    private static string Member(string kind) => kind == "column" ? "mullion" : "rail between";

    private OpeningSite Site(FaceLayout layout, Laid opening)
    {
        EdgeSite Edge(Side side)
        {
            var beyond = laid.Where(other => !ReferenceEquals(other, opening) && Faces(opening.Outline, other.Outline, side, out _)).ToList();
            if (beyond.Count > 0)
            {
                var nearest = beyond.Select(other => Faces(opening.Outline, other.Outline, side, out var distance) ? distance : default).Min();
                var facing = beyond.Where(other => Faces(opening.Outline, other.Outline, side, out var distance) && distance == nearest).ToList();
                Worked member = Entered($"layout/{opening.Opening.Id}.{side.ToString().ToLowerInvariant()}.member", "member between", new("", nearest));
                Worked[] beads = [.. new[] { opening.Bead, facing[0].Bead }.OfType<Worked>()];
                if (beads.Length > 0)
                    member += Worked.Total(beads);
                return new(BeyondKind.Opening, member, member, [.. facing.Select(other => other.Opening.Id)]);
            }

            return Outer(layout, opening, side);
        }

        return new(opening.Opening, opening.Width, opening.Height, opening.Clear,
            Edge(Side.Left), Edge(Side.Right), Edge(Side.Top), Edge(Side.Bottom),
            opening.ColumnMates);
    }

    // Whether the other outline lies straight beyond that side, and how far.
    private static bool Faces(Rectangle one, Rectangle other, Side side, out Length distance)
    {
        distance = side switch
        {
            Side.Left => one.X - other.Right,
            Side.Right => other.X - one.Right,
            Side.Top => other.Y - one.Top,
            _ => one.Y - other.Top,
        };
        var overlaps = side is Side.Left or Side.Right
            ? one.Y < other.Top && other.Y < one.Top
            : one.X < other.Right && other.X < one.Right;
        return overlaps && !distance.IsNegative;
    }

    private EdgeSite Outer(FaceLayout layout, Laid opening, Side side)
    {
        var (stile, kind) = side switch
        {
            Side.Left => (layout.LeftStile, layout.LeftStile.Edge == OuterEdge.Wall ? BeyondKind.Wall : BeyondKind.FrameEdge),
            Side.Right => (layout.RightStile, layout.RightStile.Edge == OuterEdge.Wall ? BeyondKind.Wall : BeyondKind.FrameEdge),
            _ => (null, BeyondKind.FrameEdge),
        };
        var outline = opening.Outline;
        // What stands between the opening and the edge of the frame: the outer member, or a space left open and its members.
        var distance = side switch
        {
            Side.Left => outline.X,
            Side.Right => layout.Width.Value - outline.Right,
            Side.Top => layout.Height.Value - outline.Top,
            _ => outline.Y,
        };
        var name = side switch
        {
            Side.Left => "left stile of the frame",
            Side.Right => "right stile of the frame",
            Side.Top => "top rail of the frame",
            _ => "bottom rail of the frame",
        };
        Worked member = Entered($"layout/outer.{side.ToString().ToLowerInvariant()}", name, new("", distance));
        if (stile?.Scribe is { } scribe && !scribe.Value.IsZero)
            member -= Entered($"layout/{side.ToString().ToLowerInvariant()}-stile.scribe", "scribed off", scribe);
        if (opening.Bead is { } bead)
            member += bead;
        return new(kind, member, member, []);
    }

    private static OpeningSite Measured(Opening opening)
    {
        EdgeSite Edge(Beyond? beyond, string side)
        {
            if (beyond is null)
                return EdgeSite.Unknown;
            var member = new Given($"opening/beside.{side}.member", "member between", beyond.Member.Value,
                new(OriginKind.Opening, $"{opening.Id}/beside/{side}/member"));
            return beyond switch
            {
                NextOpening next => new(BeyondKind.Opening, member, member, [next.Opening]),
                WallBeyond => new(BeyondKind.Wall, member, member, []),
                _ => new(BeyondKind.FrameEdge, member, member, []),
            };
        }

        var mates = new[] { opening.Beside?.Top, opening.Beside?.Bottom }.OfType<NextOpening>().Select(next => next.Opening);
        return new(opening, null, null, null,
            Edge(opening.Beside?.Left, "left"), Edge(opening.Beside?.Right, "right"),
            Edge(opening.Beside?.Top, "top"), Edge(opening.Beside?.Bottom, "bottom"), [opening.Id, .. mates]);
    }
}
