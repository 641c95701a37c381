namespace Stilewright.Drawing.Figures;

/// <summary>How a leaf can be drawn.</summary>
public static class LeafViews
{
    public const string Front = "front";
    public const string Back = "back";
    public const string StickAcross = "stick-across";
    public const string StickUp = "stick-up";

    /// <summary>From the back, with what is bored for its hinges.</summary>
    public const string Boring = "boring";

    public static IReadOnlyList<string> All { get; } = [Front, Back, StickAcross, StickUp, Boring];
}
