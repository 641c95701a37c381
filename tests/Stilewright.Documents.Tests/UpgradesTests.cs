using System.Text.Json.Nodes;
using Stilewright.Projects;

namespace Stilewright.Documents.Tests;

public class UpgradesTests
{
    /// <summary>Version 1 called the name "title", version 2 called it "label".</summary>
    private static readonly UpgradeStep TitleToLabel = new(1, file => Renamed(file, "title", "label"));
    private static readonly UpgradeStep LabelToName = new(2, file => Renamed(file, "label", "name"));

    private static readonly DocumentFormat Third = DocumentFormat.Course with { Version = 3, Upgrades = [LabelToName, TitleToLabel] };

    private static string Old(int version, string key) => Files.Course
        .Replace("\"version\": 2", $"\"version\": {version}", StringComparison.Ordinal)
        .Replace("\"name\": \"Autumn course\"", $"\"{key}\": \"Autumn course\"", StringComparison.Ordinal);

    [Theory]
    [InlineData(1, "title")]
    [InlineData(2, "label")]
    [InlineData(3, "name")]
    public void Older_files_are_brought_up_step_by_step(int version, string key) =>
        Assert.Equal("Autumn course", Assert.IsType<DocumentResult<Course>.Read>(DocumentReader.ReadCourse(Old(version, key), Third)).Document.Name);

    [Fact]
    public void A_gap_in_the_chain_is_told()
    {
        var errors = Files.Errors(DocumentReader.ReadCourse(Old(1, "title"), Third with { Upgrades = [TitleToLabel] }));
        Assert.Equal("this file is of version 1, and this program has no step from version 2 to 3", Assert.Single(errors).Problem);
        Assert.Equal(2, Files.Errors(DocumentReader.ReadCourse(Old(1, "title"), Third with { Upgrades = [] })).Count);
    }

    [Fact]
    public void A_file_past_the_gap_is_read() =>
        Assert.IsType<DocumentResult<Course>.Read>(DocumentReader.ReadCourse(Old(2, "label"), Third with { Upgrades = [LabelToName] }));

    [Fact]
    public void The_tree_that_was_read_is_not_changed()
    {
        JsonObject tree = new() { ["version"] = 1, ["title"] = "Autumn course" };
        var upgraded = Assert.IsType<DocumentResult<JsonObject>.Read>(Upgrades.Run(Third, 1, tree)).Document;
        Assert.Equal("{\"version\":3,\"name\":\"Autumn course\"}", upgraded.ToJsonString());
        Assert.Equal("{\"version\":1,\"title\":\"Autumn course\"}", tree.ToJsonString());
    }

    [Fact]
    public void Errors_after_an_upgrade_have_paths_and_no_lines()
    {
        var error = Assert.Single(Files.Errors(DocumentReader.ReadCourse(Old(1, "title").Replace("\"bench\": 1", "\"bench\": 0", StringComparison.Ordinal), Third)));
        Assert.Equal("$.projects[0].bench", error.Path);
        Assert.Null(error.Line);
    }

    [Fact]
    public void Duplicate_keys_are_told_before_an_upgrade()
    {
        var error = Assert.Single(Files.Errors(DocumentReader.ReadCourse(Old(1, "title").Replace("\"bench\": 1", "\"bench\": 1, \"bench\": 2", StringComparison.Ordinal), Third)));
        Assert.Equal("$.projects[0].bench", error.Path);
        Assert.NotNull(error.Line);
    }

    [Fact]
    public void A_step_that_meets_something_else_refuses_the_file()
    {
        UpgradeStep careless = new(1, file => { file["projects"]!.AsArray(); return file; });
        var text = Old(1, "name").Replace("\"projects\": [", "\"projects\": { \"a\": [", StringComparison.Ordinal)[..^2] + "} }";
        var error = Assert.Single(Files.Errors(DocumentReader.ReadCourse(text, DocumentFormat.Course with { Version = 2, Upgrades = [careless] })));
        Assert.Contains("does not have the form of version 1", error.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void The_shipped_formats_have_every_step() => Assert.All(DocumentFormat.All, format =>
        Assert.Equal(Enumerable.Range(1, format.Version - 1), format.Upgrades.Select(step => step.From).Order()));

    private static JsonObject Renamed(JsonObject file, string from, string to)
    {
        if (file.Remove(from, out var value))
            file[to] = value;
        return file;
    }
}
