using System.Globalization;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Patterns;

/// <summary>How a full-size drawing is laid over sheets of paper.</summary>
/// <param name="IsLandscape">Whether the sheets lie on their longer edge.</param>
/// <param name="Columns">Sheets side by side.</param>
/// <param name="Rows">Sheets one above the other.</param>
/// <param name="Sheets">Row by row from the top left.</param>
public sealed record TiledScene(bool IsLandscape, int Columns, int Rows, IReadOnlyList<Scene> Sheets);

/// <summary>Sheets that belong together.</summary>
/// <param name="Titles">Of the patterns on them, or of the sheet of tables.</param>
public sealed record LaidPatterns(IReadOnlyList<string> Titles, TiledScene Tiled);

/// <summary>Lays a drawing at full size over sheets that are taped together, or on one where it fits.</summary>
/// <remarks>
/// Neighbouring sheets overlap; named crosses lie in the overlap of both, and one cross is laid on the other. Every sheet carries a rule
/// along both edges to be measured, its name, a map of all sheets, and the correction it was printed with.
/// </remarks>
public sealed class Tiling(PatternPaper paper, PrintCorrection correction, LengthUnit unit)
{
    /// <summary>What neighbouring sheets have in common.</summary>
    public const double Overlap = 15;

    private const double CrossReach = 4;
    private const double HeadHeight = 13;
    private const double RuleBand = 9;
    private const double MapCell = 4;
    private const double BetweenPatterns = 10;
    private const double EndlessRoll = 1e5;
    private static readonly TextStyle Note = TextStyle.Small;

    /// <summary>How long the rules are: 6 in or 150 mm, shorter only on paper that is narrower.</summary>
    public double RuleMillimetres => unit == LengthUnit.Inch ? 6 * 25.4 : 150;

    /// <summary>Lays patterns out: each on sheets of its own, except that on a roll those that are narrow enough stand side by side.</summary>
    /// <remarks>A pattern that fits on one sheet carries its tables; where it takes several, its label stands on one of them, and the
    /// tables of all such patterns follow on sheets of their own.</remarks>
    /// <param name="footnote">Part, revision, date: said on every sheet.</param>
    public IEnumerable<LaidPatterns> Lay(IEnumerable<FullSizePattern> patterns, string footnote)
    {
        List<FullSizePattern> shelf = [];
        List<FullSizePattern> withoutTables = [];
        foreach (var pattern in patterns)
        {
            if (shelf.Count > 0 && (paper.HeightMillimetres is not null || Layout(Shelf([.. shelf, pattern]), false).Columns > 1))
            {
                yield return Laid();
                shelf.Clear();
            }

            shelf.Add(pattern);
        }

        if (shelf.Count > 0)
            yield return Laid();
        foreach (var tables in Tables(withoutTables))
            yield return new([tables.Title], Lay(tables, footnote));

        LaidPatterns Laid()
        {
            string[] titles = [.. shelf.Select(pattern => pattern.Scene.Title)];
            var scene = shelf.Count == 1 ? shelf[0].Scene : Shelf(shelf);
            if (Best(scene) is { Columns: 1, Rows: 1 } single)
                return new(titles, Draw(scene, footnote, single));
            var layers = shelf[0].Layers;
            var grid = Best(layers.Scene([]));
            withoutTables.Add(shelf[0]);
            return new(titles, Draw(layers.Scene((label, room) => OffSeams(grid, label, room)), footnote, grid));
        }
    }

    /// <param name="scene">At full size.</param>
    /// <param name="footnote">Part, revision, date: said on every sheet.</param>
    public TiledScene Lay(Scene scene, string footnote) => Draw(scene, footnote, Best(scene));

    /// <summary>A, B … Z, AA, AB and so on.</summary>
    internal static string Letters(int index)
    {
        var letters = "";
        for (var rest = index; rest >= 0; rest = rest / 26 - 1)
            letters = (char)('A' + rest % 26) + letters;
        return letters;
    }

    // Side by side with their heads in line, apart by what is left to cut between them.
    private static Scene Shelf(IReadOnlyList<FullSizePattern> patterns)
    {
        List<SceneNode> nodes = [];
        var (right, height) = (0.0, 0.0);
        foreach (var scene in patterns.Select(pattern => pattern.Scene))
        {
            right += right > 0 ? BetweenPatterns : 0;
            nodes.Add(new SceneGroup(null, scene.Title, scene.Nodes) { At = new(right, 0) });
            right += scene.WidthMillimetres;
            height = Math.Max(height, scene.HeightMillimetres);
        }

        return new(string.Join("; ", patterns.Select(pattern => pattern.Scene.Title)), string.Join(" ", patterns.Select(pattern => pattern.Scene.Description)),
            right, height, nodes)
        { Scale = Scale.FullSize };
    }

