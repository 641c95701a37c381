using System.Collections;
using Stilewright.Documents.Shapes;

namespace Stilewright.Documents;

/// <summary>Visits every field of a document in memory, with its path in the file.</summary>
internal static class RecordWalk
{
    public static IEnumerable<FieldOfRecord> Fields(object document) =>
        Within(Shape.Of(document.GetType()), document, DocumentPath.Root);

    private static IEnumerable<FieldOfRecord> Within(Shape shape, object value, DocumentPath path)
    {
        switch (shape)
        {
            case RecordShape record:
                foreach (var field in record.Fields)
                {
                    if (field.ValueIn(value) is not { } content)
                        continue;
                    var place = path.Field(field.Key);
                    yield return new(value, field, content, place);
                    foreach (var inner in Within(field.Shape, content, place))
                        yield return inner;
                }

                break;
            case CaseSetShape set:
                foreach (var inner in Within(set.CaseOf(value).Shape, value, path))
                    yield return inner;
                break;
            case ListShape { Item: RecordShape or CaseSetShape } list:
                var index = 0;
                foreach (var item in (IEnumerable)value)
                {
                    foreach (var inner in Within(list.Item, item, path.Item(index)))
                        yield return inner;
                    index++;
                }

                break;
        }
    }
}

/// <summary>A field of a record in memory: its value, and its path in the file.</summary>
internal sealed record FieldOfRecord(object Record, FieldShape Field, object Value, DocumentPath Path);
