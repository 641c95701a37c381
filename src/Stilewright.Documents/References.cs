using Stilewright.Documents.Shapes;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Documents;

/// <summary>Checks what a course names in the house standard that it is built by.</summary>
public static class References
{
    /// <summary>Every cutter set, stock and hinge that the standard does not have, and every panel whose stock is of the wrong kind.</summary>
    /// <returns>Errors with paths in the course's file, in the order of the file; empty when all is well.</returns>
    public static IReadOnlyList<DocumentError> Check(Course course, HouseStandard standard)
    {
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(standard);
        var known = new Dictionary<Type, List<string>>
        {
            [typeof(CutterSet)] = [.. standard.Cutters.Select(set => set.Id)],
            [typeof(Stock)] = [.. standard.Stocks.Select(stock => stock.Id)],
        };
        List<DocumentError> errors = [];
        foreach (var (record, field, value, path) in RecordWalk.Fields(course))
        {
            if (value is SettingValues settings)
                errors.AddRange(NotInTheStandard(settings, standard).Select(fault => new DocumentError(path.Field(fault.Setting.Key).ToString(), $"{fault.Problem} in the house standard {standard.Id}", fault.Fix)));
            if (field.RefersTo is not { } type || !known.TryGetValue(type, out var ids))
                continue;
            var id = (string)value;
            if (!ids.Contains(id))
                errors.Add(new(path.ToString(), $"no {Spelling.InWords(type)} \"{Quote.Shown(id)}\" in the house standard {standard.Id}", Quote.Suggest(id, ids)));
            else if (record is LightFilling filling && standard.StockOf(id)!.Kind != KindFor(filling.Kind))
                errors.Add(new(path.ToString(), $"the stock \"{id}\" is {Words(standard.StockOf(id)!.Kind)}, but the panel is {Words(KindFor(filling.Kind))}",
                    $"choose another stock or kind; {Words(KindFor(filling.Kind))} here: {Quote.List([.. standard.Stocks.Where(stock => stock.Kind == KindFor(filling.Kind)).Select(stock => stock.Id)])}"));
        }

        return errors;
    }

    /// <summary>Settings that name what the standard does not have.</summary>
    internal static IEnumerable<(Setting Setting, string Problem, string Fix)> NotInTheStandard(SettingValues settings, HouseStandard standard)
    {
        foreach (var (setting, value) in settings.Values.Where(each => each.Key.Kind == SettingKind.Reference))
        {
            var words = standard.WordsOf(setting);
            if (!words.Contains(value.Text))
                yield return (setting, $"no {setting.Label} \"{Quote.Shown(value.Text)}\"", Quote.Suggest(value.Text, [.. words]));
        }
    }

    private static StockKind KindFor(PanelKind panel) => panel == PanelKind.FlatSheet ? StockKind.Sheet : StockKind.Solid;

    private static string Words(StockKind kind) => kind == StockKind.Sheet ? "sheet" : "solid";
}
