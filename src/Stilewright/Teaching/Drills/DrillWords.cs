using Stilewright.Measure;

namespace Stilewright.Teaching.Drills;

/// <summary>Drills in words, for the screen and for paper.</summary>
public static class DrillWords
{
    /// <summary>What a group of items asks, as a heading.</summary>
    public static string Heading(DrillKind kind) => kind switch
    {
        DrillKind.ReadRule => "Read the rules",
        DrillKind.Add => "Add",
        DrillKind.Subtract => "Subtract",
        DrillKind.Halve => "Halve",
        DrillKind.Twice => "Double",
        DrillKind.InchToMillimetre => "Inches to millimetres",
        DrillKind.MillimetreToInch => "Millimetres to inches",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>How to answer, in one sentence; empty where the heading says it.</summary>
    public static string Task(DrillKind kind, DrillSettings settings) => kind switch
    {
        DrillKind.ReadRule => $"Each rule begins at 0 and is divided to {Step(settings)}. Write where the arrow points.",
        DrillKind.InchToMillimetre => "One inch is 25.4 mm. Answer to the nearest half millimetre; 1/4 mm either way is right.",
        DrillKind.MillimetreToInch => "One inch is 25.4 mm. Answer to the nearest 1/32 in; 1/64 in either way is right.",
        _ => "",
    };

    /// <summary>What is drilled and how fine, such as "to 1/16 in".</summary>
    public static string Fineness(DrillSettings settings) => $"to {Step(settings)}";

    /// <summary>The answer with its unit.</summary>
    public static string Answer(DrillItem item) => new LengthFormat(item.AnswerUnit, 64).PrintWithUnit(item.Answer);

    private static string Step(DrillSettings settings) => new LengthFormat(settings.Unit, 64).PrintWithUnit(settings.Step);
}
