using System.Globalization;
using Stilewright.Teaching.Drills;

namespace Stilewright.Web.Features.Drills;

/// <summary>A drill while someone answers it: one item after the other, or all on one sheet.</summary>
public sealed class DrillRun(Drill drill, bool isOneByOne)
{
    private readonly Dictionary<int, string> texts = [];
    private readonly Dictionary<int, MarkedItem> marked = [];

    public Drill Drill { get; } = drill;
    public bool IsOneByOne { get; } = isOneByOne;

    /// <summary>The number of the item that is asked, one by one; past the last at the end.</summary>
    public int At { get; private set; } = 1;

    /// <summary>Whether there is nothing more to answer.</summary>
    public bool IsFinished => IsOneByOne ? At > Drill.Items.Count : marked.Count == Drill.Items.Count;

    public DrillItem? Asked => IsOneByOne && At <= Drill.Items.Count ? Drill.Items[At - 1] : null;

    public string TextOf(DrillItem item) => texts.GetValueOrDefault(item.Number, "");

    /// <summary>How an item was marked; null while it is not.</summary>
    public MarkedItem? MarkOf(DrillItem item) => marked.GetValueOrDefault(item.Number);

    /// <summary>Why what was written cannot be marked; null where it can.</summary>
    public string? Problem { get; private set; }

    public void Write(DrillItem item, string text)
    {
        if (!marked.ContainsKey(item.Number))
            texts[item.Number] = text;
    }

    /// <summary>Marks the item that is asked; where it is marked, goes on to the next.</summary>
    public void Advance()
    {
        if (Asked is not { } item)
            return;
        if (marked.ContainsKey(item.Number))
        {
            At++;
            return;
        }

        // An empty or unreadable answer is no slip with fractions.
        var mark = Drill.Mark(item, TextOf(item));
        Problem = mark.IsRight is null ? "Write an answer first." : mark.Fault;
        if (Problem is null)
            marked[item.Number] = mark;
    }

    /// <summary>Marks the whole sheet; what is empty or cannot be read is told first, unless it is to be marked as it is.</summary>
    public void MarkAll(bool asItIs)
    {
        var all = Drill.Mark(texts);
        int[] open = [.. all.Where(each => each.IsRight is null || each.Fault is not null).Select(each => each.Item.Number)];
        Problem = open.Length > 0 && !asItIs ? $"No answer that can be read: {string.Join(", ", open.Select(number => number.ToString(CultureInfo.InvariantCulture)))}." : null;
        if (Problem is not null)
            return;
        foreach (var each in all)
            marked[each.Item.Number] = each;
    }

    /// <summary>All items as they were marked, in their order.</summary>
    public IReadOnlyList<MarkedItem> Marked => [.. Drill.Items.Select(item => marked.GetValueOrDefault(item.Number) ?? new(item, null, null))];
}
