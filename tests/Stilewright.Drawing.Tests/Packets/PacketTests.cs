using System.Collections.Concurrent;
using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Testing;
using Stilewright.Wood;
using Stilewright.Wording;

namespace Stilewright.Drawing.Tests.Packets;

public sealed class PacketTests
{
    private const double Shrunk = 0.05;

    /// <summary>The sample, courses by chance in both units, and every course on both papers.</summary>
    public static TheoryData<int, string> Courses
    {
        get
        {
            TheoryData<int, string> data = [];
            for (var seed = 0; seed < 8; seed++)
                data.Add(seed, seed % 2 == 0 ? "Letter" : "A4");
            data.Add(-1, "Letter");
            data.Add(-1, "A4");
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Courses))]
    public void No_two_texts_overlap_and_nothing_leaves_the_margins(int seed, string paperName)
    {
        var paper = PaperOf(paperName);
        var printed = paper.Printed.Grown(LineStyle.Heavy.WidthMillimetres);
        foreach (var sheet in Sheets(seed, paper))
        {
            PaperBox[] texts = [.. Letterings(sheet.Scene).Select(text => text.Box)];
            Assert.Equal(paper.WidthMillimetres, sheet.Scene.WidthMillimetres);
            Assert.Equal(paper.HeightMillimetres, sheet.Scene.HeightMillimetres);
            Assert.All(texts.Concat(Outlines(sheet.Scene)), box => Assert.True(printed.Holds(box), $"{box} leaves the print of {sheet.Scene.Title}, {sheet.Scene.Description}"));
            (PaperBox Box, string Text)[] named = [.. Letterings(sheet.Scene).Where(text => text.Line.Text.Length > 0).Select(text => (text.Box.Grown(-Shrunk), text.Line.Text))];
            Array.Sort(named, (one, other) => one.Box.Top.CompareTo(other.Box.Top));
            for (var i = 0; i < named.Length; i++)
            {
                for (var j = i + 1; j < named.Length && named[j].Box.Top < named[i].Box.Bottom; j++)
                    Assert.False(named[i].Box.Overlaps(named[j].Box), $"\"{named[i].Text}\" and \"{named[j].Text}\" overlap on {sheet.Scene.Title}, {sheet.Scene.Description}");
            }
        }
    }

    [Fact]
    public void Worksheets_come_after_their_bench_and_their_key_ends_the_packet()
    {
        var breakdown = Work(-1);
        var facts = new PacketFacts(Fingerprint.Of(breakdown), "0.1.0", new(2026, 11, 28));
        string[] Titles(PacketWorksheets? worksheets) =>
            [.. Packet.OfProjects(breakdown, breakdown.Projects, facts, new(Paper.Letter) { Worksheets = worksheets }).Select(sheet => sheet.Scene.Title)];
        var (plain, without, with) = (Titles(null), Titles(new(2)), Titles(new(2, HasKey: true)));
        var own = without.Where(title => title.Contains(", worksheet,", StringComparison.Ordinal)).ToList();
        Assert.Equal(breakdown.Projects.Select(project => FormattableString.Invariant($"Bench {project.Project.Bench}")), own.Select(title => title.Split(',')[0]).Distinct());
        Assert.Equal(plain, without.Where(title => !own.Contains(title)));
        Assert.Equal(without, with.Take(without.Length));
        Assert.NotEmpty(with.Skip(without.Length));
        Assert.All(with.Skip(without.Length), title => Assert.EndsWith(": key", title, StringComparison.Ordinal));
        for (var i = 1; i < without.Length; i++)
            Assert.True(!own.Contains(without[i]) || without[i - 1].StartsWith(without[i].Split(',')[0], StringComparison.Ordinal), without[i]);
    }

    [Theory]
    [MemberData(nameof(Courses))]
    public void Every_part_of_a_leaf_is_printed_with_its_three_sizes_and_withheld_leaves_have_none(int seed, string paperName)
    {
        var breakdown = Work(seed);
        foreach (var project in breakdown.Projects)
        {
            var words = new TradeWords(FormatOf(breakdown, project));
            var sheets = Packet.OfProject(breakdown, project, FactsOf(breakdown), new(PaperOf(paperName))).ToList();
            foreach (var leaf in project.Fronts.SelectMany(front => front.Leaves))
            {
                var text = TextOf(sheets.Where(sheet => sheet.Scene.Title.Contains($": leaf {leaf.Label},", StringComparison.Ordinal)));
                Assert.NotEmpty(text);
                if (leaf.IsWithheld)
                {
                    Assert.Contains(Plain(Remarks.Withheld), text, StringComparison.Ordinal);
                    Assert.DoesNotContain("intotheclamps", text, StringComparison.Ordinal);
                    continue;
                }

                foreach (var part in leaf.Parts)
                {
                    Assert.Contains(Plain(part.Label), text, StringComparison.Ordinal);
                    Assert.Contains(Plain(words.Of(part.Finished)), text, StringComparison.Ordinal);
                    Assert.Contains(Plain(words.Of(part.GlueUp)), text, StringComparison.Ordinal);
                    Assert.Contains(Plain(words.Of(part.Rough)), text, StringComparison.Ordinal);
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Courses))]
    public void Panels_glue_ups_and_weights_are_printed_where_there_are_any(int seed, string paperName)
    {
        var breakdown = Work(seed);
        foreach (var project in breakdown.Projects)
        {
            SizedLeaf[] leaves = [.. project.Fronts.SelectMany(front => front.Leaves)];
            List<Sheet> Printed(bool wood) => [.. Packet.OfProject(breakdown, project, FactsOf(breakdown), new(PaperOf(paperName)) { Wood = wood })];
            bool IsWood(Sheet sheet) => new[] { ": panels through the year", ": glue-ups and weights", ": weights" }.Any(end => sheet.Scene.Title.EndsWith(end, StringComparison.Ordinal));
            var (with, without) = (Printed(true), Printed(false));
            Assert.Equal(without.Select(sheet => sheet.Scene.Title), with.Where(sheet => !IsWood(sheet)).Select(sheet => sheet.Scene.Title));
            var text = TextOf(with.Where(IsWood));
            var words = new TradeWords(FormatOf(breakdown, project));
            foreach (var fit in leaves.SelectMany(PanelFit.Of))
            {
                Assert.Contains(Plain(fit.Panel.Label), text, StringComparison.Ordinal);
                Assert.Contains(Plain(WoodWords.Range(fit, words)), text, StringComparison.Ordinal);
                Assert.Contains(Plain(WoodWords.MovementSource(fit.Wood.Species)), text, StringComparison.Ordinal);
            }

            foreach (var alike in AlikeGlueUps.Of(leaves))
            {
                if (GlueUp.Of(alike.Part, alike.Standard, GlueUpOrder.Usual) is not GlueUpResult.Planned { GlueUp: { Staves.Count: > 1 } glueUp })
                    continue;
                Assert.Contains(Plain(words.Of(glueUp.Staves[0].Rough)), text, StringComparison.Ordinal);
                Assert.Contains(Plain("29 CFR 1910.213"), text, StringComparison.Ordinal);
                Assert.All(GlueUpCaution.Of(glueUp, alike.Standard), caution => Assert.Contains(Plain(FindingText.Say(caution.Problem, words.Format)), text, StringComparison.Ordinal));
            }

            var total = WeightTotal.Of(leaves);
            if (!total.Pounds.IsZero)
                Assert.Contains(Plain(WoodWords.Pounds(total.Pounds)), text, StringComparison.Ordinal);
            if (!leaves.Any(leaf => leaf.Parts.Count > 0))
                Assert.DoesNotContain(with, IsWood);
        }

        // What all leaves weigh stands on the overview.
        var all = WeightTotal.Of(breakdown.Leaves);
        if (!all.Pounds.IsZero)
            Assert.Contains(Plain($"All leaves: {TradeWords.Count(all.Leaves, "leaf", "leaves")}, {WoodWords.Pounds(all.Pounds)}"), TextOf(Sheets(seed, PaperOf(paperName)).Where(sheet => sheet.Scene.Title.EndsWith(": overview", StringComparison.Ordinal))), StringComparison.Ordinal);
    }

    [Fact]
    public void Some_leaf_of_the_tested_courses_is_withheld() =>
        Assert.Contains(Enumerable.Range(0, 8).SelectMany(seed => Work(seed).Leaves), leaf => leaf.IsWithheld);

    [Theory]
    [MemberData(nameof(Courses))]
    public void Every_finding_is_printed_with_severity_advice_and_source(int seed, string paperName)
    {
        var breakdown = Work(seed);
        var all = Sheets(seed, PaperOf(paperName));
        var overview = TextOf(all.Where(sheet => sheet.Scene.Title.StartsWith($"{breakdown.Course.Name}: overview", StringComparison.Ordinal)));
        var format = FormatOf(breakdown, null);
        foreach (var finding in breakdown.Findings)
        {
            Assert.Contains(Plain($"{FindingWords.Word(finding)}:"), overview, StringComparison.Ordinal);
            Assert.Contains(Plain(finding.ProblemText(format)), overview, StringComparison.Ordinal);
            Assert.Contains(Plain($"Do: {finding.AdviceText(format)}"), overview, StringComparison.Ordinal);
            Assert.Contains(Plain($"source: {finding.Rule.Source}"), overview, StringComparison.Ordinal);
            if (finding.AcceptedBecause is { } reason)
                Assert.Contains(Plain(reason), overview, StringComparison.Ordinal);
        }

        foreach (var project in breakdown.Projects)
        {
            var own = TextOf(all.Where(sheet => sheet.Scene.Title.StartsWith($"Bench {project.Project.Bench},", StringComparison.Ordinal)));
            foreach (var finding in breakdown.Findings.Where(finding => ProjectPaths.Holds(project, finding)))
                Assert.Contains(Plain($"Do: {finding.AdviceText(FormatOf(breakdown, project))}"), own, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Courses))]
    public void Sheets_are_counted_within_their_section(int seed, string paperName)
    {
        var sections = Sheets(seed, PaperOf(paperName)).GroupBy(sheet => sheet.Scene.Title.Split(':')[0]);
        foreach (var section in sections)
        {
            Sheet[] sheets = [.. section];
            for (var i = 0; i < sheets.Length; i++)
                Assert.Contains(Letterings(sheets[i].Scene), text => text.Line.Text == $"sheet {i + 1} of {sheets.Length}");
        }
    }

    [Fact]
    public void Every_setting_of_the_standard_is_printed_with_its_meaning_and_source()
    {
        var text = TextOf(Sheets(-1, Paper.Letter).Where(sheet => sheet.Scene.Title.EndsWith(": standard in force", StringComparison.Ordinal)));
        Assert.All(Settings.All, setting =>
        {
            Assert.Contains(Plain(setting.Label), text, StringComparison.Ordinal);
            Assert.Contains(Plain(setting.Meaning), text, StringComparison.Ordinal);
            Assert.Contains(Plain($"{setting.Key};"), text, StringComparison.Ordinal);
            Assert.Contains(Plain($"source: {setting.Source.Text}"), text, StringComparison.Ordinal);
        });
        Assert.All(ShippedStandards.Inch.Cutters, cutters => Assert.Contains(Plain(cutters.Name), text, StringComparison.Ordinal));
        Assert.All(ShippedStandards.Inch.Machines, machine => Assert.Contains(Plain(machine.Name), text, StringComparison.Ordinal));
        Assert.All(ShippedStandards.Inch.Stocks, stock => Assert.Contains(Plain(stock.Name), text, StringComparison.Ordinal));
    }

    [Fact]
    public void Hard_patterns_of_the_rack_are_printed_with_the_standard()
    {
        LengthEntry In(string text) => new(text, LengthReader.ReadOwn(text, LengthUnit.Inch));
        var rack = ShippedStandards.Inch with
        {
            Patterns = [new("low", "Low crown of the rack", ArchFamily.Cathedral, In("1 3/4"), In("8"), In("13 5/8"), In("3/4"), Source: "birch plywood")],
        };
        var text = TextOf(Sheets(Breakdown.Of(Sample(), rack), Paper.Letter).Where(sheet => sheet.Scene.Title.EndsWith(": standard in force", StringComparison.Ordinal)));
        Assert.All(["Hard patterns", "Low crown of the rack", "cathedral", "13 5/8", "source: birch plywood"], words => Assert.Contains(Plain(words), text, StringComparison.Ordinal));
    }

    [Fact]
    public void What_cannot_be_built_heads_the_packet_and_machines_are_warned_of_on_every_sheet_of_work()
    {
        var breakdown = Enumerable.Range(0, 8).Select(Work).First(each => each.Findings.Any(finding => finding.Severity == Severity.CannotBuild));
        var sheets = Packet.OfCourse(breakdown, FactsOf(breakdown), new(Paper.Letter)).ToList();
        string[] first = [.. Letterings(sheets[0].Scene).Select(text => text.Line.Text)];
        Assert.StartsWith("CANNOT BE BUILT", first.First(text => FindingHeads.Any(text.StartsWith)), StringComparison.Ordinal);
        Assert.All(sheets.Where(sheet => sheet.Scene.Title.Contains(": leaf ", StringComparison.Ordinal)), sheet =>
            Assert.Contains(Letterings(sheet.Scene), text => text.Line.Text == Remarks.Machines));
    }

    [Fact]
    public void Sections_are_laid_out_only_when_they_are_asked_for()
    {
        var breakdown = Work(-1);
        var first = Packet.OfCourse(breakdown, FactsOf(breakdown), new(Paper.A4)).First();
        Assert.Equal($"{breakdown.Course.Name}: overview", first.Scene.Title);
        Assert.Contains(first.Bookmarks, mark => mark.Level == 1 && mark.Title == breakdown.Course.Name);
    }

    [Fact]
    public void Very_long_names_stay_within_the_print()
    {
        var course = Sample() with { Name = string.Join(' ', Enumerable.Repeat("unabbreviated", 40)) };
        var project = course.Projects[0] with { Name = new string('W', 300) };
        var breakdown = Breakdown.Of(course with { Projects = [project] }, ShippedStandards.Inch);
        var printed = Paper.Letter.Printed.Grown(LineStyle.Heavy.WidthMillimetres);
        Assert.All(Packet.OfCourse(breakdown, FactsOf(breakdown), new(Paper.Letter, StorySticks: true)), sheet =>
            Assert.All(Letterings(sheet.Scene), text => Assert.True(printed.Holds(text.Box), text.Line.Text)));
    }

    private static readonly string[] FindingHeads = ["CANNOT BE BUILT", "HAZARD", "Caution", "Note:"];

    private static IEnumerable<Lettering> Letterings(Scene scene) => scene.Drawn.SelectMany(drawn => drawn.Node switch
    {
        Lettering text => [text with { At = text.At + drawn.At }],
        DimensionMark mark => [mark.Text with { At = mark.Text.At + drawn.At }],
        _ => Array.Empty<Lettering>(),
    });

    private static IEnumerable<PaperBox> Outlines(Scene scene) => scene.Drawn.SelectMany(drawn => drawn.Node switch
    {
        Shape shape => [shape.Outline.Bounds.Shifted(drawn.At.X, drawn.At.Y)],
        DimensionMark mark => mark.Strokes.Select(stroke => stroke.Bounds.Shifted(drawn.At.X, drawn.At.Y)),
        _ => Array.Empty<PaperBox>(),
    });

    // Lines are broken at spaces, so texts are compared without any.
    private static string Plain(string text) => text.Replace(" ", "", StringComparison.Ordinal).Replace("\n", "", StringComparison.Ordinal);

    // Words of one cell stand below one another, so lines are joined in the order in which they were laid.
    private static string TextOf(IEnumerable<Sheet> sheets) =>
        Plain(string.Concat(sheets.SelectMany(sheet => Letterings(sheet.Scene)).Select(text => text.Line.Text)));

    private static Paper PaperOf(string name) => name == "A4" ? Paper.A4 : Paper.Letter;

    private static PacketFacts FactsOf(Breakdown breakdown) => new(Fingerprint.Of(breakdown), "0.1.0", new(2026, 11, 25));

    // Laying a packet out is what takes the time of these tests.
    private static readonly ConcurrentDictionary<(int Seed, string Paper), List<Sheet>> Laid = [];
    private static readonly ConcurrentDictionary<int, Breakdown> Worked = [];

    private static List<Sheet> Sheets(int seed, Paper paper) => Laid.GetOrAdd((seed, paper.Name), _ => Sheets(Work(seed), paper));

    private static List<Sheet> Sheets(Breakdown breakdown, Paper paper) => [.. Packet.OfCourse(breakdown, FactsOf(breakdown), new(paper))];

    private static Breakdown Work(int seed) => Worked.GetOrAdd(seed, static seed =>
    {
        var course = seed < 0 ? Sample() : RandomCourse.Of(seed);
        return Breakdown.Of(course, ShippedStandards.For(course.Unit));
    });

    private static Course Sample()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Stilewright.slnx")))
            folder = Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("The repository is not above the tests.");
        var text = File.ReadAllText(Path.Combine(folder, "samples", "evening-course.json"));
        return ((DocumentResult<Course>.Read)DocumentReader.ReadCourse(text)).Document;
    }

    private static LengthFormat FormatOf(Breakdown breakdown, ProjectBreakdown? project) =>
        new(project?.Project.Unit ?? breakdown.Course.Unit, new StandardInForce(breakdown.Standard).Format.FinestDenominator);
}
