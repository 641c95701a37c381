using Fractions;
using Stilewright.Doors;
using Stilewright.Hanging.Adjusting;
using Stilewright.Measure;

namespace Stilewright.Adjusting;

/// <summary>Finds the moves of each screw that bring the gaps of a row nearest to even and its faces flush.</summary>
/// <remarks>
/// Sideways and height are one linear programme for the whole row, since a gap between two leaves belongs to both. Depth is one for each leaf and
/// each corner of its free edge that may touch first. Moves are put on what a hand can turn before the gaps after them are told.
/// </remarks>
public static class Adjuster
{
    /// <summary>A plate or an edge counts as much as this many inches of screws when movement is made least.</summary>
    private const double WorkOverTurning = 1000;

    /// <summary>No plate is moved, and no edge trimmed, by more: what needs more is made again. Common practice, no source.</summary>
    private const double MostWork = 1;

    /// <exception cref="ArgumentException">The task has <see cref="AdjustingTask.Problems"/>.</exception>
    public static AdjustingPlan Plan(AdjustingTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        if (task.Problems() is [var first, ..])
            throw new ArgumentException($"{first.Place}: {first.Problem}; {first.Fix}.", nameof(task));

        var before = task.AsRead();
        var after = Screws(task);
        if (IsWithin(task, after))
            return new(task, before, after, true, []);

        List<Remedy> remedies = [.. new[] { Work.Plates, Work.Bumpers, Work.Trims }.Select(work => Beyond(task, work)).OfType<Remedy>().Where(remedy => Helps(task, remedy.Hang, after))];
        if (!remedies.Any(remedy => remedy.Does) && Beyond(task, Work.Plates | Work.Bumpers | Work.Trims) is { } together && remedies.All(remedy => Helps(task, together.Hang, remedy.Hang)))
            remedies.Add(together);
        return new(task, before, after, false, [.. remedies.OrderByDescending(remedy => remedy.Does)]);
    }

    /// <summary>Work beyond turning screws.</summary>
    [Flags]
    private enum Work
    {
        None = 0,
        Plates = 1,
        Bumpers = 2,
        Trims = 4,
    }

    private static bool IsWithin(AdjustingTask task, Hang hang) => hang.WorstGap <= task.Tolerance && hang.WorstCorner <= task.Tolerance;

    /// <summary>A remedy is told where it brings the gaps and the corners together a step nearer than the screws do.</summary>
    private static bool Helps(AdjustingTask task, Hang remedy, Hang screws) =>
        IsWithin(task, remedy) || remedy.WorstGap + remedy.WorstCorner + task.Step <= screws.WorstGap + screws.WorstCorner;

    private static Hang Screws(AdjustingTask task)
    {
        var inPlane = InPlane(task, Work.None, Fine(task));
        return Hang.Of(task, [.. task.Leaves.Select((leaf, index) => Told(task, leaf, inPlane.Leaves[index], Depth(task, leaf, Work.None, Fine(task))))], [], []);
    }

    /// <summary>What the given work would do; null where none of it is needed.</summary>
    private static Remedy? Beyond(AdjustingTask task, Work work)
    {
        var enough = Enough(task);
        var inPlane = InPlane(task, work, enough);
        List<LeafMoves> moves = [];
        List<PlateMove> plates = [];
        List<BumperChange> bumpers = [];
        foreach (var (leaf, travel) in task.Leaves.Zip(inPlane.Leaves))
        {
            var depth = Depth(task, leaf, work, enough);
            var screws = Told(task, leaf, travel, depth);
            var plate = Rounded(task, travel, depth);
            moves.Add(new(screws.SidewaysTop + plate.SidewaysTop, screws.SidewaysBottom + plate.SidewaysBottom, screws.Height + plate.Height,
                screws.DepthTop + plate.DepthTop, screws.DepthBottom + plate.DepthBottom));
            if (!plate.IsNone)
            {
                plates.AddRange(Enumerable.Range(0, leaf.Hinges.Count)
                    .Select(hinge => new PlateMove(leaf.Label, hinge, plate.SidewaysAt(leaf, hinge), plate.Height, plate.DepthAt(leaf, hinge))).Where(move => !move.IsNone));
            }

            if (On(depth.Bumper, task.Step) is { IsZero: false } thicker)
                bumpers.Add(new(leaf.Label, thicker));
        }

        List<EdgeTrim> trims = [.. inPlane.Trims.Select(trim => new EdgeTrim(trim.Leaf, trim.Edge, On(trim.AtStart, task.Step), On(trim.AtEnd, task.Step)))
            .Where(trim => trim.AtStart.IsPositive || trim.AtEnd.IsPositive)];
        if (plates.Count + bumpers.Count + trims.Count == 0)
            return null;

        var hang = Hang.Of(task, moves, trims, bumpers);
        var kind = work switch { Work.Plates => RemedyKind.MovePlates, Work.Bumpers => RemedyKind.SetBumper, Work.Trims => RemedyKind.Trim, _ => RemedyKind.Together };
        return new(kind, hang, IsWithin(task, hang), plates, trims, bumpers);
    }

