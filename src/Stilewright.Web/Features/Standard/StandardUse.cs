using Stilewright.Doors;
using Stilewright.Shop;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Features.Standard;

/// <summary>What records of a standard are used for, in words; null for one that may go.</summary>
/// <param name="standard">The standard as it would be.</param>
/// <param name="courses">Those that follow it.</param>
internal sealed class StandardUse(HouseStandard standard, IReadOnlyList<OpenCourse> courses)
{
    public string? OfHinge(string id) => OfWord(Settings.UsualHinge, id);

    public string? OfCounts(string id) => standard.Hinges.FirstOrDefault(hinge => hinge.CountTable == id) is { } hinge
        ? $"The hinge {hinge.Name} goes by it: choose another table there first." : OfWord(Settings.HingeCountTable, id);

    public string? OfClimate(string id) => OfWord(Settings.Climate, id);

    public string? OfSpecies(string id)
    {
        var own = standard.Species.FirstOrDefault(each => each.Id == id);
        return own is null ? null : First(leaf => leaf.Parts.Any(part => Names(own, part.Material)), "is made of it: choose another wood there first");
    }

    private static bool Names(SpeciesEntry species, string material) =>
        species.Aliases.Append(species.Name).Any(name => string.Equals(name, material, StringComparison.OrdinalIgnoreCase));

    private string? OfWord(Setting setting, string id) => StandardFields.ValueOf(standard, setting).Text == id
        ? $"The standard's own {setting.Label} is set to it: choose another there first." : First(leaf => leaf.Standard.Word(setting) == id, "is set to it: choose another there first");

    private string? First(Func<SizedLeaf, bool> uses, string what)
    {
        foreach (var course in courses)
        {
            if (course.Whole.Leaves.FirstOrDefault(uses) is { } leaf)
                return $"{leaf.Label} of {course.Course.Name} {what}.";
        }

        return null;
    }
}
