using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

public enum HingeStyle
{
    [Meaning("Wraps round the edge of the face frame, its screws in the frame's edge")]
    WrapAround,

    [Meaning("One wing on the face of the frame, the other hidden behind the leaf")]
    SemiConcealed,

    [Meaning("A cup bored into the back of the leaf, an arm, and a plate on the frame")]
    Cup,

    [Meaning("Two leaves let in, the knuckle in sight")]
    Butt,
}

[Meaning("A kind of hinge, entered from its own sheet"), Label("hinge")]
public sealed record HingeKind(
    [Id] string Id,
    [Meaning("What the shop calls it")] string Name,
    HingeStyle Style,
    [Meaning("How the fronts sit that it hangs")] Mount Mount,
    [Meaning("The least overlay that it gives; of an inset hinge the least gap"), Label("least overlay or gap", Absent = "worked from its cup"), Between(0, 4)] LengthEntry? Least = null,
    [Meaning("The greatest overlay that it gives; of an inset hinge the greatest gap"), Label("greatest overlay or gap", Absent = "worked from its cup"), Between(0, 4)] LengthEntry? Greatest = null,
    [Meaning("Its cup, for a hinge that has one")] CupBoring? Cup = null,
    [Meaning("How far its screws move the leaf"), Label("adjustment")] HingeAdjustment? Adjustment = null,
    [Meaning("The narrowest frame member that it fits"), Label("least frame member", Absent = "not checked"), Between(0, 24, Above = true)] LengthEntry? LeastMember = null,
    [Meaning("The narrowest stile that it fits, beside what its cup asks for"), Label("least stile", Absent = "not checked"), Between(0, 24, Above = true)] LengthEntry? LeastStile = null,
    [Meaning("The thinnest leaf that it fits, after sanding"), Label("thinnest leaf", Absent = "not checked"), Between(0, 4, Above = true)] LengthEntry? ThinnestLeaf = null,
    [Meaning("The thickest leaf that it fits, after sanding"), Label("thickest leaf", Absent = "not checked"), Between(0, 4, Above = true)] LengthEntry? ThickestLeaf = null,
    [Meaning("How far it opens, in degrees"), Label("opening angle"), Between(30, 270)] int? OpensDegrees = null,
    [Meaning("Air that the hinge side needs to swing clear, by the leaf's thickness"), Label("least gaps")] IReadOnlyList<SwingGap>? Gaps = null,
    [Meaning("Its screws in words, such as number 6 by 5/8")] string? Screws = null,
    [Meaning("Diameter of the pilot holes for its screws"), Label("pilot holes", Absent = "by the screw's own table"), Between(0, 0.5, Above = true)] LengthEntry? Pilot = null,
    [Meaning("The id of its own table of numbers of hinges"), Label("table of numbers", Absent = "that of the standard")] string? CountTable = null,
    [Meaning("Where the figures come from")] string? Source = null)
{
    public IReadOnlyList<SwingGap> Gaps { get; init; } = Gaps ?? [];

    /// <summary>True for a hinge that lets an inset front keep a gap, rather than lap over the frame.</summary>
    public bool KeepsGap => Mount == Mount.Inset;

    /// <summary>Whether its overlay or gap is worked from its cup. A gap takes a plate; an overlay may be built in.</summary>
    public bool HasLaw => Cup is { Constant: not null } && (!KeepsGap || Cup.Plates.Count > 0);
}
