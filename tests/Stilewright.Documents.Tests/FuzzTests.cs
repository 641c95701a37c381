using System.Diagnostics;
using Stilewright.Testing;

namespace Stilewright.Documents.Tests;

public class FuzzTests
{
    /// <summary>Far above what any case takes (below 50 ms), far below what a person would call hanging.</summary>
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(5);

    [Fact]
    public void Two_thousand_damaged_files_are_read_or_refused_with_reasons()
    {
        FuzzedFiles files = new(1);
        var (read, refused, records) = (0, 0, 0);
        for (var number = 0; number < 2000; number++)
        {
            var file = files.Case(number);
            var started = Stopwatch.GetTimestamp();
            var course = DocumentReader.ReadCourse(file);
            var standard = DocumentReader.ReadStandard(file);
            var handedOut = DocumentReader.ReadHandedOut(file);
            Assert.True(Stopwatch.GetElapsedTime(started) < Limit, $"case {number} took too long");
            read += course is DocumentResult<Projects.Course>.Read ? 1 : 0;
            refused += course is DocumentResult<Projects.Course>.Refused ? 1 : 0;
            Reasoned(course, number);
            Reasoned(standard, number);
            Reasoned(handedOut, number);
            records += handedOut is DocumentResult<Prints.HandedOut>.Read ? 1 : 0;
        }

        Assert.Equal(2000, read + refused);
        Assert.InRange(read, 1, 500);
        Assert.InRange(records, 1, 500);
    }

    [Fact]
    public void The_same_seed_and_number_give_the_same_file()
    {
        FuzzedFiles left = new(7), right = new(7);
        Assert.All(Enumerable.Range(0, 200), number => Assert.Equal(left.Case(number), right.Case(number)));
    }

    private static void Reasoned<T>(DocumentResult<T> result, int number)
    {
        if (result is not DocumentResult<T>.Refused refused)
            return;
        Assert.True(refused.Errors.Count > 0, $"case {number} was refused without a reason");
        Assert.All(refused.Errors, error =>
        {
            Assert.StartsWith("$", error.Path, StringComparison.Ordinal);
            Assert.False(string.IsNullOrWhiteSpace(error.Problem));
            Assert.False(string.IsNullOrWhiteSpace(error.Fix));
            Assert.True(error.Problem.Length + error.Fix.Length < 2000);
            Assert.DoesNotContain(error.ToString(), char.IsControl);
        });
    }
}
