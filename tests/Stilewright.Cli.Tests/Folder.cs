namespace Stilewright.Cli.Tests;

/// <summary>A folder of its own for one test, gone afterwards.</summary>
public sealed class Folder : IDisposable
{
    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("stilewright-");

    public string File(string name) => Path.Combine(directory.FullName, name);

    public string Write(string name, string text)
    {
        System.IO.File.WriteAllText(File(name), text);
        return File(name);
    }

    /// <summary>The sample course, written by the program itself.</summary>
    public string Sample()
    {
        Assert.Equal(0, Ran.With("sample", directory.FullName).Code);
        return File("evening-course.json");
    }

    /// <summary>One bench with one front; the opening is the classic 23 3/4 × 29 1/2 with 3/8 overlay and a pair.</summary>
    /// <param name="filling">More of the filling, such as edges.</param>
    public string Small(string standard = "inch", string width = "23 3/4", string height = "29 1/2", string accepted = "[]", string filling = "") => Write("small.json", $$"""
        {
          "format": "stilewright/course", "version": 2, "id": "small", "name": "Small, \"quoted\"", "standard": "{{standard}}", "unit": "in",
          "designs": [ {
            "id": "square", "name": "Square", "construction": "cope-and-stick", "species": "red oak", "stock": "four-quarter", "cutters": "deep-groove",
            "panel": { "kind": "flat-sheet", "species": "plywood", "stock": "ply" } } ],
          "projects": [ {
            "id": "hall", "bench": 7, "name": "Hall, lower",
            "pieces": [ { "id": "case", "name": "Case", "faces": [ { "id": "face", "side": "front", "openings": [ {
              "id": "hall-lower",
              "filling": { "kind": "doors", "mount": "overlay", "leaves": [ { "hinge": "left" }, { "hinge": "right" } ], "design": "square" {{filling}} },
              "readings": { "widthTop": "{{width}}", "heightLeft": "{{height}}" } } ] } ] } ],
            "accepted": {{accepted}} } ]
        }
        """);

    public void Dispose() => directory.Delete(recursive: true);
}
