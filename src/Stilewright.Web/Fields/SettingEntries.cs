using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Web.Fields;

/// <summary>Values of the standard as they are entered elsewhere.</summary>
public static class SettingEntries
{
    /// <summary>A length of the standard as an entry of a document whose bare numbers are in a unit.</summary>
    public static LengthEntry Of(SettingValue value, LengthUnit unit)
    {
        if (LengthReader.Read(value.Text, unit) is ParseResult<Length>.Parsed(var same) && same == value.Amount)
            return new(value.Text, value.Amount);
        var format = unit == LengthUnit.Inch ? new LengthFormat(LengthUnit.Inch, 64) : new LengthFormat(LengthUnit.Millimetre);
        var exact = format.IsExact(value.Amount) ? format : unit == LengthUnit.Inch ? new LengthFormat(LengthUnit.Millimetre) : new LengthFormat(LengthUnit.Inch, 64);
        return new(exact.PrintWithUnit(value.Amount), value.Amount);
    }
}
