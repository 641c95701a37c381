namespace Stilewright.Drawing.Writing;

/// <summary>Colours and corners that every writer shares.</summary>
internal static class Inks
{
    public const string Ink = "#000000";
    public const string Tint = "#dedede";
    public const string Paper = "#ffffff";

    /// <summary>Corners sharper than 29° are cut off, as in PDF and SVG by default.</summary>
    public const float MitreLimit = 4;
}