    // As many blocks on a sheet as fit below one another, each pattern's under its name.
    private IEnumerable<Scene> Tables(IReadOnlyList<FullSizePattern> patterns)
    {
        List<SceneNode> nodes = [];
        List<string> names = [];
        var (width, height) = (0.0, 0.0);
        foreach (var pattern in patterns)
        {
            foreach (var block in pattern.Layers.Blocks)
            {
                var isNamed = names.LastOrDefault() == pattern.Name;
                if (nodes.Count > 0 && Best(Page(Math.Max(width, block.Width), height + BetweenPatterns + TextStyle.Body.SizeMillimetres * 2 + block.Height)) is not { Columns: 1, Rows: 1 })
                {
                    yield return Page(width, height);
                    (nodes, names, width, height, isNamed) = ([], [], 0, 0, false);
                }

                height += nodes.Count == 0 ? 0 : BetweenPatterns;
                if (!isNamed)
                {
                    var heading = Typesetter.Set(pattern.Name, TextStyle.Body.Bold);
                    nodes.Add(Strip.Put(heading, 0, height));
                    names.Add(pattern.Name);
                    height += heading.Pitch + 1;
                }

                nodes.Add(block.At(new(0, height)));
                (width, height) = (Math.Max(width, block.Width), height + block.Height);
            }
        }

        if (nodes.Count > 0)
            yield return Page(width, height);

        Scene Page(double wide, double high) =>
            new($"Tables of {string.Join("; ", names)}", "How to draw the patterns before with a trammel.", wide, high, nodes) { Scale = Scale.FullSize };
    }

    // The least move that brings the label onto one sheet, out of the overlaps where there is room for that.
    private static PaperPoint OffSeams(Grid grid, PaperBox label, PaperBox room)
    {
        foreach (var overlap in new[] { Overlap, 0 })
        {
            var moves =
                from row in Enumerable.Range(0, grid.Rows)
                from column in Enumerable.Range(0, grid.Columns)
                let shown = grid.Shown(row, column)
                let free = PaperBox.Between(
                    new(Math.Max(room.Left, shown.Left + (column > 0 ? overlap : 0)), Math.Max(room.Top, shown.Top + (row > 0 ? overlap : 0))),
                    new(Math.Min(room.Right, shown.Right - (column < grid.Columns - 1 ? overlap : 0)), Math.Min(room.Bottom, shown.Bottom - (row < grid.Rows - 1 ? overlap : 0))))
                where free.Width >= label.Width && free.Height >= label.Height && shown.Grown(1e-6).Holds(free)
                select new PaperPoint(
                    Math.Clamp(label.Left, free.Left, free.Right - label.Width) - label.Left, Math.Clamp(label.Top, free.Top, free.Bottom - label.Height) - label.Top);
            if (moves.ToList() is { Count: > 0 } found)
                return found.MinBy(move => move.DistanceTo(default));
        }

        return default;
    }

    private Grid Best(Scene scene)
    {
        var upright = Layout(scene, false);
        if (paper.HeightMillimetres is null)
            return upright;
        var landscape = Layout(scene, true);
        return landscape.Columns * landscape.Rows < upright.Columns * upright.Rows ? landscape : upright;
    }

    private Grid Layout(Scene scene, bool isLandscape)
    {
        var (short_, long_) = (paper.WidthMillimetres, paper.HeightMillimetres ?? EndlessRoll);
        var (width, height) = isLandscape ? (long_, short_) : (short_, long_);
        var (across, down) = isLandscape ? (correction.Along, correction.Across) : (correction.Across, correction.Along);
        var room = new PaperBox(PatternPaper.Margin + RuleBand, PatternPaper.Margin + HeadHeight,
            width - 2 * PatternPaper.Margin - RuleBand, height - 2 * PatternPaper.Margin - HeadHeight - RuleBand);
        var (shownWidth, shownHeight) = (room.Width / across, room.Height / down);
        var (columns, rows) = (Count(scene.WidthMillimetres, shownWidth), Count(scene.HeightMillimetres, shownHeight));
        // Sheets share what is shown evenly, so that no strip is left for the last one; of a roll, enough for the upright rule.
        var eachWidth = (scene.WidthMillimetres + (columns - 1) * Overlap) / columns;
        var eachHeight = (scene.HeightMillimetres + (rows - 1) * Overlap) / rows;
        if (paper.HeightMillimetres is null)
            (eachHeight, shownHeight) = (Math.Max(eachHeight, RuleMillimetres), Math.Max(eachHeight, RuleMillimetres));
        var sheetHeight = paper.HeightMillimetres is null ? eachHeight * down + 2 * PatternPaper.Margin + HeadHeight + RuleBand : height;
        return new(isLandscape, width, sheetHeight, room.TopLeft, across, down, columns, rows, eachWidth, eachHeight, shownWidth, shownHeight);

        static int Count(double whole, double shown) => whole <= shown ? 1 : 1 + (int)Math.Ceiling((whole - shown) / (shown - Overlap));
    }

