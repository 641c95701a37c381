namespace Stilewright.Cli.Tests;

public sealed class TeachingTests : IDisposable
{
    private readonly Folder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Worksheets_for_a_class_are_written_with_their_seed_told()
    {
        var ran = Ran.With("worksheet", "--level", "1", "--benches", "2", "--seed", "7", "--out", folder.File("class.pdf"));
        Assert.Equal((ExitCode.Good, ""), (ran.Code, ran.Output));
        Assert.Equal($"{folder.File("class.pdf")}: 2 worksheets and the key on 3 sheets. Seed 7 repeats them.\n", ran.Error.ReplaceLineEndings("\n"));
        Assert.StartsWith("%PDF-", File.ReadAllText(folder.File("class.pdf")), StringComparison.Ordinal);
        var again = Ran.With("worksheet", "--level", "1", "--out", folder.File("class.pdf"));
        Assert.Equal(ExitCode.FileFailed, again.Code);
    }

    [Fact]
    public void A_new_seed_is_told_and_repeats_the_sheet()
    {
        var first = Ran.With("worksheet", "--level", "2");
        var seed = first.Output.Split("Seed ")[1].Split(',')[0];
        Assert.Equal(first.Output, Ran.With("worksheet", "--level", "2", "--seed", seed).Output);
    }

