using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Web.Shell;

/// <summary>How the person at this screen reads lengths.</summary>
/// <param name="cookie">The unit chosen on this screen before, as its cookie has it; null or unknown for none.</param>
public sealed class Reader(string? cookie)
{
    /// <summary>Raised when another unit is chosen.</summary>
    public event Action? Changed;

    /// <summary>The unit chosen; null to read each course in its own.</summary>
    public LengthUnit? Unit { get; private set; } = cookie switch
    {
        "in" => LengthUnit.Inch,
        "mm" => LengthUnit.Millimetre,
        _ => null,
    };

    public void Choose(LengthUnit unit)
    {
        Unit = unit;
        Changed?.Invoke();
    }

    /// <summary>How lengths of a course are shown: in the unit chosen, or the course's own, as finely as its standard says.</summary>
    public LengthFormat FormatFor(StandardInForce standard, LengthUnit own) => new(Unit ?? own, standard.Format.FinestDenominator);
}
