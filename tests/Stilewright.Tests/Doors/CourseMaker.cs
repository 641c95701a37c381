using System.Globalization;
using Fractions;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Tests.Doors;

/// <summary>Makes a course of every kind of front from a row of random numbers, the same course from the same row.</summary>
/// <param name="writtenIn">The unit in which lengths are written down; their values are the same in both.</param>
internal sealed class CourseMaker(IReadOnlyList<int> choices, LengthUnit writtenIn = LengthUnit.Inch)
{
    private int next;

    /// <summary>All entries on sixteenths, under the inch standard.</summary>
    public bool OnStep { get; init; }

    /// <summary>Diagonals and with them lean are left out.</summary>
    public bool WithoutDiagonals { get; init; }

    private int Choose(int count) => choices[next++ % choices.Count] % count;
    private bool OneIn(int count) => Choose(count) == 0;
    private T OneOf<T>(params ReadOnlySpan<T> some) => some[Choose(some.Length)];

    // Off the step a length is some 64ths, or thirds of a sixteenth, or whole millimetres away from it.
    private LengthEntry Between(int leastSixteenths, int mostSixteenths)
    {
        var length = Length.FromInches(new(leastSixteenths + Choose(mostSixteenths - leastSixteenths + 1), 16));
        var off = Choose(6);
        return Write(OnStep ? length : off switch
        {
            0 => length + Length.FromInches(new(1, 64)),
            1 => length + Length.FromInches(new(1, 48)),
            2 => length.OnStep(1.Millimetres, StepDirection.Nearest),
            _ => length,
        });
    }

    private LengthEntry Write(Length length)
    {
        var text = WithDecimals(length.Millimetres) is { } millimetres && writtenIn == LengthUnit.Millimetre
            ? $"{millimetres} mm" : $"{AsFraction(length.Inches)} in";
        return new(text, LengthReader.ReadOwn(text, writtenIn));
    }

    private static string? WithDecimals(Fraction value) => (value * 100_000_000).Reduce().Denominator.IsOne
        ? value.ToDecimal().ToString("0.########", CultureInfo.InvariantCulture) : null;

    private static string AsFraction(Fraction value)
    {
        var lowest = value.Reduce();
        return lowest.Denominator.IsOne ? $"{lowest.Numerator}" : $"{lowest.Numerator}/{lowest.Denominator}";
    }

    public (Course Course, HouseStandard Standard) Make()
    {
        var standard = OnStep || !OneIn(3) ? ShippedStandards.Inch : ShippedStandards.Millimetre;
        List<DoorDesign> designs = [Design("one", standard), Design("two", standard)];
        List<Opening> measured = [.. Enumerable.Range(1, 1 + Choose(3)).Select(i => Opening($"measured-{i}", true))];
        List<Face> faces = [new("face", FaceSide.Front, OneIn(2) ? Layout() : null, measured, OneIn(3) ? Loose() : [])];
        return (new("course", "Course", standard.Id, standard.Unit, designs,
            [new("project", 7, "Cupboards", [new("piece", "Cupboard", faces)], null, [], [], [], SettingValues.None)], Overrides()), standard);
    }

    private SettingValues Overrides()
    {
        Setting[] settings =
        [
            Settings.Overlay, Settings.TrimWidth, Settings.TrimHeight, Settings.GapOfPair, Settings.GapInBank, Settings.InsetGap,
            Settings.ClearanceAcross, Settings.ClearanceAtArch, Settings.RoughLength, Settings.Lap,
        ];
        var values = new Dictionary<Setting, SettingValue>();
        foreach (var setting in settings)
        {
            if (OneIn(4) && Between(1, 5) is var entry)
                values[setting] = new(entry.Text, entry.Value);
        }

        if (OneIn(3))
            values[Settings.LightRemainder] = new("top", default);
        if (OneIn(3))
            values[Settings.BankRemainder] = new("top", default);
        return new(values);
    }

