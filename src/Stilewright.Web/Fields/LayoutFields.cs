using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Fields;

/// <summary>The face frame's own figures as fields.</summary>
public static class LayoutFields
{
    private static readonly LengthEntry Zero = new("0", default);

    /// <summary>Width and height over all, then the four outer members.</summary>
    public static IReadOnlyList<LengthField> Frame(string faceId) =>
    [
        Needed(faceId, "width", "frame, width over all", frame => frame.Width, (frame, entry) => frame with { Width = entry }),
        Needed(faceId, "height", "frame, height over all", frame => frame.Height, (frame, entry) => frame with { Height = entry }),
        Needed(faceId, "leftStile/width", "left stile", frame => frame.LeftStile.Width, (frame, entry) => frame with { LeftStile = frame.LeftStile with { Width = entry } }),
        Needed(faceId, "rightStile/width", "right stile", frame => frame.RightStile.Width, (frame, entry) => frame with { RightStile = frame.RightStile with { Width = entry } }),
        Needed(faceId, "topRail", "top rail", frame => frame.TopRail, (frame, entry) => frame with { TopRail = entry }),
        Needed(faceId, "bottomRail", "bottom rail, 0 where the case bottom is the edge", frame => frame.BottomRail, (frame, entry) => frame with { BottomRail = entry }),
    ];

    /// <summary>What only some frames have: a bead, stiles that stand above or below, a scribe, a toe notch.</summary>
    public static IReadOnlyList<LengthField> Seldom(string faceId) =>
    [
        Free(faceId, "bead", "bead round every opening", frame => frame.Bead, (frame, entry) => frame with { Bead = entry }),
        .. Stile(faceId, "leftStile", "left stile", frame => frame.LeftStile, (frame, stile) => frame with { LeftStile = stile }),
        .. Stile(faceId, "rightStile", "right stile", frame => frame.RightStile, (frame, stile) => frame with { RightStile = stile }),
    ];

    /// <summary>The size of a space among those beside it; the others share the rest.</summary>
    public static LengthField Size(string faceId, IReadOnlyList<int> place, string label) => new(
        $"{faceId}/space.{string.Join('.', place)}/size", label,
        course => Frame(course, faceId) is { } frame ? ProjectEdits.SpaceAt(frame, place)?.Size : null,
        (course, entry) => ProjectEdits.WithSpace(course, faceId, place, space => space with { Size = entry }))
    {
        Otherwise = "shares the rest",
    };

    /// <summary>The width of the members that divide a space.</summary>
    public static LengthField Member(string faceId, IReadOnlyList<int> place, string label) => new(
        $"{faceId}/space.{string.Join('.', place)}/member", label,
        course => Frame(course, faceId) is { } frame && ProjectEdits.SpaceAt(frame, place) is { } space ? (space.Columns ?? space.Rows)?.Member : null,
        (course, entry) => ProjectEdits.WithSpace(course, faceId, place, space => space with
        {
            Columns = space.Columns is { } columns ? columns with { Member = entry, Members = [] } : null,
            Rows = space.Rows is { } rows ? rows with { Member = entry, Members = [] } : null,
        }))
    {
        IsOptional = false,
    };

    private static IEnumerable<LengthField> Stile(
        string faceId, string key, string name, Func<FaceLayout, OuterStile> get, Func<FaceLayout, OuterStile, FaceLayout> set) =>
    [
        Free(faceId, $"{key}/above", $"{name}, above the frame", frame => get(frame).Above, (frame, entry) => set(frame, get(frame) with { Above = entry })),
        Free(faceId, $"{key}/below", $"{name}, below the frame", frame => get(frame).Below, (frame, entry) => set(frame, get(frame) with { Below = entry })),
        Free(faceId, $"{key}/scribe", $"{name}, scribed off at the wall", frame => get(frame).Scribe, (frame, entry) => set(frame, get(frame) with { Scribe = entry })),
        Free(faceId, $"{key}/toeNotch", $"{name}, height of the toe notch", frame => get(frame).ToeNotch, (frame, entry) => set(frame, get(frame) with { ToeNotch = entry })),
    ];

    private static LengthField Needed(string faceId, string key, string label, Func<FaceLayout, LengthEntry> get, Func<FaceLayout, LengthEntry, FaceLayout> set) => new(
        $"{faceId}/layout/{key}", label,
        course => Frame(course, faceId) is { } frame ? get(frame) : null,
        (course, entry) => ProjectEdits.WithLayout(course, faceId, frame => set(frame, entry ?? Zero)))
    {
        IsOptional = false,
    };

    private static LengthField Free(string faceId, string key, string label, Func<FaceLayout, LengthEntry?> get, Func<FaceLayout, LengthEntry?, FaceLayout> set) => new(
        $"{faceId}/layout/{key}", label,
        course => Frame(course, faceId) is { } frame ? get(frame) : null,
        (course, entry) => ProjectEdits.WithLayout(course, faceId, frame => set(frame, entry)));

    private static FaceLayout? Frame(Course course, string faceId) =>
        course.Projects.SelectMany(project => project.Pieces).SelectMany(piece => piece.Faces).FirstOrDefault(face => face.Id == faceId)?.Layout;
}
