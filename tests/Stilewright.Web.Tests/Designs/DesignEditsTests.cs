using Stilewright.Documents;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Features.Designs;
using Stilewright.Web.Tests.Standards;

namespace Stilewright.Web.Tests.Designs;

public sealed class DesignEditsTests
{
    public static TheoryData<Construction> Constructions => [.. Enum.GetValues<Construction>()];

    public static TheoryData<ArchFamily> Families => [.. Enum.GetValues<ArchFamily>()];

    public static TheoryData<PanelKind> Kinds => [.. Enum.GetValues<PanelKind>()];

    [Theory]
    [MemberData(nameof(Constructions))]
    public void EveryConstructionIsSoundAndSoIsTheWayBack(Construction construction)
    {
        foreach (var start in Loaded())
        {
            var made = DesignEdits.As(start, construction, ShippedStandards.Inch);
            Sound(made);
            Sound(DesignEdits.As(made, Construction.CopeAndStick, ShippedStandards.Inch));
        }
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void EveryFamilyOfArchIsSoundAfterEveryOther(ArchFamily family)
    {
        foreach (var unit in Enum.GetValues<LengthUnit>())
        {
            foreach (var before in Enum.GetValues<ArchFamily>())
            {
                var there = DesignEdits.WithFamily(null, before, unit)! with { AcrossPair = before == ArchFamily.Drawn ? PairCrown.MiddleOfPair : PairCrown.EachMeetingStile };
                if (before is ArchFamily.Cathedral)
                    there = there with { Shoulder = CourseStore.Entry("1"), ReverseToCrown = new(3, 2) };
                Sound(Loaded()[0] with { TopArch = DesignEdits.WithFamily(there, family, unit) });
            }
        }

        Assert.Null(DesignEdits.WithFamily(new(ArchFamily.Eyebrow, CourseStore.Entry("1")), null, LengthUnit.Inch));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void EveryKindOfPanelHasAStockThatCanBeIt(PanelKind kind)
    {
        foreach (var standard in new[] { ShippedStandards.Inch, ShippedStandards.Millimetre })
        {
            foreach (var before in Enum.GetValues<PanelKind>())
                Sound(Loaded()[0] with { Panel = DesignEdits.Filling(kind, DesignEdits.Filling(before, null, standard) with { Grain = before == PanelKind.Raised ? GrainDirection.Horizontal : null }, standard) });
        }
    }

    [Fact]
    public void FewerMidRailsTakeTheirMidStilesAndLightsWithThem()
    {
        var design = DesignEdits.WithMidRails(Loaded()[0], new(2, null, []));
        design = DesignEdits.WithMidStiles(design, 3, 2);
        design = design with { Lights = [new(1, new(PanelKind.Glass)), new(5, new(PanelKind.Glass))] };
        Assert.Equal((3, 5), (DesignEdits.Rows(design), DesignEdits.Lights(design)));
        Sound(design);

        var less = DesignEdits.WithMidRails(design, new(1, null, []));
        Assert.Empty(less.MidStiles);
        Assert.Equal([1], less.Lights.Select(light => light.Light));
        Sound(less);
    }

    [Fact]
    public void ADesignThatALeafUsesIsKeptAndTheWordsSayWhere()
    {
        var course = CourseStore.Course();
        var used = course.Designs[0].Id;
        Assert.Equal("It is used by 3 leaves of bench 1, 2, 3. Give those another design first.", DesignEdits.WhyKept(course, used));
        Assert.Null(DesignEdits.WhyKept(course, course.Designs[1].Id));
        Assert.NotNull(DesignEdits.WhyKept(course with { Designs = [course.Designs[1]], Projects = [] }, course.Designs[1].Id));
    }

    private static DoorDesign[] Loaded()
    {
        var designs = CourseStore.Course().Designs;
        return [.. designs, designs[0] with { MidRails = new(1, null, []), MidStiles = [new(1, 1)], TopArch = new(ArchFamily.Eyebrow, CourseStore.Entry("1")) }];
    }

    private static void Sound(DoorDesign design)
    {
        var course = CourseStore.Course() with { Designs = [design], Projects = [] };
        var read = DocumentReader.ReadCourse(DocumentWriter.Write(course));
        Assert.True(read is DocumentResult<Course>.Read, read is DocumentResult<Course>.Refused refused ? string.Join("; ", refused.Errors) : "");
    }
}
