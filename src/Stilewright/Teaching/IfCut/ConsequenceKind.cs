namespace Stilewright.Teaching.IfCut;

/// <summary>What would go wrong with a leaf that is cut as a list says.</summary>
public enum ConsequenceKind
{
    /// <summary>A member is too short for its place: its joints stand open.</summary>
    JointOpen,

    /// <summary>A mid stile is too long for its light: it holds the rails apart.</summary>
    HeldApart,

    /// <summary>The leaf comes out of another size.</summary>
    LeafSize,

    /// <summary>One stile ends above or below the other.</summary>
    EndsUneven,

    /// <summary>The stiles differ from each other in width: the light is not in the middle.</summary>
    LightOffMiddle,

    /// <summary>A rail or a mid stile shows wider or narrower than it should.</summary>
    MemberWidth,

    /// <summary>The panel or pane reaches the bottom of the groove before the joints close.</summary>
    PanelBottoms,

    /// <summary>The panel or pane goes in, with less room than it should have.</summary>
    PanelTight,

    /// <summary>The panel or pane has more play than it should have, and stays in its groove.</summary>
    PanelLoose,

    /// <summary>Slid to one side, less of it stays in the groove opposite than the clearance is: light may show when it shrinks.</summary>
    PanelShowsLight,

    /// <summary>Slid to one side it leaves the groove opposite.</summary>
    PanelFallsOut,

    /// <summary>The rail has another height at its crown.</summary>
    CrownWood,

    /// <summary>No wood is left at the crown.</summary>
    CrownBrokenThrough,

    /// <summary>The allowance of the stage makes up for it.</summary>
    WithinAllowance,
}
