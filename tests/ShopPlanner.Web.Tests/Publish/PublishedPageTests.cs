using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Services.Publishing;

namespace ShopPlanner.Web.Tests.Publish;

/// <summary>The published page is HTML without a fault: read by a parser that stops at the first one (WHATWG HTML, 13.2).</summary>
public sealed class PublishedPageTests
{
    // A plain board, doors with joints, drawers: every kind of section.
    [Theory]
    [InlineData("floating-shelf")]
    [InlineData("pantry-cupboard")]
    [InlineData("nightstand")]
    public void It_is_html_without_a_fault(string design)
    {
        using var page = Read(Write(design, "Bench"));
        Assert.Equal("en", page.DocumentElement.GetAttribute("lang"));
        Assert.Single(page.QuerySelectorAll("h1"));
        Assert.Single(page.QuerySelectorAll("main"));
        Assert.All(page.QuerySelectorAll("img"), image => Assert.False(string.IsNullOrWhiteSpace(image.GetAttribute("alt"))));
        Assert.All(page.QuerySelectorAll("svg"), picture => Assert.Equal("img", picture.GetAttribute("role")));
        var ids = page.All.Select(element => element.GetAttribute("id")).OfType<string>().ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(page.QuerySelectorAll("a[href^='#']"), link => Assert.Contains(link.GetAttribute("href")![1..], ids));
        // No level is left out: who listens to a page goes from heading to heading.
        var levels = page.QuerySelectorAll("h1,h2,h3,h4").Select(heading => heading.LocalName[1] - '0').ToList();
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));
    }

    [Theory]
    [InlineData("<b>\"Bench\"</b> & ‘more’")]
    [InlineData("</style><script>alert(1)</script>")]
    [InlineData("👍 שולחן עבודה \u202E\u0007\uFFFE")]
    [InlineData("--><!-- <![CDATA[ ]]>")]
    public void A_hostile_name_stays_a_name(string name)
    {
        using var page = Read(Write("floating-shelf", name));
        Assert.Empty(page.QuerySelectorAll("script"));
        var wanted = string.Concat(name.Where(c => !char.IsControl(c) && c != '\uFFFE'));
        Assert.Equal(wanted, page.QuerySelector("h1")!.TextContent);
        Assert.Equal("By " + wanted, page.QuerySelector("header .faded")!.TextContent);
    }

    [Fact]
    public void A_name_of_three_hundred_characters_is_kept_whole()
    {
        using var page = Read(Write("floating-shelf", new string('x', 300)));
        Assert.Equal(300, page.QuerySelector("h1")!.TextContent.Length);
    }

    private static IHtmlDocument Read(string html) =>
        new HtmlParser(new HtmlParserOptions { IsStrictMode = true }).ParseDocument(html);

    private static string Write(string design, string name)
    {
        var file = Path.Combine(AppContext.BaseDirectory, "designs", design + ".json");
        var document = DesignJson.Read(File.ReadAllBytes(file)).Document!;
        var asked = new PublishAsked(document, PublishLicense.Find("CC-BY-4.0")!, new DateOnly(2026, 5, 2))
        {
            Title = name,
            By = name,
        };
        var index = PublicationWriter.Write(asked).Publication!.Files.Single(one => one.Path == Publication.Index);
        return System.Text.Encoding.UTF8.GetString(index.Bytes.Span);
    }
}
