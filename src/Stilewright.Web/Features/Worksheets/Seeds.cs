using System.Globalization;

namespace Stilewright.Web.Features.Worksheets;

/// <summary>Seeds of random exercises: numbers short enough to be copied from paper.</summary>
internal static class Seeds
{
    public const int Largest = 99_999_999;

    /// <summary>That of a day: who opens the page on two screens begins with the same sheets.</summary>
    public static ulong Of(DateTimeOffset day) => (ulong)(day.Year * 10_000 + day.Month * 100 + day.Day);

    public static ulong Another() => (ulong)Random.Shared.Next(1, 1_000_000);

    /// <summary>Null where the text is no seed.</summary>
    public static ulong? Read(string? text) =>
        ulong.TryParse(text?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var seed) && seed is > 0 and <= Largest ? seed : null;
}
