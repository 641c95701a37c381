using Stilewright.Measure;

namespace Stilewright.Teaching.Worksheets;

/// <summary>What kind of size a worksheet may ask for.</summary>
public enum SizeKind
{
    /// <summary>Overlay of an edge that shares a member or runs to the frame's edge, and the lip.</summary>
    Edge,

    Front,
    Leaf,

    /// <summary>Between the stiles, and between the rails.</summary>
    Clear,

    Rail,

    /// <summary>Where mid rails and mid stiles lie, and what they leave clear.</summary>
    Light,

    /// <summary>Panels and panes.</summary>
    Panel,

    ArchedBlank,

    /// <summary>Sizes with what is trimmed off the glued leaf.</summary>
    IntoClamps,

    Rough,
    Thickness,
}

internal static class SizeKinds
{
    /// <summary>The kind of a step by its key; null for what no worksheet asks, such as how an opening's rectangle is found.</summary>
    public static SizeKind? Of(Named step) => step.Key switch
    {
        "front/width" or "front/height" => SizeKind.Front,
        "leaf/width" or "leaf/height" => SizeKind.Leaf,
        "leaf/clear.width" or "leaf/clear.height" => SizeKind.Clear,
        "leaf/rail.length" or "leaf/rail.shoulder" => SizeKind.Rail,
        "stock/final" => SizeKind.Thickness,
        var key when key.EndsWith(".glue", StringComparison.Ordinal) => SizeKind.IntoClamps,
        var key when key.EndsWith(".rough", StringComparison.Ordinal) => SizeKind.Rough,
        var key when key.EndsWith(".width.blank", StringComparison.Ordinal) => SizeKind.ArchedBlank,
        var key when key.StartsWith("leaf/panel", StringComparison.Ordinal) || key.StartsWith("leaf/glass", StringComparison.Ordinal) => SizeKind.Panel,
        var key when key.StartsWith("leaf/light", StringComparison.Ordinal) || key.StartsWith("leaf/row.", StringComparison.Ordinal)
            || key.StartsWith("leaf/rail.mid.", StringComparison.Ordinal) || key.StartsWith("leaf/stile.mid", StringComparison.Ordinal) => SizeKind.Light,
        var key when key.StartsWith("front/edge.", StringComparison.Ordinal) || key == "front/lip.cover" => SizeKind.Edge,
        _ => null,
    };
}
