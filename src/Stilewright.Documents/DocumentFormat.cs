using Stilewright.Documents.Lists;
using Stilewright.Prints;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Documents;

/// <summary>A kind of file, the newest version of it that is read, and the steps that bring older ones up to it.</summary>
/// <param name="Name">The value of <c>format</c> in the file.</param>
/// <param name="Root">The record that the file holds.</param>
/// <param name="Version">The version that is written, and the newest that is read; counted from 1.</param>
/// <param name="Upgrades">Steps from older versions, in any order.</param>
public sealed record DocumentFormat(string Name, Type Root, int Version, IReadOnlyList<UpgradeStep> Upgrades)
{
    public static DocumentFormat Course { get; } = new("stilewright/course", typeof(Course), 2, [ReadingsByName.Step]);
    public static DocumentFormat Standard { get; } = new("stilewright/standard", typeof(HouseStandard), 1, []);
    public static DocumentFormat HandedOut { get; } = new("stilewright/handed-out", typeof(HandedOut), 1, []);
    public static DocumentFormat LabelSheet { get; } = new("stilewright/label-sheet", typeof(LabelSheet), 1, []);
    public static DocumentFormat Printer { get; } = new("stilewright/printer", typeof(Printer), 1, []);
    public static DocumentFormat MakersList { get; } = new("stilewright/makers-list", typeof(WrittenList), 1, []);

    public static IReadOnlyList<DocumentFormat> All { get; } = [Course, Standard, HandedOut, LabelSheet, Printer, MakersList];
}
