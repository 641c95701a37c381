using System.Globalization;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Teaching.Drills;
using Stilewright.Wording;

namespace Stilewright.Drawing.Worksheets;

/// <summary>Lays drills and their key.</summary>
internal static class DrillStrips
{
    private const double NumberWidth = 8;
    private const double LeastAnswer = 26;
    private const double Between = 3.4;
    private const double Gap = 6;
    private static readonly TextStyle Figures = new(5);

    public static IEnumerable<Strip> Of(Drill drill, double width)
    {
        var bench = string.Create(CultureInfo.InvariantCulture, $"Bench {drill.Bench}");
        return
        [
            .. SheetTop.Of($"{bench}: drill {DrillWords.Fineness(drill.Settings)}", string.Create(CultureInfo.InvariantCulture, $"of {drill.Items.Count}"), width, new Bookmark(bench, 1)),
            .. drill.Items.GroupBy(item => item.Kind).SelectMany(group => Group(group.Key, [.. group], drill.Settings, width)),
        ];
    }

    private static IEnumerable<Strip> Group(DrillKind kind, IReadOnlyList<DrillItem> items, DrillSettings settings, double width)
    {
        foreach (var strip in Prose.Heading(DrillWords.Heading(kind), width))
            yield return strip;
        if (DrillWords.Task(kind, settings) is { Length: > 0 } task)
        {
            foreach (var strip in Prose.Paragraph(task, width))
                yield return strip with { KeepWithNext = true };
        }

        if (kind == DrillKind.ReadRule)
        {
            foreach (var item in items)
                yield return Rule(item, width);
            yield break;
        }

        // Down the columns would be broken by a new sheet; across, numbers stay in order.
        var each = (width - Gap) / 2;
        for (var i = 0; i < items.Count; i += 2)
        {
            yield return new(SheetTop.WritingHeight + Between,
            [
                .. Item(items[i], 0, each),
                .. i + 1 < items.Count ? Item(items[i + 1], each + Gap, each) : [],
            ]);
        }
    }

    private static Strip Rule(DrillItem item, double width)
    {
        var scene = RuleFigure.Draw(item);
        var number = Typesetter.Set(item.Number.ToString(CultureInfo.InvariantCulture), TextStyle.Body.Bold);
        var unit = Typesetter.Set(Unit(item), TextStyle.Body);
        var end = NumberWidth + scene.WidthMillimetres;
        return new(scene.HeightMillimetres + Between,
        [
            Strip.Put(number, 0, scene.HeightMillimetres - number.Height),
            new SceneGroup(null, scene.Description, scene.Nodes) { At = new(NumberWidth, 0) },
            SheetTop.Line(end + Gap, width - unit.Width - 1.5, scene.HeightMillimetres),
            Strip.Put(unit, width - unit.Width, scene.HeightMillimetres - unit.Height),
        ])
        {
            SpaceBefore = Between,
            Scales = [scene.Scale],
        };
    }

    private static SceneNode[] Item(DrillItem item, double left, double width)
    {
        var number = Typesetter.Set(item.Number.ToString(CultureInfo.InvariantCulture), TextStyle.Body.Bold);
        var question = Typesetter.Set($"{item.Question} = ", Figures);
        var unit = Typesetter.Set(Unit(item), TextStyle.Body);
        var from = left + NumberWidth + question.Width;
        return
        [
            Strip.Put(number, left, SheetTop.WritingHeight - number.Height),
            new Lettering(new(left + NumberWidth, SheetTop.WritingHeight - 1), question),
            SheetTop.Line(from, Math.Max(from + LeastAnswer, left + width - unit.Width - 1.5), SheetTop.WritingHeight),
            Strip.Put(unit, left + width - unit.Width, SheetTop.WritingHeight - unit.Height),
        ];
    }

    private static string Unit(DrillItem item) => item.AnswerUnit == LengthUnit.Inch ? "in" : "mm";

    /// <summary>Answers of one bench, with what known slips would have given.</summary>
    public static IEnumerable<Strip> Key(Drill drill, double width, double most)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"Bench {drill.Bench}");
        return
        [
            .. Prose.Heading(name, width, new Bookmark($"{name}, key", 2)),
            .. Table.Of(
                ["", "asked", Column.Figure("answer"), "a known slip gives"],
                drill.Items.Select(item => new Row(
                [
                    item.Number.ToString(CultureInfo.InvariantCulture), item.Question.Length > 0 ? item.Question : "rule", DrillWords.Answer(item),
                    string.Join("; ", item.Slips.Select(slip => $"{slip.Written}: {TradeWords.Words(slip.Kind)}")),
                ])),
                width, most),
        ];
    }
}
