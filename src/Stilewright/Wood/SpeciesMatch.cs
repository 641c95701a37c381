namespace Stilewright.Wood;

/// <summary>What a name of a wood, as a design writes it, stands for.</summary>
public abstract record SpeciesMatch
{
    private SpeciesMatch()
    {
    }

    public sealed record Found(Species Species) : SpeciesMatch;

    /// <param name="Nearest">Names that were probably meant, nearest first; empty where none is near.</param>
    public sealed record Unknown(string Name, IReadOnlyList<string> Nearest) : SpeciesMatch;
}
