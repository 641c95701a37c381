using Stilewright.Measure;
using Stilewright.Teaching.Drills;
using Stilewright.Web.Features.Drills;

namespace Stilewright.Web.Tests.Exercises;

public sealed class DrillRunTests
{
    private static readonly Drill Three = DrillMaker.InTurn(new(LengthUnit.Inch, 16, [DrillKind.Halve, DrillKind.Add]), 5, 1, 3);

    [Fact]
    public void Items_come_one_by_one_and_each_is_marked_once()
    {
        var run = new DrillRun(Three, true);
        run.Advance();
        Assert.Equal((1, "Write an answer first."), (run.At, run.Problem));
        run.Write(Three.Items[0], "1 1/");
        run.Advance();
        Assert.Contains("1 1/", run.Problem, StringComparison.Ordinal);
        Assert.Null(run.MarkOf(Three.Items[0]));
        run.Write(Three.Items[0], Three.Items[0].Slips[0].Written);
        run.Advance();
        Assert.Null(run.Problem);
        Assert.Equal(1, run.At);
        Assert.Equal(Three.Items[0].Slips[0].Kind, run.MarkOf(Three.Items[0])!.Slip!.Kind);
        // What is marked is marked.
        run.Write(Three.Items[0], Right(Three.Items[0]));
        run.Advance();
        Assert.Equal(2, run.At);
        Assert.False(run.Marked[0].IsRight);
        foreach (var item in Three.Items.Skip(1))
        {
            Assert.Equal(item, run.Asked);
            run.Write(item, Right(item));
            run.Advance();
            Assert.False(run.IsFinished);
            run.Advance();
        }

        Assert.True(run.IsFinished);
        Assert.Null(run.Asked);
        Assert.Equal([(DrillKind.Halve, 2, 1), (DrillKind.Add, 1, 1)], Drill.Shares(run.Marked).Select(share => (share.Kind, share.Asked, share.Right)));
        run.Advance();
        Assert.Equal(4, run.At);
    }

    [Fact]
    public void A_sheet_tells_what_is_missing_before_it_is_marked_as_it_is()
    {
        var run = new DrillRun(Three, false);
        run.Write(Three.Items[0], Right(Three.Items[0]));
        run.Write(Three.Items[1], "half");
        run.MarkAll(false);
        Assert.Equal("No answer that can be read: 2, 3.", run.Problem);
        Assert.False(run.IsFinished);
        run.MarkAll(true);
        Assert.True(run.IsFinished);
        Assert.Null(run.Problem);
        Assert.Equal([true, false, null], run.Marked.Select(each => each.IsRight));
    }

    private static string Right(DrillItem item) => new LengthFormat(item.AnswerUnit, 64).Print(item.Answer);
}
