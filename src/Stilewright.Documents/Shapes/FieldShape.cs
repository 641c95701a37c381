using System.Collections;
using System.Reflection;
using Fractions;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Documents.Shapes;

/// <summary>A field of a record: its key, its form and what its attributes say.</summary>
internal sealed class FieldShape
{
    private readonly ParameterInfo parameter;
    private readonly PropertyInfo property;
    private readonly object? absent;
    private Shape? shape;

    public FieldShape(Type record, ParameterInfo parameter, NullabilityInfoContext nullability)
    {
        this.parameter = parameter;
        property = record.GetProperty(parameter.Name!)
            ?? throw new InvalidOperationException($"{record} has no property for its parameter {parameter.Name}.");
        Key = Spelling.Key(parameter.Name!);
        Label = Spelling.InWords(parameter.Name!);
        foreach (var attribute in parameter.GetCustomAttributes(inherit: false))
        {
            switch (attribute)
            {
                case BetweenAttribute between:
                    Between = between;
                    break;
                case IdAttribute:
                    IsId = true;
                    break;
                case RefersToAttribute refersTo:
                    RefersTo = refersTo.Type;
                    break;
                case UniqueWithinAttribute unique:
                    Unique = unique;
                    break;
                case MeaningAttribute meaning:
                    Meaning = meaning.Text;
                    break;
                case LabelAttribute label:
                    Label = label.Text;
                    IsSilent = label.IsSilent;
                    AbsentLabel = label.Absent;
                    break;
                case CountsAttribute counts:
                    NumberKind = counts.Kind;
                    break;
                case BeginsWithIdAttribute:
                    BeginsWithId = true;
                    break;
            }
        }

        var type = parameter.ParameterType;
        if (type == typeof(SettingValues))
        {
            absent = SettingValues.None;
        }
        else if (Shape is ListShape list)
        {
            absent = list.Empty;
            IsRequired = Between is { Least: >= 1 };
        }
        else if (parameter.HasDefaultValue)
        {
            absent = type.IsEnum ? Enum.ToObject(type, parameter.DefaultValue!) : parameter.DefaultValue;
        }
        else
        {
            IsRequired = nullability.Create(parameter).WriteState != NullabilityState.Nullable;
        }
    }

    public string Key { get; }

    public Type ValueType => parameter.ParameterType;

    public Shape Shape => shape ??= Shape.Of(parameter.ParameterType);

    public string? Meaning { get; }

    /// <summary>What people call it in a sentence.</summary>
    public string Label { get; }

    /// <summary>What people say holds where it is absent, where its label says so.</summary>
    public string? AbsentLabel { get; }

    /// <summary>Whether sentences leave it out.</summary>
    public bool IsSilent { get; }

    public BetweenAttribute? Between { get; }

    /// <summary>What a number counts that is no length.</summary>
    public NumberKind NumberKind { get; }

    public bool IsId { get; }

    public Type? RefersTo { get; }

    /// <summary>Whether it holds a path that begins with the id of a record.</summary>
    public bool BeginsWithId { get; }

    public UniqueWithinAttribute? Unique { get; }

    /// <summary>Whether the key must be in the file; a list that may not be empty must be.</summary>
    public bool IsRequired { get; }

    /// <summary>The value when the key is not in the file; null where it must be.</summary>
    public object? Absent => absent;

    public Length? Least => Between is { Least: var least } && (least > 0 || Between.Above) ? Length.FromInches(Fraction.FromDouble(least)) : null;

    public Length? Greatest => Between is { Greatest: < double.MaxValue and var greatest } ? Length.FromInches(Fraction.FromDouble(greatest)) : null;

    public object? ValueIn(object record) => property.GetValue(record);

    /// <summary>Whether the value says no more than an absent key does, so that it is not written.</summary>
    public bool IsAbsent(object? value) => !IsRequired && value switch
    {
        SettingValues settings => settings.Values.Count == 0,
        ICollection list => list.Count == 0,
        _ => Equals(value, absent),
    };
}
