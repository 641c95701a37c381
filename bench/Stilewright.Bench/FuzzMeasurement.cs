using System.Diagnostics;
using System.Globalization;
using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Testing;

namespace Stilewright.Bench;

/// <summary>A hundred thousand damaged files: each is read, or refused with reasons; what can be read is worked out too.</summary>
internal static class FuzzMeasurement
{
    private const int Cases = 100_000;
    private const int Seed = 2;

    /// <returns>False when a case crashed, hung or was refused without a reason; each is named.</returns>
    public static bool Run()
    {
        FuzzedFiles files = new(Seed);
        var (read, refused, faults) = (0, 0, 0);
        var slowest = (Milliseconds: 0.0, Number: 0);
        var start = Stopwatch.GetTimestamp();
        for (var number = 0; number < Cases; number++)
        {
            var file = files.Case(number);
            var caseStart = Stopwatch.GetTimestamp();
            try
            {
                switch (DocumentReader.ReadCourse(file))
                {
                    case DocumentResult<Course>.Read { Document: var course }:
                        read++;
                        if (References.Check(course, ShippedStandards.Inch).Count == 0)
                            Breakdown.Of(course, ShippedStandards.Inch);
                        break;
                    case DocumentResult<Course>.Refused { Errors.Count: > 0 }:
                        refused++;
                        break;
                    default:
                        Fault(number, "refused without a reason");
                        break;
                }

                DocumentReader.ReadStandard(file);
                DocumentReader.ReadHandedOut(file);
            }
            catch (Exception fault)
            {
                Fault(number, fault.ToString());
            }

            var milliseconds = Stopwatch.GetElapsedTime(caseStart).TotalMilliseconds;
            if (milliseconds > slowest.Milliseconds)
                slowest = (milliseconds, number);
        }

        var seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"fuzz: {Cases:N0} files of seed {Seed}, once: {seconds:0.#} s; {read:N0} read, {refused:N0} refused with reasons, {faults} crashed; slowest {slowest.Milliseconds:0.#} ms (case {slowest.Number})"));
        return faults == 0 && slowest.Milliseconds < 5000;

        void Fault(int number, string what)
        {
            faults++;
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  case {number}: {what}"));
        }
    }
}
