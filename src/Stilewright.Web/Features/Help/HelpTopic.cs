namespace Stilewright.Web.Features.Help;

/// <summary>One page of the help.</summary>
/// <param name="Slug">The end of its address.</param>
/// <param name="Summary">What it tells, in one sentence.</param>
public sealed record HelpTopic(string Slug, string Name, string Summary)
{
    /// <summary>In the order of the work.</summary>
    public static IReadOnlyList<HelpTopic> All { get; } =
    [
        new("measure", "Measure", "How to read an opening, what its diagonals tell, and what is made of a face frame."),
        new("size", "Size", "How the door's size comes from the opening: overlay, inset, lipped; pairs, drawers and neighbours."),
        new("break-down", "Break down", "How long the rails are, how large the panel is, and the three sizes of every part."),
        new("wood", "Wood", "How panels and gaps fare through the year, how staves are glued up, and what a leaf weighs."),
        new("check", "Check my list", "How your own cut list is checked, how much you are told, and who sees it."),
        new("patterns", "Patterns", "Arches: their families, radii, and how a full-size pattern is printed and used."),
        new("adjust", "Adjust", "From the gaps read on hung doors to the screw that is turned, and what is done where no screw reaches."),
        new("hang", "Bore and hang", "How many hinges and where, which door a boring makes, stops, and hanging step by step."),
        new("packet", "Packet", "What is printed for a bench, and what is remembered of it."),
        new("history", "History", "Who changed what, taking back, and two people at one field."),
        new("standard", "House standard", "The shop's own constants, cutters and machines, and what may differ from them."),
        new("designs", "Door designs", "Frames, panels, lights and arches that openings are given."),
        new("worksheets", "Worksheets", "Sizes worked out by hand: levels, seeds, marks that follow through, and drills."),
        new("glossary", "Glossary", "The words of the trade as they are used here."),
    ];

    public string Address => $"/help/{Slug}";
}
