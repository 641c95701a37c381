using System.Globalization;

namespace Stilewright.Documents;

/// <summary>Moments as they are written to files: ISO 8601, in universal time, to the second.</summary>
internal static class TimeText
{
    public const string Example = "2026-03-14T18:05:00Z";

    /// <summary>The form as a pattern for schemas.</summary>
    public const string Pattern = "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z$";

    private const string Form = "yyyy-MM-dd'T'HH:mm:ss'Z'";

    public static string Of(DateTimeOffset time) => time.ToUniversalTime().ToString(Form, CultureInfo.InvariantCulture);

    public static DateTimeOffset? Read(string text) => text.Length == Example.Length
        && DateTimeOffset.TryParseExact(text, Form, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var time) ? time : null;
}
