namespace Stilewright.Web.Features.CheckList;

/// <summary>What is typed in one line of a maker's list, in the order of its fields.</summary>
public enum ListColumn
{
    Part,
    Count,
    Width,
    Length,

    /// <summary>Where the maker wishes it looked at.</summary>
    Thickness,

    /// <summary>The label of the leaf, in the list of a whole project.</summary>
    Leaf,
}
