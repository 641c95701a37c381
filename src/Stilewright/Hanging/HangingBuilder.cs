using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Hanging;

/// <summary>Hangs the leaves of one project: the hinge of each, how many, then where, in line with those beside it.</summary>
internal sealed partial class HangingBuilder
{
    // Two cups side by side, with wood between them.
    private static readonly Length LeastBetween = Length.FromInches(2);

    private readonly Course course;
    private readonly ProjectBreakdown project;
    private readonly Func<SizedLeaf, Worked?>? weight;
    private readonly List<Finding> findings;
    private readonly List<Hanging> hangings = [];

    public HangingBuilder(Course course, ProjectBreakdown project, Func<SizedLeaf, Worked?>? weight, List<Finding> findings)
    {
        this.course = course;
        this.project = project;
        this.weight = weight;
        this.findings = findings;
    }

    public IReadOnlyList<HungLeaf> Build()
    {
        foreach (var face in project.Faces)
        {
            var group = project.Project.Runs.FirstOrDefault(run => run.Items.OfType<RunFace>().Any(item => item.Face == face.Face.Id))?.Id ?? face.Face.Id;
            Dictionary<string, Opening>? openings = null;
            foreach (var front in face.Fronts)
            {
                var opening = (openings ??= BreakdownBuilder.OpeningsOf(face.Face).ToDictionary(one => one.Id)).GetValueOrDefault(front.Path);
                var loose = opening is null ? face.Face.Fronts.FirstOrDefault(one => one.Id == front.Path) : null;
                Hang(front, opening, loose, group);
            }
        }

        if (hangings.Count == 0)
            return [];
        Place();
        foreach (var hanging in hangings)
            Check(hanging);
        return [.. hangings.Select(hanging => new HungLeaf(project.Project, hanging.Front, hanging.Leaf, hanging.Design, hanging.Hinge, hanging.Standard, hanging.Fit,
            new(hanging.Number, hanging.Along, hanging.Places)))];
    }

    /// <summary>A leaf while its hinges are being placed.</summary>
    /// <param name="Group">The run or the face whose leaves stand in line; the front's own path where no layout tells their places.</param>
    /// <param name="FromStart">Where the first hinge would be, from the bottom or the left.</param>
    /// <param name="FromEnd">Where the last hinge would be, from the top or the right.</param>
    private sealed record Hanging(
        SizedFront Front, SizedLeaf Leaf, DoorDesign? Design, HingeKind Hinge, StandardInForce Standard, HingeFit? Fit, HingeNumber Number, Worked Along,
        string Group, Worked FromStart, Worked FromEnd, IReadOnlyList<Band> Bands)
    {
        public bool IsUpright => Leaf.Hinge is HingeSide.Left or HingeSide.Right;
        public List<HingePlace> Places { get; } = [];
        public HingePlace? First { get; set; }
        public HingePlace? Last { get; set; }

        /// <summary>What leaves that may share places have in common; a level edge stands alone.</summary>
        public string Line => IsUpright ? Group : Leaf.Path;
    }

    private void Hang(SizedFront front, Opening? opening, LooseFront? loose, string group)
    {
        var standard = opening is not null ? project.Standard.With(OriginKind.Opening, opening.Id, opening.Overrides)
            : loose is not null ? project.Standard.With(OriginKind.Opening, loose.Id, loose.Overrides) : project.Standard;
        var id = standard.Word(Settings.UsualHinge);
        if (id == Settings.NoHinge || front.Leaves.All(leaf => leaf.IsDrawerFront) || loose is AppliedEnd)
            return;
        if (standard.Standard.Hinge(id) is not { } hinge)
        {
            findings.Add(new(Rules.HingeUnknown, new(front.Path, $"overrides/{Settings.UsualHinge.Key}"), $"There is no hinge '{id}' in the house standard.",
                $"Name a hinge of the standard, or enter it there."));
            return;
        }

        var doors = opening?.Filling as DoorFilling;
        if (front.Leaves.All(leaf => leaf.Hinge == HingeSide.None))
        {
            if (doors is not null)
                findings.Add(new(Rules.HingeNoSide, new(front.Path, "filling"), $"A hinge is chosen, but no leaf here has a hinge side; it is taken as fixed.", $"Say where it is hinged, or choose no hinge for this opening."));
            return;
        }

        for (var i = 0; i < front.Leaves.Count; i++)
        {
            var leaf = front.Leaves[i];
            if (leaf.Hinge == HingeSide.None || leaf.IsWithheld || leaf.Parts.Count == 0)
                continue;
            var entry = doors?.Leaves[i];
            var design = DesignOf(entry?.Design ?? doors?.Design ?? loose?.Design);
            var isOnFrame = doors is not null && entry!.HingedTo is null;
            Start(front, leaf, design, hinge, standard, isOnFrame, opening, front.Place is null ? front.Path : group);
        }
    }

