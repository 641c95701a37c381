using Fractions;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Teaching.Checking;

namespace Stilewright.Teaching.Reuse;

/// <summary>Finds what a wrong piece can still become in its course.</summary>
/// <remarks>
/// A piece serves a part of the same material, stock and thickness. One that is only sawn serves whatever it holds. One that is worked
/// keeps its joints and moulded edges where the part has the same from the same cutters: it is cut at one end, and the joint cut anew there.
/// Otherwise joints and mouldings come off first, and what is left serves as a blank. Common practice, no source.
/// </remarks>
public sealed class ReuseFinder
{
    // A wider strip is no repair but another part; common practice, no source.
    private static readonly Length WidestEdging = Length.FromInches(new Fraction(1, 2));

    private readonly CutPiece piece;
    private readonly Breakdown breakdown;
    private readonly SizedLeaf own;
    private readonly CutterSet? cutters;
    private readonly Length halfStep;

    private ReuseFinder(CutPiece piece, Breakdown breakdown)
    {
        this.piece = piece;
        this.breakdown = breakdown;
        own = breakdown.Leaves.First(leaf => leaf.Parts.Contains(piece.Part));
        cutters = CuttersOf(own);
        halfStep = new StandardInForce(breakdown.Standard)[Settings.Step].Length / 2;
    }

    /// <param name="served">Paths of parts that have their piece already, and need none.</param>
    /// <exception cref="InvalidOperationException">The piece's part is not of this course.</exception>
    public static ReuseAdvice Of(CutPiece piece, Breakdown breakdown, IReadOnlySet<string>? served = null) => new ReuseFinder(piece, breakdown).Find(served ?? new HashSet<string>());

    private ReuseAdvice Find(IReadOnlySet<string> served)
    {
        var all = new List<ReuseOption>();
        var leaves = breakdown.Leaves.Where(leaf => !leaf.IsWithheld).GroupBy(leaf => CuttersOf(leaf)?.Id);
        foreach (var ofOneSet in leaves)
        {
            var same = ofOneSet.Key == cutters?.Id;
            var candidates = ofOneSet.SelectMany(leaf => leaf.Parts).Where(part => IsOfOneWood(part) && !served.Contains(part.Path));
            foreach (var line in CutList.Of(candidates))
            {
                if (Option(line.Parts, same) is { } option)
                    all.AddRange(ByAcceptance(option));
            }
        }

        if (Edged() is { } edged)
            all.AddRange(ByAcceptance(edged));
        var ranked = all.OrderBy(option => option.Rung).ThenBy(Distance).ThenBy(option => option.OffLength).ThenBy(option => option.OffWidth).ToList();
        return new(piece, [.. ranked.Where(option => option.IsSafe), Remade()], [.. ranked.Where(option => !option.IsSafe)]);
    }

    // 0 for the part itself, 1 for another of its leaf, 2 of its project, 3 of the course.
    private int Distance(ReuseOption option) => option.Parts.Min(part =>
        part.Path == piece.Part.Path ? 0
        : own.Parts.Contains(part) ? 1
        : breakdown.Projects.Any(project => project.Fronts.SelectMany(front => front.Leaves).Any(leaf => leaf == own) && project.Fronts.SelectMany(front => front.Leaves).Any(leaf => leaf.Parts.Contains(part))) ? 2 : 3);

    private bool IsOfOneWood(Part part)
    {
        var meant = piece.Part;
        return part.Material == meant.Material && part.Stock == meant.Stock && (part.Kind == PartKind.Glass) == (meant.Kind == PartKind.Glass)
            && Amount(part.Thickness?.Planed) == Amount(meant.Thickness?.Planed) && Amount(part.Thickness?.Final) == Amount(meant.Thickness?.Final);
        static Fraction? Amount(Worked? quantity) => quantity?.Amount;
    }

    // Cutters are told by the origin of what they cut; a slab has none.
    private CutterSet? CuttersOf(SizedLeaf leaf)
    {
        const string before = "standard/cutters/";
        foreach (var node in leaf.Parts.SelectMany(part => part.Quantities).SelectMany(quantity => quantity.Distinct()))
        {
            if (node is Given { Origin.Path: var path } && path.StartsWith(before, StringComparison.Ordinal))
                return breakdown.Standard.Cutter(path[before.Length..].Split('/')[0]);
        }

        return null;
    }

