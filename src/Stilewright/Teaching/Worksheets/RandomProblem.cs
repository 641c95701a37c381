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

    public RandomProblem(Level level, SplitMix64 random, int bench)
    {
        var limits = level.Limits;
        unit = level.Unit;
        format = new(unit, 64);
        HashSet<ProblemFeature> features = [.. limits.Always, .. random.SomeOf(limits.Sometimes)];
        var isPair = features.Contains(ProblemFeature.Pair);
        var isInset = features.Contains(ProblemFeature.Inset);
        var hasTrim = features.Contains(ProblemFeature.TrimAllowance);
        var leafWidth = Between(limits.LeastLeaf.Width, limits.MostLeaf.Width, isPair ? limits.Reading / 2 : limits.Reading);
        var width = isPair ? leafWidth * 2 : leafWidth;
        var height = Between(limits.LeastLeaf.Height, limits.MostLeaf.Height, limits.Reading);
        var depth = random.OneOf(limits.GrooveDepths);
        var stile = random.OneOf(limits.Members);
        var rail = random.OneOf(limits.Members);
        var (across, along) = (random.OneOf(limits.Clearances), random.OneOf(limits.Clearances));
        var (trimWidth, trimHeight) = hasTrim ? (random.OneOf(limits.Trims), random.OneOf(limits.Trims)) : (default, default);
        var settings = new Dictionary<Setting, SettingValue>
        {
            [isInset ? Settings.InsetGap : Settings.Overlay] = Value(random.OneOf(isInset ? limits.InsetGaps : limits.Overlays)),
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
        var midRails = features.Contains(ProblemFeature.MidRails) ? new MidRails(random.Between(1, 2), null, []) : null;
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
        Words = string.Join(';',
            [
                format.Print(width), format.Print(height), format.Print(depth), .. features.Order().Select(feature => feature.ToString()), $"{arch?.Family}", $"{arch?.Rise?.Text}",
                $"{midRails?.Count}", .. settings.Select(setting => setting.Value.Text),
            ]);

        Length Between(Length least, Length most, Length step) =>
            least.OnStep(step, StepDirection.Up) + step * random.Below((int)((most - least) / step).ToDecimal() + 1);
    }

    public Course Course { get; }
    public HouseStandard Standard { get; }

    /// <summary>All that makes the problem different from another.</summary>
    public string Words { get; }

    private LengthEntry Entry(Length length) => new(format.Print(length), length);

    private SettingValue Value(Length length) => new(format.Print(length), length);
}
