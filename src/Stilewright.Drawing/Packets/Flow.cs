using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Writing;

namespace Stilewright.Drawing.Packets;

/// <summary>What a sheet's title block tells besides what all sheets of a section share.</summary>
/// <param name="Piece">The piece of furniture; empty where the sheet is about no single one.</param>
/// <param name="Content">What the sheet shows.</param>
/// <param name="IsMachineWork">Whether someone takes its figures to a machine.</param>
internal sealed record SheetHead(string Piece, string Content, bool IsMachineWork);

/// <summary>A sheet with all but its title block.</summary>
internal sealed record LaidSheet(SheetHead Head, IReadOnlyList<SceneNode> Nodes, IReadOnlyList<Scale?> Scales, IReadOnlyList<Bookmark> Bookmarks);

/// <summary>Fills sheets with strips from top to bottom and begins a new one where the next does not fit.</summary>
/// <param name="room">Where strips go on a sheet.</param>
internal sealed class Flow(PaperBox room)
{
    private const double Tolerance = 1e-6;

    private readonly List<LaidSheet> sheets = [];
    private readonly List<Strip> waiting = [];
    private List<SceneNode> nodes = [];
    private List<Scale?> scales = [];
    private List<Bookmark> bookmarks = [];
    private SheetHead? head;
    private double used;

    public double Width => room.Width;

    public double Height => room.Height;

    /// <summary>What is left of the sheet that is being filled.</summary>
    public double Left => room.Height - used;

    /// <summary>Whether all of these would go on the sheet that is being filled.</summary>
    public bool Holds(IReadOnlyCollection<Strip> strips) => Together([.. waiting, .. strips], used) <= Left + Tolerance;

    /// <summary>Begins a new sheet.</summary>
    public void Begin(SheetHead next)
    {
        Flush();
        Finish();
        head = next;
    }

    public void Add(params IEnumerable<Strip> strips)
    {
        foreach (var strip in strips)
        {
            waiting.Add(strip);
            if (!strip.KeepWithNext)
                Flush();
        }
    }

    /// <summary>All sheets; the flow is empty afterwards.</summary>
    public IReadOnlyList<LaidSheet> End()
    {
        Flush();
        Finish();
        head = null;
        LaidSheet[] all = [.. sheets];
        sheets.Clear();
        return all;
    }

    private void Flush()
    {
        if (waiting.Count == 0)
            return;
        if (used > 0 && Together(waiting, used) > Left + Tolerance)
            Break();
        foreach (var strip in waiting)
        {
            // Kept together they may be higher than a sheet; then they are broken all the same.
            if (used > 0 && strip.SpaceBefore + strip.Height > Left + Tolerance)
                Break();
            if (used == 0)
            {
                foreach (var repeated in strip.Repeated)
                    Place(repeated);
            }

            Place(strip);
        }

        waiting.Clear();
    }

    private static double Together(List<Strip> strips, double used)
    {
        var height = 0.0;
        foreach (var strip in strips)
            height += strip.Height + (used + height > 0 ? strip.SpaceBefore : 0);
        return height;
    }

    private void Place(Strip strip)
    {
        var space = used > 0 ? strip.SpaceBefore : 0;
        if (space + strip.Height > Left + Tolerance)
            throw new InvalidOperationException($"A strip of {strip.Height:0.0} mm does not fit into what is left of a sheet, {Left:0.0} mm.");
        nodes.Add(new SceneGroup(null, null, strip.Nodes) { At = new(room.Left, room.Top + used + space) });
        scales.AddRange(strip.Scales);
        bookmarks.AddRange(strip.Bookmarks);
        used += space + strip.Height;
    }

    private void Break()
    {
        var same = head;
        Finish();
        head = same;
    }

    private void Finish()
    {
        if (nodes.Count > 0)
            sheets.Add(new(head ?? throw new InvalidOperationException("Nothing says what the sheet shows."), nodes, scales, bookmarks));
        (nodes, scales, bookmarks, used) = ([], [], [], 0);
    }
}
