namespace Stilewright.Drawing.Packets;

/// <summary>One cell of a title block.</summary>
/// <param name="Share">Of the width of its row.</param>
internal readonly record struct BlockCell(string Caption, string Value, double Share);

/// <summary>What the title blocks of some sheets tell.</summary>
internal abstract record BlockFacts
{
    /// <summary>The share of the last row that the number of the sheet takes.</summary>
    public const double NumberShare = 0.15;

    /// <summary>The number of the bench, set large; null for sheets of no single one.</summary>
    public abstract int? Bench { get; }

    /// <summary>Names the sheet for those who cannot see it.</summary>
    public abstract string Title(LaidSheet sheet);

    /// <summary>Three rows; the shares of the last leave room for the number of the sheet, those of the others make 1.</summary>
    public abstract IReadOnlyList<IReadOnlyList<BlockCell>> Rows(LaidSheet sheet, string scale);
}
