using System.Diagnostics;
using System.Globalization;

namespace Stilewright.Bench;

/// <summary>Times of the same work done again and again, by the clock and by the processor.</summary>
internal sealed class Timing
{
    private readonly double[] sortedMilliseconds;
    private readonly double[] sortedProcessorMilliseconds;

    private Timing(double[] milliseconds, double[] processorMilliseconds)
    {
        sortedMilliseconds = milliseconds;
        sortedProcessorMilliseconds = processorMilliseconds;
        Array.Sort(sortedMilliseconds);
        Array.Sort(sortedProcessorMilliseconds);
    }

    public double MedianMilliseconds => Median(sortedMilliseconds);

    /// <summary>Time this process had the processor, which other work on the machine does not lengthen much.</summary>
    public string Processor => $"processor time median {Words(Median(sortedProcessorMilliseconds))}";

    /// <param name="warmUps">Runs that are not counted.</param>
    /// <param name="settle">Whether the collector is run before each run, so that none pays for the one before it.</param>
    public static Timing Of(int warmUps, int runs, Action work, bool settle = true)
    {
        for (var i = 0; i < warmUps; i++)
            work();
        var milliseconds = new double[runs];
        var processor = new double[runs];
        for (var i = 0; i < runs; i++)
        {
            if (settle)
                GC.Collect();
            var processorStart = Environment.CpuUsage.TotalTime;
            var start = Stopwatch.GetTimestamp();
            work();
            milliseconds[i] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            processor[i] = (Environment.CpuUsage.TotalTime - processorStart).TotalMilliseconds;
        }

        return new(milliseconds, processor);
    }

    /// <summary>Median, fastest and slowest, and whether the median is below the goal.</summary>
    public string Against(double goalMilliseconds) => string.Create(CultureInfo.InvariantCulture,
        $"{this}; goal below {Words(goalMilliseconds)}: {(MedianMilliseconds < goalMilliseconds ? "met" : "MISSED")}");

    public override string ToString() => string.Create(CultureInfo.InvariantCulture,
        $"median {Words(MedianMilliseconds)} of {sortedMilliseconds.Length} runs ({Words(sortedMilliseconds[0])} to {Words(sortedMilliseconds[^1])})");

    private static double Median(double[] sorted) => sorted.Length % 2 == 1
        ? sorted[sorted.Length / 2]
        : (sorted[(sorted.Length / 2) - 1] + sorted[sorted.Length / 2]) / 2;

    private static string Words(double milliseconds) => milliseconds >= 1000
        ? string.Create(CultureInfo.InvariantCulture, $"{milliseconds / 1000:0.00} s")
        : string.Create(CultureInfo.InvariantCulture, $"{milliseconds:0.#} ms");
}
