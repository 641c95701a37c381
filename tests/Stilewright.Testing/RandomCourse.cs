using System.Globalization;
using Fractions;
using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Prints;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Wood;

namespace Stilewright.Testing;

/// <summary>Courses made by chance that the reader accepts and that could be built once every opening is measured: the same seed and size give the same course.</summary>
/// <remarks>Openings are 4 in and more, frames 1 1/2 to 2 1/4 in, lengths whole sixteenths of an inch or half millimetres,
/// each spelled in one of the ways people spell it. Cutters and stocks are those of the shipped standard of the course's unit.</remarks>
public sealed class RandomCourse
{
    private const int Sixteenths = 16;
    private static readonly string[] Species = ["red oak", "hard maple", "cherry", "Buche, gedämpft", "tulip \"poplar\" \\ paint grade"];

    private static readonly Setting[] OfWood =
    [
        Settings.PanelPolicy, Settings.PanelRings, Settings.PanelHeld, Settings.PanelEngagement, Settings.PanelAir, Settings.Moisture, Settings.Climate,
        Settings.Driest, Settings.Wettest, Settings.FinishBuild, Settings.GlassThickness,
    ];

    private readonly Random random;
    private readonly Random ofTheWood;
    private readonly int size;
    private readonly LengthUnit courseUnit;
    private readonly HouseStandard standard;
    private LengthUnit unit;
    private int made;
    private int fronts;

    private RandomCourse(int seed, int size, LengthUnit? unit)
    {
        random = new(seed);
        ofTheWood = new(~seed);
        this.size = size;
        courseUnit = this.unit = unit ?? (Chance(70) ? LengthUnit.Inch : LengthUnit.Millimetre);
        standard = ShippedStandards.For(courseUnit);
    }

    /// <param name="size">The most benches, and the most of anything else that is listed; 1 and more.</param>
    /// <param name="unit">The unit of the course; by chance when absent.</param>
    public static Course Of(int seed, int size = 3, LengthUnit? unit = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(size, 1);
        return new RandomCourse(seed, size, unit).MakeCourse();
    }

    /// <summary>What is handed out of such a course: at least one bench, at an hour that the seed tells.</summary>
    public static HandedOut HandedOutOf(int seed, int size = 3)
    {
        var course = WithBenches(seed, size);
        var breakdown = Breakdown.Of(course, ShippedStandards.For(course.Unit));
        var time = DateTimeOffset.UnixEpoch.AddSeconds(seed & int.MaxValue);
        return HandedOut.Of(breakdown, breakdown.Projects, HandedOutExtent.WholeCourse, Fingerprint.Of(breakdown), "0.1.0", time);
    }

    /// <summary>A course with exactly that many benches, such as a class of 24; its unit by chance where none is given.</summary>
    public static Course WithBenches(int seed, int benches, LengthUnit? unit = LengthUnit.Inch) => new RandomCourse(seed, 3, unit).MakeCourse(benches);

    private Course MakeCourse(int? benches = null)
    {
        List<DoorDesign> designs = [Frame(), .. Some(0, size, Design)];
        var count = benches ?? random.Next(size + 1);
        List<Project> projects = [];
        for (var bench = 1; bench <= count; bench++)
            projects.Add(MakeProject(bench, designs));
        return new(Id("course"), Text("Course"), standard.Id, courseUnit, designs, projects, Overrides());
    }

    private Project MakeProject(int bench, IReadOnlyList<DoorDesign> shared)
    {
        fronts = 0;
        LengthUnit? own = Chance(15) ? (courseUnit == LengthUnit.Inch ? LengthUnit.Millimetre : LengthUnit.Inch) : null;
        unit = own ?? courseUnit;
        var designs = Some(0, 1, Design);
        List<DoorDesign> all = [.. shared, .. designs];
        var pieces = Some(1, size, () => MakePiece(all));
        var faces = pieces.SelectMany(piece => piece.Faces).Where(face => face.Side == FaceSide.Front).ToList();
        List<Run> runs = faces.Count > 1 && Chance(40)
            ? [new(Id("run"), [new RunFace(faces[0].Id), .. Chance(50) ? new RunItem[] { new RunFiller(Between(1, 4)) } : [], new RunFace(faces[1].Id)])]
            : [];
        List<AcceptedHazard> accepted = Chance(10) ? [new("machine.short", "opening/leaf.left", Text("Held in a sled with clamps"))] : [];
        Project project = new(Id("project"), bench, Text("Cupboard"), pieces, own, designs, runs, accepted, Overrides());
        unit = courseUnit;
        return project;
    }

