using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Web.Drawings;
using Stilewright.Web.Features.Standard;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Tests.Standards;

/// <summary>The drawings of the house standard's constants.</summary>
public sealed class StandardFiguresTests
{
    private const double PaperTolerance = 1e-6;

    public static TheoryData<string> Keys => [.. Settings.All.Select(setting => setting.Key)];

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_constant_has_a_drawing_that_names_it(string key)
    {
        var setting = Settings.Find(key)!;
        foreach (var shipped in new[] { ShippedStandards.Inch, ShippedStandards.Millimetre })
        {
            var scene = Of(shipped, setting);
            Assert.True(scene is not null, $"{key} has no drawing: add it to StandardFigures.");
            Assert.Contains(Below(scene.Nodes), node => PathOf(node) == key);
            Assert.Equal(setting.Label, scene.Title, ignoreCase: true);
        }
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_drawing_follows_the_value(string key)
    {
        var setting = Settings.Find(key)!;
        var other = setting.Kind switch { SettingKind.Length => "7/16", SettingKind.Percent => "7 %", _ => ShippedStandards.Inch.WordsOf(setting).First(choice => choice != setting.Inch) };
        Assert.NotEqual(Svg(Of(ShippedStandards.Inch, setting)!), Svg(Of(With(setting, other), setting)!));
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_length_is_drawn_at_its_size_or_said_to_be_larger(string key)
    {
        var setting = Settings.Find(key)!;
        var scene = Of(ShippedStandards.Inch, setting)!;
        if (scene.Description.Contains("than it is", StringComparison.Ordinal))
            return;
        foreach (var mark in Below(scene.Nodes).OfType<DimensionMark>())
            Assert.Equal(mark.Scale.OnPaper(mark.Value), mark.From.DistanceTo(mark.To), PaperTolerance);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("40")]
    public void Nothing_that_may_be_typed_stops_a_drawing(string text)
    {
        foreach (var setting in Settings.All.Where(setting => setting.Kind == SettingKind.Length && (text != "0" || setting.MayBeZero)))
        {
            var standard = With(setting, text);
            foreach (var drawn in Settings.All)
                Assert.DoesNotContain("NaN", Svg(Of(standard, drawn)!), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void No_two_constants_show_the_same_picture()
    {
        foreach (var shipped in new[] { ShippedStandards.Inch, ShippedStandards.Millimetre })
        {
            // Without their titles, which differ in any case.
            var pictures = Settings.All.Select(setting => (setting.Key, Svg: Svg(Of(shipped, setting)! with { Title = "", Description = "" }))).ToList();
            Assert.All(pictures.GroupBy(each => each.Svg), same => Assert.True(same.Count() == 1, string.Join(" and ", same.Select(each => each.Key)) + " look alike"));
        }
    }

    [Fact]
    public void A_standard_without_cutters_still_shows_its_grooves()
    {
        var scene = Of(ShippedStandards.Inch with { Cutters = [] }, Settings.ClearanceAcross);
        Assert.NotNull(scene);
    }

    [Fact]
    public void A_cutter_set_shows_its_own_groove()
    {
        var set = ShippedStandards.Inch.Cutters[1];
        var marks = Below(new StandardFigures(ShippedStandards.Inch, LengthFormat.InchesTo32).Cutters(set).Nodes).OfType<DimensionMark>().ToList();
        var groove = Assert.Single(marks, mark => mark.Value == set.GrooveFromFace.Value);
        Assert.Equal(25.4 * 9 / 32 / groove.Scale.Reduction, groove.From.DistanceTo(groove.To), PaperTolerance);
    }

    private static Scene? Of(HouseStandard standard, Setting setting) =>
        new StandardFigures(standard, new(standard.Unit, new StandardInForce(standard).Format.FinestDenominator)).Of(setting);

    private static HouseStandard With(Setting setting, string text) =>
        (StandardFields.Value(setting, "") with { Words = ShippedStandards.Inch.WordsOf(setting) }).Read(text, new FieldText(LengthUnit.Inch, LengthFormat.InchesTo32)).Edit!(ShippedStandards.Inch);

    private static string Svg(Scene scene) => SvgWriter.Text(scene);

    private static IEnumerable<SceneNode> Below(IEnumerable<SceneNode> nodes) =>
        nodes.SelectMany(node => node is SceneGroup group ? [group, .. Below(group.Children)] : (IEnumerable<SceneNode>)[node]);

    private static string? PathOf(SceneNode node) => node switch
    {
        SceneGroup group => group.Path,
        DimensionMark mark => mark.Path,
        _ => null,
    };
}
