using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Features.Designs;
using Stilewright.Web.Tests.Standards;

namespace Stilewright.Web.Tests.Designs;

public sealed class SampleLeafTests
{
    [Fact]
    public void ADesignIsDrawnAtTheSizeAskedFor()
    {
        var sample = Of(Framed());
        Assert.Empty(sample.Errors);
        Assert.Contains(Marks(sample.Scene!), mark => mark.Value == Length.FromInches(15));
        Assert.Contains(Marks(sample.Scene!), mark => mark.Value == Length.FromInches(24));
    }

    [Fact]
    public void AnArchThatCannotBeDrawnIsAFinding()
    {
        // Flat shoulders of 6 on a span of 15 - 2 x 2 1/4 leave nothing for the curve.
        var tooWide = Framed() with { TopArch = new(ArchFamily.Cathedral, CourseStore.Entry("1 1/2"), CourseStore.Entry("6")) };
        Assert.Contains(Of(tooWide).Findings, finding => finding.Severity == Findings.Severity.CannotBuild);
        Assert.DoesNotContain(Of(Framed() with { TopArch = new(ArchFamily.Cathedral, CourseStore.Entry("1 1/2"), CourseStore.Entry("1/2")) }).Findings,
            finding => finding.Severity == Findings.Severity.CannotBuild);
    }

    [Fact]
    public void WhatMakesNoSenseIsToldAndNotDrawn()
    {
        var sample = Of(Framed() with { TopRail = CourseStore.Entry("0") });
        Assert.Null(sample.Scene);
        Assert.Contains("0 is too small", Assert.Single(sample.Errors), StringComparison.Ordinal);
    }

    [Fact]
    public void AnArchAcrossThePairIsShownOnAPair()
    {
        var sample = Of(Framed() with { TopArch = new(ArchFamily.Eyebrow, CourseStore.Entry("1 1/2"), AcrossPair: PairCrown.MiddleOfPair) });
        Assert.Empty(sample.Errors);
        Assert.Equal(2, Marks(sample.Scene!).Count(mark => mark.Value == Length.FromInches(15)));
        Assert.DoesNotContain(sample.Findings, finding => finding.Severity == Findings.Severity.CannotBuild);
    }

    private static DoorDesign Framed() => CourseStore.Course().Designs[0];

    private static SampleLeaf Of(DoorDesign design) => SampleLeaf.Of(
        CourseStore.Course(), design, ShippedStandards.Inch, SampleSize.Usual(LengthUnit.Inch), LengthFormat.InchesTo32);

    private static IEnumerable<DimensionMark> Marks(Scene scene) => In(scene.Nodes);

    private static IEnumerable<DimensionMark> In(IEnumerable<SceneNode> nodes) =>
        nodes.SelectMany(node => node is SceneGroup group ? In(group.Children) : node is DimensionMark mark ? [mark] : []);
}