    private Piece MakePiece(IReadOnlyList<DoorDesign> designs) => new(Id("piece"), Text("Case"),
    [
        MakeFace(FaceSide.Front, designs),
        .. Chance(20) ? [MakeFace(Pick(FaceSide.LeftEnd, FaceSide.RightEnd), designs)] : Array.Empty<Face>(),
    ]);

    private Face MakeFace(FaceSide side, IReadOnlyList<DoorDesign> designs)
    {
        var layout = side == FaceSide.Front && Chance(60) ? Layout(designs) : null;
        List<Opening> openings = [];
        if (side == FaceSide.Front && (layout is null || Chance(20)))
        {
            foreach (var _ in Enumerable.Range(0, random.Next(1, size + 1)))
                openings.Add(MeasuredOpening(designs, openings.LastOrDefault()));
        }

        List<LooseFront> loose = [];
        if (side != FaceSide.Front)
            loose.Add(End(designs));
        else if (Chance(15))
            loose.Add(new StatedFront(Id("front"), Between(8, 24), Between(10, 50), Framed(designs), Number(), Maybe(20, () => Text("Panel")), Overrides(), Pick<HingeSide>()));
        return new(Id("face"), side, layout, openings, loose);
    }

    private AppliedEnd End(IReadOnlyList<DoorDesign> designs)
    {
        var reach = Pick<EndReach>();
        return new(Id("end"), Between(11, 24), Between(30, 84), Exactly(12), Framed(designs), Number(), null, Overrides(), reach,
            reach == EndReach.Toe || Chance(30) ? Between(3, 4) : null);
    }

    private FaceLayout Layout(IReadOnlyList<DoorDesign> designs)
    {
        var width = random.Next(14, 96) * Sixteenths + random.Next(Sixteenths);
        var height = random.Next(14, 84) * Sixteenths + random.Next(Sixteenths);
        var (left, right, top, bottom) = (random.Next(24, 37), random.Next(24, 37), random.Next(24, 37), random.Next(24, 37));
        return new(Exactly(width), Exactly(height), Outer(left), Outer(right), Exactly(top), Exactly(bottom),
            MakeSpace(width - left - right, height - top - bottom, null, 2, designs), Maybe(10, () => Exactly(6)));
    }

    private OuterStile Outer(int width) => new(Exactly(width), Chance(20) ? OuterEdge.Wall : OuterEdge.Open,
        Maybe(10, () => Between(1, 12)), Maybe(20, () => Between(3, 4)), Maybe(10, () => Exactly(4)), Maybe(10, () => Between(3, 4)));

    /// <param name="width">In sixteenths of an inch; what divided spaces come to, rounded down, serves only to choose what is likely.</param>
    private Space MakeSpace(int width, int height, int? stated, int depth, IReadOnlyList<DoorDesign> designs)
    {
        LengthEntry? size = stated is { } given ? Exactly(given) : null;
        if (depth > 0 && width > 30 * Sixteenths && Chance(70))
            return new(size, Columns: Divide(width, depth, part => MakeSpace(part.Size, height, part.Stated, depth - 1, designs)));
        if (depth > 0 && height > 24 * Sixteenths && Chance(60))
            return new(size, Rows: Divide(height, depth, part => MakeSpace(width, part.Size, part.Stated, depth - 1, designs)));
        if (Chance(8))
            return new(size);
        var filling = Fill(width, height, designs);
        return new(size, MakeOpening(filling, Chance(10) ? ReadInLayout(width, height, filling.Mount) : null, null));
    }