    private TiledScene Draw(Scene scene, string footnote, Grid grid)
    {
        List<Scene> sheets = [];
        for (var row = 0; row < grid.Rows; row++)
        {
            for (var column = 0; column < grid.Columns; column++)
                sheets.Add(Sheet(scene, footnote, grid, row, column));
        }

        return new(grid.IsLandscape, grid.Columns, grid.Rows, sheets);
    }

    private Scene Sheet(Scene scene, string footnote, Grid grid, int row, int column)
    {
        var shown = grid.Shown(row, column);
        var name = Grid.Name(row, column);
        var count = grid.Rows * grid.Columns;
        List<SceneNode> content =
        [
            new SceneGroup(null, null, [new SceneGroup(null, null, scene.Nodes) { At = new(-shown.Left, -shown.Top) }]) { Clip = new(0, 0, shown.Width, shown.Height) },
            .. Crosses(grid, row, column).Select(cross => Cross(cross.Name, cross.At - shown.TopLeft)),
        ];
        if (count > 1)
            content.Add(new Shape(Outline.Box(new(0, 0, shown.Width, shown.Height)), LineStyle.Centre));
        content.AddRange(Rules(grid));
        var stretched = new Scene(scene.Title, scene.Description, shown.Width, shown.Height, content).Stretched(grid.Across, grid.Down);

        List<SceneNode> nodes = [new SceneGroup(null, null, stretched.Nodes) { At = grid.Corner }, .. Head(scene, footnote, grid, row, column)];
        var title = count == 1 ? scene.Title : $"{scene.Title}, sheet {name} of {count}";
        return new(title, scene.Description, grid.Width, grid.Height, nodes) { Scale = Scale.FullSize };
    }

    private IEnumerable<SceneNode> Head(Scene scene, string footnote, Grid grid, int row, int column)
    {
        var left = PatternPaper.Margin;
        var top = PatternPaper.Margin;
        var count = grid.Rows * grid.Columns;
        var mapWidth = count > 1 ? grid.Columns * MapCell + 2 : 0;
        var room = grid.Width - 2 * PatternPaper.Margin - mapWidth;
        var name = count > 1 ? $"sheet {Grid.Name(row, column)} of {count}: " : "";
        foreach (var (text, style) in new[]
        {
            ($"{name}{scene.Title}", TextStyle.Body.Bold),
            ($"{footnote}; {correction}", Note),
            ("Full size: print at 100 %, not fitted to the page, then measure the rules.", Note),
        })
        {
            var line = Typesetter.Set(text, style);
            if (line.Width > room)
                line = Typesetter.Set(text, style with { SizeMillimetres = Math.Max(1.8, style.SizeMillimetres * room / line.Width) });
            yield return new Lettering(new(left, top + line.Ascent), line);
            top += line.Height + 0.4;
        }

        for (var i = 0; count > 1 && i < count; i++)
        {
            var (r, c) = Math.DivRem(i, grid.Columns);
            // A map higher than the head would lie over the drawing: its cells are made lower.
            var height = Math.Min(MapCell * 0.75, (HeadHeight - 2) / grid.Rows);
            yield return new Shape(
                Outline.Box(new(grid.Width - PatternPaper.Margin - (grid.Columns - c) * MapCell, PatternPaper.Margin + r * height, MapCell, height)),
                LineStyle.Edge, r == row && c == column ? Tone.Ink : Tone.None);
        }
    }

    // Along the lower edge and the left edge, outside of what is cut out.
    private IEnumerable<SceneNode> Rules(Grid grid)
    {
        var (level, upright) = (Math.Min(RuleMillimetres, WholePart(grid.RoomWidth)), Math.Min(RuleMillimetres, WholePart(grid.RoomHeight)));
        var below = grid.EachHeight + RuleBand * 0.45;
        foreach (var node in Rule(level, at => new(at, below), new(0, 1), true))
            yield return node;
        var beside = -RuleBand * 0.45;
        foreach (var node in Rule(upright, at => new(beside, at), new(-1, 0), false))
            yield return node;
    }

