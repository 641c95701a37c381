using System.Globalization;
using Fractions;
using Stilewright.Measure;

namespace Stilewright.Findings;

/// <summary>Puts sentences that hold lengths into the reader's unit.</summary>
public static class FindingText
{
    /// <param name="sentence">A length in it has its unit, unless it asks for its <c>figure</c> alone, as the width of a size does.</param>
    public static string Say(FormattableString sentence, LengthFormat format) => sentence.ToString(new Formatter(format));

    private sealed class Formatter(LengthFormat format) : IFormatProvider, ICustomFormatter
    {
        public object? GetFormat(Type? formatType) => formatType == typeof(ICustomFormatter) ? this : null;

        public string Format(string? specifier, object? arg, IFormatProvider? provider) => arg switch
        {
            null => "",
            FormattableString sentence => sentence.ToString(this),
            Length length => specifier == "figure" ? format.Print(length) : format.PrintWithUnit(length),
            Worked { Dimension: var dimension } worked when dimension == Dimension.Length => Exactly(worked),
            Fraction fraction => fraction.ToDecimal().ToString(specifier ?? "0.##", CultureInfo.InvariantCulture),
            IFormattable formattable => formattable.ToString(specifier, CultureInfo.InvariantCulture),
            _ => arg.ToString() ?? "",
        };

        private string Exactly(Worked length)
        {
            var text = format.PrintWithUnit(length.Length);
            return length.IsExact || text.StartsWith(LengthFormat.RoundedMark, StringComparison.Ordinal)
                ? text : LengthFormat.RoundedMark + text;
        }
    }
}