    private Division Divide(int whole, int depth, Func<(int Size, int? Stated), Space> make)
    {
        var count = whole > 45 * Sixteenths ? random.Next(2, 4) : 2;
        var members = Enumerable.Range(0, count - 1).Select(_ => random.Next(24, 33)).ToList();
        var isUniform = Chance(70);
        if (isUniform)
            members = [.. members.Select(_ => members[0])];
        var free = whole - members.Sum();
        // One space may say its size, between a third and all of an equal share; the others share the rest.
        int? stated = depth > 0 && Chance(50) ? random.Next(free / count / 3 + 4 * Sixteenths / 3, free / count) : null;
        var at = random.Next(count);
        var spaces = Enumerable.Range(0, count).Select(index => make(
            stated is { } size && index == at ? (size, size)
            : stated is { } taken ? ((free - taken) / (count - 1), null) : (free / count, null))).ToList();
        return new(spaces, isUniform ? Exactly(members[0]) : null, isUniform ? [] : [.. members.Select(Exactly)]);
    }

    private Opening MeasuredOpening(IReadOnlyList<DoorDesign> designs, Opening? before)
    {
        var width = random.Next(6 * Sixteenths, 60 * Sixteenths);
        var height = random.Next(5 * Sixteenths, 70 * Sixteenths);
        var filling = Fill(width, height, designs);
        var readings = Chance(97) ? Read(width, height, filling.Mount) : null;
        Surroundings? beside = Chance(50) ? new(
            Maybe(70, () => before is not null && Chance(50) ? new NextOpening(before.Id, Exactly(28)) : Outside()),
            Maybe(50, Outside), Maybe(50, Outside), Maybe(50, Outside)) : null;
        return MakeOpening(filling, readings, beside);
    }

    // A tape beside a layout may have been held to one kind only.
    private Readings ReadInLayout(int width, int height, Mount mount)
    {
        var readings = Read(width, height, mount);
        return random.Next(3) switch
        {
            0 => readings with { WidthTop = null, WidthMiddle = null, WidthBottom = null },
            1 => readings with { HeightLeft = null, HeightMiddle = null, HeightRight = null },
            _ => readings,
        };
    }

    // Some places are read; now and then none of a kind is.
    private Readings Read(int width, int height, Mount mount)
    {
        var isMeasuredAcross = Chance(40);
        // Diagonals to the nearest sixteenth: square but for what the tape does not show.
        var diagonal = (int)Math.Round(Math.Sqrt((double)width * width + (double)height * height));
        var (widths, heights) = (Kind(width), Kind(height));
        return new(widths[0], widths[1], widths[2], heights[0], heights[1], heights[2],
            isMeasuredAcross ? Exactly(diagonal) : null, isMeasuredAcross ? Exactly(diagonal + random.Next(-1, 2)) : null,
            mount == Mount.Inset ? Pick<OutOfSquareFit>() : OutOfSquareFit.Upright);

        LengthEntry?[] Kind(int size)
        {
            LengthEntry?[] places = [Maybe(50, Place), Maybe(50, Place), Maybe(50, Place)];
            if (!Chance(3) && places.All(place => place is null))
                places[random.Next(places.Length)] = Place();
            return places;

            LengthEntry Place() => Exactly(size + random.Next(-1, 2));
        }
    }

    private Beyond Outside() => Chance(50) ? new FrameEdge(Exactly(random.Next(24, 37))) : new WallBeyond(Exactly(random.Next(24, 37)));

    private Opening MakeOpening(Filling filling, Readings? readings, Surroundings? beside) => new(Id("opening"), filling, Number(),
        Maybe(20, () => Text("Over the sink")), readings, beside, Maybe(10, () => Pick("A", "B")), Maybe(8, () => Exactly(6)), Overrides());

