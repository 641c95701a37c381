namespace Stilewright.Drawing.Figures;

/// <summary>How a leaf, or its solid panel, can be drawn.</summary>
public static class LeafViews
{
    public const string Front = "front";
    public const string Back = "back";
    public const string StickAcross = "stick-across";
    public const string StickUp = "stick-up";

    /// <summary>From the back, with what is bored for its hinges.</summary>
    public const string Boring = "boring";

    /// <summary>A solid panel in its grooves at the driest, at making and at the wettest.</summary>
    public const string PanelFit = "panel-fit";

    /// <summary>A solid panel's play through the months.</summary>
    public const string PanelPlay = "panel-play";

    /// <summary>The staves of a solid panel or slab.</summary>
    public const string GlueUp = "glue-up";

    public static IReadOnlyList<string> All { get; } = [Front, Back, StickAcross, StickUp, Boring, PanelFit, PanelPlay, GlueUp];
}