    private DoorDesign Design(string id, HouseStandard standard)
    {
        var construction = OneOf(Enum.GetValues<Construction>());
        var mitred = construction == Construction.Mitred;
        var stiles = mitred || OneIn(2) ? null : OneIn(2) ? new StileWidths(Between(24, 48)) : new(null, Between(32, 48), Between(24, 40));
        var usualRails = mitred || OneIn(2);
        LengthEntry? top = usualRails || OneIn(3) ? null : Between(24, 40);
        LengthEntry? bottom = usualRails || OneIn(3) ? null : Between(24, 56);
        var midRails = !OneIn(2) ? null : OneIn(2) ? new MidRails(1 + Choose(2), OneIn(2) ? Between(20, 40) : null, [])
            : new(null, null, [new(Between(96, 160), OneOf(Enum.GetValues<MeasuredTo>()), OneIn(2) ? Between(20, 40) : null)]);
        IReadOnlyList<MidStileRow> midStiles = OneIn(3) ? [new(1, 1 + Choose(2), OneIn(2) ? Between(16, 32) : null)] : [];
        Arch? Arch() => Curve() is { } arch ? OneIn(3) ? arch with { PerLight = false, AcrossPair = OneOf(Enum.GetValues<PairCrown>()) } : arch : null;
        Arch? Curve() => mitred || !OneIn(3) ? null : OneIn(5) ? new(ArchFamily.HalfRound)
            : OneIn(5) ? new(ArchFamily.DoubleCurve, Between(8, 40), null, OneIn(2), new(1 + Choose(3), 1 + Choose(3)))
            : new(OneOf(ArchFamily.Eyebrow, ArchFamily.Stepped, ArchFamily.Cathedral, ArchFamily.Pointed), Between(8, 80), OneIn(3) ? Between(4, 16) : null, OneIn(2));
        return new(id, $"Design {id}", construction, "red oak", OneOf("four-quarter", standard.Unit == LengthUnit.Inch ? "full-four-quarter" : "four-quarter"),
            OneOf("cope-and-stick", "plain-groove", standard.Unit == LengthUnit.Inch ? "deep-groove" : "cope-and-stick"),
            stiles, top, bottom, midRails, midStiles, Arch(), OneIn(2) ? Arch() : null, construction == Construction.Slab ? null : Filling(),
            OneIn(4) ? [new(1, Filling())] : [], OneIn(2) ? Between(8, 24) : null, OneIn(2) ? Between(0, 6) : null, OneIn(2));
    }

    private LightFilling Filling() => OneOf(Enum.GetValues<PanelKind>()) switch
    {
        PanelKind.Glass => new(PanelKind.Glass, SafetyGlazing: OneIn(2) ? "tempered" : null),
        PanelKind.Open => new(PanelKind.Open),
        PanelKind.FlatSheet => new(PanelKind.FlatSheet, "maple", "ply", GluedIn: OneIn(2)),
        var solid => new(solid, OneIn(2) ? "maple" : null, OneOf("panel", "thin-panel"), OneIn(4) ? GrainDirection.Horizontal : null),
    };

    private Opening Opening(string id, bool measured) => new(
        id, OneIn(4) ? Drawers() : Doors(), null, null, measured ? Readings() : null, measured && OneIn(2) ? Beside() : null,
        OneIn(4) ? "column" : null, OneIn(6) ? Between(2, 8) : null, SettingValues.None);

