namespace Stilewright.Drawing.Scenes;

/// <summary>What a line means; its width and dashes follow from that.</summary>
/// <remarks>
/// Types and uses after ISO 128-2:2020, line group 0.5 (wide 0.5 mm, narrow 0.25 mm). Dashes of 12 and gaps of 3 line widths,
/// long dashes of 24 and dots of 0.5: from memory of ISO 128-20:1996.
/// </remarks>
public enum LineStyle
{
    /// <summary>Continuous wide line (01.2): visible outlines.</summary>
    Visible,

    /// <summary>Continuous narrow line (01.1): moulded edges, meeting faces and other imaginary edges.</summary>
    Edge,

    /// <summary>Dashed narrow line (02.1): hidden outlines.</summary>
    Hidden,

    /// <summary>Long-dashed dotted narrow line (04.1): centre lines and symmetry.</summary>
    Centre,

    /// <summary>Long-dashed double-dotted narrow line (05.1): outlines of adjacent parts.</summary>
    Adjacent,

    /// <summary>Dashed narrow lines from the free corners to the middle of the hinge edge.</summary>
    Hand,

    /// <summary>Continuous narrow line (01.1): dimension, extension and leader lines.</summary>
    Dimension,

    /// <summary>Continuous narrow line (01.1): hatching.</summary>
    Hatch,

    /// <summary>Continuous line of half the narrow width: rules of tables and title blocks.</summary>
    Rule,

    /// <summary>Continuous extra wide line: frames that must be seen.</summary>
    Heavy,
}

/// <summary>Widths and dashes of line styles.</summary>
public static class LineStyles
{
    private const double Wide = 0.5;
    private const double Narrow = 0.25;

    extension(LineStyle style)
    {
        /// <summary>Width in millimetres.</summary>
        public double WidthMillimetres => style switch
        {
            LineStyle.Visible => Wide,
            LineStyle.Rule => Narrow / 2,
            LineStyle.Heavy => 2 * Wide,
            _ => Narrow,
        };

        /// <summary>Dash and gap lengths in millimetres by turns; empty for a continuous line.</summary>
        public IReadOnlyList<double> DashesMillimetres => style switch
        {
            LineStyle.Hidden or LineStyle.Hand => [12 * Narrow, 3 * Narrow],
            LineStyle.Centre => [24 * Narrow, 3 * Narrow, 0.5 * Narrow, 3 * Narrow],
            LineStyle.Adjacent => [24 * Narrow, 3 * Narrow, 0.5 * Narrow, 3 * Narrow, 0.5 * Narrow, 3 * Narrow],
            _ => [],
        };
    }
}
