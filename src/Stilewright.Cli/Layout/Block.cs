namespace Stilewright.Cli.Layout;

/// <summary>One piece of a page, before it is decided how it is written.</summary>
internal abstract record Block
{
    private Block()
    {
    }

    internal sealed record Title(string Text) : Block;

    internal sealed record Heading(string Text) : Block;

    internal sealed record Line(string Text, Tone Tone = Tone.Plain, int Indent = 0) : Block;

    /// <param name="Rows">Cells of each row, as many as there are columns.</param>
    internal sealed record Grid(IReadOnlyList<Column> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : Block;
}

/// <summary>How loud a line is on a terminal.</summary>
internal enum Tone
{
    Plain,
    Quiet,
    Caution,
    Danger,
}
