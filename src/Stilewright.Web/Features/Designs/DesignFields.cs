using System.Globalization;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Features.Designs;

/// <summary>What is typed about a door design, as fields.</summary>
public static class DesignFields
{
    public static WordField<Course> Name(string id) => Words(id, "name", "What it is called", design => design.Name, (design, words) => design with { Name = words ?? design.Name });

    public static WordField<Course> Species(string id) => Words(id, "species", "Species", design => design.Species, (design, words) => design with { Species = words ?? design.Species });

    public static LengthField TopRail(string id, string usual) => Free(id, "topRail", "Top rail", usual, design => design.TopRail, (design, entry) => design with { TopRail = entry });

    public static LengthField BottomRail(string id, string usual) => Free(id, "bottomRail", "Bottom rail", usual, design => design.BottomRail, (design, entry) => design with { BottomRail = entry });

    public static LengthField Tenon(string id, string usual) => Free(id, "tenon", "Tenon length", usual, design => design.Tenon, (design, entry) => design with { Tenon = entry });

    public static LengthField CutBack(string id) => Free(id, "cutBack", "Moulding cut back", "none", design => design.CutBack, (design, entry) => design with { CutBack = entry });

    public static LengthField EdgeWidth(string id) => Free(id, "edgeWidth", "Edge moulding, width on the face", "square edge", design => design.EdgeWidth, (design, entry) => design with { EdgeWidth = entry });

    public static LengthField EdgeDepth(string id) => Free(id, "edgeDepth", "Edge moulding, depth", "not known", design => design.EdgeDepth, (design, entry) => design with { EdgeDepth = entry });

    /// <summary>One field for both stiles, or two; none where the standard's width holds.</summary>
    public static IReadOnlyList<LengthField> Stiles(string id, StileWidths? widths) => widths switch
    {
        null => [],
        { Both: not null } => [Needed(id, "stiles/both", "Both stiles", design => design.Stiles?.Both, (design, entry) => design with { Stiles = new(entry) })],
        _ =>
        [
            Needed(id, "stiles/hinge", "Stile by the hinges", design => design.Stiles?.Hinge, (design, entry) => design with { Stiles = design.Stiles! with { Hinge = entry } }),
            Needed(id, "stiles/pull", "Stile at the pull", design => design.Stiles?.Pull, (design, entry) => design with { Stiles = design.Stiles! with { Pull = entry } }),
        ],
    };

    /// <summary>The width of every mid rail that is evenly placed.</summary>
    public static LengthField MidRail(string id, string usual) => Free(id, "midRails/width", "Width of each", usual,
        design => design.MidRails?.Width, (design, entry) => design.MidRails is { } rails ? design with { MidRails = rails with { Width = entry } } : design);

    public static LengthField PlaceHeight(string id, int index) => Needed(id, Of("midRails/places", index, "height"), "Above the bottom of the leaf",
        design => Place(design, index)?.Height, (design, entry) => WithPlace(design, index, place => place with { Height = entry }));

    public static LengthField PlaceWidth(string id, int index, string usual) => Free(id, Of("midRails/places", index, "width"), "Width", usual,
        design => Place(design, index)?.Width, (design, entry) => WithPlace(design, index, place => place with { Width = entry }));

    public static LengthField MidStile(string id, int row, string usual) => Free(id, Of("midStiles", row, "width"), "Width of each", usual,
        design => design.MidStiles.FirstOrDefault(each => each.Row == row)?.Width,
        (design, entry) => design with { MidStiles = [.. design.MidStiles.Select(each => each.Row == row ? each with { Width = entry } : each)] });

    public static LengthField Rise(string id, bool isTop) => new(
        Name(id, $"{End(isTop)}/rise"), "Rise", course => Arch(course, id, isTop)?.Rise, (course, entry) => WithArch(course, id, isTop, arch => arch with { Rise = entry }))
    {
        IsOptional = false,
    };

    public static LengthField Shoulder(string id, bool isTop) => new(
        Name(id, $"{End(isTop)}/shoulder"), "Shoulder at each end", course => Arch(course, id, isTop)?.Shoulder, (course, entry) => WithArch(course, id, isTop, arch => arch with { Shoulder = entry }))
    {
        Otherwise = "none",
    };

