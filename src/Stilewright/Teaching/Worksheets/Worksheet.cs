using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Wording;

namespace Stilewright.Teaching.Worksheets;

/// <summary>A problem with blanks in its worked lines: the sizes of one door, from its opening.</summary>
/// <remarks>Lines, figures and key are read off the worked quantities of the door; no formula is written here a second time.</remarks>
public sealed partial class Worksheet
{
    internal Worksheet(
        Level level, ulong? seed, Course course, ProjectBreakdown project, SizedFront front, SizedLeaf leaf, LengthFormat format,
        IReadOnlyList<GivenFigure> givens, IReadOnlyList<WorksheetLine> lines)
    {
        Level = level;
        Seed = seed;
        Course = course;
        Project = project;
        Front = front;
        Leaf = leaf;
        Format = format;
        Givens = givens;
        Lines = lines;
    }

    public Level Level { get; }

    /// <summary>The seed that repeats the problem; null for a door of a project.</summary>
    public ulong? Seed { get; }

    public Course Course { get; }
    public ProjectBreakdown Project { get; }
    public SizedFront Front { get; }
    public SizedLeaf Leaf { get; }
    public LengthFormat Format { get; }
    public int Bench => Project.Project.Bench;

    /// <summary>What the lines take that was entered, looked up or found before: each once, in the order in which it is needed.</summary>
    public IReadOnlyList<GivenFigure> Givens { get; }

    public IReadOnlyList<WorksheetLine> Lines { get; }
    public IEnumerable<Blank> Blanks => Lines.SelectMany(line => line.Blanks);
    public int Marks => Lines.Sum(line => line.Marks);

    /// <summary>The problem in one or two sentences.</summary>
    public string Problem
    {
        get
        {
            var figures = new TradeWords(Format);
            var leaves = Front.Leaves.Count;
            var what = (leaves, Leaf.IsDrawerFront) switch
            {
                (1, true) => "One drawer front closes",
                (_, true) => $"A bank of {leaves} drawer fronts closes",
                (1, _) => "One door closes",
                (2, _) => "A pair of doors closes",
                _ => $"{leaves} doors close",
            };
            var mount = (Front.Mount, leaves) switch
            {
                (Mount.Overlay, 1) => "It laps over the frame.",
                (Mount.Overlay, _) => "They lap over the frame.",
                (Mount.Inset, 1) => "It sits inside the opening.",
                (Mount.Inset, _) => "They sit inside the opening.",
                (_, 1) => "It is lipped over the frame.",
                _ => "They are lipped over the frame.",
            };
            var arch = Leaf.Parts.FirstOrDefault(part => part.Arch is not null) is { Arch: { } shape }
                ? $" {(leaves > 1 ? "The top rail of each" : "Its top rail")} has {Article(shape.Family)} {TradeWords.Words(shape.Family)} arch." : "";
            var midRails = Leaf.Parts.Count(part => part.Kind == PartKind.MidRail) switch
            {
                0 => "",
                1 => $" {Each} one mid rail.",
                var count => $" {Each} {count} mid rails.",
            };
            var one = leaves > 1 && !Leaf.IsDrawerFront && Front.Leaves.Select(leaf => leaf.Width).Distinct().Count() > 1 ? $" The sizes asked are those of the {Leaf.Name}." : "";
            return $"{what} an opening {figures.Size(Front.Figure!.Width, Front.Figure.Height)}, width × height. {mount}{arch}{midRails}{one}";
        }
    }

    private string Each => Front.Leaves.Count > 1 ? "Each leaf has" : "It has";

    private static string Article(ArchFamily family) => family == ArchFamily.Eyebrow ? "an" : "a";

    /// <summary>The letter of the line that finds a quantity; null where none does.</summary>
    public string? LetterOf(Worked quantity) =>
        WorksheetMaker.Shown(quantity) is not Named named || Lines.FirstOrDefault(line => line.Quantities.Contains(named)) is not { } found ? null
        : found.Letter.Length > 0 ? found.Letter : LetterOf(found.Expression);
}
