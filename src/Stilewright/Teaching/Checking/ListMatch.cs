using Stilewright.Measure;

namespace Stilewright.Teaching.Checking;

/// <summary>A line of a list and what it is about.</summary>
/// <param name="Items">Like items only: one of them stands for all.</param>
/// <param name="IsTurned">Whether the maker wrote length before width.</param>
/// <param name="IsExchanged">Whether the two sizes would be right, were they not exchanged.</param>
internal sealed record MatchedLine(ListLine Line, IReadOnlyList<KeyItem> Items, bool IsTurned, bool IsExchanged)
{
    public KeyItem Item => Items[0];
    public LengthEntry? Width => IsTurned ? Line.Length : Line.Width;
    public LengthEntry? Length => IsTurned ? Line.Width : Line.Length;

    public LengthEntry? Told(ListMeasure measure) => measure switch
    {
        ListMeasure.Width => Width,
        ListMeasure.Length => Length,
        _ => Line.Thickness,
    };
}

/// <summary>Finds out what each line of a list is about: by its words, its place words, its leaf and its sizes, all lines at once.</summary>
internal sealed class ListMatch
{
    // A line that goes with nothing is better left over than matched at this cost.
    private const double LeftOver = 2.45;
    private const double OfAnotherLeaf = 100;

    // Of two lines the one in the usual order goes with the item.
    private const double Turned = 0.05;

    // A thickness tells apart only what is of one size.
    private const double MostByThickness = 0.1;

    public required IReadOnlyList<MatchedLine> Matched { get; init; }
    public required IReadOnlyList<KeyItem> Missing { get; init; }

    /// <summary>Whether pieces were left out because they are too many.</summary>
    public required bool IsCutOff { get; init; }

    public static ListMatch Of(MakersList list, ListKey key)
    {
        var itemsOf = Assign(list, key);
        var turned = IsTurned(itemsOf);
        var matched = new List<MatchedLine>();
        foreach (var (line, items) in itemsOf)
        {
            foreach (var alike in items.GroupBy(item => (item.Kind, item.Width, item.Length, line.Thickness is null ? null : item.Thickness)))
            {
                var item = alike.First();
                var isFrame = IsFrame(item);
                var lineIsTurned = isFrame ? Distance(item, line.Length, line.Width) < Distance(item, line.Width, line.Length) : turned ?? IsRight(item, line.Length, line.Width) && !IsRight(item, line.Width, line.Length);
                var (width, length) = lineIsTurned ? (line.Length, line.Width) : (line.Width, line.Length);
                matched.Add(new(line, [.. alike], lineIsTurned, !isFrame && !IsRight(item, width, length) && IsRight(item, length, width)));
            }
        }

        var claimed = itemsOf.Values.SelectMany(items => items).ToHashSet();
        return new()
        {
            IsCutOff = list.Lines.Sum(line => Math.Min(line.Count ?? 1, key.Items.Count)) > ListCheck.MostPieces,
            Matched = matched,
            Missing = [.. key.Items.Where(item => item.MustBeListed && !claimed.Contains(item))],
        };
    }

    private static Dictionary<ListLine, List<KeyItem>> Assign(MakersList list, ListKey key)
    {
        var pieces = new List<ListLine>();
        foreach (var line in list.Lines)
        {
            for (var i = 0; i < Math.Min(line.Count ?? 1, key.Items.Count) && pieces.Count < ListCheck.MostPieces; i++)
                pieces.Add(line);
        }

        var items = key.Items;
        var cost = new double[pieces.Count, items.Count + pieces.Count];
        var words = list.Lines.ToDictionary(line => line, line => PartWords.Of(line.Name));
        var costOf = new Dictionary<(ListLine, int), double>();
        for (var row = 0; row < pieces.Count; row++)
        {
            for (var column = 0; column < items.Count; column++)
            {
                var place = (pieces[row], column);
                if (!costOf.TryGetValue(place, out var known))
                    costOf.Add(place, known = Cost(pieces[row], words[pieces[row]], items[column]));
                cost[row, column] = known;
            }

            for (var column = items.Count; column < items.Count + pieces.Count; column++)
                cost[row, column] = LeftOver;
        }

        var columns = Assignment.Solve(cost);
        var found = list.Lines.ToDictionary(line => line, _ => new List<KeyItem>());
        for (var row = 0; row < pieces.Count; row++)
        {
            if (columns[row] < items.Count)
                found[pieces[row]].Add(items[columns[row]]);
        }

        // A line without a count means all that are like what it names.
        var claimed = found.Values.SelectMany(each => each).ToHashSet();
        foreach (var line in list.Lines.Where(line => line.Count is null && found[line].Count > 0))
        {
            var named = found[line][0];
            foreach (var item in items.Where(item => item.Kind == named.Kind && item.Width.Equals(named.Width) && item.Length.Equals(named.Length) && !claimed.Contains(item)))
            {
                if (claimed.Add(item))
                    found[line].Add(item);
            }
        }

        return found;
    }