    private DoorDesign? DesignOf(string? id) => project.Project.Designs.LastOrDefault(design => design.Id == id) ?? course.Designs.LastOrDefault(design => design.Id == id);

    private void Start(SizedFront front, SizedLeaf leaf, DoorDesign? design, HingeKind hinge, StandardInForce standard, bool isOnFrame, Opening? opening, string group)
    {
        var isUpright = leaf.Hinge is HingeSide.Left or HingeSide.Right;
        var (along, across) = isUpright ? (leaf.Height, leaf.Width) : (leaf.Width, leaf.Height);
        var fit = isOnFrame ? HingeFit.Of(hinge, Reaches.Left(front, leaf, BoringSheet.EdgeOf(leaf.Hinge)), standard) : null;
        var tableId = hinge.CountTable ?? standard.Word(Settings.HingeCountTable);
        var table = standard.Standard.CountTable(tableId);
        if (table is null)
        {
            findings.Add(new(Rules.HingeUnknown, new(leaf.Path, $"overrides/{Settings.HingeCountTable.Key}"), $"There is no table of hinge numbers '{tableId}' in the house standard; two hinges are planned.",
                $"Name a table of the standard, or enter it there."));
        }

        var number = HingeNumber.Of(table, along, across, weight?.Invoke(leaf), standard);
        var (fromStart, fromEnd) = Ends(front, leaf, standard, isUpright, along, isOnFrame, (int)number.Count.Amount);
        hangings.Add(new(front, leaf, design, hinge, standard, fit, number, along, group, fromStart, fromEnd, isUpright ? Bands(front, leaf, hinge, standard, opening) : []));
    }

    // From the ends of the leaf, or of the opening with what the leaf reaches past it.
    private (Worked FromStart, Worked FromEnd) Ends(SizedFront front, SizedLeaf leaf, StandardInForce standard, bool isUpright, Worked along, bool isOnFrame, int count)
    {
        var (step, usual) = (standard[Settings.Step], standard[Settings.HingeFromEnd]);
        var isOfOpening = isOnFrame && isUpright && standard.Word(Settings.HingeFrom) == Settings.FromOpening;
        var (start, end) = isOfOpening ? (Moved(Side.Bottom), Moved(Side.Top)) : (Named(usual), Named(usual));
        if (start.Length + end.Length + (LeastBetween * (count - 1)) <= along.Length)
            return (start, end);
        var quarter = new Chosen("the leaf is too short for more", (along / 4).On(step, StepDirection.Down), usual).As("hinge from the end", "hinge/from-end");
        findings.Add(new(Rules.HingeLeafShort, new(leaf.Path, $"overrides/{Settings.HingeFromEnd.Key}"),
            $"The hinge edge is {along} long; hinges {usual} from both ends would stand less than {LeastBetween} apart.", $"Look whether the hinges fit {quarter} from the ends, or use smaller ones."));
        return (quarter, quarter);

        // What is on the step already keeps the name of its setting.
        Worked Named(Worked length) => length.On(step, StepDirection.Nearest) is var stepped && stepped.Amount == length.Amount ? length : stepped.As("hinge from the end", "hinge/from-end");

        Worked Moved(Side side)
        {
            var reach = Reaches.Left(front, leaf, side);
            var moved = front.Mount == Mount.Inset ? usual - reach : usual + reach;
            return moved.On(step, StepDirection.Nearest).As($"hinge from the {side.ToString().ToLowerInvariant()}", $"hinge/from-{side.ToString().ToLowerInvariant()}");
        }
    }
}
