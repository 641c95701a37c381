namespace Stilewright.Wood;

/// <summary>How the growth rings lie in a board, seen on its end.</summary>
public enum RingOrientation
{
    /// <summary>Rings along the width, as in a flatsawn board: the width moves tangentially.</summary>
    Flat,

    /// <summary>Rings across the width, as in a quartersawn board: the width moves radially.</summary>
    Quarter,

    /// <summary>Neither, or boards of both kinds: reckoned as flat, which overestimates it (FPL-GTR-190 p. 13-17).</summary>
    Mixed,
}
