using Stilewright.Curves;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Doors;

/// <summary>Breaks one leaf down into its parts by its design and the shop's cutters.</summary>
internal sealed partial class LeafBreakdown
{
    private readonly LeafPlan plan;
    private readonly DoorDesign design;
    private readonly StandardInForce standard;
    private readonly List<Finding> findings;
    private readonly int firstFinding;
    private readonly List<(ArchShape Arch, ArchResult Result)> drawnArches = [];
    private readonly List<Part> parts = [];
    private readonly List<CheckSum> checkSums = [];

    private LeafBreakdown(LeafPlan plan, DoorDesign design, List<Finding> findings)
    {
        this.plan = plan;
        this.design = design;
        this.findings = findings;
        firstFinding = findings.Count;
        standard = plan.Standard;
    }

    public static SizedLeaf Of(LeafPlan plan, DoorDesign? design, List<Finding> findings)
    {
        if (design is null)
        {
            findings.Add(new(Rules.DesignMissing, new(plan.Path, "design"), $"There is no door design '{plan.Design}'.", $"Name a design of the course or the project."));
            return Result(plan, null, [], []);
        }

        var breakdown = new LeafBreakdown(plan, design, findings);
        breakdown.Break();
        return Result(plan, design, breakdown.parts, breakdown.checkSums);
    }

    private static SizedLeaf Result(LeafPlan plan, DoorDesign? design, IReadOnlyList<Part> parts, IReadOnlyList<CheckSum> sums) => new(
        plan.Path, plan.Label, plan.Name, plan.Width, plan.Height, plan.Hinge, plan.IsDrawerFront, design?.Name ?? plan.Design, plan.Place,
        plan.Rabbeted, plan.Tapers, parts, sums)
    {
        Design = design,
        Standard = plan.Standard,
    };

    private Worked Width => plan.Width;
    private Worked Height => plan.Height;

    private void Report(Rule rule, FormattableString problem, FormattableString advice, string? field = null, string? part = null) =>
        findings.Add(new(rule, new(part is null ? plan.Path : $"{plan.Path}/{part}", field), problem, advice));

    private Given Entered(string key, string label, LengthEntry entry, string field) =>
        standard.Once(design.Id, field, () => new Given($"leaf/{key}", label, entry.Value, new(OriginKind.Design, $"design/{design.Id}/{field}")));

    private Worked Entered(string key, string label, LengthEntry? entry, string field, Setting otherwise) =>
        entry is { } value ? Entered(key, label, value, field) : standard[otherwise];

    private Given Cut(CutterSet cutters, string key, string label, LengthEntry entry) =>
        standard.Once($"cutters/{cutters.Id}", key, () => new Given($"cutters/{key}", label, entry.Value, new(CutterOrigin(cutters), $"standard/cutters/{cutters.Id}/{key}")));

    private OriginKind CutterOrigin(CutterSet cutters) =>
        ShippedStandards.For(standard.Standard.Base).Cutter(cutters.Id) == cutters ? OriginKind.Shipped : OriginKind.Standard;

    private void Break()
    {
        if (design.Construction == Construction.Slab)
        {
            Slab();
            return;
        }

        var cutters = design.Cutters is null ? null : standard.Standard.Cutter(design.Cutters);
        var stock = standard.Standard.StockOf(design.Stock);
        if (cutters is null || stock is null)
        {
            Report(Rules.DesignMissing, $"The design '{design.Name}' names cutters or stock that the house standard does not have.", $"Name cutters and stock of the standard.", "cutters");
            return;
        }

        Frame(cutters, stock);
    }

    private GrainDirection GrainOr(GrainDirection? stated) =>
        stated ?? (plan.IsDrawerFront && !plan.GrainRunsThrough ? GrainDirection.Horizontal : GrainDirection.Vertical);

