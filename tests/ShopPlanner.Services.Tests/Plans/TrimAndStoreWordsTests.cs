using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Packets;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Packets;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Sawing;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>What screen, bench and packet say of parts cut long, of practice pieces and of cuts by the store. Three legs of 30 in, cut
/// 30 1/2 in long, and a practice piece, from boards of 96 in with a kerf of 1/8 in.</summary>
public sealed class TrimAndStoreWordsTests : IAsyncLifetime
{
    private PlannedShop given = null!;
    private PlanView plan = null!;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        var row = (await given.Shop.Parts.GetAsync(given.Project.Id, TestShop.Cancel))!.Rows[0];
        await given.Shop.Parts.SaveAsync(
            given.Project.Id,
            [new(row.Texts with { LongBy = "1/2", Practice = "1" }, row.Version)],
            TestShop.Cancel
        );
        await given.Shop.Stores.SaveAsync(given.Store with { FirstCuts = "1", CutTolerance = "1/8" }, TestShop.Cancel);
        plan = await given.PlanAsync();
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Theory]
    [InlineData("35", null, "3", null, null)]
    [InlineData("35", "34 1/2", "3", null, "cut 35″ long, trim to 34 ½″ later")]
    [InlineData("35", null, "3", "2 3/4", "cut 3″ wide, trim to 2 ¾″ later")]
    [InlineData("35", "34 1/2", "3", "2 3/4", "cut 35″ × 3″, trim to 34 ½″ × 2 ¾″ later")]
    public void A_part_cut_long_says_what_is_cut_and_what_is_left(
        string length,
        string? finished,
        string width,
        string? finishedWidth,
        string? said
    )
    {
        static Length In(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;
        var part = new CutPart("A", "Leg", Some.Pine, In(length), In(width), Grain.Length, 1)
        {
            FinishedLength = finished is null ? null : In(finished),
            FinishedWidth = finishedWidth is null ? null : In(finishedWidth),
        };
        Assert.Equal(said, TrimWords.Of(part, LengthUnit.Inch));
    }

    [Fact]
    public void The_cuts_say_to_what_a_piece_is_trimmed_and_which_is_for_practice() =>
        Assert.Equal(
            [
                "A1 Leg (cut 30 ½″ long, trim to 30″ later), keep 1b",
                "A2 Leg (cut 30 ½″ long, trim to 30″ later), keep 2b",
                "A3 Leg (cut 30 ½″ long, trim to 30″ later), 3b for the bin",
                "pA Test piece for A, 1b for the bin",
            ],
            Enumerable
                .Range(0, plan.Plan.Layouts.Length)
                .SelectMany(layout => CutTexts.Steps(plan, layout))
                .Select(step => step.Gives)
        );

    // UAX #9: between FIRST STRONG ISOLATE and POP DIRECTIONAL ISOLATE a text orders nothing but itself.
    [Theory]
    [InlineData("רגל", "\u2068רגל\u2069")]
    [InlineData("Leg \u202Egnp", "\u2068Leg \u202Egnp\u2069")]
    [InlineData("L\u2069eg", "\u2068Leg\u2069")]
    [InlineData("Pied 🪚", "Pied 🪚")]
    public async Task A_name_written_from_right_to_left_turns_nothing_else_round(string name, string isolated)
    {
        var row = (await given.Shop.Parts.GetAsync(given.Project.Id, TestShop.Cancel))!.Rows[0];
        await given.Shop.Parts.SaveAsync(given.Project.Id, [new(row.Texts with { Name = name }, row.Version)], TestShop.Cancel);
        var again = await given.PlanAsync(given.Order(replaces: plan.Summary.Id));
        Assert.StartsWith($"A1 {isolated} (cut", CutTexts.Steps(again, 0)[0].Gives, StringComparison.Ordinal);
    }

    [Fact]
    public void The_store_is_asked_by_sizes()
    {
        var asked = Assert.Single(StoreCutTexts.Of(plan, 0));
        Assert.Equal((1, Length.FromInches(30, 1, 2)), (asked.Cut.N, asked.Cut.At));
        Assert.Equal("1a 30 ½″, 1b 65 ⅜″", asked.Sizes);
    }

    [Fact]
    public async Task Nothing_is_asked_of_a_store_for_what_lies_in_the_bin()
    {
        await given.OffcutAsync("93");
        var again = await given.PlanAsync(given.Order(replaces: plan.Summary.Id));
        Assert.True(again.Request.Stock.First(stock => stock.Id == again.Plan.Layouts[0].Stock).Offcut);
        Assert.Empty(StoreCutTexts.Of(again, 0));
        Assert.Single(StoreCutTexts.Of(again, 1));
    }

    [Fact]
    public async Task The_packet_has_all_of_it()
    {
        var basis = (await Drafts.WantingAsync(given, "")).Draft.Basis;
        var model = new PacketBuilder(
            plan,
            new(new DateOnly(2026, 5, 2), Services.Common.PaperSize.Letter, "$", 1, basis)
        ).Build();
        Assert.Equal(Length.FromInches(0, 1, 8), model.StoreTolerance);
        Assert.Equal(
            [("cut 30 ½″ long, trim to 30″ later", false), (null, true)],
            model.Parts.Select(part => (part.Trim, part.IsPractice))
        );
        Assert.All(model.Layouts, layout => Assert.Equal("Corner lumber", layout.Store));
        Assert.Equal([true, false, false], model.Layouts[0].Cuts.Select(cut => cut.ByStore));
        Assert.Equal(["1a 30 ½″, 1b 65 ⅜″", "", ""], model.Layouts[0].Cuts.Select(cut => cut.Sizes));
        var words = PacketWriter
            .Pages(model)
            .SelectMany(page => page.Drawing.Primitives().OfType<Drawing.Shapes.Caption>())
            .Select(caption => caption.Words);
        Assert.Contains("Cuts at the store: Corner lumber", words);
    }
}
