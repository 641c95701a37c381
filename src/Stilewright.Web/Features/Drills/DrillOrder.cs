using System.Globalization;
using Microsoft.AspNetCore.Http.Extensions;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Worksheets;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Teaching.Drills;
using Stilewright.Web.Desk;
using Stilewright.Web.Features.Printing;
using Stilewright.Web.Features.Worksheets;

namespace Stilewright.Web.Features.Drills;

/// <summary>Which drills are wanted. An address holds all of it.</summary>
/// <param name="Finest">The finest fraction of an inch; in millimetres 1 for whole ones and 2 for halves.</param>
/// <param name="Kinds">At least one, each once.</param>
public sealed record DrillOrder(LengthUnit Unit, int Finest, IReadOnlyList<DrillKind> Kinds, ulong Seed)
{
    /// <summary>Items of a drill on the screen.</summary>
    public const int OnScreen = 10;

    private const int EachOnPaper = 4;

    public static int UsualFinest(LengthUnit unit) => unit == LengthUnit.Inch ? 16 : 1;

    /// <summary>An order as an address has it; what is not there or cannot be read is usual.</summary>
    public static DrillOrder Read(LengthUnit unit, int? finest, string? kinds, string? seed, ulong otherwise) => new(
        unit, finest is { } step && DrillSettings.FinestOf(unit).Contains(step) ? step : UsualFinest(unit),
        QueryWords.Read<DrillKind>(kinds) is { Count: > 0 } some ? some : Enum.GetValues<DrillKind>(), Seeds.Read(seed) ?? otherwise);

    /// <summary>The query that repeats it, beginning with a question mark.</summary>
    public string Query
    {
        get
        {
            QueryBuilder query = new()
            {
                { "finest", Finest.ToString(CultureInfo.InvariantCulture) }, { "unit", Unit == LengthUnit.Inch ? "in" : "mm" }, { "seed", Seed.ToString(CultureInfo.InvariantCulture) },
            };
            if (Kinds.Count < Enum.GetValues<DrillKind>().Length)
                query.Add("kinds", QueryWords.List(Kinds));
            return query.ToString();
        }
    }

    public string AddressIn(string courseId) => $"/courses/{Uri.EscapeDataString(courseId)}/drills{Query}";

    public string AddressFor(string courseId, int bench, bool oneByOne) =>
        string.Create(CultureInfo.InvariantCulture, $"/courses/{Uri.EscapeDataString(courseId)}/drills/{bench}{Query}{(oneByOne ? "" : "&way=sheet")}");

    /// <summary>Ten items for the screen, kinds in turn.</summary>
    public Drill ForScreen(int bench) => DrillMaker.InTurn(new(Unit, Finest, Kinds), Seed, bench, OnScreen);

    /// <summary>The print of some benches; none where there is no bench.</summary>
    /// <param name="now">In the time of the place.</param>
    public (PaperPrint? Print, IReadOnlyList<string> Missing) Print(OpenCourse course, IReadOnlyList<int> benches, PaperKind paper, TeachingContents contents, DateTimeOffset now)
    {
        if (benches.Count == 0)
            return (null, ["No bench is chosen."]);
        DrillSettings settings = new(Unit, Finest, Kinds, EachOnPaper);
        var print = DrillPrint.Of([.. benches.Select(bench => DrillMaker.Of(settings, Seed, bench))], paper == PaperKind.A4 ? Paper.A4 : Paper.Letter, contents, ProgramVersion.Text, now);
        return (new($"Drills {DrillWords.Fineness(settings)}", $"{course.Course.Id}-drills.pdf", print.Facts, print.Pages, null), []);
    }
}
