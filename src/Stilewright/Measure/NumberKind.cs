namespace Stilewright.Measure;

/// <summary>What a number that is no length counts.</summary>
public enum NumberKind
{
    Plain,

    /// <summary>Written with or without its sign.</summary>
    Percent,

    /// <summary>Written with F or C; without either it is °F where lengths are inches, °C where they are millimetres.</summary>
    Temperature,
}
