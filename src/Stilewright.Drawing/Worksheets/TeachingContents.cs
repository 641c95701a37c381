namespace Stilewright.Drawing.Worksheets;

/// <summary>What is printed of worksheets or drills.</summary>
public enum TeachingContents
{
    /// <summary>Each bench's own sheet, then one key for all.</summary>
    SheetsAndKey,

    /// <summary>Without the key the paper can be left lying.</summary>
    SheetsOnly,

    KeyOnly,
}