    // Any of the readings of a kind may be missing, and now and then all of them.
    private Readings Readings()
    {
        var (width, height) = (Between(160, 640), Between(96, 720));
        var (widths, heights) = (Three(width), Three(height));
        var (rising, falling) = ((LengthEntry?)null, (LengthEntry?)null);
        if (!WithoutDiagonals && OneIn(2))
        {
            var square = (width.Value.Inches * width.Value.Inches) + (height.Value.Inches * height.Value.Inches);
            var diagonal = Length.FromInches(Fraction.FromDouble(Math.Sqrt(square.ToDouble()))).OnStep(Length.FromInches(new(1, 16)), StepDirection.Nearest);
            rising = Write(diagonal + Length.FromInches(new(Choose(5) - 2, 16)));
            falling = Write(diagonal + Length.FromInches(new(Choose(5) - 2, 16)));
        }

        return new(widths[0], widths[1], widths[2], heights[0], heights[1], heights[2], rising, falling, OneIn(4) ? OutOfSquareFit.PlaneToFit : OutOfSquareFit.Upright);

        LengthEntry?[] Three(LengthEntry first)
        {
            if (OneIn(16))
                return [null, null, null];
            LengthEntry?[] read = [OneIn(2) ? first : Moved(first), Moved(first), Moved(first)];
            var known = 1 + Choose(7);
            return [.. read.Select((entry, i) => (known & (1 << i)) == 0 ? null : entry)];
        }

        LengthEntry? Moved(LengthEntry entry) => Write(entry.Value + Length.FromInches(new(Choose(5) - 2, 16)));
    }

    private Surroundings Beside() => new(
        new FrameEdge(Between(16, 48)), new WallBeyond(Between(16, 48)), OneIn(2) ? new FrameEdge(Between(16, 48)) : null, new FrameEdge(Between(16, 48)));

    private EdgeRules? Edges()
    {
        EdgeRule? Rule() => Choose(4) switch
        {
            0 => new FixedOverlay(Between(2, 16)),
            1 => new ShareMember(OneIn(2) ? Between(1, 4) : null),
            2 => new ToFrameEdge(OneIn(2) ? Between(1, 8) : null),
            _ => null,
        };
        return OneIn(2) ? new(Rule(), Rule(), Rule(), Rule()) : null;
    }

    private DoorFilling Doors()
    {
        var count = OneOf(1, 1, 2, 2, 3, 4);
        LeafEntry Leaf(int i) => new(
            i == 0 && (count > 1 || OneIn(2)) ? HingeSide.Left : i == count - 1 ? HingeSide.Right : HingeSide.None,
            null, count > 1 && i == 0 && OneIn(4) ? Between(96, 160) : null, OneIn(4) ? "two" : null, SettingValues.None);
        return new(OneOf(Enum.GetValues<Mount>()), [.. Enumerable.Range(0, count).Select(Leaf)], "one", Edges(), count == 2 && OneIn(4));
    }

    private DrawerFilling Drawers()
    {
        var count = 1 + Choose(5);
        BankHeights? heights = count == 1 || OneIn(3) ? null : OneIn(2)
            ? new ProportionalHeights([.. Enumerable.Range(0, count).Select(_ => 1 + Choose(4))])
            : new GivenHeights([new(), .. Enumerable.Range(1, count - 1).Select(_ => new GivenHeight(Between(64, 112)))]);
        return new(OneOf(Enum.GetValues<Mount>()), OneIn(2) ? "one" : "two", count, heights, Edges(), OneIn(3) ? 1 + Choose(count) : null, OneIn(3));
    }

    private FaceLayout Layout() => new(
        Between(560, 960), Between(320, 640), new(Between(20, 48), OneIn(3) ? OuterEdge.Wall : OuterEdge.Open), new(Between(20, 48)), Between(20, 40), Between(16, 40),
        new(Columns: new([new(Opening: Opening("laid-1", false)), new(Rows: new(
            [new(Opening: Opening("laid-2", false)), new(Between(96, 128), Opening("laid-3", OneIn(3)))], Between(16, 32), []))], Between(20, 40), [])),
        OneIn(4) ? Between(2, 6) : null);

    private List<LooseFront> Loose() =>
    [
        new StatedFront("stated", Between(160, 400), Between(160, 640), "one", null, null, SettingValues.None, OneOf(Enum.GetValues<HingeSide>())),
        new AppliedEnd("end", Between(256, 400), Between(400, 640), OneIn(2) ? Write(default) : Between(8, 14), "two", null, null, SettingValues.None,
            OneOf(Enum.GetValues<EndReach>()), Between(48, 72)),
    ];
}
