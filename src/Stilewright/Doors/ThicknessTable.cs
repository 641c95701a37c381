using Fractions;
using Stilewright.Findings;
using Stilewright.Measure;

namespace Stilewright.Doors;

/// <summary>Nominal thicknesses of rough hardwood lumber, in quarters of an inch.</summary>
/// <remarks>NHLA standard thicknesses, alike in three secondary publications.</remarks>
public static class ThicknessTable
{
    private static readonly Source Nhla = Source.Published("NHLA standard thicknesses (secondary publications)");

    private static readonly Dictionary<string, Fraction> Rows = new()
    {
        ["3/8"] = new(3, 8),
        ["1/2"] = new(1, 2),
        ["5/8"] = new(5, 8),
        ["3/4"] = new(3, 4),
        ["4/4"] = new(1),
        ["5/4"] = new(5, 4),
        ["6/4"] = new(3, 2),
        ["7/4"] = new(7, 4),
        ["8/4"] = new(2),
        ["10/4"] = new(5, 2),
        ["12/4"] = new(3),
        ["14/4"] = new(7, 2),
        ["16/4"] = new(4),
    };

    /// <summary>The nominal thicknesses of the table, as they are spelled.</summary>
    public static IEnumerable<string> Nominals => Rows.Keys;

    /// <summary>The rough thickness of a nominal one, or null when the table has no such row.</summary>
    public static FromTable? Find(string nominal) => Rows.TryGetValue(nominal, out var inches)
        ? new("rough thickness", "hardwood lumber thicknesses", nominal, Nhla, Dimension.Length, inches) : null;
}
