using Stilewright.Wording;

namespace Stilewright.Web.Shell;

/// <summary>How long ago something happened, in words.</summary>
public static class Ago
{
    /// <param name="time">UTC.</param>
    public static string Of(DateTime time) => Of(time, DateTime.UtcNow);

    public static string Of(DateTime time, DateTime now) => (now - time) switch
    {
        { TotalMinutes: < 1 } => "just now",
        { TotalHours: < 1 } span => $"{TradeWords.Count((int)span.TotalMinutes, "minute", "minutes")} ago",
        { TotalDays: < 1 } span => $"{TradeWords.Count((int)span.TotalHours, "hour", "hours")} ago",
        { TotalDays: < 60 } span => $"{TradeWords.Count((int)span.TotalDays, "day", "days")} ago",
        _ => time.ToString("d MMMM yyyy", System.Globalization.CultureInfo.InvariantCulture),
    };
}
