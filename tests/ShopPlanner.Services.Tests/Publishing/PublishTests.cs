using System.Collections.Immutable;
using System.Text;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Publishing;

namespace ShopPlanner.Services.Tests.Publishing;

/// <summary>A project goes out to others: whole, resizable, and without anything of the shop that nobody asked for.</summary>
public sealed class PublishTests : IAsyncLifetime
{
    private PlannedShop given = null!;

    private static CancellationToken Cancel => TestShop.Cancel;

    private TestShop Shop => given.Shop;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        await Shop.Get<IIdeaService>().StartAsync(given.Project.Id, "floating-shelf", CommandId.New(), Cancel);
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task It_holds_all_that_others_need()
    {
        var publication = await PublishAsync(PublishChoices.Usual);
        var paths = publication.Files.Select(file => file.Path).ToList();
        Assert.Equal("index.html", paths[0]);
        Assert.Subset(
            paths.ToHashSet(),
            new HashSet<string>
            {
                "packet.pdf",
                "cut-list.csv",
                "materials.csv",
                "design.json",
                "LICENSE.txt",
                "pictures/isometric.svg",
                "pictures/front.svg",
                "fonts/SourceSans3-Regular.woff2",
                "fonts/OFL.txt",
            }
        );
        Assert.Equal(paths.Count, paths.Distinct().Count());
        Assert.StartsWith("%PDF-", Text(publication, "packet.pdf"), StringComparison.Ordinal);
        var page = Text(publication, "index.html");
        // Read without scripts and without a network: whatever it loads lies beside it.
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.All(Loaded(page), address => Assert.Contains(address, paths));
    }

    [Fact]
    public async Task The_design_gives_the_same_parts_in_another_shop()
    {
        var idea = (await Shop.Get<IIdeaService>().GetAsync(given.Project.Id, Cancel))!;
        var width = idea.Idea.Document.Dimensions.First(one => one.Name == "width");
        var set = idea.Idea with { Changed = ImmutableSortedDictionary<string, string>.Empty.Add(width.Name, "33 1/4") };
        Assert.True((await Shop.Get<IIdeaService>().SaveAsync(given.Project.Id, set, idea.Version, "width", Cancel)).Ok);
        var publication = await PublishAsync(PublishChoices.Usual);
        await using var other = await TestShop.OpenAsync();
        var json = Encoding.UTF8.GetBytes(Text(publication, "design.json"));
        var saved = await other.Get<IDesignService>().ImportAsync(json, CommandId.New(), Cancel);
        Assert.True(saved.Ok, string.Join("; ", saved.Faults));
        var begun = await other.Get<IIdeaService>().BeginAsync(saved.Value.Key, "", CommandId.New(), Cancel);
        var there = (await other.Get<IIdeaService>().GetAsync(begun.Value!.Id, Cancel))!.Idea;
        Assert.Equal(Parts(set), Parts(there));
        Assert.Equal(Parts(set), Text(publication, "cut-list.csv").TrimStart('\uFEFF'));
    }

    [Fact]
    public async Task Prices_stores_and_stock_stay_out_unless_they_are_chosen()
    {
        var offcut = (
            await Shop.Stock.AddAsync(Some.Offcut("40"), Some.Inch, Some.Device, CommandId.New(), Cancel)
        ).Value!.Single();
        await given.PlanAsync();
        var nothing = await PublishAsync(PublishChoices.Usual);
        Assert.All(Texts(nothing), text => AssertSays(text, store: false, price: false, tag: false));
        AssertSays(Text(await PublishAsync(PublishChoices.Usual with { HasPrices = true }), "index.html"), false, true, false);
        AssertSays(Text(await PublishAsync(PublishChoices.Usual with { HasStores = true }), "index.html"), true, false, false);
        AssertSays(Text(await PublishAsync(PublishChoices.Usual with { HasStock = true }), "index.html"), false, false, true);
        Assert.Equal("B1", offcut.Tag);
    }

