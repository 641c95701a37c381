using Stilewright.Measure;

namespace Stilewright.Web.Features.Designs;

/// <summary>The size of the leaf that a design is shown on.</summary>
public sealed record SampleSize(LengthEntry Width, LengthEntry Height)
{
    /// <summary>A door of a common size, in the unit of a document.</summary>
    public static SampleSize Usual(LengthUnit unit) => Common(unit)[0];

    /// <summary>Doors of common sizes: of a wall cabinet, a low one, a tall one.</summary>
    internal static IReadOnlyList<SampleSize> Common(LengthUnit unit) =>
    [
        new(DesignEdits.Entry(unit, "15", "380"), DesignEdits.Entry(unit, "24", "610")),
        new(DesignEdits.Entry(unit, "20", "510"), DesignEdits.Entry(unit, "10", "250")),
        new(DesignEdits.Entry(unit, "18", "460"), DesignEdits.Entry(unit, "60", "1520")),
        new(DesignEdits.Entry(unit, "24", "610"), DesignEdits.Entry(unit, "90", "2290")),
    ];
}
