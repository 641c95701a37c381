using System.Runtime.CompilerServices;
using Stilewright.Projects;

namespace Stilewright.Documents.Tests;

/// <summary>Files of the repository, and the shortest documents that are sound.</summary>
internal static class Files
{
    public const string Course = """
        {
          "format": "stilewright/course", "version": 2,
          "id": "autumn", "name": "Autumn course", "standard": "inch", "unit": "in",
          "designs": [
            { "id": "shaker", "name": "Shaker", "construction": "cope-and-stick", "species": "cherry", "stock": "four-quarter",
              "cutters": "cope-and-stick", "panel": { "kind": "flat-sheet", "stock": "ply" } }
          ],
          "projects": [
            { "id": "bench-1", "bench": 1, "name": "Hall cupboard", "pieces": [
              { "id": "case-1", "name": "Case", "faces": [
                { "id": "face-1", "side": "front", "openings": [
                  { "id": "opening-1", "readings": { "widthTop": "23 3/4", "widthBottom": 23.75, "heightLeft": "29 1/2" },
                    "filling": { "kind": "doors", "mount": "overlay", "design": "shaker", "leaves": [{ "hinge": "left" }, { "hinge": "right" }] } }
                ] }
              ] }
            ] }
          ]
        }
        """;

    public const string Standard = """{ "format": "stilewright/standard", "version": 1, "id": "ours", "name": "Our shop", "unit": "in", "base": "in" }""";

    /// <summary>The left top rail of a pair on an opening of 23 3/4 × 29 1/2, and the glass of another bench.</summary>
    public const string HandedOut = """
        {
          "format": "stilewright/handed-out",
          "version": 1,
          "course": "autumn",
          "courseName": "Autumn course",
          "unit": "in",
          "extent": "benches",
          "time": "2026-03-14T18:05:00Z",
          "program": "0.1.0",
          "standard": "Our shop",
          "standardRevision": "0a1b2c3d",
          "projects": [
            {
              "id": "bench-3",
              "bench": 3,
              "name": "Hall cupboard",
              "revision": "4e5f6071",
              "parts": [
                {
                  "path": "opening-1/leaf.left/rail.top",
                  "label": "3·1L·TR",
                  "name": "top rail",
                  "material": "cherry",
                  "finished": {
                    "width": "2 1/4 in",
                    "length": "8 9/16 in"
                  },
                  "glueUp": {
                    "width": "55/24 in",
                    "length": "8 9/16 in"
                  },
                  "rough": {
                    "width": "130 in",
                    "length": "9 9/16 in"
                  },
                  "thickness": {
                    "rough": "1 in",
                    "planed": "13/16 in",
                    "final": "3/4 in"
                  }
                }
              ]
            },
            {
              "id": "bench-5",
              "bench": 5,
              "name": "Window seat",
              "unit": "mm",
              "revision": "8293a4b5",
              "parts": [
                {
                  "path": "opening-2/leaf/glass.1",
                  "label": "5·1·G1",
                  "name": "glass",
                  "material": "glass",
                  "finished": {
                    "width": "217.5 mm",
                    "length": "1/3 in"
                  },
                  "glueUp": {
                    "width": "217.5 mm",
                    "length": "8 mm"
                  }
                }
              ]
            }
          ]
        }

        """;

    public static string Root { get; } = FindRoot();

    public static Course Read(string text) => DocumentReader.ReadCourse(text) switch
    {
        DocumentResult<Course>.Read read => read.Document,
        DocumentResult<Course>.Refused refused => throw new InvalidOperationException(string.Join('\n', refused.Errors)),
        _ => throw new InvalidOperationException(),
    };

    public static IReadOnlyList<DocumentError> Errors<T>(DocumentResult<T> result) => result is DocumentResult<T>.Refused refused ? refused.Errors : [];

    /// <summary>Compares with the file in the repository, or writes it when STILEWRIGHT_WRITE is 1.</summary>
    public static void AssertCheckedIn(string path, string expected)
    {
        var file = Path.Combine(Root, path);
        if (Environment.GetEnvironmentVariable("STILEWRIGHT_WRITE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, expected);
        }

        Assert.True(File.Exists(file) && File.ReadAllText(file) == expected, $"{path} is stale; run this test once with STILEWRIGHT_WRITE=1 and commit the file.");
    }

    private static string FindRoot([CallerFilePath] string here = "")
    {
        var folder = Path.GetDirectoryName(here)!;
        while (!File.Exists(Path.Combine(folder, "Stilewright.slnx")))
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The solution file is not above the tests.");
        return folder;
    }
}