    private Filling Fill(int width, int height, IReadOnlyList<DoorDesign> designs)
    {
        var mount = Pick(Mount.Overlay, Mount.Overlay, Mount.Inset, Mount.Lipped);
        var edges = mount == Mount.Overlay && Chance(30) ? new EdgeRules(Edge(), Edge(), Edge(), Edge()) : null;
        if (height < 10 * Sixteenths || Chance(20))
            return Drawers(mount, height, edges, designs);

        var count = Math.Clamp((width + 20 * Sixteenths - 1) / (20 * Sixteenths), 1, 4);
        var leaves = Enumerable.Range(0, count).Select(index => new LeafEntry(
            count == 1 ? Pick<HingeSide>() : index == count - 1 ? HingeSide.Right : HingeSide.Left,
            index == 0 || index == count - 1 ? null : index.ToString(CultureInfo.InvariantCulture),
            count > 1 && index == 0 && Chance(15) ? Exactly(width / count) : null,
            Maybe(10, () => Framed(designs)),
            Overrides(ofLeaf: true))).ToList();
        return new DoorFilling(mount, leaves, Framed(designs), edges, count == 2 && Chance(10));
    }

    private DrawerFilling Drawers(Mount mount, int height, EdgeRules? edges, IReadOnlyList<DoorDesign> designs)
    {
        var count = Math.Clamp(random.Next(1, height / (5 * Sixteenths) + 2), 1, 6);
        BankHeights? heights = null;
        if (count > 1 && Chance(30))
        {
            heights = new ProportionalHeights([.. Enumerable.Range(0, count).Select(_ => random.Next(2, 6))]);
        }
        else if (count > 1 && Chance(40))
        {
            var open = random.Next(count);
            heights = new GivenHeights([.. Enumerable.Range(0, count).Select(index => new GivenHeight(index == open ? null : Exactly(height / count - 4)))]);
        }

        return new(mount, Pick(designs).Id, count, heights, edges, count > 1 && Chance(20) ? random.Next(1, count + 1) : null, Chance(20));
    }

    private EdgeRule? Edge() => random.Next(6) switch
    {
        0 => new FixedOverlay(Exactly(random.Next(4, 17))),
        1 => new ShareMember(Maybe(50, () => Exactly(2))),
        2 => new ToFrameEdge(Maybe(50, () => Exactly(4))),
        _ => null,
    };

    private DoorDesign Design() => Chance(20) ? Slab() : Frame();

    private DoorDesign Slab() => new(Id("slab"), Text("Slab"), Construction.Slab, Pick(Species), SolidStock(), null, null, null, null, null, [], null, null, null, [], null, null,
        SlabGrain: Chance(50) ? Pick<GrainDirection>() : null);

    private DoorDesign Frame()
    {
        var construction = Pick(Construction.CopeAndStick, Construction.CopeAndStick, Construction.MortiseAndTenon, Construction.Dowelled, Construction.LooseTenon, Construction.Mitred);
        var isMitred = construction == Construction.Mitred;
        MidRails? midRails = !isMitred && Chance(25)
            ? Chance(60) ? new(random.Next(1, 3), Maybe(50, () => Exactly(random.Next(30, 41))), [])
                : new(null, null, [new(Between(10, 14), Pick<MeasuredTo>(), Maybe(30, () => Exactly(40)))])
            : null;
        var rows = 1 + (midRails?.Count ?? midRails?.Places.Count ?? 0);
        List<MidStileRow> midStiles = !isMitred && Chance(20) ? [new(random.Next(1, rows + 1), random.Next(1, 3), Maybe(30, () => Exactly(30)))] : [];
        var lights = rows + midStiles.Sum(row => row.Count);
        return new(Id("frame"), Text("Frame"), construction, Pick(Species), SolidStock(), Pick(standard.Cutters).Id,
            Chance(50) ? Chance(50) ? new(Both: Exactly(random.Next(28, 45))) : new(null, Exactly(random.Next(28, 45)), Exactly(random.Next(28, 45))) : null,
            Maybe(50, () => Exactly(random.Next(28, 45))), Maybe(50, () => Exactly(random.Next(28, 45))),
            midRails, midStiles,
            isMitred ? null : Maybe(20, MakeArch), isMitred ? null : Maybe(6, MakeArch),
            Fill(), lights > 1 && Chance(40) ? [new(random.Next(1, lights + 1), Fill())] : [],
            construction == Construction.MortiseAndTenon ? Maybe(50, () => Exactly(random.Next(16, 25))) : null,
            construction is Construction.MortiseAndTenon or Construction.Dowelled or Construction.LooseTenon ? Maybe(40, () => Exactly(random.Next(0, 6))) : null,
            Chance(50), null);
    }

