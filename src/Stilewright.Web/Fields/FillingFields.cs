using System.Globalization;
using Stilewright.Projects;
using Stilewright.Web.Desk;
using Stilewright.Web.Features.Size;

namespace Stilewright.Web.Fields;

/// <summary>Sizes of leaves and drawer fronts that are given rather than found, as fields.</summary>
public static class FillingFields
{
    public static LengthField LeafWidth(string openingId, int leaf) => new(
        Name(openingId, "leaves", leaf, "width"), "its width",
        course => Doors(course, openingId)?.Leaves.ElementAtOrDefault(leaf)?.Width,
        (course, entry) => FillingEdits.With(course, openingId, filling => filling is DoorFilling doors
            ? doors with { Leaves = [.. doors.Leaves.Select((each, index) => index == leaf ? each with { Width = entry } : each)] } : filling))
    {
        Otherwise = "an equal share",
    };

    /// <summary>The height of one front of a bank whose heights are given; the one that is empty takes the rest.</summary>
    public static LengthField FrontHeight(string openingId, int front) => new(
        Name(openingId, "heights/fronts", front, "height"), string.Create(CultureInfo.InvariantCulture, $"front {front + 1} from the top"),
        course => Given(course, openingId)?.Fronts.ElementAtOrDefault(front)?.Height,
        (course, entry) => FillingEdits.With(course, openingId, filling => filling is DrawerFilling { Heights: GivenHeights given } drawers
            ? drawers with { Heights = new GivenHeights([.. given.Fronts.Select((each, index) => index == front ? each with { Height = entry } : each)]) } : filling))
    {
        Otherwise = "takes the rest",
    };

    /// <summary>The share of one front of a bank in proportion.</summary>
    public static WordField<Course> FrontShare(string openingId, int front) => new(
        Name(openingId, "heights/shares", front, "share"), string.Create(CultureInfo.InvariantCulture, $"front {front + 1} from the top"),
        course => Shares(course, openingId)?.Shares.ElementAtOrDefault(front).ToString(CultureInfo.InvariantCulture),
        (course, words) => FillingEdits.With(course, openingId, filling => filling is DrawerFilling { Heights: ProportionalHeights shares } drawers && words is not null
            ? drawers with { Heights = new ProportionalHeights([.. shares.Shares.Select((each, index) => index == front ? int.Parse(words, CultureInfo.InvariantCulture) : each)]) } : filling))
    {
        IsOptional = false,
        Check = words => int.TryParse(words, NumberStyles.None, CultureInfo.InvariantCulture, out var share) && share is >= 1 and <= 1000
            ? null : $"\"{words}\" is no share: type a whole number from 1 to 1000.",
    };

    private static string Name(string openingId, string list, int index, string key) => string.Create(CultureInfo.InvariantCulture, $"{openingId}/filling/{list}/{index}/{key}");

    private static DoorFilling? Doors(Course course, string openingId) => ProjectEdits.Opening(course, openingId)?.Filling as DoorFilling;

    private static GivenHeights? Given(Course course, string openingId) => (ProjectEdits.Opening(course, openingId)?.Filling as DrawerFilling)?.Heights as GivenHeights;

    private static ProportionalHeights? Shares(Course course, string openingId) => (ProjectEdits.Opening(course, openingId)?.Filling as DrawerFilling)?.Heights as ProportionalHeights;
}