    // A sheet narrower than the rule gets the longest one in whole steps.
    private double WholePart(double room)
    {
        var step = unit == LengthUnit.Inch ? 25.4 : 10;
        return Math.Max(step, Math.Floor(room / step) * step);
    }

    private IEnumerable<SceneNode> Rule(double length, Func<double, PaperPoint> at, PaperPoint outwards, bool isLevel)
    {
        var step = unit == LengthUnit.Inch ? 25.4 : 10;
        yield return new Shape(Outline.Line(at(0), at(length)), LineStyle.Dimension);
        for (var i = 0; i <= (int)Math.Round(length / step); i++)
        {
            var mark = at(i * step);
            var isEnd = i == 0 || i == (int)Math.Round(length / step);
            yield return new Shape(Outline.Line(mark - outwards * (isEnd ? 2 : 1), mark + outwards * (isEnd ? 2 : 1)), LineStyle.Dimension);
        }

        var words = Typesetter.Set(unit == LengthUnit.Inch
            ? string.Create(CultureInfo.InvariantCulture, $"{length / 25.4:0} in exactly")
            : string.Create(CultureInfo.InvariantCulture, $"{length:0} mm exactly"), new(2.4));
        var middle = at(length / 2) + outwards * 1.2;
        yield return isLevel
            ? new Lettering(new(middle.X - words.Width / 2, middle.Y + words.Ascent), words)
            : new Lettering(new(middle.X - words.Descent, middle.Y + words.Width / 2), words, IsUpright: false);
    }

    private static IEnumerable<(string Name, PaperPoint At)> Crosses(Grid grid, int row, int column)
    {
        // Two crosses in every overlap, at a quarter and three quarters of it; both sheets draw the same ones.
        for (var side = 0; side < 2; side++)
        {
            var left = column - 1 + side;
            if (left >= 0 && left < grid.Columns - 1)
            {
                var (one, other) = (grid.Shown(row, left), grid.Shown(row, left + 1));
                var x = (one.Right + other.Left) / 2;
                yield return ($"{Grid.Name(row, left)}-{Grid.Name(row, left + 1)} a", new(x, one.Top + one.Height * 0.25));
                yield return ($"{Grid.Name(row, left)}-{Grid.Name(row, left + 1)} b", new(x, one.Top + one.Height * 0.75));
            }

            var above = row - 1 + side;
            if (above >= 0 && above < grid.Rows - 1)
            {
                var (one, other) = (grid.Shown(above, column), grid.Shown(above + 1, column));
                var y = (one.Bottom + other.Top) / 2;
                yield return ($"{Grid.Name(above, column)}-{Grid.Name(above + 1, column)} a", new(one.Left + one.Width * 0.25, y));
                yield return ($"{Grid.Name(above, column)}-{Grid.Name(above + 1, column)} b", new(one.Left + one.Width * 0.75, y));
            }
        }
    }

    private static SceneGroup Cross(string name, PaperPoint at)
    {
        var words = Typesetter.Set(name, new(2.2));
        return new(null, $"cross {name}",
        [
            new Shape(Outline.Line(at - new PaperPoint(CrossReach, 0), at + new PaperPoint(CrossReach, 0)), LineStyle.Edge),
            new Shape(Outline.Line(at - new PaperPoint(0, CrossReach), at + new PaperPoint(0, CrossReach)), LineStyle.Edge),
            new Lettering(at + new PaperPoint(-words.Width / 2, CrossReach + 0.4 + words.Ascent), words),
        ]);
    }

    /// <summary>Where each sheet's part of the drawing lies, and how the sheet is set up.</summary>
    private sealed record Grid(
        bool IsLandscape, double Width, double Height, PaperPoint Corner, double Across, double Down,
        int Columns, int Rows, double EachWidth, double EachHeight, double RoomWidth, double RoomHeight)
    {
        public PaperBox Shown(int row, int column) => new(column * (EachWidth - Overlap), row * (EachHeight - Overlap), EachWidth, EachHeight);

        /// <summary>A letter for the row and a number for the column; nothing stands in the way of many rows.</summary>
        public static string Name(int row, int column) => string.Create(CultureInfo.InvariantCulture, $"{Letters(row)}{column + 1}");
    }
}
