using Stilewright.Documents.Shapes;

namespace Stilewright.Documents.Changes;

/// <summary>Short names of what people enter, for sentences, forms and tables; lower case, without a full stop.</summary>
public static class FieldLabels
{
    /// <summary>What people call a record of the given type, such as "design".</summary>
    public static string Of(Type record) => ((RecordShape)Shape.Of(record)).Label;

    /// <summary>What people call a field, such as "top rail".</summary>
    /// <param name="record">A record of a document.</param>
    /// <param name="key">The field's key in documents, such as <c>topRail</c>.</param>
    /// <exception cref="ArgumentException">The record has no such field.</exception>
    public static string Of(Type record, string key)
    {
        var shape = (RecordShape)Shape.Of(record);
        return shape.PositionOf(key) is { } position ? shape.Fields[position].Label
            : throw new ArgumentException($"{record} has no field {key}.", nameof(key));
    }

    /// <summary>What holds where a field is absent, such as "not checked"; null where nothing is said of that.</summary>
    /// <inheritdoc cref="Of(Type, string)"/>
    public static string? Absent(Type record, string key)
    {
        var shape = (RecordShape)Shape.Of(record);
        return shape.PositionOf(key) is { } position ? shape.Fields[position].AbsentLabel
            : throw new ArgumentException($"{record} has no field {key}.", nameof(key));
    }
}
