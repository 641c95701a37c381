using Stilewright.Web.Makers;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Serving;

public sealed class MakerBookTests
{
    [Theory]
    [InlineData("  Bench 3 \t left ", "Bench 3 left")]
    [InlineData("", MakerBook.Unnamed)]
    [InlineData(" \r\n ", MakerBook.Unnamed)]
    public async Task A_name_is_kept_on_one_line(string typed, string kept)
    {
        await using var served = await Served.StartAsync();
        var book = new MakerBook(new DataFiles(served.Data), TimeProvider.System);
        await book.EnterAsync("someone", MakerBook.Unnamed);
        Assert.Equal(kept, await book.RenameAsync("someone", typed));
        Assert.Equal(kept, await book.NameAsync("someone"));
    }

    [Fact]
    public async Task A_long_name_is_cut_and_an_unknown_maker_is_someone()
    {
        await using var served = await Served.StartAsync();
        var book = new MakerBook(new DataFiles(served.Data), TimeProvider.System);
        await book.EnterAsync("someone", MakerBook.Unnamed);
        Assert.Equal(MakerBook.MostCharacters, (await book.RenameAsync("someone", new string('a', 200))).Length);
        Assert.Equal("someone", await book.NameAsync("nobody"));
    }
}
