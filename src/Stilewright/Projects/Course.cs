using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Projects;

[Meaning("A class, or a shop's job: the projects at its benches and the door designs they share")]
public sealed record Course(
    [Id] string Id,
    [Meaning("What the course is called")] string Name,
    [Meaning("The house standard: inch or millimetre as shipped, or the name of a standard file beside this one"), Label("house standard")] string Standard,
    [Meaning("The unit of numbers that name none")] LengthUnit Unit,
    IReadOnlyList<DoorDesign> Designs,
    IReadOnlyList<Project> Projects,
    [Meaning("Settings that differ from the standard in this course"), Label("overrides", IsSilent = true)] SettingValues Overrides);

[Meaning("What one maker builds at one bench")]
public sealed record Project(
    [Id] string Id,
    [Meaning("The number of the bench"), Between(1, 999), UniqueWithin(typeof(Course), "bench")] int Bench,
    [Meaning("What is being built")] string Name,
    IReadOnlyList<Piece> Pieces,
    [Meaning("The unit of numbers that name none, where it differs from the course's"), Label("unit", Absent = "the course's")] LengthUnit? Unit,
    [Meaning("Door designs of this project alone")] IReadOnlyList<DoorDesign> Designs,
    [Meaning("Faces that stand side by side")] IReadOnlyList<Run> Runs,
    [Meaning("Hazards that the instructor accepts, each with a reason"), Label("accepted hazards")] IReadOnlyList<AcceptedHazard> Accepted,
    [Meaning("Settings that differ in this project"), Label("overrides", IsSilent = true)] SettingValues Overrides);

[Meaning("A hazard that the instructor has looked at and accepts; it is printed all the same")]
public sealed record AcceptedHazard(
    [Meaning("The code of the rule")] string Rule,
    [Meaning("The path of the part or leaf"), BeginsWithId] string Place,
    [Meaning("Why it is accepted, and how the work will be held")] string Reason);

[Meaning("One cabinet or other piece of furniture")]
public sealed record Piece(
    [Id] string Id,
    [Meaning("What it is called")] string Name,
    [Between(1)] IReadOnlyList<Face> Faces);

public enum FaceSide
{
    Front,
    Back,
    LeftEnd,
    RightEnd,
}

[Meaning("One side of a piece that carries fronts")]
public sealed record Face(
    [Id] string Id,
    FaceSide Side,
    [Meaning("The face frame, divided into spaces; absent where openings are only measured"), Label("face frame")] FaceLayout? Layout,
    [Meaning("Openings measured without a layout")] IReadOnlyList<Opening> Openings,
    [Meaning("Fronts that close no opening: replacements, appliance panels, applied ends")] IReadOnlyList<LooseFront> Fronts);

[Meaning("Faces from left to right as they stand, with fillers between them")]
public sealed record Run(
    [Id] string Id,
    [Between(2), Label("faces and fillers")] IReadOnlyList<RunItem> Items);

[Meaning("A face or a filler of a run"), Label("face or filler")]
[Case("face", typeof(RunFace))]
[Case("filler", typeof(RunFiller))]
public abstract record RunItem;

[Label("face")]
public sealed record RunFace([RefersTo(typeof(Face))] string Face) : RunItem;

[Label("filler")]
public sealed record RunFiller([Meaning("Visible width"), Between(0, 120, Above = true)] LengthEntry Width) : RunItem;