    [Theory]
    [InlineData("CC-BY-4.0", "https://creativecommons.org/licenses/by/4.0/")]
    [InlineData("CC0-1.0", "https://creativecommons.org/publicdomain/zero/1.0/")]
    [InlineData("all-rights-reserved", "All rights reserved")]
    public async Task The_license_is_on_the_page_and_beside_it(string id, string said)
    {
        var publication = await PublishAsync(PublishChoices.Usual with { License = PublishLicense.Find(id)!, By = "Ana" });
        Assert.Contains(said, Text(publication, "index.html"), StringComparison.Ordinal);
        Assert.Contains(said, Text(publication, "LICENSE.txt"), StringComparison.Ordinal);
        Assert.Contains("by Ana, 2026", Text(publication, "LICENSE.txt"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hostile_names_are_text_on_the_page()
    {
        const string Name = "<b>\"Bench\"</b> & 👍 שולחן \u202E";
        var project = (await Shop.Projects.GetAsync(given.Project.Id, Cancel))!;
        Assert.True((await Shop.Projects.SaveAsync(project with { Name = Name }, Cancel)).Ok);
        var page = Text(await PublishAsync(PublishChoices.Usual with { By = "</title><script>" }), "index.html");
        Assert.DoesNotContain("<script", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>\"Bench", page, StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;&quot;Bench&quot;&lt;/b&gt; &amp; 👍", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_project_without_a_design_or_with_a_faulty_one_says_so()
    {
        var parts = await Some.ProjectAsync(Shop, "Parts only");
        var none = await Shop.Get<IPublishService>().PublishAsync(parts.Id, PublishChoices.Usual, [], Cancel);
        Assert.Contains("start it from a design", none.Faults[0].Message, StringComparison.Ordinal);
        var idea = (await Shop.Get<IIdeaService>().GetAsync(given.Project.Id, Cancel))!;
        var wrong = idea.Idea with { Changed = ImmutableSortedDictionary<string, string>.Empty.Add("width", "no length") };
        await Shop.Get<IIdeaService>().SaveAsync(given.Project.Id, wrong, idea.Version, "width", Cancel);
        var faulty = await Shop.Get<IPublishService>().PublishAsync(given.Project.Id, PublishChoices.Usual, [], Cancel);
        Assert.Equal(OutcomeKind.Faulty, faulty.Kind);
        Assert.Contains("width", faulty.Faults[0].Field, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Photos_are_shown_from_files_of_their_own()
    {
        var photo = CleanPhoto.Of("a.jpg", Pictures.Jpeg()).Photo!;
        var made = await Shop.Get<IPublishService>().PublishAsync(given.Project.Id, PublishChoices.Usual, [photo, photo], Cancel);
        Assert.Contains("<img src=\"photos/photo-2.jpg\" alt=", Text(made.Value!, "index.html"), StringComparison.Ordinal);
        Assert.Equal(2, made.Value!.Files.Count(file => file.Path.StartsWith("photos/", StringComparison.Ordinal)));
    }

    private async Task<Publication> PublishAsync(PublishChoices choices)
    {
        var made = await Shop.Get<IPublishService>().PublishAsync(given.Project.Id, choices, [], Cancel);
        Assert.True(made.Ok, string.Join("; ", made.Faults));
        return made.Value;
    }

    private static void AssertSays(string text, bool store, bool price, bool tag)
    {
        Assert.Equal(store, text.Contains("Corner lumber", StringComparison.Ordinal));
        Assert.Equal(price, text.Contains("6.48", StringComparison.Ordinal));
        Assert.Equal(tag, text.Contains("rack and bin, B1", StringComparison.Ordinal));
    }

    private static string Parts(Idea idea) => PartsCsv.Write(DesignEvaluator.Evaluate(idea.Document, idea.Changed).Piece!);

    private static IEnumerable<string> Loaded(string page) =>
        page.Split("src=\"")
            .Skip(1)
            .Concat(page.Split("url(\"").Skip(1))
            .Select(rest => rest[..rest.IndexOf('"', StringComparison.Ordinal)]);

    private static IEnumerable<string> Texts(Publication publication) =>
        publication
            .Files.Where(file =>
                !file.Path.EndsWith(".pdf", StringComparison.Ordinal) && !file.Path.StartsWith("fonts/", StringComparison.Ordinal)
            )
            .Select(file => Encoding.UTF8.GetString(file.Bytes.Span));

    private static string Text(Publication publication, string path) =>
        Encoding.UTF8.GetString(publication.Files.Single(file => file.Path == path).Bytes.Span);
}