    // What is over, where the piece holds the part; a hair within the cutting step is nothing.
    private Length Over(Length has, Worked needs) => Length.Abs(has - needs.Length) <= halfStep ? default : has - needs.Length;

    private static EdgeWork? Joint(Part part) => part.Work.Where(work => work is EdgeWork.CopeBothEnds or EdgeWork.TenonBothEnds or EdgeWork.DowelBothEnds or EdgeWork.LooseTenonBothEnds or EdgeWork.MitreBothEnds)
        .Select(work => (EdgeWork?)work).FirstOrDefault();

    private static int MouldedEdges(Part part) => part.Work.Contains(EdgeWork.StickBothEdges) ? 2 : part.Work.Contains(EdgeWork.StickInnerEdge) ? 1 : 0;

    private static bool IsRaised(Part part) => part.Work.Contains(EdgeWork.RaiseFourEdges);

    private static bool IsFrame(Part part) => part.Kind is PartKind.Stile or PartKind.Rail or PartKind.MidRail or PartKind.MidStile;

    private static bool IsArched(Part part) => part.Arch is not null || part.TopArch is not null || part.BottomArch is not null;

    private static bool IsMortised(Part part) => part.Work.Any(work => work is EdgeWork.MortiseForRails or EdgeWork.BoreForDowels or EdgeWork.MortiseForLooseTenons);

    // What a joint takes of the length at each end; a mitre runs as far back as the member is wide.
    private Length JointReach => Joint(piece.Part) == EdgeWork.MitreBothEnds ? piece.Width
        : piece.Part.Shoulder is { } shoulder ? Length.Greatest(default, piece.Part.Finished.Length.Length - shoulder.Length) / 2 : default;

    private Length Moulding => cutters is null ? default : Length.Greatest(cutters.GrooveDepth.Value, cutters.StickingWidth.Value);

    private ReuseOption? Option(IReadOnlyList<Part> parts, bool sameCutters)
    {
        var part = parts[0];
        var size = ListKey.At(part, piece.Stage);
        var (dw, dl) = (Over(piece.Width, size.Width), Over(piece.Length, size.Length));
        if (dw.IsNegative || dl.IsNegative || part.Kind == PartKind.Glass && !(dw.IsZero && dl.IsZero))
            return null;
        var work = Work(part, dw, dl, sameCutters);
        if (work is null)
            return null;
        var isAsItIs = dw.IsZero && dl.IsZero && !work.IsTouched;
        // A piece that is right for its own part is not a wrong one.
        var others = isAsItIs ? [.. parts.Where(each => each.Path != piece.Part.Path)] : parts;
        if (others.Count == 0)
            return null;
        return new(isAsItIs ? ReuseRung.AsItIs : ReuseRung.CutSmaller, others, isAsItIs ? [$"It has the size: {size.Width.Length:figure} × {size.Length.Length}."] : [.. Steps(size, dw, dl, work), .. LongFirst(size, work)],
            [.. Limits(part, size, work)])
        { OffWidth = dw, OffLength = dl };
    }

    /// <summary>What is worked on the piece to make it the part.</summary>
    private sealed record NeededWork
    {
        public bool IsTouched => JointsOff || MouldingOff || NewEnd || NewEdge;
        public bool JointsOff { get; init; }
        public bool MouldingOff { get; init; }
        public bool NewEnd { get; init; }
        public bool NewEdge { get; init; }
        public bool Copes { get; init; }
        public bool Sticks { get; init; }
        public bool Raises { get; init; }
        public string Joint { get; init; } = "";
    }