    private Arch MakeArch()
    {
        var arch = MakeCurve();
        return arch.PerLight || !Chance(30) ? arch
            : arch with { AcrossPair = arch.Family == ArchFamily.Drawn ? PairCrown.MiddleOfPair : Pick<PairCrown>() };
    }

    private Arch MakeCurve()
    {
        var family = Pick<ArchFamily>();
        if (family == ArchFamily.Drawn)
            return new(family, PerLight: Chance(20), Curve: [new LineStep(Exactly(8), Exactly(0)), new ArcStep(Exactly(random.Next(20, 60)), Exactly(random.Next(6, 12)), Exactly(96), Exactly(0))]);
        return new(family, family == ArchFamily.HalfRound ? null : Exactly(random.Next(12, 25)),
            family is ArchFamily.Stepped or ArchFamily.Cathedral ? Exactly(random.Next(4, 17)) : null, Chance(20),
            family is ArchFamily.Cathedral or ArchFamily.DoubleCurve ? Maybe(50, () => new ArcRatio(random.Next(1, 4), random.Next(1, 4))) : null);
    }

    private LightFilling Fill()
    {
        var kind = Pick<PanelKind>();
        var grain = Chance(20) ? Pick<GrainDirection>() : (GrainDirection?)null;
        return kind switch
        {
            PanelKind.Raised or PanelKind.FlatSolid => new(kind, Maybe(20, () => Pick(Species)), SolidStock(), grain),
            PanelKind.FlatSheet => new(kind, null, Pick(standard.Stocks.Where(stock => stock.Kind == StockKind.Sheet).ToList()).Id, grain, Chance(30)),
            PanelKind.Glass => new(kind, SafetyGlazing: Maybe(60, () => Text("tempered"))),
            _ => new(kind),
        };
    }

    private SettingValues Overrides(bool ofLeaf = false)
    {
        if (!Chance(12))
            return SettingValues.None;
        Dictionary<Setting, SettingValue> values = [];
        foreach (var (setting, value) in MakeWood(ofLeaf))
            values[setting] = value;
        foreach (var setting in Settings.All.Where(setting => (ofLeaf ? setting.OfLeaf : setting.Overridable) && !OfWood.Contains(setting) && Chance(10)))
        {
            if (setting.Kind != SettingKind.Length || setting.IsWord(setting.Inch) && Chance(50))
            {
                values[setting] = new(Pick(standard.WordsOf(setting)), Length.Zero);
                continue;
            }

            var shipped = setting.IsWord(setting.Inch) ? Length.FromInches(new(1, Sixteenths)) : LengthReader.ReadOwn(setting.Inch, LengthUnit.Inch);
            // A cutting step stays a half or the double of the shipped one.
            var entry = Spell(setting == Settings.Step
                ? shipped * Pick<Fraction>(new(1, 2), 1, 2)
                : shipped + Length.FromInches(new(random.Next(3), Sixteenths)));
            values[setting] = new(entry.Text, entry.Value, Maybe(20, () => Text("asked for by the maker")));
        }

        return values.Count == 0 ? SettingValues.None : new(values);
    }

