using System.Globalization;
using Stilewright.Cli.Layout;
using Stilewright.Doors;

namespace Stilewright.Cli.Pages;

/// <summary>What can be drawn, under the names by which it is asked for.</summary>
internal static class DrawablesPage
{
    public static Page Of(Breakdown breakdown) => new Page()
        .Title($"{breakdown.Course.Name}: what can be drawn")
        .Line("Faces and runs are drawn as elevations. A leaf is drawn from the front, or from the back or as a story stick with --view; a part by its label, such as 1.2L.TR.")
        .Grid(
            [Column.Figure("bench"), "faces", "runs", "leaves"],
            breakdown.Projects.Select(project => (IReadOnlyList<string>)
            [
                project.Project.Bench.ToString(CultureInfo.InvariantCulture),
                string.Join(" ", project.Faces.Select(face => face.Face.Id)),
                string.Join(" ", project.Runs.Select(run => run.Run.Id)),
                string.Join(" ", project.Fronts.SelectMany(front => front.Leaves).Select(leaf => leaf.Label)),
            ]));
}
