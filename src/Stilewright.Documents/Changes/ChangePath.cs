using System.Globalization;

namespace Stilewright.Documents.Changes;

/// <summary>A step of a path: a key of an object, or an item of a list by its index and the number of items.</summary>
internal readonly record struct PathStep(string Key, int Index, int Of)
{
    public bool IsItem => Of > 0;
}

/// <summary>Paths as texts: keys joined by <c>/</c>, items as <c>0:2</c>. No key of a document holds either sign.</summary>
internal static class ChangePath
{
    public static string Field(string path, string key) => path.Length == 0 ? key : $"{path}/{key}";

    public static string Item(string path, int index, int of) =>
        Field(path, string.Create(CultureInfo.InvariantCulture, $"{index}:{of}"));

    public static IReadOnlyList<PathStep> Steps(string path) => path.Length == 0 ? [] : [.. path.Split('/').Select(Step)];

    /// <summary>Whether the text has the form of a path.</summary>
    public static bool IsPath(string text) => text.Length == 0 || text.Split('/').All(step => step.Split(':') switch
    {
        [{ Length: > 0 }] => true,
        [var index, var of] => IsCount(index, out var at) && IsCount(of, out var count) && at < count,
        _ => false,
    });

    private static bool IsCount(string text, out int count) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out count);

    private static PathStep Step(string text) => text.Split(':') is [var index, var of]
        ? new("", int.Parse(index, CultureInfo.InvariantCulture), int.Parse(of, CultureInfo.InvariantCulture))
        : new(text, 0, 0);
}