    /// <summary>Beyond the screws no work is done for less than half the tolerance; the other half is left to rounding.</summary>
    private static double Enough(AdjustingTask task) => Inches(task.Tolerance) / 2;

    /// <summary>Screws bring nothing nearer than half a step: it would be lost when the moves are put on what a hand can turn.</summary>
    private static double Fine(AdjustingTask task) => Inches(task.Step) / 2;

    private static double Inches(Length length) => length.Inches.ToDouble();

    private static Length On(double inches, Length step) => Length.FromInches(Fraction.FromDoubleRounded(inches)).OnStep(step, StepDirection.Nearest);

    /// <summary>Travel of the screws of one leaf, and of its plates beyond them, in inches.</summary>
    private sealed record LeafTravel(double SidewaysTop, double SidewaysBottom, double Height, double PlateTop, double PlateBottom, double PlateHeight);

    private sealed record DepthTravel(double Top, double Bottom, double PlateTop, double PlateBottom, double Bumper)
    {
        public static DepthTravel None { get; } = new(0, 0, 0, 0, 0);
    }

    private sealed record TrimTravel(string Leaf, Side Edge, double AtStart, double AtEnd);

    private sealed record PlaneTravel(IReadOnlyList<LeafTravel> Leaves, IReadOnlyList<TrimTravel> Trims);

    private static LeafMoves Told(AdjustingTask task, RowLeaf leaf, LeafTravel travel, DepthTravel depth)
    {
        return new(Screw(leaf.Sideways, travel.SidewaysTop), Screw(leaf.Sideways, travel.SidewaysBottom), Screw(leaf.Height, travel.Height),
            Screw(leaf.Depth, depth.Top), Screw(leaf.Depth, depth.Bottom));

        Length Screw(ScrewRange range, double inches) => range.OnScrew(Length.FromInches(Fraction.FromDoubleRounded(inches)), task.Step);
    }

    private static LeafMoves Rounded(AdjustingTask task, LeafTravel travel, DepthTravel depth) =>
        new(On(travel.PlateTop, task.Step), On(travel.PlateBottom, task.Step), On(travel.PlateHeight, task.Step), On(depth.PlateTop, task.Step), On(depth.PlateBottom, task.Step));

    private static PlaneTravel InPlane(AdjustingTask task, Work work, double enough)
    {
        if (task.Gaps.Count == 0)
            return new([.. task.Leaves.Select(_ => new LeafTravel(0, 0, 0, 0, 0, 0))], []);

        using var program = new MinimaxProgram();
        var screws = task.Leaves.Select(leaf => (Top: Add(leaf.Sideways), Bottom: Add(leaf.Sideways), Height: Add(leaf.Height))).ToList();
        var beyond = work.HasFlag(Work.Plates) ? task.Leaves.Select(_ => (Top: Free(-MostWork), Bottom: Free(-MostWork), Height: Free(-MostWork))).ToList() : null;
        var planed = new Dictionary<(int Leaf, Side Edge), (int Start, int End)>();
        var even = new Dictionary<bool, int>();
        foreach (var reading in task.Gaps)
        {
            List<(int, double)> terms = [];
            foreach (var share in GapModel.Shares(task, reading))
            {
                Terms(screws[share.Leaf], share);
                if (beyond is not null)
                    Terms(beyond[share.Leaf], share);
            }

            if (work.HasFlag(Work.Trims))
            {
                Planed(task.IndexOf(reading.Leaf), reading.Edge);
                if (reading.Beyond is { } other)
                    Planed(task.IndexOf(other), GapModel.Opposite(reading.Edge));
            }

            if (reading.Target is null)
            {
                if (!even.TryGetValue(reading.IsUpright, out var common))
                    even.Add(reading.IsUpright, common = program.Add(double.NegativeInfinity, double.PositiveInfinity, 0));
                terms.Add((common, -1));
            }

            program.Residuals(Inches(reading.Gap - (reading.Target ?? default)), terms);

            void Terms((int Top, int Bottom, int Height) variables, GapShare share) => terms.AddRange(
                [(variables.Top, share.SidewaysTop.ToDouble()), (variables.Bottom, share.SidewaysBottom.ToDouble()), (variables.Height, share.Height.ToDouble())]);

            void Planed(int leaf, Side edge)
            {
                if (!planed.TryGetValue((leaf, edge), out var ends))
                    planed.Add((leaf, edge), ends = (Free(0), Free(0)));
                var along = GapModel.ShareOfEnd(task.Leaves[leaf], edge, GapModel.Along(task, reading)).ToDouble();
                terms.AddRange([(ends.Start, 1 - along), (ends.End, along)]);
            }
        }

        // Nothing shut in: the screws as they stand satisfy every bound.
        var values = program.Solve(enough, work != Work.None) ?? throw new InvalidOperationException("The programme of the gaps has no solution.");
        return new(
            [.. task.Leaves.Select((_, leaf) => new LeafTravel(values[screws[leaf].Top], values[screws[leaf].Bottom], values[screws[leaf].Height],
                beyond is null ? 0 : values[beyond[leaf].Top], beyond is null ? 0 : values[beyond[leaf].Bottom], beyond is null ? 0 : values[beyond[leaf].Height]))],
            [.. planed.Select(edge => new TrimTravel(task.Leaves[edge.Key.Leaf].Label, edge.Key.Edge, values[edge.Value.Start], values[edge.Value.End]))]);

        int Add(ScrewRange range) => program.Add(-Inches(range.Less), Inches(range.More), 1);

        int Free(double least) => program.Add(least, MostWork, WorkOverTurning);
    }

