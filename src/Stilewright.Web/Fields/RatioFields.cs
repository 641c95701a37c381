using System.Globalization;
using Stilewright.Projects;

namespace Stilewright.Web.Fields;

/// <summary>Radii of a cathedral or double curve, typed as two whole numbers.</summary>
public static class RatioFields
{
    /// <summary>How the reverse arcs are to the crown.</summary>
    /// <param name="name">The same on every screen and after a reload.</param>
    /// <param name="otherwise">What holds where nothing is typed.</param>
    public static WordField<TDocument> Of<TDocument>(string name, string otherwise, Func<TDocument, ArcRatio?> get, Func<TDocument, ArcRatio?, TDocument> set) => new(
        name, "Reverse arcs to crown",
        document => get(document) is { } ratio ? string.Create(CultureInfo.InvariantCulture, $"{ratio.Reverse} : {ratio.Crown}") : null,
        (document, words) => set(document, words is null ? null : Read(words)))
    {
        Otherwise = otherwise,
        Check = words => Read(words) is null ? "Type two whole numbers from 1 to 1000, such as 3 : 2." : null,
    };

    private static ArcRatio? Read(string words) => words.Split(':', StringSplitOptions.TrimEntries) is [var one, var other]
        && int.TryParse(one, NumberStyles.None, CultureInfo.InvariantCulture, out var reverse) && reverse is >= 1 and <= 1000
        && int.TryParse(other, NumberStyles.None, CultureInfo.InvariantCulture, out var crown) && crown is >= 1 and <= 1000
        ? new(reverse, crown) : null;
}
