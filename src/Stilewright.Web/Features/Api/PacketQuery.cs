using System.ComponentModel;
using Microsoft.AspNetCore.Mvc;
using Stilewright.Drawing.Labels;
using Stilewright.Shop;
using Stilewright.Teaching.Worksheets;
using Stilewright.Web.Features.Printing;

namespace Stilewright.Web.Features.Api;

/// <summary>A packet as an address asks for it.</summary>
internal sealed record PacketQuery(
    [property: FromQuery(Name = "bench"), Description("Numbers of benches with commas between; absent, the whole course with its overview.")] string? Bench,
    [property: FromQuery(Name = "paper"), Description("letter or a4; absent, letter for inches and a4 for millimetres.")] string? Paper,
    [property: FromQuery(Name = "unit"), Description("in or mm; absent, the unit each project is written in.")] string? Unit,
    [property: FromQuery(Name = "storySticks"), Description("true to add every leaf's marks at full size.")] string? StorySticks,
    [property: FromQuery(Name = "partDrawings"), Description("false to leave the drawings of single parts out.")] string? PartDrawings,
    [property: FromQuery(Name = "working"), Description("false to leave out how sizes are found.")] string? Working,
    [property: FromQuery(Name = "wood"), Description("false to leave out panels through the year, glue-ups and weights.")] string? Wood,
    [property: FromQuery(Name = "labels"), Description("false to leave the sheets of labels out.")] string? Labels,
    [property: FromQuery(Name = "labelSheet"), Description("plain-letter, letter-30 and the like; absent, plain paper.")] string? LabelSheet,
    [property: FromQuery(Name = "firstLabel"), Description("The first free label of a sheet that was begun.")] string? FirstLabel,
    [property: FromQuery(Name = "worksheet"), Description("A level from 1 to 6, to add a worksheet of each bench's own first door.")] string? Worksheet,
    [property: FromQuery(Name = "worksheetKey"), Description("true to end the packet with the key of the worksheets.")] string? WorksheetKey,
    [property: FromQuery(Name = "right"), Description("Moves labels right by so many millimetres.")] string? Right,
    [property: FromQuery(Name = "down"), Description("Moves labels down by so many millimetres.")] string? Down)
{
    private const double MostShift = 50;
    private const int MostLabels = 1200;

    public PacketOrder Read(QueryReader query) => new(query.Benches(Bench), query.Unit(Unit))
    {
        Paper = query.Word<PaperKind?>("paper", Paper, null, ("letter", PaperKind.Letter), ("a4", PaperKind.A4)),
        StorySticks = query.Flag("storySticks", StorySticks, false),
        PartDrawings = query.Flag("partDrawings", PartDrawings, true),
        Working = query.Flag("working", Working, true),
        Wood = query.Flag("wood", Wood, true),
        Labels = query.Flag("labels", Labels, true),
        Worksheets = query.Whole("worksheet", Worksheet, 0, 1, Levels.Inch.Count) is > 0 and var level ? new(level, query.Flag("worksheetKey", WorksheetKey, false)) : null,
        LabelSheet = query.Text("labelSheet", LabelSheet),
        LabelPrint = new LabelPrint(
            query.Millimetres("right", Right, MostShift), query.Millimetres("down", Down, MostShift), query.Whole("firstLabel", FirstLabel, 1, 1, MostLabels)),
    };
}
