namespace Stilewright.Findings;

/// <summary>How bad a finding is, mildest first.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Can spoil wood.</summary>
    Caution,

    /// <summary>Can hurt someone; only the instructor accepts it, with a reason, and it still prints.</summary>
    Hazard,

    /// <summary>Withholds the parts of the leaf it is about.</summary>
    CannotBuild,
}
