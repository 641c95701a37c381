using Stilewright.Doors;
using Stilewright.Teaching.IfCut;

namespace Stilewright.Drawing.Figures;

/// <summary>Consequences in a few words, for drawings and their captions.</summary>
public static class IfCutWords
{
    /// <summary>What happens, such as "joints open".</summary>
    public static string Title(Consequence consequence)
    {
        ArgumentNullException.ThrowIfNull(consequence);
        var title = consequence.Kind switch
        {
            ConsequenceKind.JointOpen => "joints open",
            ConsequenceKind.HeldApart => "rails held apart",
            ConsequenceKind.LeafSize => "leaf of another size",
            ConsequenceKind.EndsUneven => "ends uneven",
            ConsequenceKind.LightOffMiddle => "light off the middle",
            ConsequenceKind.MemberWidth => "member of another width",
            ConsequenceKind.PanelBottoms => $"{Noun(consequence)} bottoms",
            ConsequenceKind.PanelTight => $"{Noun(consequence)} tight",
            ConsequenceKind.PanelLoose => $"{Noun(consequence)} loose",
            ConsequenceKind.PanelShowsLight => $"{Noun(consequence)} shows light",
            ConsequenceKind.PanelFallsOut => $"{Noun(consequence)} falls out",
            ConsequenceKind.CrownWood => "wood at the crown",
            ConsequenceKind.CrownBrokenThrough => "arch breaks through",
            _ => "within the allowance",
        };
        return consequence.Count == 1 ? title : FormattableString.Invariant($"{consequence.Count} × {title}");
    }

    private static string Noun(Consequence consequence) => consequence.Fit is { Filling.Kind: PartKind.Glass } ? "pane" : "panel";

    internal static string Of(FaultKind kind) => kind switch { FaultKind.Open => "open", FaultKind.TooMuch => "over", _ => "short" };
}