    private static double Cost(ListLine line, PartWords words, KeyItem item)
    {
        if (line.Leaf is { } leaf && !IsOf(item, leaf))
            return OfAnotherLeaf;
        var straight = Distance(item, line.Width, line.Length);
        var size = IsFrame(item) || item.Kind is ItemKind.Panel or ItemKind.Glass or ItemKind.Slab
            ? Math.Min(straight, Distance(item, line.Length, line.Width) + Turned) : straight;
        return words.Misfit(item) + size + ByThickness(line, item) + (words.Kinds.Count == 0 && !item.MustBeListed ? 1 : 0);
    }

    private static double ByThickness(ListLine line, KeyItem item) =>
        line.Thickness is { } told && item.Thickness is { } right ? Math.Min(MostByThickness, Off(right, told)) : 0;

    // 7·2L and 7.2l are one label; a path or a leaf's front names it too.
    private static bool IsOf(KeyItem item, string leaf)
    {
        static string Plain(string label) => label.Replace('·', '.').Trim();
        var stated = Plain(leaf);
        // 7.1 is the front of 7.1L, and not of 7.10.
        bool Begins(string name) => name.StartsWith(stated, StringComparison.OrdinalIgnoreCase)
            && (name.Length == stated.Length || !char.IsDigit(name[stated.Length]) || stated.Length == 0 || !char.IsDigit(stated[^1]));
        return Begins(Plain(item.Leaf)) || Begins(item.Path);
    }

    private static bool IsFrame(KeyItem item) => item.Kind is ItemKind.Stile or ItemKind.Rail or ItemKind.MidRail or ItemKind.MidStile;

    private static bool IsRight(KeyItem item, LengthEntry? width, LengthEntry? length) =>
        width is { } across && length is { } along && Near(item.Width, across) && Near(item.Length, along);

    private static bool Near(Worked right, LengthEntry told) => Math.Abs((right.Amount - told.Value.Inches).ToDouble()) < 0.02;

    // 0 where both sizes agree, 1.5 where neither is anywhere near.
    private static double Distance(KeyItem item, LengthEntry? width, LengthEntry? length) => Off(item.Width, width) + Off(item.Length, length);

    private static double Off(Worked right, LengthEntry? told)
    {
        if (told is not { } entry)
            return 0.3;
        var (one, other) = (right.Amount.ToDouble(), entry.Value.Inches.ToDouble());
        return one <= 0 || other <= 0 ? 0.75 : Math.Min(0.75, 1.5 * Math.Abs(Math.Log(one / other)));
    }

    // How the maker orders the two sizes, as the long and narrow parts show; null without such parts.
    private static bool? IsTurned(Dictionary<ListLine, List<KeyItem>> itemsOf)
    {
        var (turned, straight) = (0, 0);
        foreach (var (line, items) in itemsOf)
        {
            if (items.Count == 0 || !IsFrame(items[0]))
                continue;
            if (Distance(items[0], line.Length, line.Width) < Distance(items[0], line.Width, line.Length))
                turned++;
            else
                straight++;
        }

        return turned + straight == 0 ? null : turned > straight;
    }
}