    private static DepthTravel Depth(AdjustingTask task, RowLeaf leaf, Work work, double enough)
    {
        List<ProudReading> corners = [.. task.Corners.Where(corner => corner.Leaf == leaf.Label)];
        if (corners.Count == 0)
            return DepthTravel.None;

        var free = corners.Where(corner => corner.IsFree).ToList();
        if (free.Count == 0)
            return Depth(leaf, corners, null, work, enough)!.Value.Travel;

        return free.Select(touching => Depth(leaf, corners, touching, work, enough)).OfType<(DepthTravel Travel, double Worst, double Effort)>()
            .OrderBy(found => Math.Round(found.Worst, 6)).ThenBy(found => found.Effort).First().Travel;
    }

    /// <summary>Depth of one leaf, where the given corner of the free edge touches first; null where it cannot.</summary>
    private static (DepthTravel Travel, double Worst, double Effort)? Depth(RowLeaf leaf, List<ProudReading> corners, ProudReading? touching, Work work, double enough)
    {
        using var program = new MinimaxProgram();
        var plates = work.HasFlag(Work.Plates);
        var least = -Inches(leaf.Depth.Less);
        var most = Inches(leaf.Depth.More);
        int[] screws = [program.Add(least, most, 1), program.Add(least, most, 1)];
        int[] packed = plates ? [program.Add(-MostWork, MostWork, WorkOverTurning), program.Add(-MostWork, MostWork, WorkOverTurning)] : [];
        var pad = work.HasFlag(Work.Bumpers) && touching is not null ? program.Add(-MostWork, MostWork, WorkOverTurning) : -1;
        var rest = touching is null ? 0 : Inches(corners.Where(corner => corner.IsFree).Min(corner => corner.Proud));
        List<(double Constant, List<(int Variable, double Factor)> Terms)> residuals = [];
        foreach (var corner in corners)
        {
            var terms = corner == touching ? [] : At(corner.IsTop, 1);
            var constant = corner == touching ? rest : Inches(corner.Proud);
            if (corner.IsFree && corner != touching)
            {
                constant += rest - Inches(touching!.Proud);
                terms.AddRange(At(touching.IsTop, -1));
                program.AtLeastNothing(constant - rest, terms);
            }

            if (corner.IsFree && pad >= 0)
                terms = [.. terms, (pad, 1)];
            program.Residuals(constant, terms);
            residuals.Add((constant, terms));
        }

        if (program.Solve(enough, work != Work.None) is not { } values)
            return null;

        var travel = new DepthTravel(values[screws[0]], values[screws[1]], plates ? values[packed[0]] : 0, plates ? values[packed[1]] : 0, pad < 0 ? 0 : values[pad]);
        var worst = residuals.Max(residual => Math.Abs(residual.Constant + residual.Terms.Sum(term => term.Factor * values[term.Variable])));
        return (travel, worst, values.Sum(Math.Abs));

        List<(int Variable, double Factor)> At(bool top, double sign)
        {
            var share = GapModel.TopShare(leaf, top ? leaf.Place.Height : default).ToDouble();
            List<(int, double)> terms = [(screws[0], sign * share), (screws[1], sign * (1 - share))];
            if (plates)
                terms.AddRange([(packed[0], sign * share), (packed[1], sign * (1 - share))]);
            return terms;
        }
    }
}
