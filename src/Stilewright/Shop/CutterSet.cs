using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

[Meaning("The cutters that make one style of frame; every part's size follows from what they cut")]
public sealed record CutterSet(
    [Id] string Id,
    [Meaning("What the shop calls it")] string Name,
    [Meaning("Depth d of the groove that takes the panel's edge"), Between(0, 2, Above = true)] LengthEntry GrooveDepth,
    [Meaning("Length e of the cope's tongue, no more than the groove is deep"), Between(0, 2, Above = true)] LengthEntry CopeLength,
    [Meaning("Width of the groove"), Between(0, 2, Above = true)] LengthEntry GrooveWidth,
    [Meaning("Face of the stock to the near wall of the groove, before sanding"), Label("groove from the face"), Between(0, 2, Above = true)] LengthEntry GrooveFromFace,
    [Meaning("Width of the moulded edge, from the sight line back"), Between(0, 2)] LengthEntry StickingWidth,
    [Meaning("Thinnest planed stock the cutters take"), Between(0, 4, Above = true)] LengthEntry ThinnestStock,
    [Meaning("Thickest planed stock the cutters take"), Between(0, 4, Above = true)] LengthEntry ThickestStock,
    [Meaning("Width of the raise, from the panel's edge to its field; absent where the set raises no panels"), Between(0, 4, Above = true)] LengthEntry? RaiseWidth = null,
    [Meaning("Radius of the collar that follows an arched rail when it is moulded and grooved; absent where it is not checked"), Between(0, 12, Above = true)] LengthEntry? CollarRadius = null,
    [Meaning("Radius of the collar that follows an arched panel when it is raised; absent where it is not checked"), Label("collar radius when raising"), Between(0, 12, Above = true)] LengthEntry? RaiseCollarRadius = null,
    [Meaning("Radius of the collar that follows an arched panel when its back is cut; absent where it is not checked or no back is cut"), Label("collar radius when the back is cut"), Between(0, 12, Above = true)] LengthEntry? BackCutCollarRadius = null,
    [Meaning("Width of the flat tongue round a raised panel, from its edge to where the raise begins; absent, as deep as the groove"), Label("tongue flat"), Between(0, 4, Above = true)] LengthEntry? TongueFlat = null,
    [Meaning("Whether the stock runs face down on the table")] bool FaceDown = true,
    [Meaning("Where the figures come from")] string? Source = null);
