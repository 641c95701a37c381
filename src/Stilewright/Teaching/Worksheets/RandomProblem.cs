using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Teaching.Worksheets;

/// <summary>One draw: a course with one opening and the standard it is worked out under. It may prove impossible to build.</summary>
internal sealed class RandomProblem
{
    private const string Cutters = "worksheet";
    private readonly LengthUnit unit;
    private readonly LengthFormat format;

    // Openings that are tried before the members are drawn anew.
    private const int MostOpenings = 32;

    /// <summary>One draw; null where the bench has no opening that makes its lights equal.</summary>
    public static RandomProblem? Draw(Level level, ulong seed, SplitMix64 random, int bench)
    {
        var limits = level.Limits;
        HashSet<ProblemFeature> features = [.. limits.Always, .. random.SomeOf(limits.Sometimes)];
        var isPair = features.Contains(ProblemFeature.Pair);
        var isInset = features.Contains(ProblemFeature.Inset);
        var reach = random.OneOf(isInset ? limits.InsetGaps : limits.Overlays);
        var rail = random.OneOf(limits.Members);
        var midRails = features.Contains(ProblemFeature.MidRails) ? random.Between(1, 2) : 0;
        // What the opening's height leaves to the lights, less the height itself.
        var left = (isInset ? -2 : 2) * reach - (2 + midRails) * rail;
        var widthStep = isPair ? limits.Reading / 2 : limits.Reading;
        var share = new OpeningShare(
            Count(limits.LeastLeaf.Width, limits.MostLeaf.Width, widthStep), Count(limits.LeastLeaf.Height, limits.MostLeaf.Height, limits.Reading), seed, bench);
        for (var i = 0; i < MostOpenings; i++)
        {
            var at = share.At(random.Below(share.Count));
            var height = limits.LeastLeaf.Height.OnStep(limits.Reading, StepDirection.Up) + limits.Reading * at.Height;
            if (!((height + left) / ((midRails + 1) * limits.Finest)).Reduce().Denominator.IsOne)
                continue;
            var leafWidth = limits.LeastLeaf.Width.OnStep(widthStep, StepDirection.Up) + widthStep * at.Width;
            return new(level, random, bench, features, isPair ? leafWidth * 2 : leafWidth, height, reach, rail, midRails);
        }

        return null;

        static int Count(Length least, Length most, Length step) => (int)((most - least) / step).ToDecimal() + 1;
    }

    private RandomProblem(Level level, SplitMix64 random, int bench, HashSet<ProblemFeature> features, Length width, Length height, Length reach, Length rail, int midRailCount)
    {
        var limits = level.Limits;
        unit = level.Unit;
        format = new(unit, 64);
        var isPair = features.Contains(ProblemFeature.Pair);
        var isInset = features.Contains(ProblemFeature.Inset);
        var hasTrim = features.Contains(ProblemFeature.TrimAllowance);
        var depth = random.OneOf(limits.GrooveDepths);
        var stile = random.OneOf(limits.Members);
        var (across, along) = (random.OneOf(limits.Clearances), random.OneOf(limits.Clearances));
        var (trimWidth, trimHeight) = hasTrim ? (random.OneOf(limits.Trims), random.OneOf(limits.Trims)) : (default, default);
        var settings = new Dictionary<Setting, SettingValue>
        {
            [isInset ? Settings.InsetGap : Settings.Overlay] = Value(reach),
            [isInset ? Settings.InsetGapOfPair : Settings.GapOfPair] = Value(random.OneOf(isInset ? limits.InsetGaps : limits.PairGaps)),
            [Settings.Stile] = Value(stile),
            [Settings.Rail] = Value(rail),
            [Settings.MidRail] = Value(rail),
            [Settings.ClearanceAcross] = Value(across),
            [Settings.ClearanceAlong] = Value(along),
            [Settings.ClearanceAtArch] = Value(along),
            [Settings.TrimWidth] = Value(trimWidth),
            [Settings.TrimHeight] = Value(trimHeight),
        };

        var shipped = ShippedStandards.For(unit);
        Standard = shipped with
        {
            Id = Cutters,
            Cutters = [shipped.Cutters[0] with { Id = Cutters, Name = "Cutters of the worksheet", GrooveDepth = Entry(depth), CopeLength = Entry(depth) }],
        };
        var arch = features.Contains(ProblemFeature.Arch) ? new Arch(random.OneOf([ArchFamily.Eyebrow, ArchFamily.Cathedral]), Entry(random.OneOf(limits.Rises))) : null;
        if (arch is { Family: ArchFamily.Cathedral })
            arch = arch with { Shoulder = Entry(random.OneOf(limits.Rises)) };
        var midRails = midRailCount > 0 ? new MidRails(midRailCount, null, []) : null;
        var design = new DoorDesign("door", "Frame and panel", Construction.CopeAndStick, "hardwood", "four-quarter", Cutters, null, null, null, midRails, [],
            arch, null, new(PanelKind.FlatSolid, Stock: "thin-panel"), [], null, null);
        HingeSide[] hinges = isPair ? [HingeSide.Left, HingeSide.Right] : [random.OneOf([HingeSide.Left, HingeSide.Right])];
        var opening = new Opening("opening",
            new DoorFilling(isInset ? Mount.Inset : Mount.Overlay, [.. hinges.Select(hinge => new LeafEntry(hinge, null, null, null, SettingValues.None))], design.Id),
            1, null, new(WidthTop: Entry(width), HeightLeft: Entry(height)), null, null, null, SettingValues.None);
        Course = new("worksheet", "Worksheet", Cutters, unit, [design],
            [
                new("problem", bench, "Problem", [new("case", "Case", [new("face", FaceSide.Front, null, [opening], [])])], null, [], [], [], SettingValues.None),
            ],
            new(settings));
    }

    public Course Course { get; }
    public HouseStandard Standard { get; }

    private LengthEntry Entry(Length length) => new(format.Print(length), length);

    private SettingValue Value(Length length) => new(format.Print(length), length);
}
