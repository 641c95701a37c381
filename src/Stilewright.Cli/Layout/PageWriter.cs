using System.Globalization;
using Spectre.Console;

namespace Stilewright.Cli.Layout;

/// <summary>Writes pages: as aligned plain text, or with borders and colour on a terminal.</summary>
internal static class PageWriter
{
    private const string Between = "  ";

    public static void Write(Page page, Screen screen)
    {
        if (screen.IsTerminal)
            WriteToTerminal(page, screen.Console);
        else
            WritePlain(page, screen.Plain);
    }

    /// <summary>Columns padded with spaces, lines as long as they are, line feeds only.</summary>
    public static void WritePlain(Page page, TextWriter writer)
    {
        var isFirst = true;
        Block? before = null;
        foreach (var block in page.Blocks)
        {
            switch (block)
            {
                case Block.Title title:
                    if (!isFirst)
                        Put(writer, "");
                    Put(writer, Shown(title.Text));
                    Put(writer, new string('=', Width(Shown(title.Text))));
                    break;
                case Block.Heading heading:
                    if (!isFirst)
                        Put(writer, "");
                    Put(writer, Shown(heading.Text));
                    break;
                case Block.Line line:
                    Put(writer, new string(' ', line.Indent) + Shown(line.Text));
                    break;
                case Block.Grid grid:
                    if (before is Block.Grid)
                        Put(writer, "");
                    WriteGrid(grid, writer);
                    break;
            }

            isFirst = false;
            before = block;
        }
    }

    private static void WriteGrid(Block.Grid grid, TextWriter writer)
    {
        string[][] rows = [[.. grid.Columns.Select(column => column.Heading)], .. grid.Rows.Select(row => row.Select(Shown).ToArray())];
        int[] widths = [.. Enumerable.Range(0, grid.Columns.Count).Select(i => rows.Max(row => Width(row[i])))];
        for (var r = 0; r < rows.Length; r++)
        {
            var cells = rows[r].Select((cell, i) =>
            {
                var padding = new string(' ', widths[i] - Width(cell));
                return grid.Columns[i].IsFigure ? padding + cell : cell + padding;
            });
            Put(writer, Between + string.Join(Between, cells).TrimEnd());
            if (r == 0)
                Put(writer, Between + string.Join(Between, widths.Select(width => new string('-', width))));
        }
    }

    private static void WriteToTerminal(Page page, IAnsiConsole console)
    {
        foreach (var block in page.Blocks)
        {
            switch (block)
            {
                case Block.Title title:
                    console.WriteLine();
                    console.Write(new Rule($"[bold]{Markup.Escape(Shown(title.Text))}[/]").LeftJustified());
                    break;
                case Block.Heading heading:
                    console.WriteLine();
                    console.Write(new Text(Shown(heading.Text) + "\n", new Style(decoration: Decoration.Bold)));
                    break;
                case Block.Line line:
                    console.Write(new Padder(new Text(Shown(line.Text), StyleOf(line.Tone)), new Padding(line.Indent, 0, 0, 0)));
                    break;
                case Block.Grid grid:
                    var table = new Table().Border(TableBorder.Rounded);
                    foreach (var column in grid.Columns)
                    {
                        var added = new TableColumn(new Text(column.Heading, new Style(decoration: Decoration.Bold)));
                        table.AddColumn(column.IsFigure ? added.RightAligned() : added);
                    }

                    foreach (var row in grid.Rows)
                        table.AddRow(row.Select(cell => new Text(Shown(cell))));
                    console.Write(table);
                    break;
            }
        }
    }

    private static Style StyleOf(Tone tone) => tone switch
    {
        Tone.Quiet => new(Color.Grey),
        Tone.Caution => new(Color.Yellow),
        Tone.Danger => new(Color.Red, decoration: Decoration.Bold),
        _ => Style.Plain,
    };

    private static void Put(TextWriter writer, string line)
    {
        writer.Write(line);
        writer.Write('\n');
    }

    // Names come from files; a control character in one must not steer the terminal.
    private static string Shown(string text) =>
        text.Any(char.IsControl) ? string.Concat(text.Select(character => char.IsControl(character) ? ' ' : character)) : text;

    private static int Width(string text) => new StringInfo(text).LengthInTextElements;
}
