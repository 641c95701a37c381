using Stilewright.Doors;
using Stilewright.Hanging.Adjusting;

namespace Stilewright.Adjusting.Tests;

/// <summary>The same row with rigid leaves that really turn, by sine and cosine, as a reference for the linear gaps.</summary>
internal static class RigidRow
{
    /// <summary>The gap after the moves, in inches: the way from the end of the leaf's edge to the edge beyond.</summary>
    public static double After(AdjustingTask task, IReadOnlyList<LeafMoves> moves, GapReading reading)
    {
        var own = At(task, moves, task.IndexOf(reading.Leaf), reading, reading.Edge);
        var gap = Rows.Of(reading.Gap);
        gap += reading.Edge is Side.Left or Side.Bottom ? own : -own;
        if (reading.Beyond is { } beyond)
        {
            var other = At(task, moves, task.IndexOf(beyond), reading, GapModel.Opposite(reading.Edge));
            gap += reading.Edge is Side.Left or Side.Bottom ? -other : other;
        }

        return gap;
    }

    /// <summary>How far a point of the leaf's edge moves to the right, or up.</summary>
    private static double At(AdjustingTask task, IReadOnlyList<LeafMoves> moves, int index, GapReading reading, Side edge)
    {
        var (leaf, move) = (task.Leaves[index], moves[index]);
        var along = Rows.Of(GapModel.Along(task, reading));
        double left = Rows.Of(leaf.Place.X), bottom = Rows.Of(leaf.Place.Y), width = Rows.Of(leaf.Place.Width), height = Rows.Of(leaf.Place.Height);
        var (x, y) = edge switch
        {
            Side.Left => (left, along),
            Side.Right => (left + width, along),
            Side.Bottom => (along, bottom),
            _ => (along, bottom + height),
        };

        // The hinge edge goes through what the outer hinges moved; the lowest hinge keeps its height but for the screw.
        var sign = leaf.HingedLeft ? 1 : -1;
        var (pivotX, pivotY) = (leaf.HingedLeft ? left : left + width, bottom + Rows.Of(leaf.Hinges[0]));
        var turn = Math.Atan2(sign * Rows.Of(move.SidewaysTop - move.SidewaysBottom), Rows.Of(leaf.Spread));
        var (dx, dy) = (x - pivotX, y - pivotY);
        var turnedX = pivotX + sign * Rows.Of(move.SidewaysBottom) + dx * Math.Cos(turn) + dy * Math.Sin(turn);
        var turnedY = pivotY + Rows.Of(move.Height) - dx * Math.Sin(turn) + dy * Math.Cos(turn);
        return edge is Side.Left or Side.Right ? turnedX - x : turnedY - y;
    }
}