    /// <summary>How the reverse arcs are to the crown, as two whole numbers.</summary>
    public static WordField<Course> Ratio(string id, bool isTop) => RatioFields.Of<Course>(
        Name(id, $"{End(isTop)}/reverseToCrown"), "1 : 1", course => Arch(course, id, isTop)?.ReverseToCrown,
        (course, ratio) => WithArch(course, id, isTop, arch => arch with { ReverseToCrown = ratio }));

    /// <summary>The places of one step of a drawn curve.</summary>
    public static IReadOnlyList<LengthField> Step(string id, bool isTop, int index, CurveStep step)
    {
        return step is LineStep
            ?
            [
                Point<LineStep>("x", "Ends, across", line => line.X, (line, entry) => line with { X = entry }),
                Point<LineStep>("y", "Ends, above", line => line.Y, (line, entry) => line with { Y = entry }),
            ]
            :
            [
                Point<ArcStep>("viaX", "Goes through, across", arc => arc.ViaX, (arc, entry) => arc with { ViaX = entry }),
                Point<ArcStep>("viaY", "Goes through, above", arc => arc.ViaY, (arc, entry) => arc with { ViaY = entry }),
                Point<ArcStep>("x", "Ends, across", arc => arc.X, (arc, entry) => arc with { X = entry }),
                Point<ArcStep>("y", "Ends, above", arc => arc.Y, (arc, entry) => arc with { Y = entry }),
            ];

        LengthField Point<T>(string key, string label, Func<T, LengthEntry> get, Func<T, LengthEntry, T> set)
            where T : CurveStep => new(
            Name(id, Of($"{End(isTop)}/curve", index, key)), label,
            course => Arch(course, id, isTop)?.Curve?.ElementAtOrDefault(index) is T there ? get(there) : null,
            (course, entry) => entry is not { } length ? course : WithArch(course, id, isTop, arch => arch with
            {
                Curve = [.. arch.Curve!.Select((each, at) => at == index && each is T there ? set(there, length) : each)],
            }))
            {
                IsOptional = false,
            };
    }

    public static Course WithArch(Course course, string id, bool isTop, Func<Arch, Arch?> edit) => DesignEdits.With(course, id, design =>
        isTop ? design.TopArch is { } top ? design with { TopArch = edit(top) } : design
        : design.BottomArch is { } bottom ? design with { BottomArch = edit(bottom) } : design);

    private static Arch? Arch(Course course, string id, bool isTop) => DesignEdits.Find(course, id) is { } design ? isTop ? design.TopArch : design.BottomArch : null;

    private static MidRailPlace? Place(DoorDesign design, int index) => design.MidRails?.Places.ElementAtOrDefault(index);

    private static DoorDesign WithPlace(DoorDesign design, int index, Func<MidRailPlace, MidRailPlace> edit) => design.MidRails is { } rails
        ? design with { MidRails = rails with { Places = [.. rails.Places.Select((place, each) => each == index ? edit(place) : place)] } } : design;

    private static WordField<Course> Words(string id, string key, string label, Func<DoorDesign, string> get, Func<DoorDesign, string?, DoorDesign> set) => new(
        Name(id, key), label, course => DesignEdits.Find(course, id) is { } design ? get(design) : null,
        (course, words) => DesignEdits.With(course, id, design => set(design, words)))
    {
        IsOptional = false,
    };

    private static LengthField Free(
        string id, string key, string label, string otherwise, Func<DoorDesign, LengthEntry?> get, Func<DoorDesign, LengthEntry?, DoorDesign> set) => new(
        Name(id, key), label, course => DesignEdits.Find(course, id) is { } design ? get(design) : null,
        (course, entry) => DesignEdits.With(course, id, design => set(design, entry)))
        {
            Otherwise = otherwise,
        };

    private static LengthField Needed(string id, string key, string label, Func<DoorDesign, LengthEntry?> get, Func<DoorDesign, LengthEntry, DoorDesign> set) => new(
        Name(id, key), label, course => DesignEdits.Find(course, id) is { } design ? get(design) : null,
        (course, entry) => entry is { } length ? DesignEdits.With(course, id, design => set(design, length)) : course)
    {
        IsOptional = false,
    };

    private static string Name(string id, string key) => $"design/{id}/{key}";

    private static string End(bool isTop) => isTop ? "topArch" : "bottomArch";

    private static string Of(string list, int index, string key) => string.Create(CultureInfo.InvariantCulture, $"{list}/{index}/{key}");
}
