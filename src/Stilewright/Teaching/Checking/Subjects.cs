using Stilewright.Measure;

namespace Stilewright.Teaching.Checking;

/// <summary>What quantities are about, by their keys, so that one rule missed at several places is one cause.</summary>
public static class Subjects
{
    /// <summary>What is about no quantity of the working: a figure that was written down, copied or cut otherwise than it was found.</summary>
    public const string Written = "written";

    /// <summary>How thick the stock of a part is.</summary>
    public const string Thickness = "thickness";

    private static readonly (string Part, string Subject)[] ByKey =
    [
        ("cutters/cope.length", "groove"), ("cutters/groove.depth", "groove"), ("tenon.length", "tenon"), ("joint.tenon", "tenon"), ("joint.cut-back", "cut-back"),
        ("trim.", "trim"), ("rough.", "rough"), ("panel.clearance", "clearance"), ("glass.clearance", "clearance"),
        ("overlay", "overlay"), ("reveal", "reveal"), ("gap.inset", "gap"), ("gap", "gap"), ("lap.meeting", "lap"), ("lip.clearance", "lip clearance"), ("lip", "lip"),
        (".span", "span"), (".rise", "rise"), ("shoulder", "shoulder"), ("frame.mid-rail", "mid rail"), ("rail.mid", "mid rail"), ("frame.mid-stile", "mid stile"), ("stile.mid", "mid stile"),
        ("cut.step", "step"), ("stock/faceLoss", "sanding"), ("stock/backLoss", "sanding"), ("stock/", Thickness),
    ];

    /// <summary>What a quantity is about: of an entered or named one by its key, else by what it is made of.</summary>
    public static string Of(Worked quantity) => quantity switch
    {
        Product { Left: Number, Right: var each } => Of(each),
        Quotient { Right: Number, Left: var whole } => Of(whole),
        Stepped { Inner: var inner } => Of(inner),
        Given given => OfKey(given.Key),
        Named named => OfKey(named.Key),
        FromTable looked => looked.Label == "rough thickness" ? Thickness : looked.Label,
        { Operands: [var first, ..] } => Of(first),
        _ => "number",
    };

    private static string OfKey(string key)
    {
        foreach (var (part, subject) in ByKey)
        {
            if (key.Contains(part, StringComparison.Ordinal))
                return subject;
        }

        // What a quantity measures and which of its siblings it is say nothing about the rule.
        var tokens = key.Split('/', '.').Where(token => token is not ("standard" or "leaf" or "frame" or "width" or "height" or "length" or "top" or "bottom" or "left" or "right" or "hinge" or "pull" or "glue" or "blank")
            && !int.TryParse(token, out _)).ToList();
        if (tokens.Count > 0)
            return string.Join(' ', tokens);
        return key.StartsWith("leaf/", StringComparison.Ordinal) ? "leaf" : key;
    }
}