    private NeededWork? Work(Part part, Length dw, Length dl, bool sameCutters)
    {
        var meant = piece.Part;
        var blank = new NeededWork { Copes = part.Work.Contains(EdgeWork.CopeBothEnds), Sticks = MouldedEdges(part) > 0, Raises = IsRaised(part) };
        if (!piece.IsWorked || Joint(meant) is null && MouldedEdges(meant) == 0 && !IsRaised(meant))
            return blank;
        // Mortises stand at places, and a sawn curve fits one span.
        if (IsMortised(meant) || IsArched(meant))
            return null;
        if (!IsFrame(meant))
        {
            if (sameCutters && IsRaised(part) && !IsArched(part))
                return dw.IsZero && dl.IsZero ? new() : new() { Raises = true, NewEdge = true };
            var raise = 2 * (cutters?.RaiseWidth?.Value ?? default);
            return dw >= raise && dl >= raise ? blank with { MouldingOff = true } : null;
        }

        var keepsProfile = sameCutters && IsFrame(part) && MouldedEdges(part) > 0 && !IsArched(part);
        var keepsJoint = keepsProfile && Joint(part) == Joint(meant);
        var work = new NeededWork();
        if (Joint(meant) is null || keepsJoint)
        {
            var newEnd = Joint(part) is not null && (Joint(meant) is null || !dl.IsZero);
            work = work with { NewEnd = newEnd, Copes = newEnd && Joint(part) == EdgeWork.CopeBothEnds, Joint = newEnd ? JointWords(Joint(part)!.Value, both: Joint(meant) is null) : "" };
        }
        else if (dl >= 2 * JointReach)
        {
            work = work with { JointsOff = true, NewEnd = Joint(part) is not null, Copes = Joint(part) == EdgeWork.CopeBothEnds, Joint = Joint(part) is { } joint ? JointWords(joint, both: true) : "" };
        }
        else
        {
            return null;
        }

        var (has, needs) = (MouldedEdges(meant), MouldedEdges(part));
        if (!keepsProfile)
            return dw >= has * Moulding ? work with { MouldingOff = has > 0, Sticks = needs > 0, NewEdge = needs > 0, Raises = IsRaised(part) } : null;
        if (has == 2 && needs == 1)
            return dw >= Moulding ? work with { MouldingOff = true } : null;
        var newEdge = needs > has || has == 2 && !dw.IsZero;
        return work with { NewEdge = newEdge, Sticks = newEdge };
    }

    private static string JointWords(EdgeWork joint, bool both) => (joint switch
    {
        EdgeWork.CopeBothEnds => "cope",
        EdgeWork.TenonBothEnds => "cut the tenon on",
        EdgeWork.DowelBothEnds => "bore for dowels in",
        EdgeWork.LooseTenonBothEnds => "mortise for the loose tenon in",
        _ => "mitre",
    }) + (both ? " both ends" : " the new end");

    private List<FormattableString> Steps(PartSize size, Length dw, Length dl, NeededWork work)
    {
        List<FormattableString> steps = [];
        if (!dl.IsZero)
        {
            FormattableString where = work.JointsOff ? $", both old ends with it"
                : work.NewEnd ? $" from one end" : (FormattableString)$"";
            steps.Add($"Length: {piece.Length:figure} − {size.Length.Length:figure} = {dl} off{where}.");
        }

        if (!dw.IsZero)
            steps.Add($"Width: {piece.Width:figure} − {size.Width.Length:figure} = {dw} off{(work.MouldingOff ? ", the moulded edge with it" : piece.IsWorked && MouldedEdges(piece.Part) == 1 && IsFrame(piece.Part) ? " the plain edge" : "")}.");
        List<string> then = [];
        if (work.NewEnd)
            then.Add(work.Joint);
        if (work.NewEdge)
            then.Add(work.Raises ? "raise the new edges" : work.MouldingOff || MouldedEdges(piece.Part) == 2 ? "stick the new edge" : "stick the plain edge");
        if (then.Count > 0)
            steps.Add($"Then {string.Join(" and ", then)}.");
        return steps;
    }

    // Sticking is allowed while the piece is long enough; coping never is helped by that.
    private IEnumerable<FormattableString> LongFirst(PartSize size, NeededWork work)
    {
        var shaper = breakdown.Standard.Machines.Where(machine => machine is { Kind: MachineKind.Shaper, Shortest: not null }).MaxBy(machine => machine.Shortest!.Value.Value);
        if (work.Sticks && !work.Copes && shaper is { Shortest.Value: var shortest } && size.Length.Length < shortest && piece.Length >= shortest)
            yield return $"Stick it before it is cut to length: {shaper.Name} takes nothing under {shortest} by hand.";
    }

