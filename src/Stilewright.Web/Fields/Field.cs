namespace Stilewright.Web.Fields;

/// <summary>Something that is typed on a page.</summary>
/// <param name="Name">The same on every screen and after a reload, such as <c>hall-doors/readings/widthTop</c>.</param>
/// <param name="Label">What people call it.</param>
public abstract record Field(string Name, string Label)
{
    /// <summary>Whether the field may be left empty.</summary>
    public bool IsOptional { get; init; } = true;

    /// <summary>Said in the empty field, such as the value that holds without it.</summary>
    public string? Otherwise { get; init; }

    /// <summary>Whether it holds figures rather than words.</summary>
    public virtual bool IsFigure => true;
}

/// <summary>Something that is typed on a page: how it is found in the document, and how it is put back.</summary>
/// <inheritdoc cref="Field" path="/param"/>
/// <typeparam name="TDocument">What holds it: a course, or a house standard.</typeparam>
public abstract record Field<TDocument>(string Name, string Label) : Field(Name, Label)
{
    /// <summary>What the document has, as the field shows it; empty where nothing is entered.</summary>
    public abstract string TextIn(TDocument document, FieldText text);

    /// <summary>Whether two documents have the same in the field.</summary>
    public virtual bool IsSame(TDocument left, TDocument right, FieldText text) => TextIn(left, text) == TextIn(right, text);

    /// <summary>What was typed as an edit of the document, or why it cannot be taken.</summary>
    /// <param name="typed">Not empty: that takes the value out.</param>
    public abstract FieldReading<TDocument> Read(string typed, FieldText text);

    /// <summary>The document with nothing in the field.</summary>
    public abstract TDocument Without(TDocument document);
}
