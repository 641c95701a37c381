using System.Globalization;
using System.Text;
using Fractions;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Teaching.Worksheets;

/// <summary>Makes the worksheet of one leaf.</summary>
public static class WorksheetMaker
{
    // Stand for figures in a formula until it is cut into pieces; letters of Unicode's private use area.
    private const char FirstMark = '\uE000';

    /// <summary>The worksheet of the first door of a bench, or, where it has no door that can be asked about, of its first drawer front.</summary>
    /// <returns>The worksheet, or why there is none of any leaf.</returns>
    public static Found<Worksheet> OfBench(Breakdown breakdown, ProjectBreakdown project, Level level, LengthFormat format)
    {
        ArgumentNullException.ThrowIfNull(project);
        List<string> missing = [];
        foreach (var front in project.Fronts.Where(front => front.Leaves.Count > 0).OrderBy(front => front.Leaves.Any(leaf => leaf.IsDrawerFront)))
        {
            switch (OfLeaf(breakdown, project, front, front.Leaves[0], level, format))
            {
                case Found<Worksheet>.There found:
                    return found;
                case Found<Worksheet>.Missing(var reason):
                    missing.Add(reason);
                    break;
            }
        }

        return new Found<Worksheet>.Missing(missing.Count > 0 ? string.Join(' ', missing)
            : string.Create(CultureInfo.InvariantCulture, $"Bench {project.Project.Bench} has no leaf."));
    }

    /// <param name="level">What is asked and how much of it; its limits are for random problems only.</param>
    /// <returns>The worksheet, or why there is none of this leaf.</returns>
    public static Found<Worksheet> OfLeaf(Breakdown breakdown, ProjectBreakdown project, SizedFront front, SizedLeaf leaf, Level level, LengthFormat format) =>
        OfLeaf(breakdown, project, front, leaf, level, format, null);

    internal static Found<Worksheet> OfLeaf(
        Breakdown breakdown, ProjectBreakdown project, SizedFront front, SizedLeaf leaf, Level level, LengthFormat format, ulong? seed)
    {
        ArgumentNullException.ThrowIfNull(breakdown);
        if (front.Figure is null || front.Width is null || front.Height is null)
            return Missing("it closes no opening that is measured, so there is nothing to begin from");
        if (leaf.IsWithheld || leaf.Parts.Count == 0)
            return Missing("it cannot be built as it stands; `check` says why");

        Worked[] all =
        [
            front.Width, front.Height, leaf.Width, leaf.Height,
            .. leaf.Parts.SelectMany(part => new[] { part.Finished.Width, part.Finished.Length }),
            .. leaf.Parts.SelectMany(part => new[] { part.GlueUp.Width, part.GlueUp.Length }),
            .. leaf.Parts.SelectMany(part => part.Rough is null ? Array.Empty<Worked>() : [part.Rough.Width, part.Rough.Length]),
            .. leaf.Parts.Select(part => part.Thickness?.Final).OfType<Worked>(),
        ];
        var steps = AskedSteps([.. all.Select(Shown)], level.Asked);
        var lines = Lines(steps, level.Style, format, leaf);
        if (lines.All(line => line.Blanks.Count == 0))
            return Missing("nothing that this level asks has to be worked out for it");
        return new Found<Worksheet>.There(new(level, seed, breakdown.Course, project, front, leaf, format, Givens(lines), lines));

        Found<Worksheet> Missing(string reason) => new Found<Worksheet>.Missing($"There is no worksheet of leaf {leaf.Label}: {reason}.");
    }

    // A step to the cutting measure that moves nothing is not told, so a maker's own figures are not put on it either.
    internal static Worked Shown(Worked quantity) =>
        quantity.Rewrite(node => node is Stepped { Moves: false } stepped ? Shown(stepped.Inner) : null);

    // Steps of the kinds asked, and whatever stands between two of them, in an order in which they can be worked.
    private static List<Named> AskedSteps(IReadOnlyList<Worked> quantities, IReadOnlyList<SizeKind> asked)
    {
        List<Named> order = [.. WorkedText.Steps(LengthFormat.InchesTo32, quantities).Select(step => step.Quantity).Where(IsStep)];
        HashSet<Worked> chosen = [.. order.Where(step => SizeKinds.Of(step) is { } kind && asked.Contains(kind))];
        var leanOn = new Dictionary<Worked, bool>();
        HashSet<Worked> needed = [.. chosen.SelectMany(step => step.Distinct()).OfType<Named>()];
        return [.. order.Where(step => chosen.Contains(step) || needed.Contains(step) && LeansOnChosen(step))];

        bool LeansOnChosen(Worked node)
        {
            if (leanOn.TryGetValue(node, out var known))
                return known;
            return leanOn[node] = node.Operands.Any(operand => chosen.Contains(operand) || LeansOnChosen(operand));
        }

        // What was simply entered under a name is given; what cannot be told exactly is not asked.
        static bool IsStep(Named step) => step.Inner is not (Given or FromTable) && step.IsExact && step.Dimension == Dimension.Length;
    }

