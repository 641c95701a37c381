using Stilewright.Measure;

namespace Stilewright.Teaching.Worksheets;

/// <summary>A piece of a line's figures, in reading order: <c>____ − 2 × 2 1/4 = ____</c>. The cases are closed.</summary>
public abstract record LinePiece
{
    private LinePiece()
    {
    }

    /// <summary>Signs and numbers of the formula itself.</summary>
    public sealed record Words(string Text) : LinePiece;

    /// <summary>A figure that is told.</summary>
    public sealed record Told(Worked Quantity) : LinePiece;

    /// <summary>Room for a result that an earlier line found, to be carried over; it is not marked.</summary>
    /// <param name="Letter">Of that line.</param>
    public sealed record Carried(string Letter) : LinePiece;

    /// <summary>Room for a figure that is marked.</summary>
    public sealed record ToFill(Blank Blank) : LinePiece;
}
