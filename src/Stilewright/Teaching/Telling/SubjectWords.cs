namespace Stilewright.Teaching.Telling;

/// <summary>How a subject is spoken of, and the rule about it.</summary>
/// <param name="Name">With its article, such as "the grooves".</param>
/// <param name="One">A single one, such as "groove".</param>
/// <param name="IsPlural">Whether the name takes "were".</param>
/// <param name="Rule">Why the figure belongs there.</param>
/// <param name="Hint">A question that leads to the rule without naming the figure.</param>
internal sealed record SubjectWords(string Name, string One, bool IsPlural, string Rule, string Hint)
{
    // The rules of the trade as the sizing follows them; common practice, no source.
    private static readonly Dictionary<string, SubjectWords> Known = new()
    {
        ["groove"] = new("the grooves", "groove", true,
            "What lies in a groove cannot be seen but must be there: a rail's tongue fills the groove of a stile at each end, and a panel reaches into a groove on each side. So the depth of the groove is added, once for each end or side.",
            "Once the door is together, what part of this piece can no longer be seen, and at how many ends?"),
        ["tenon"] = new("the tenons", "tenon", true,
            "A rail has a tenon at each end, which goes into the mortise of a stile. Its length is added twice.",
            "What holds this rail in the stiles, and is it in your length, at both ends?"),
        ["cut-back"] = new("the moulding cut back", "cut-back", false,
            "Where the moulding is cut back the rail's shoulder meets the bare stile, so the rail is longer by that at each end.",
            "Where exactly does the rail's shoulder touch the stile?"),
        ["trim"] = new("the trim allowance", "trim allowance", false,
            "The leaf is glued up a little large and trimmed square, half the allowance from each edge. So a stile goes into the clamps longer by the whole allowance and wider by half of it, a rail wider by half of it; the rail does not grow in length, as it ends at the stiles, and the panel does not grow at all.",
            "Which edges are still to be trimmed after the glue-up, and does this size lie on such an edge?"),
        ["rough"] = new("the rough allowance", "rough allowance", false,
            "A rough blank is longer and wider than the part by the shop's rough allowance, so that there is wood left to joint and to square.",
            "Is this the size of the part, or of the blank it is cut from?"),
        ["clearance"] = new("the clearance", "clearance", false,
            "A panel must have room in the groove on each side, or it bottoms and the joint will not close; across the grain it must also be able to swell. So the clearance is taken off once for each side.",
            "Does this piece have room to move in its groove, on each side, and no more than that?"),
        ["overlay"] = new("the overlay", "overlay", false,
            "An overlay front laps over the frame on every edge, so it is larger than the opening: the overlay is added once for each side.",
            "Does the front cover the opening only, or also some of the frame, and on how many sides?"),
        ["reveal"] = new("the reveal", "reveal", false,
            "The reveal is the frame that stays visible beside the front, so it is taken off what the front may cover.",
            "How much of the frame should still be seen beside the front?"),
        ["gap"] = new("the gap", "gap", false,
            "Between two fronts, and round an inset front, there must be air. A gap between two leaves is taken once from both together, before they are halved; round an inset front it is taken on each side.",
            "Where must there be air, so that nothing rubs, and how many gaps are there in all?"),
        ["lap"] = new("the lap", "lap", false,
            "Rabbeted meeting edges lie over one another, so the two leaves together are wider than the front by the lap.",
            "Do the two leaves lie beside one another, or over one another?"),
        ["lip"] = new("the lip", "lip", false,
            "A lipped front lies in the opening with its rabbet and over the frame with its lip: the lip less its clearance is added on each side.",
            "Which part of this front lies in the opening, and which over the frame?"),
        ["lip clearance"] = new("the clearance of the lip", "clearance", false,
            "A lipped front needs air between its rabbet and the opening on each side.",
            "Could this front be put into its opening by hand?"),
        ["rise"] = new("the rise", "rise", false,
            "An arched rail is cut from a blank as wide as the rail at its narrowest and the rise of the arch together; what lies beside the arch stands on the spring line.",
            "How wide must the board be before the arch is sawn?"),
        ["shoulder"] = new("the shoulder", "shoulder", false, "The shoulders of an arch are level and do not belong to its curve.", "Where does the curve begin and end?"),
        ["span"] = new("the span", "span", false, "The span of an arch runs from sight line to sight line.", "From where to where does the arch run?"),
        ["stile"] = new("the stiles", "stile", true,
            "The rails stand between the stiles, so the width of both stiles is taken off the width of the leaf.",
            "What stands at both sides of this piece, and is its width taken off?"),
        ["rail"] = new("the rails", "rail", true,
            "The panel and the lights stand between the rails, so the width of both rails is taken off the height of the leaf.",
            "What stands above and below, and is its width taken off?"),
        ["mid rail"] = new("the mid rail", "mid rail", false,
            "A mid rail takes its own width from the height that is left for the lights.",
            "What divides the height of this leaf?"),
        ["mid stile"] = new("the mid stile", "mid stile", false,
            "A mid stile takes its own width from the width that is left for the lights.",
            "What divides the width of this leaf?"),
        ["panel"] = new("the panel", "panel", false,
            "A panel is larger than what can be seen of it: it reaches into the groove on every side, less its clearance there.",
            "Is this the panel that can be seen, or the panel that must be cut?"),
        ["glass"] = new("the glass", "glass", false,
            "A pane reaches into its groove or rabbet on every side, less its clearance in all.",
            "Is this the glass that can be seen, or the glass that must be ordered?"),
        ["front"] = new("the front", "front", false,
            "The size of a front comes from the opening and from what its edges do: overlay is added on each side, an inset gap taken off on each side.",
            "What must happen to the size of the opening to become that of the front?"),
        ["leaf"] = new("the leaf", "leaf", false,
            "The leaves of a front share its width: what lies between them is taken off first, and then it is divided by the number of leaves.",
            "How many leaves share this front, and what lies between them?"),
        ["opening"] = new("the opening", "opening", false,
            "An opening is seldom square. An overlay front goes by the readings as the standard says, an inset front must go in at the narrowest place: the least of the readings counts.",
            "Which of the readings of this opening counts?"),
        ["clear"] = new("the clear size", "clear size", false,
            "The clear size is what lies between the stiles and between the rails: the leaf less both.",
            "What is left of the leaf between its members?"),
        ["light"] = new("the light", "light", false,
            "What the members leave is shared by the lights: one light more than there are mid rails or mid stiles.",
            "How many lights are there, and what stands between them?"),
    };

    /// <summary>The words of a subject; one without words of its own is called by its name.</summary>
    public static SubjectWords Of(string subject) => Known.GetValueOrDefault(subject)
        ?? new($"the {subject}", subject, false, "Each figure of the step has its place; one that is missing, doubled or turned makes the piece wrong by that much.",
            $"Say the step aloud, figure by figure: where does the {subject} come in?");
}