    private static List<WorksheetLine> Lines(List<Named> steps, BlankStyle style, LengthFormat format, SizedLeaf leaf)
    {
        List<WorksheetLine> lines = [];
        var letters = new Dictionary<Worked, string>();
        var count = 0;
        foreach (var alike in steps.GroupBy(step => (step.Label, WorkedText.Formula(step), WorkedText.Arithmetic(step, format))))
        {
            var step = alike.First();
            var isSaid = step.Inner is Named;
            var letter = isSaid ? "" : Letter(count++);
            var carried = isSaid ? letters.GetValueOrDefault(step.Inner) ?? "" : letter;
            foreach (var each in alike)
                letters[each] = carried;
            var told = WorkedText.Step(step, format);
            lines.Add(new(letter, step.Label, told.Formula, told.Arithmetic, told.Reasons,
                isSaid ? [] : Pieces(step, letter, style, letters))
            {
                Quantity = step,
                Quantities = [.. alike],
                Expression = step.Inner,
            });
        }

        return [.. lines.Select(line => lines.Count(other => other.Label == line.Label) > 1 ? WithPart(line, leaf) : line)];
    }

    // Steps of one name are told apart by the part they are of.
    private static WorksheetLine WithPart(WorksheetLine line, SizedLeaf leaf)
    {
        string[] parts =
        [
            .. leaf.Parts.Where(part => part.Quantities.Any(quantity => line.Quantities.Contains(Shown(quantity)))).Select(part => part.Name).Distinct(),
        ];
        return parts.Length == 0 ? line : line with { Label = $"{line.Label} ({string.Join(" / ", parts)})" };
    }

    private static List<LinePiece> Pieces(Named step, string letter, BlankStyle style, Dictionary<Worked, string> letters)
    {
        List<LinePiece> pieces = [];
        var result = new LinePiece.ToFill(new(letter, step.Label, step, true));
        if (style == BlankStyle.Question)
            return [result];

        List<Worked> figures = [];
        var marked = step.Inner.Rewrite(node =>
        {
            if (node is not (Named or Given or FromTable))
                return null;
            var at = figures.IndexOf(node);
            if (at < 0)
            {
                at = figures.Count;
                figures.Add(node);
            }

            return new Given("", ((char)(FirstMark + at)).ToString(), node.Dimension, node.Amount, Origin.Typed);
        });
        LinePiece[] fillings = [.. figures.Select((figure, i) => Filling(figure, i + 1))];
        var words = new StringBuilder();
        foreach (var sign in WorkedText.Formula(marked))
        {
            if (sign < FirstMark || sign >= FirstMark + figures.Count)
            {
                words.Append(sign);
                continue;
            }

            Say();
            pieces.Add(fillings[sign - FirstMark]);
        }

        words.Append(" = ");
        Say();
        pieces.Add(result);
        return pieces;

        LinePiece Filling(Worked figure, int number) =>
            style == BlankStyle.Figures && figure.Dimension == Dimension.Length
                ? new LinePiece.ToFill(new($"{letter}{number.ToString(CultureInfo.InvariantCulture)}", WorkedText.Label(figure), figure, false))
            : letters.GetValueOrDefault(figure) is { Length: > 0 } from ? new LinePiece.Carried(from)
            : new LinePiece.Told(figure);

        void Say()
        {
            if (words.Length > 0)
                pieces.Add(new LinePiece.Words(words.ToString()));
            words.Clear();
        }
    }

    private static List<GivenFigure> Givens(List<WorksheetLine> lines)
    {
        HashSet<Worked> found = [.. lines.SelectMany(line => line.Quantities)];
        Dictionary<(string Label, Fraction Amount), (Worked Quantity, List<string> Letters)> told = [];
        foreach (var line in lines)
            Gather(line.Expression, line.Letter);
        return [.. told.Select(given => new GivenFigure(
            told.Keys.Count(other => other.Label == given.Key.Label) > 1 ? $"{given.Key.Label} (for {string.Join(", ", given.Value.Letters.Distinct())})" : given.Key.Label,
            given.Value.Quantity))];

        void Gather(Worked node, string letter)
        {
            if (found.Contains(node))
                return;
            if (node is Named or Given or FromTable)
            {
                var key = (WorkedText.Label(node), node.Amount);
                if (!told.TryGetValue(key, out var known))
                    told[key] = known = (node, []);
                known.Letters.Add(letter);
                return;
            }

            foreach (var operand in node.Operands)
                Gather(operand, letter);
        }
    }

    // a to z, then a2, b2 and so on; figures of a line have a number after a point there.
    private static string Letter(int index) =>
        index < 26 ? ((char)('a' + index)).ToString() : string.Create(CultureInfo.InvariantCulture, $"{(char)('a' + index % 26)}{(char)('a' + index % 26)}");
}
