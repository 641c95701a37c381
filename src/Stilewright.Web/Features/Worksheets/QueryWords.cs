using Stilewright.Wording;

namespace Stilewright.Web.Features.Worksheets;

/// <summary>Words of closed sets as addresses carry them: <c>MidRails</c> is <c>mid-rails</c>.</summary>
internal static class QueryWords
{
    public static string Of(Enum value) => TradeWords.Words(value).Replace(' ', '-');

    /// <summary>The words with commas between them; unknown ones are passed over, as an address is not typed by hand.</summary>
    public static IReadOnlyList<T> Read<T>(string? words) where T : struct, Enum =>
        words is null ? [] : [.. Enum.GetValues<T>().Where(value => words.Split(',').Contains(Of(value), StringComparer.Ordinal))];

    public static string List<T>(IEnumerable<T> values) where T : struct, Enum => string.Join(',', values.Select(value => Of(value)));
}
