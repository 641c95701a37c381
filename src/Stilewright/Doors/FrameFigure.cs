using Stilewright.Measure;

namespace Stilewright.Doors;

/// <summary>A face frame as its layout draws it, seen from the front; places are from the bottom left of the frame.</summary>
/// <remarks>Within width and height, members and the outlines of openings leave no gap and do not overlap. Stiles run from
/// bottom to top and rails between them.</remarks>
/// <param name="Width">Over the outer stiles, before anything is scribed off.</param>
/// <param name="Height">Over the outer rails; a stile may stand above or below it.</param>
/// <param name="Members">The outer ones first, then those between spaces, in the order of the layout; none without width.</param>
public sealed record FrameFigure(Length Width, Length Height, IReadOnlyList<FrameMember> Members, IReadOnlyList<FrameOpening> Openings);

/// <summary>One member of a face frame.</summary>
/// <param name="Name">The trade's word, such as "left stile" or "rail between".</param>
/// <param name="Place">What shows of it, joints aside, with what is scribed off and what stands above or below the frame.</param>
/// <param name="Scribe">How much of a stile's width is scribed off its outer edge; null for none.</param>
/// <param name="ToeNotch">Height of a stile's notch for the toe space, from its foot; null for none.</param>
public sealed record FrameMember(string Name, FrameMemberKind Kind, Rectangle Place, Length? Scribe = null, Length? ToeNotch = null);

public enum FrameMemberKind
{
    OuterStile,
    OuterRail,
    Mullion,
    RailBetween,
}

/// <summary>What a frame's members leave open.</summary>
/// <param name="Path">The opening's id; null for a space left open.</param>
/// <param name="Outline">From member to member.</param>
/// <param name="Clear">What the bead leaves of it, by the layout; tape readings do not change it.</param>
public sealed record FrameOpening(string? Path, Rectangle Outline, Rectangle Clear);
