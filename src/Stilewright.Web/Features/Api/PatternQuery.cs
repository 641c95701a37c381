using System.ComponentModel;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.WebUtilities;
using Stilewright.Drawing.Patterns;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Web.Features.Patterns;

namespace Stilewright.Web.Features.Api;

/// <summary>Patterns as an address asks for them.</summary>
internal sealed record PatternQuery(
    [property: FromQuery(Name = "path"), Description("An arched leaf or part, by label such as 7.2L or 7.2L.TR or by path; absent, all of the benches.")] string? Path,
    [property: FromQuery(Name = "bench"), Description("Without a path: numbers of benches with commas between; absent, all of the course.")] string? Bench,
    [property: FromQuery(Name = "paper"), Description("letter, legal, a4 or a3; absent, letter for inches and a4 for millimetres.")] string? Paper,
    [property: FromQuery(Name = "roll"), Description("The width of a roll to print on, in place of paper.")] string? Roll,
    [property: FromQuery(Name = "unit"), Description("in or mm; absent, the unit the project is written in.")] string? Unit,
    [property: FromQuery(Name = "feed"), Description("short or long: the edge of the paper that goes in first; absent, the one that was measured last.")] string? Feed,
    [property: FromQuery(Name = "rule"), Description("What the rules of a print say that was measured since, such as 6 in or 150 mm.")] string? Rule,
    [property: FromQuery(Name = "across"), Description("How long the rule along the shorter edge came out.")] string? Across,
    [property: FromQuery(Name = "along"), Description("How long the rule along the longer edge came out.")] string? Along,
    [property: FromQuery(Name = "corrected"), Description("false to leave out what the shop's printer is remembered to do; drawings never have it.")] string? Corrected,
    [property: FromQuery(Name = "bearing"), Description("The radius of a bearing that follows the pattern.")] string? Bearing,
    [property: FromQuery(Name = "cutter"), Description("The radius of the cutter under that bearing.")] string? Cutter,
    [property: FromQuery(Name = "whole"), Description("true to draw the pattern of a tall panel whole.")] string? Whole,
    [property: FromQuery(Name = "onePattern"), Description("true to tell how far the rail's own pattern is set down on the panel.")] string? OnePattern)
{
    // Margins, the band of the rule and room to print on.
    private static readonly Length NarrowestRoll = Length.FromMillimetres(100);

    public PatternOrder Read(QueryReader query)
    {
        var unit = query.Unit(Unit);
        // A number without a unit is in the unit shown; lengths with one are as they say.
        var own = unit ?? LengthUnit.Inch;
        var place = query.Text("path", Path);
        return new(place, unit)
        {
            Benches = query.Benches(Bench),
            Paper = PaperOf(query, own),
            Feed = query.Word<PaperFeed?>("feed", Feed, null, ("short", PaperFeed.ShortEdge), ("long", PaperFeed.LongEdge)),
            Measured = MeasuredOf(query, own),
            IsCorrected = query.Flag("corrected", Corrected, true),
            Guide = GuideOf(query, own),
            Whole = query.Flag("whole", Whole, false),
            OnePattern = query.Flag("onePattern", OnePattern, false),
        };
    }

    /// <summary>The address that asks for the same.</summary>
    /// <param name="address">Without its query.</param>
    public string AddressOf(string address) => QueryHelpers.AddQueryString(address, new (string Name, string? Value)[]
    {
        ("path", Path), ("bench", Bench), ("paper", Paper), ("roll", Roll), ("unit", Unit), ("feed", Feed), ("rule", Rule), ("across", Across), ("along", Along), ("corrected", Corrected),
        ("bearing", Bearing), ("cutter", Cutter), ("whole", Whole), ("onePattern", OnePattern),
    }.Where(each => !string.IsNullOrWhiteSpace(each.Value)).Select(each => KeyValuePair.Create(each.Name, each.Value)));

    private PatternPaper? PaperOf(QueryReader query, LengthUnit unit)
    {
        var sheet = query.Word("paper", Paper, (PatternPaper?)null, [.. PatternPaper.All.Select(each => (each.Name, (PatternPaper?)each))]);
        if (query.Length("roll", Roll, unit) is not { } width)
            return sheet;
        if (sheet is not null)
            query.Refuse("roll", "it is given together with paper", "give one of the two");
        else if (width.Value < NarrowestRoll)
            query.Refuse("roll", "margins and rules have no room on it", "give a width of 100 mm or more");
        else
            return PatternPaper.Roll(width.Value.Millimetres.ToDouble());
        return null;
    }

    private PrintMeasurement? MeasuredOf(QueryReader query, LengthUnit unit)
    {
        var (rule, across, along) = (query.Length("rule", Rule, unit), query.Length("across", Across, unit), query.Length("along", Along, unit));
        if (!query.IsSound || (rule, across, along) is (null, null, null))
            return null;
        if ((rule, across, along) is not ({ } nominal, { } shorter, { } longer))
        {
            query.Refuse("rule", "rule, across and along go together", "give all three, or none of them");
            return null;
        }

        var print = new PrintMeasurement(Feed == "long" ? PaperFeed.LongEdge : PaperFeed.ShortEdge, nominal, shorter, longer);
        if (nominal.Value.IsPositive && print.IsPlausible)
            return print;
        query.Refuse("rule", "a measured rule is more than 2 % off: the page was fitted to the paper", "print at 100 % and measure again");
        return null;
    }

    private GuideBearing? GuideOf(QueryReader query, LengthUnit unit)
    {
        var (bearing, cutter) = (query.Length("bearing", Bearing, unit), query.Length("cutter", Cutter, unit));
        if (bearing is null != cutter is null && query.IsSound)
            query.Refuse("bearing", "bearing and cutter go together", "give both radii: both decide where the pattern lies");
        return bearing is { } rides && cutter is { } cuts ? new(rides.Value, cuts.Value) : null;
    }
}
