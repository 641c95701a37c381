using System.Net;
using Stilewright.Web.Features.Help;
using Stilewright.Web.Tests.Serving;

namespace Stilewright.Web.Tests.Help;

public sealed class HelpTests
{
    [Fact]
    public void The_glossary_names_each_word_once_in_order_and_refers_to_words_it_has()
    {
        Assert.InRange(Glossary.All.Count, 60, 120);
        Assert.Equal(Glossary.All.Count, Glossary.All.Select(entry => entry.Id).Distinct().Count());
        Assert.Equal(Glossary.All.Select(entry => entry.Word).Order(StringComparer.OrdinalIgnoreCase), Glossary.All.Select(entry => entry.Word));
        foreach (var entry in Glossary.All)
        {
            Assert.EndsWith(".", entry.Meaning, StringComparison.Ordinal);
            Assert.All(entry.See, word => Assert.True(Glossary.Find(word) is { } other && other != entry, $"{entry.Word} refers to {word}."));
        }
    }

    [Fact]
    public void A_word_is_found_by_itself_and_by_its_meaning()
    {
        Assert.Contains(Glossary.Holding("COPE"), entry => entry.Word == "cope length");
        Assert.Contains(Glossary.Holding("long point"), entry => entry.Word == "mitre");
        Assert.Empty(Glossary.Holding("soufflé"));
        Assert.Equal(Glossary.All.Count, Glossary.Holding("  ").Count());
    }

    // The figures of the worked example in the trade's usual formulas: rail = door − 2 × stile + 2 × tongue.
    [Theory]
    [InlineData("check", "not to scale")]
    [InlineData("break-down", "12 3/16 − 2 × 2 1/4 + 2 × 7/16 = 8 9/16")]
    [InlineData("break-down", "25 3/4 + 2 × 7/16 − 2 × 1/16 = 26 1/2")]
    [InlineData("size", "(24 1/2 − 1/8) ÷ 2 = 12 3/16")]
    [InlineData("size", "15 − 2 × 3/32 = 14 13/16")]
    [InlineData("size", "15 + 2 × 1/4 = 15 1/2")]
    [InlineData("patterns", "2 1/4 + 1 1/2 = 3 3/4")]
    [InlineData("wood", "Equation 13-2")]
    [InlineData("wood", "from memory")]
    [InlineData("patterns", "29 CFR 1910.213")]
    [InlineData("measure", "≈3/32")]
    [InlineData("standard", "29 CFR 1910.213")]
    [InlineData("hang", "29 CFR 1910.213")]
    [InlineData("packet", "1·1L·LS")]
    [InlineData("history", "Undo takes back your own last change")]
    [InlineData("designs", "16 CFR 1201")]
    [InlineData("worksheets", "one slip costs one mark")]
    [InlineData("glossary", "id=\"spring-line\"")]
    public async Task Every_page_of_the_help_is_shown(string slug, string holds)
    {
        await using var served = await Served.StartAsync();
        using var screen = served.Screen();
        using var answer = await screen.GetAsync(new Uri($"/help/{slug}", UriKind.Relative));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains(holds, WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        Assert.Contains(HelpTopic.All, topic => topic.Slug == slug);
    }
}