    private IEnumerable<Finding> Limits(Part part, PartSize size, NeededWork work)
    {
        var length = size.Length.Length;
        var width = size.Width.Length;
        foreach (var machine in breakdown.Standard.Machines)
        {
            if (machine is { Kind: MachineKind.Shaper, Shortest.Value: var shortest })
            {
                if (work.Copes && length < shortest)
                {
                    yield return new(Rules.ShortForCoping, new(part.Path), $"It would be {length} long when it is coped; {machine.Name} takes nothing under {shortest} for coping by hand.",
                        $"Leave it, or ask the instructor about a sled with clamp and backer.");
                }
                else if (work.Sticks && !work.Copes && piece.Length < shortest)
                {
                    yield return new(Rules.ShortForSticking, new(part.Path), $"It is {piece.Length} long; {machine.Name} takes nothing under {shortest} by hand.", $"Leave it, or ask the instructor about a holder.");
                }
            }

            if (machine.Kind != MachineKind.Sander && machine.Narrowest is { Value: var narrowest } && (work.Sticks || work.Copes || piece.Stage == CutStage.Rough) && IsFrame(part) && width < narrowest)
                yield return new(Rules.NarrowForMachine, new(part.Path), $"It would be {width} wide; {machine.Name} takes nothing narrower than {narrowest}.", $"Leave it, or ask the instructor about a holder with featherboards.");
            if (machine.Kind is MachineKind.Jointer or MachineKind.Planer && piece.Stage == CutStage.Rough && machine.Shortest is { Value: var least } && piece.Length < least && IsFrame(part))
                yield return new(Rules.ShortForMachine, new(part.Path), $"It is {piece.Length} long in the rough; {machine.Name} takes nothing under {least}.", $"Flatten it by hand.");
        }

        var leastForRaising = LeafBreakdown.LeastForRaising;
        if (work.Raises && (length < leastForRaising || width < leastForRaising))
            yield return new(Rules.ShortForRaising, new(part.Path), $"It would be {width:figure} × {length}; a panel under about {leastForRaising} a side is raised in a holder only.", $"Leave it, or ask the instructor about a holder.");
    }

    // A hazard is accepted for the parts that the instructor named.
    private IEnumerable<ReuseOption> ByAcceptance(ReuseOption option)
    {
        if (option.IsSafe)
            return [option];
        return option.Parts.GroupBy(part => string.Join('\n', option.Limits.Select(limit => Reason(limit.Rule, part)))).Select(group => option with
        {
            Parts = [.. group],
            Limits = [.. option.Limits.Select(limit => limit with { Place = new(group.First().Path), AcceptedBecause = Reason(limit.Rule, group.First()) })],
        });
    }

    private string? Reason(Rule rule, Part part) =>
        breakdown.Findings.FirstOrDefault(finding => finding.Rule == rule && finding.AcceptedBecause is not null && finding.Concerns(part.Path))?.AcceptedBecause;

    private ReuseOption? Edged()
    {
        var part = piece.Part;
        var size = ListKey.At(part, piece.Stage);
        var (dw, dl) = (Over(piece.Width, size.Width), Over(piece.Length, size.Length));
        // A strip is glued to a plain edge of solid wood; a raised or curved edge has none, and sheet shows its plies.
        if (!dw.IsNegative || dl.IsNegative || -dw > WidestEdging || part.Rough is null || IsArched(part) || piece.IsWorked && (MouldedEdges(part) == 2 || IsRaised(part)))
            return null;
        if (Work(part, default, dl, sameCutters: true) is not { } work)
            return null;
        List<FormattableString> steps =
        [
            $"Width: {size.Width.Length:figure} − {piece.Width:figure} = {-dw} is missing: glue on a strip of the same wood a little wider{(IsFrame(part) ? " to the outer edge" : "")}, and rip to {size.Width.Length}.",
            .. Steps(size, default, dl, work),
            $"The joint shows; ask the instructor first.",
        ];
        return new(ReuseRung.AddEdging, [part], steps, [.. Limits(part, size, work)]) { OffLength = dl };
    }

    private ReuseOption Remade()
    {
        var size = ListKey.At(piece.Part, piece.Stage);
        FormattableString from = piece.Part.Rough is { } rough && piece.Stage != CutStage.Rough ? (FormattableString)$", from a blank {rough.Width.Length:figure} × {rough.Length.Length}" : $"";
        return new(ReuseRung.Remake, [piece.Part], [$"Cut it again at {size.Width.Length:figure} × {size.Length.Length}{from}, and keep this piece for set-ups."], []);
    }
}