    // A bank whose grain runs through is cut from one panel with the grain upright, front after front.
    private void Slab()
    {
        var stock = standard.Standard.StockOf(design.Stock);
        if (stock is null)
        {
            Report(Rules.DesignMissing, $"The design '{design.Name}' names stock that the house standard does not have.", $"Name stock of the standard.", "stock");
            return;
        }

        var grain = GrainOr(design.SlabGrain);
        var (trimWidth, trimHeight) = (standard[Settings.TrimWidth], standard[Settings.TrimHeight]);
        var upright = grain == GrainDirection.Vertical;
        var width = upright ? Width : Height;
        var length = upright ? Height : Width;
        var glueWidth = Plus(width, upright ? trimWidth : trimHeight, "slab width into the clamps", "leaf/slab.width.glue");
        var glueLength = Plus(length, upright ? trimHeight : trimWidth, "slab length into the clamps", "leaf/slab.length.glue");
        var outline = new Rectangle(default, default, Width.Length, Height.Length);
        Add("slab", "S", PartKind.Slab, "slab", design.Species, stock, new(width, length), new(glueWidth, glueLength), true,
            grain, null, [EdgeWork.JoinStaves], null, null, null, outline, outline.Corners);
        WoodOf(design.Species, "slab");
        CheckWide(width, "slab");
        CheckStock(stock, null);
    }

    private static Worked Plus(Worked value, Worked allowance, string label, string key) =>
        allowance.Amount.IsZero ? value : (value + allowance).As(label, key);

    private void Add(
        string segment, string code, PartKind kind, string name, string material, Stock? stock, PartSize finished, PartSize glueUp, bool hasRough,
        GrainDirection? grain, bool? faceDown, IReadOnlyList<EdgeWork> work, Side? hand, ArchShape? arch, Worked? shoulder,
        Rectangle outline, IReadOnlyList<Point> visible)
    {
        // Parts of one size into the clamps, such as two like stiles, have one rough size.
        var like = parts.Count > 0 && ReferenceEquals(parts[^1].GlueUp, glueUp) ? parts[^1].Rough : null;
        var rough = !hasRough ? null : like ?? new PartSize(
            Plus(glueUp.Width, standard[Settings.RoughWidth], "rough width", RoughKeys(segment).Width),
            Plus(glueUp.Length, standard[Settings.RoughLength], "rough length", RoughKeys(segment).Length));
        parts.Add(new($"{plan.Path}/{segment}", $"{plan.Label}·{code}", kind, name, material, stock?.Name ?? "", finished, glueUp, rough,
            stock is null ? null : standard.Once("stocks", stock.Id, () => Stages(stock)), grain, faceDown, work, hand, arch, shoulder, outline, visible));
    }

    private sealed record SizeKeys(string Width, string Length);

    private SizeKeys RoughKeys(string segment) =>
        standard.Once("rough", segment, () => new SizeKeys($"leaf/{segment}.width.rough", $"leaf/{segment}.length.rough"));

    private ThicknessStages Stages(Stock stock)
    {
        var kind = ShippedStandards.For(standard.Standard.Base).StockOf(stock.Id) == stock ? OriginKind.Shipped : OriginKind.Standard;
        Given Value(string key, string label, LengthEntry entry) =>
            new($"stock/{key}", label, entry.Value, new(kind, $"standard/stocks/{stock.Id}/{key}"));
        Worked planed = Value("planed", "planed thickness", stock.Planed);
        var final = planed;
        Worked? face = stock.FaceLoss is { } faceLoss && !faceLoss.Value.IsZero ? Value("faceLoss", "sanded from the face", faceLoss) : null;
        Worked? back = stock.BackLoss is { } backLoss && !backLoss.Value.IsZero ? Value("backLoss", "sanded from the back", backLoss) : null;
        if (face is not null)
            final -= face;
        if (back is not null)
            final -= back;
        if (face is not null || back is not null)
            final = final.As("final thickness", "stock/final");
        return new(stock.Nominal is null ? null : ThicknessTable.Find(stock.Nominal), planed, final);
    }
}
