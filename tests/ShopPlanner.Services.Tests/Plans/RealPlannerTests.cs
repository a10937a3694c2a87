using System.Text;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Pictures;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;
using ShopPlanner.Services.Sawing;
using ShopPlanner.Services.Shop;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>The real planner and verifier behind the services: boards, ripped boards and sheets.</summary>
public sealed class RealPlannerTests : IAsyncLifetime
{
    private TestShop shop = null!;
    private PlanView plan = null!;

    public async ValueTask InitializeAsync()
    {
        shop = await TestShop.OpenAsync(change: services => services.AddSingleton<ICutPlanner, ShopCutPlanner>());
        var project = await Some.ProjectAsync(shop);
        await shop.Parts.SaveAsync(
            project.Id,
            [
                Some.New(Some.Part("30", "A", "7")),
                Some.New(Some.Part("20", "B", "2", width: "1 1/4")),
                Some.New(Some.Part("27", "P", "4", Some.Birch, "13 1/4")),
            ],
            TestShop.Cancel
        );
        var store = await Some.StoreAsync(shop, Some.Price(), Some.Price("96", "64.00", Some.Birch, "48"));
        await shop.Stock.AddAsync(Some.Offcut("41 3/8"), Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel);
        var order = new PlanOrder([project.Id], null, [store.Id], true, true, 2, []);
        var job = (await shop.Plans.StartAsync(order, CommandId.New(), TestShop.Cancel)).Value!;
        while (shop.Plans.FindJob(job.Id) is { State: PlanJobState.Waiting or PlanJobState.Running })
            await Task.Delay(10, TestShop.Cancel);
        var end = shop.Plans.FindJob(job.Id)!;
        Assert.True(end.State == PlanJobState.Done, string.Join("; ", end.Faults));
        plan = (await shop.Plans.GetAsync(end.PlanId!.Value, TestShop.Cancel))!;
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public void Every_part_is_placed_and_the_offcut_used()
    {
        Assert.Empty(plan.Plan.Unplaced);
        Assert.Contains("B1", plan.Plan.Layouts.Select(layout => layout.Stock));
    }

    // The sheet is 48 in wide; its edge trim of 1/4 in is a strip of 1/8 in and a kerf of 1/8 in.
    [Fact]
    public void A_thin_strip_of_waste_is_never_ripped_between_fence_and_blade()
    {
        var sheet = Enumerable.Range(0, plan.Plan.Layouts.Length).Single(i => !PlanLayouts.IsBoard(plan, i));
        var steps = CutTexts.Steps(plan, sheet);
        var trim = steps.Single(step => step.Cut.Piece == "sheet");
        Assert.Equal((CutKind.Rip, Length.FromInches(0, 1, 8)), (trim.Cut.Kind, trim.Cut.At));
        Assert.Equal((CutPurpose.TrimEdge, CutTool.Fence, Length.FromInches(47, 3, 4)), (trim.Purpose, trim.Tool, trim.Setting));
        Assert.Equal(CutPurpose.SquareEnd, steps.Single(step => step.Cut.Piece == trim.Cut.Second).Purpose);
        var small = plan with
        {
            Request = plan.Request with { Saw = plan.Request.Saw with { WidestRip = Length.FromInches(30) } },
        };
        var byGuide = CutTexts.Steps(small, sheet)[trim.Cut.N - 1];
        Assert.Equal((CutPurpose.TrimEdge, CutTool.Straightedge, trim.Cut.At), (byGuide.Purpose, byGuide.Tool, byGuide.Setting));
        Assert.All(
            steps.Where(step => step.Cut.FirstPart is not null),
            step => Assert.Equal((CutPurpose.Part, step.Cut.At), (step.Purpose, step.Setting))
        );
    }

    [Fact]
    public async Task A_sliver_in_the_bin_is_no_stock_and_holds_no_plan_up()
    {
        var sliver = Some.Offcut("6", Some.Birch) with { Width = "1/16" };
        Assert.True((await shop.Stock.AddAsync(sliver, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel)).Ok);
        var preview = (await shop.Plans.PreviewAsync(plan.Order with { Replaces = [plan.Summary.Id] }, TestShop.Cancel)).Value!;
        Assert.Equal(["B1"], preview.Request.Stock.Where(stock => stock.Offcut).Select(stock => stock.Id));
    }

    [Fact]
    public void Every_finished_piece_is_freed_by_a_cut_where_it_lies()
    {
        for (var i = 0; i < plan.Plan.Layouts.Length; i++)
        {
            var freed = PlanLayouts.Trace(plan, i).SelectMany(PlanLayouts.PartsOf).ToHashSet();
            Assert.All(plan.Plan.Layouts[i].Pieces, piece => Assert.Contains((piece.Part, piece.X, piece.Y), freed));
        }
    }

    [Fact]
    public void Pictures_show_all_pieces_within_the_stock_and_cuts_as_wide_as_the_kerf()
    {
        for (var i = 0; i < plan.Plan.Layouts.Length; i++)
        {
            var picture = PlanPictures.ForLayout(plan, i);
            Assert.Equal(plan.Plan.Layouts[i].Pieces.Length, picture.Pieces.Length);
            Assert.All(
                picture.Pieces,
                piece =>
                    Assert.True(piece.Area.X + piece.Area.Dx <= picture.Length && piece.Area.Y + piece.Area.Dy <= picture.Width)
            );
            Assert.All(picture.Cuts, cut => Assert.True(Length.Min(cut.Kerf.Dx, cut.Kerf.Dy) <= plan.Request.Saw.Kerf));
        }
    }

    [Fact]
    public void Marks_number_every_physical_piece_once()
    {
        var marks = new PlanMarks(plan);
        var all = plan
            .Plan.Layouts.SelectMany(
                (layout, l) =>
                    Enumerable
                        .Range(1, layout.Copies)
                        .SelectMany(copy => Enumerable.Range(0, layout.Pieces.Length).Select(piece => marks.Of(l, piece, copy)))
            )
            .Order()
            .ToList();
        Assert.Equal([.. Enumerable.Range(1, 7).Select(n => $"A{n}"), "B1", "B2", "P1", "P2", "P3", "P4"], all);
    }

    [Fact]
    public async Task The_documents_are_of_the_open_format_and_read_back_the_same()
    {
        var request = CutRequestJson
            .Read(Utf8((await shop.Plans.ExportAsync(plan.Summary.Id, false, TestShop.Cancel))!))
            .Request!;
        var read = CutPlanJson.Read(Utf8((await shop.Plans.ExportAsync(plan.Summary.Id, true, TestShop.Cancel))!)).Plan!;
        Assert.Equal(plan.Request.Parts, request.Parts);
        Assert.Equal(plan.Request.Stock, request.Stock);
        Assert.Equal(plan.Plan.Cost, read.Cost);
        Assert.Equal(
            plan.Plan.Layouts.Select(layout => layout.Pieces.Length),
            read.Layouts.Select(layout => layout.Pieces.Length)
        );
    }

    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public async Task The_packet_is_a_pdf(PaperSize paper)
    {
        var packet = (await shop.Plans.PacketAsync(plan.Summary.Id, paper, cancel: TestShop.Cancel))!;
        Assert.Equal("%PDF-", Encoding.ASCII.GetString(packet, 0, 5));
    }

    [Fact]
    public async Task A_plan_that_is_gone_has_neither_documents_nor_packet()
    {
        Assert.Null(await shop.Plans.ExportAsync(Guid.NewGuid(), true, TestShop.Cancel));
        Assert.Null(await shop.Plans.PacketAsync(Guid.NewGuid(), PaperSize.A4, cancel: TestShop.Cancel));
    }

    // A blade as wide as the stock leaves nothing to plan with.
    [Fact]
    public async Task A_kerf_wider_than_the_stock_is_refused_before_planning()
    {
        var settings = await shop.Shop.GetAsync(TestShop.Cancel);
        var outcome = await shop.Shop.SaveAsync(settings with { Kerf = "100" }, TestShop.Cancel);
        Assert.Equal((OutcomeKind.Faulty, nameof(ShopSettings.Kerf)), (outcome.Kind, outcome.Faults.Single().Field));
    }

    private static MemoryStream Utf8(string text) => new(Encoding.UTF8.GetBytes(text));
}
