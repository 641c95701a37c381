using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Web.Desk;
using Stilewright.Web.Features.Size;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Desk;

/// <summary>Edits are pure: they give another course and leave what they do not find.</summary>
public sealed class CourseEditsTests
{
    [Fact]
    public void New_ids_are_those_that_nothing_in_the_course_has()
    {
        var course = Courses.WithBenches(30);
        var fresh = CourseIds.FreshFor(course);
        var known = course.Projects.SelectMany(project => new[] { project.Id, project.Pieces[0].Id, project.Pieces[0].Faces[0].Id }).ToList();
        Assert.Equal(90, known.Distinct().Count());
        var made = Enumerable.Range(0, 200).Select(_ => fresh.Next()).ToList();
        Assert.Equal(200, made.Distinct().Count());
        Assert.Empty(made.Intersect(known));
    }

    [Fact]
    public void A_frame_is_divided_extended_and_joined_again()
    {
        var course = Framed(out var face, out var opening);
        course = LayoutEdits.Divide(course, face, [], sideBySide: true, 2, LengthUnit.Inch);
        Assert.Equal(opening, Layout(course).Space.Columns!.Spaces[0].Opening!.Id);
        Assert.Null(Layout(course).Space.Columns!.Spaces[1].Opening);
        course = LayoutEdits.Divide(course, face, [1], sideBySide: false, 3, LengthUnit.Inch);
        Assert.Equal(3, Layout(course).Space.Columns!.Spaces[1].Rows!.Spaces.Count);
        course = LayoutEdits.Extend(course, face, [1]);
        Assert.Equal(4, Layout(course).Space.Columns!.Spaces[1].Rows!.Spaces.Count);
        course = LayoutEdits.Join(course, face, []);
        Assert.Equal(opening, Layout(course).Space.Opening!.Id);
        Assert.Null(LayoutEdits.Clear(course, face, []).Projects[0].Pieces[0].Faces[0].Layout!.Space.Opening);
    }

    [Fact]
    public void A_frame_that_is_there_is_not_replaced_and_an_unknown_face_changes_nothing()
    {
        var course = Framed(out var face, out _);
        Assert.Equal(Layout(course), Layout(LayoutEdits.WithFrame(course, face, LengthUnit.Millimetre)));
        Assert.Equal(Layout(course), Layout(LayoutEdits.Clear(course, "nowhere", [])));
        Assert.Equal(Layout(course).Space.Opening, Layout(LayoutEdits.Clear(course, face, [4, 2])).Space.Opening);
    }

    [Fact]
    public void A_frame_begins_in_the_unit_of_its_project()
    {
        var course = Courses.WithBenches(1, LengthUnit.Millimetre);
        var framed = Layout(LayoutEdits.WithFrame(course, course.Projects[0].Pieces[0].Faces[0].Id, LengthUnit.Millimetre));
        Assert.Equal(Length.FromMillimetres(38), framed.TopRail.Value);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Leaves_hang_on_both_sides_and_the_inner_ones_on_their_neighbour(int count)
    {
        var doors = Assert.IsType<DoorFilling>(FillingEdits.WithLeaves(Doors(), count));
        Assert.Equal(count, doors.Leaves.Count);
        Assert.Equal(HingeSide.Left, doors.Leaves[0].Hinge);
        if (count > 1)
            Assert.Equal(HingeSide.Right, doors.Leaves[^1].Hinge);
        Assert.All(doors.Leaves.Skip(1).SkipLast(1), leaf => Assert.NotNull(leaf.HingedTo));
        Assert.Null(doors.Leaves[0].HingedTo);
        Assert.Null(doors.Leaves[^1].HingedTo);
    }

    [Fact]
    public void Lapped_edges_go_with_the_pair()
    {
        var pair = Assert.IsType<DoorFilling>(FillingEdits.WithLeaves(Doors(), 2)) with { Lapped = true };
        Assert.Same(pair, FillingEdits.WithLeaves(pair, 2));
        Assert.False(Assert.IsType<DoorFilling>(FillingEdits.WithLeaves(pair, 3)).Lapped);
    }

    [Fact]
    public void Edges_are_of_an_overlay_alone()
    {
        var edged = FillingEdits.WithEdge(Doors(), Side.Left, new ToFrameEdge(null));
        Assert.IsType<ToFrameEdge>(FillingEdits.Edge(edged, Side.Left));
        Assert.Null(FillingEdits.Edge(edged, Side.Right));
        Assert.Null(FillingEdits.WithMount(edged, Mount.Inset).Edges);
        Assert.Null(FillingEdits.WithEdge(edged, Side.Left, null).Edges);
        // Doors or drawers: mount, design and edges stay.
        var drawers = Assert.IsType<DrawerFilling>(FillingEdits.As(edged, drawers: true));
        Assert.Equal(edged.Edges, drawers.Edges);
        Assert.Equal(edged.Edges, FillingEdits.As(drawers, drawers: false).Edges);
    }

    [Fact]
    public void Heights_of_drawer_fronts_go_with_their_number()
    {
        var drawers = Assert.IsType<DrawerFilling>(FillingEdits.As(Doors(), drawers: true));
        var three = Assert.IsType<DrawerFilling>(FillingEdits.WithFronts(drawers with { Heights = new ProportionalHeights([1, 2]), RemainderIn = 1 }, 3));
        Assert.Equal(3, three.Count);
        Assert.Null(three.Heights);
        Assert.Null(three.RemainderIn);
    }

    [Fact]
    public void The_field_of_an_edge_reads_and_writes_its_rule()
    {
        var course = Courses.Measured();
        var id = Courses.OpeningId(course);
        Assert.Null(FillingEdits.EdgeField(Doors(), id, Side.Top));
        course = FillingEdits.With(course, id, there => FillingEdits.WithEdge(there, Side.Top, new FixedOverlay(Courses.Entry("3/8")!.Value)));
        var field = FillingEdits.EdgeField(ProjectEdits.Opening(course, id)!.Filling, id, Side.Top)!;
        Assert.Equal("3/8", field.Get(course)!.Value.Text);
        Assert.Equal("1/2", field.Get(field.Set(course, Courses.Entry("1/2")))!.Value.Text);
        Assert.False(field.IsOptional);
    }

    private static DoorFilling Doors() => (DoorFilling)ProjectEdits.Openings(Courses.Measured()).First().Opening.Filling;

    private static FaceLayout Layout(Course course) => course.Projects[0].Pieces[0].Faces[0].Layout!;

    private static Course Framed(out string face, out string opening)
    {
        var course = Courses.WithBenches(1);
        face = course.Projects[0].Pieces[0].Faces[0].Id;
        course = LayoutEdits.Open(LayoutEdits.WithFrame(course, face, LengthUnit.Inch), face, [], CourseIds.FreshFor(course));
        opening = Courses.OpeningId(course);
        return course;
    }
}