    [Fact]
    public void Answers_are_marked_with_follow_through()
    {
        // 27 3/4 + 1 = 28 3/4; (28 3/4 − 1/4) ÷ 2 = 14 1/4. From 14 1/8: 14 1/8 − 4 + 3/4 = 10 7/8.
        var ran = Ran.With("worksheet", "--level", "3", "--seed", "7", "--answer", "a=28 3/4", "--answer", "c=14 1/8", "--answer", "d=10 7/8", "--answer", "e=x");
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Contains("Marks: 2 of 16", ran.Output, StringComparison.Ordinal);
        Assert.Contains("wrong: 14 1/4", ran.Output, StringComparison.Ordinal);
        Assert.Contains("follows from an earlier figure; alone it would be 11", ran.Output, StringComparison.Ordinal);
        Assert.Contains("cannot be read: \"x\"", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bench_alone_has_the_sheet_it_has_in_its_class()
    {
        var ran = Ran.With("worksheet", "--level", "3", "--seed", "7", "--bench", "2", "--key");
        Assert.Contains("Bench 2, level 3: A pair, in inches", ran.Output, StringComparison.Ordinal);
        Assert.Contains("27 1/4 × 28", ran.Output, StringComparison.Ordinal);
        Assert.Contains("front width = opening width + 2 × overlay: 27 1/4 + 2 × 1/2 = 28 1/4  [M1 A1 ft]", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_course_gives_worksheets_of_its_own_doors()
    {
        // 23 3/4 + 3/4 = 24 1/2; (24 1/2 − 1/8) ÷ 2 = 12 3/16; 12 3/16 − 4 1/2 + 7/8 = 8 9/16.
        var ran = Ran.With("worksheet", folder.Small(), "--level", "2", "--answer", "a=24 1/2", "--answer", "c=12 3/16", "--answer", "d=8 9/16");
        Assert.Equal((ExitCode.Good, ""), (ran.Code, ran.Error));
        Assert.Contains("A pair of doors closes an opening 23 3/4 × 29 1/2", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Marks: 3 of ", ran.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, Ran.With("worksheet", folder.Small(), "--leaf", "7.1R", "--out", folder.File("one.pdf")).Code);
        Assert.Equal(ExitCode.WrongUse, Ran.With("worksheet", folder.Small(), "--leaf", "9.1R").Code);
    }

    [Fact]
    public void The_sample_course_has_a_worksheet_for_every_bench_at_every_level()
    {
        var course = folder.Sample();
        for (var level = 1; level <= 6; level++)
        {
            var ran = Ran.With("worksheet", course, "--level", $"{level}", "--out", folder.File($"{level}.pdf"));
            Assert.Equal(ExitCode.Good, ran.Code);
            Assert.StartsWith($"{folder.File($"{level}.pdf")}: ", ran.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Limits_are_taken_from_the_command_line()
    {
        var ran = Ran.With("worksheet", "--seed", "3", "--with", "inset,mid-rails", "--readings", "1/16", "--blanks", "question");
        Assert.Contains("It sits inside the opening.", ran.Output, StringComparison.Ordinal);
        Assert.Contains("mid rail", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Seed 3, level 1 with inset, mid rails, readings 1/16, bench 1 repeats this sheet.", ran.Output, StringComparison.Ordinal);
        Assert.Contains("in millimetres", Ran.With("worksheet", "--mm", "--seed", "3").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_drill_is_printed_and_marked()
    {
        var ran = Ran.With("drill", "--benches", "3", "--seed", "7", "--out", folder.File("drill.pdf"));
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Contains("3 drills and the key on ", ran.Error, StringComparison.Ordinal);
        Assert.Contains("Seed 7 repeats them.", ran.Error, StringComparison.Ordinal);

        // 7 13/16 + 4 7/8 = 12 11/16; with numerators and denominators added 11 20/24.
        var marked = Ran.With("drill", "--kinds", "add", "--count", "2", "--seed", "7", "--answer", "1=11 20/24", "--answer", "2=13 5/16").Output;
        Assert.Contains("1  7 13/16 + 4 7/8 = ____ in", marked, StringComparison.Ordinal);
        Assert.Contains("wrong: 12 11/16 in. Numerators and denominators were worked by themselves", marked, StringComparison.Ordinal);
        Assert.Contains("Marks: 1 of 2", marked, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--level takes a number from 1 to 6, not \"7\"", "worksheet", "--level", "7")]
    [InlineData("--with takes single, pair, inset, trim, arch, mid-rails, not \"glass\"", "worksheet", "--with", "pair,glass")]
    [InlineData("--with takes single or pair, not both", "worksheet", "--with", "single,pair")]
    [InlineData("--readings takes a step such as 1, 1/2 or 1/16", "worksheet", "--readings", "1/100")]
    [InlineData("--readings takes a length", "worksheet", "--readings", "half")]
    [InlineData("--seed takes a whole number", "worksheet", "--seed", "-1")]
    [InlineData("--benches takes a number from 1 to 999", "worksheet", "--benches", "0", "--out", "x.pdf")]
    [InlineData("name the PDF with --out", "worksheet", "--benches", "3")]
    [InlineData("--out takes a file that ends in .pdf", "worksheet", "--out", "x.svg")]
    [InlineData("--answer takes a blank and a figure", "worksheet", "--answer", "12")]
    [InlineData("The sheet has no blank \"z\". It has: a, b, c, d, e.", "worksheet", "--answer", "z=12")]
    [InlineData("The blank a is answered twice.", "worksheet", "--answer", "a=12", "--answer", "a=13")]
    [InlineData("--leaf names a leaf of a course file", "worksheet", "--leaf", "7.1L")]
    [InlineData("--finest takes 2, 4, 8, 16, 32, not \"64\"", "drill", "--finest", "64")]
    [InlineData("--finest takes 1, 2 in millimetres, not \"16\"", "drill", "--mm", "--finest", "16")]
    [InlineData("--kinds takes rule, add", "drill", "--kinds", "divide")]
    [InlineData("--count takes a number from 1 to 40", "drill", "--count", "41")]
    [InlineData("The drill has no item \"99\"", "drill", "--answer", "99=1")]
    public void Wrong_use_is_told_with_the_fix(string words, params string[] arguments)
    {
        var ran = Ran.With(arguments);
        Assert.Equal(ExitCode.WrongUse, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
        Assert.Equal("", ran.Output);
    }
}
