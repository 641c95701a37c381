namespace Stilewright.Measure;

/// <summary>Where a given value was entered, from the most general to the nearest.</summary>
public enum OriginKind
{
    /// <summary>A default of the program that nobody changed.</summary>
    Shipped,
    Standard,
    Course,
    Project,
    Design,
    Opening,
    Leaf,

    /// <summary>Typed for this one calculation, kept in no document.</summary>
    Typed,

    /// <summary>Measured off the shape of a part, where no formula of lengths tells it: the area under a curve.</summary>
    Shape,

    /// <summary>The place that lengths are counted from: nothing by definition, entered by nobody.</summary>
    Datum,
}

/// <summary>The place a given value came from, so that a reader can be led to where it was entered.</summary>
/// <param name="Kind">Which document or level holds it.</param>
/// <param name="Path">The path of the field in that document, such as <c>standard/frame.stile</c>.</param>
public sealed record Origin(OriginKind Kind, string Path)
{
    public static Origin Typed { get; } = new(OriginKind.Typed, "");

    public static Origin Datum { get; } = new(OriginKind.Datum, "");

    /// <summary>Whether someone entered the value or it shipped, so that a list of sources has it.</summary>
    public bool IsEntered => Kind is not (OriginKind.Datum or OriginKind.Shape);

    /// <summary>The level in plain words, as a page or sheet shows it.</summary>
    public string Words => Kind switch
    {
        OriginKind.Shipped => "house standard, as shipped",
        OriginKind.Standard => "house standard",
        OriginKind.Course => "course",
        OriginKind.Project => "project",
        OriginKind.Design => "door design",
        OriginKind.Opening => "opening",
        OriginKind.Leaf => "leaf",
        OriginKind.Datum => "by definition",
        OriginKind.Shape => "from its shape",
        _ => "typed",
    };
}
