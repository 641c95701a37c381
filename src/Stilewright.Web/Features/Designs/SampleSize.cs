using Stilewright.Measure;

namespace Stilewright.Web.Features.Designs;

/// <summary>The size of the leaf that a design is shown on.</summary>
public sealed record SampleSize(LengthEntry Width, LengthEntry Height);