    // By chances of their own, so that a seed gives the course it gave before there were any.
    private IEnumerable<(Setting Setting, SettingValue Value)> MakeWood(bool ofLeaf)
    {
        foreach (var setting in OfWood.Where(setting => (ofLeaf ? setting.OfLeaf : setting.Overridable) && ofTheWood.Next(100) < 20))
        {
            yield return (setting, setting.Kind switch
            {
                SettingKind.Percent => new($"{ofTheWood.Next(4, 14)} %", Length.Zero),
                SettingKind.Reference => new(ClimateTable.Shipped[ofTheWood.Next(ClimateTable.Shipped.Count)].Id, Length.Zero),
                SettingKind.Choice => new(setting.Choices![ofTheWood.Next(setting.Choices.Count)], Length.Zero),
                _ => ofTheWood.Next(2) == 0 ? new("1/16 in", Length.FromInches(new(1, 16))) : new SettingValue("1/32 in", Length.FromInches(new(1, 32))),
            });
        }
    }

    private int? Number()
    {
        fronts++;
        return Chance(30) ? fronts : null;
    }

    private string SolidStock() => Pick(standard.Stocks.Where(stock => stock.Kind == StockKind.Solid).ToList()).Id;

    private string Framed(IReadOnlyList<DoorDesign> designs) => Pick(designs).Id;

    private LengthEntry Between(int least, int greatest) => Exactly(random.Next(least * Sixteenths, greatest * Sixteenths + 1));

    private LengthEntry Exactly(int sixteenths) => Spell(unit == LengthUnit.Inch
        ? Length.FromInches(new(sixteenths, Sixteenths))
        : Length.FromInches(new(sixteenths, Sixteenths)).OnStep(Length.FromMillimetres(new(1, 2)), StepDirection.Nearest));

    private LengthEntry Spell(Length value)
    {
        var inches = new LengthFormat(LengthUnit.Inch, 64);
        var millimetres = value.Millimetres.ToDecimal().ToString(CultureInfo.InvariantCulture);
        List<string> texts = [];
        if (inches.IsExact(value))
        {
            var mixed = inches.Print(value);
            var bare = unit == LengthUnit.Inch ? mixed : mixed + " in";
            texts.AddRange([bare, bare, bare, mixed + " in", mixed + "\"", value.Inches.ToDecimal().ToString(CultureInfo.InvariantCulture) + " in"]);
            if (mixed.EndsWith(" 1/2", StringComparison.Ordinal))
                texts.Add(mixed.Replace(" 1/2", "½ in", StringComparison.Ordinal));
            if (mixed.Contains(' ', StringComparison.Ordinal))
                texts.Add(mixed.Replace(' ', '-') + " in");
            if (value.Inches >= 12)
            {
                var feet = value.Inches.ToDecimal() / 12;
                texts.Add($"{decimal.Floor(feet):0}' {inches.Print(value - Length.FromInches(new Fraction(decimal.Floor(feet) * 12)))}\"");
            }
        }

        if (Length.FromMillimetres(new Fraction(value.Millimetres.ToDecimal())) == value)
        {
            texts.Add(millimetres + " mm");
            if (unit == LengthUnit.Millimetre)
                texts.AddRange([millimetres, millimetres, millimetres, millimetres + "mm"]);
        }

        var text = Pick(texts);
        return new(text, LengthReader.ReadOwn(text, unit));
    }

    private string Id(string word) => string.Create(CultureInfo.InvariantCulture, $"{word}-{++made}");

    private string Text(string word) => Pick(word, $"{word} {random.Next(100)}", $"{word} – “with” ½ ß\ttab", $"{word} 木工 🪚");

    private bool Chance(int percent) => random.Next(100) < percent;

    private T? Maybe<T>(int percent, Func<T> make) where T : class => Chance(percent) ? make() : null;

    private LengthEntry? Maybe(int percent, Func<LengthEntry> make) => Chance(percent) ? make() : null;

    private List<T> Some<T>(int least, int greatest, Func<T> make) =>
        [.. Enumerable.Range(0, random.Next(least, greatest + 1)).Select(_ => make())];

    private T Pick<T>(params IReadOnlyList<T> among) => among[random.Next(among.Count)];

    private T Pick<T>() where T : struct, Enum => Pick<T>(Enum.GetValues<T>());
}
