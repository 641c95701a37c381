using Stilewright.Measure;

namespace Stilewright.Web.Features.Designs;

/// <summary>The size of the leaf that a design is shown on.</summary>
public sealed record SampleSize(LengthEntry Width, LengthEntry Height)
{
    /// <summary>A door of a common size, in the unit of a document.</summary>
    public static SampleSize Usual(LengthUnit unit) => new(DesignEdits.Entry(unit, "15", "380"), DesignEdits.Entry(unit, "24", "610"));
}
