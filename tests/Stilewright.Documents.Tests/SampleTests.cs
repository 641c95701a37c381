using System.Reflection;
using System.Text.Json;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Documents.Tests;

public class SampleTests
{
    private static readonly byte[] Sample = File.ReadAllBytes(Path.Combine(Files.Root, "samples", "evening-course.json"));

    // What a newcomer can copy from: every word that a file may use for these stands in the sample, or is its default.
    [Theory]
    [InlineData(typeof(Construction))]
    [InlineData(typeof(Mount), Mount.Overlay)]
    [InlineData(typeof(HingeSide))]
    [InlineData(typeof(PanelKind))]
    [InlineData(typeof(ArchFamily), ArchFamily.Drawn)]
    [InlineData(typeof(MeasuredTo), MeasuredTo.Centre)]
    [InlineData(typeof(OutOfSquareFit), OutOfSquareFit.Upright)]
    [InlineData(typeof(FaceSide), FaceSide.RightEnd)]
    public void Sample_uses_every_word(Type words, params object[] defaults)
    {
        var texts = Texts(JsonDocument.Parse(Sample).RootElement).ToHashSet(StringComparer.Ordinal);
        var missing = words.GetFields(BindingFlags.Public | BindingFlags.Static)
            .Where(field => !defaults.Contains(field.GetValue(null)))
            .Select(field => field.GetCustomAttribute<SpelledAttribute>()?.Word ?? JsonNamingPolicy.KebabCaseLower.ConvertName(field.Name))
            .Where(word => !texts.Contains(word));
        Assert.Empty(missing);
    }

    [Theory]
    [InlineData(typeof(Filling))]
    [InlineData(typeof(LooseFront))]
    [InlineData(typeof(BankHeights))]
    [InlineData(typeof(EdgeRule))]
    [InlineData(typeof(Beyond), "wall")]
    [InlineData(typeof(RunItem))]
    public void Sample_uses_every_kind(Type cases, params string[] shownElsewhere)
    {
        var texts = Texts(JsonDocument.Parse(Sample).RootElement).ToHashSet(StringComparer.Ordinal);
        Assert.All(cases.GetCustomAttributes<CaseAttribute>().Where(each => !shownElsewhere.Contains(each.Kind)), each => Assert.Contains(each.Kind, texts));
    }

    [Fact]
    public void Sample_has_eight_benches_and_all_its_leaves_can_be_built()
    {
        var course = Assert.IsType<DocumentResult<Course>.Read>(DocumentReader.ReadCourse(Sample)).Document;
        Assert.Empty(References.Check(course, ShippedStandards.Inch));
        var breakdown = Stilewright.Doors.Breakdown.Of(course, ShippedStandards.Inch);
        Assert.Equal([1, 2, 3, 4, 5, 6, 7, 8], breakdown.Projects.Select(project => project.Project.Bench));
        Assert.All(breakdown.Leaves, leaf => Assert.False(leaf.IsWithheld, leaf.Path));
        Assert.All(breakdown.Leaves.SelectMany(leaf => leaf.CheckSums), sum => Assert.True(sum.Holds));
    }

    private static IEnumerable<string> Texts(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(field => Texts(field.Value)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Texts),
        JsonValueKind.String => [element.GetString()!],
        _ => [],
    };
}
