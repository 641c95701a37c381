using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Packets;

/// <summary>Draws a face; the number is the width there is for it, in millimetres.</summary>
public delegate Scene DrawFace(string title, FaceBreakdown face, Scale scale, LengthFormat format, double widthMillimetres);

public delegate Scene DrawRun(string title, RunFigure run, Scale scale, LengthFormat format);

public delegate Scene DrawLeaf(SizedLeaf leaf, Scale scale, LengthFormat format);

public delegate Scene DrawPart(Part part, Scale scale, LengthFormat format);

/// <summary>Draws what is laid along a leaf at full size, in pieces of no more than the given height.</summary>
public delegate IEnumerable<Scene> DrawStick(SizedLeaf leaf, LengthFormat format, double widthMillimetres, double heightMillimetres);

/// <summary>The drawings that a packet takes in; one that is null is left out of its sheets.</summary>
public sealed record PacketFigures
{
    public static PacketFigures Standard { get; } = new() { Face = FaceElevation.Draw };

    public DrawFace? Face { get; init; }
    public DrawRun? Run { get; init; }
    public DrawLeaf? LeafFront { get; init; }
    public DrawLeaf? LeafBack { get; init; }
    public DrawPart? Part { get; init; }
    public DrawStick? Stick { get; init; }
}
