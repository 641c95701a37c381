using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Cli.Layout;

/// <summary>The blocks of one answer, top to bottom.</summary>
internal sealed class Page
{
    private readonly List<Block> blocks = [];

    public IReadOnlyList<Block> Blocks => blocks;

    public Page Title(string text) => Add(new Block.Title(text));

    public Page Heading(string text) => Add(new Block.Heading(text));

    public Page Line(string text, Tone tone = Tone.Plain, int indent = 0) => Add(new Block.Line(text, tone, indent));

    /// <summary>A table. Nothing is added when it has no rows; columns without any text are left out.</summary>
    public Page Grid(IReadOnlyList<Column> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        IReadOnlyList<string>[] all = [.. rows];
        if (all.Length == 0)
            return this;
        int[] kept = [.. Enumerable.Range(0, columns.Count).Where(i => all.Any(row => row[i].Length > 0))];
        return Add(new Block.Grid([.. kept.Select(i => columns[i])], [.. all.Select(row => kept.Select(i => row[i]).ToArray())]));
    }

    /// <summary>Explains the rounding mark, where the page holds one.</summary>
    public Page Footnotes()
    {
        if (blocks.Any(HoldsMark))
            Line("").Line(Remarks.Rounded, Tone.Quiet);
        return this;
    }

    private Page Add(Block block)
    {
        blocks.Add(block);
        return this;
    }

    private static bool HoldsMark(Block block) => block switch
    {
        Block.Title title => Holds(title.Text),
        Block.Heading heading => Holds(heading.Text),
        Block.Line line => Holds(line.Text),
        Block.Grid grid => grid.Rows.Any(row => row.Any(Holds)),
        _ => false,
    };

    private static bool Holds(string text) => text.Contains(LengthFormat.RoundedMark, StringComparison.Ordinal);
}
