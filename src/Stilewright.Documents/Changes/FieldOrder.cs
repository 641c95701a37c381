using System.Text.Json.Nodes;
using Stilewright.Documents.Shapes;
using Stilewright.Shop;

namespace Stilewright.Documents.Changes;

/// <summary>Keeps the keys of objects in the order in which they are written to files.</summary>
internal static class FieldOrder
{
    private static readonly Dictionary<string, int> SettingPlaces =
        Settings.All.Select((setting, place) => (setting.Key, place)).ToDictionary(one => one.Key, one => one.place, StringComparer.Ordinal);

    /// <summary>Where a setting's key comes among all; unknown ones come last.</summary>
    public static int OfSetting(string key) => SettingPlaces.GetValueOrDefault(key, int.MaxValue);

    /// <summary>Puts a value under a key: in the place of what stands there, else where the key belongs.</summary>
    public static void Put(JsonObject tree, Shape shape, string key, JsonNode value)
    {
        if (tree.ContainsKey(key))
        {
            tree[key] = value;
            return;
        }

        var place = Place(shape, key);
        var at = 0;
        while (at < tree.Count && Place(shape, tree.GetAt(at).Key) <= place)
            at++;
        tree.Insert(at, key, value);
    }

    private static int Place(Shape shape, string key) => shape switch
    {
        SettingsShape => OfSetting(key),
        // What tells the form of the object comes before its fields; a kind can be a field too.
        RecordShape record => record.PositionOf(key) ?? (key is "format" or "version" or CaseSetShape.KindKey ? -1 : int.MaxValue),
        _ => int.MaxValue,
    };
}
