using System.IO.Compression;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Workings;

namespace ShopPlanner.Services.Tests.Golden;

/// <summary>Writes a folder of a shop in use, to be opened by later programs. Run it once, before a release changes what is stored:
/// <c>SHOP_PLANNER_GOLDEN=FILE.zip … -explicit only -class "*GoldenWriter"</c>.</summary>
public sealed class GoldenWriter
{
    [Fact(Explicit = true)]
    public async Task Write()
    {
        var file = Environment.GetEnvironmentVariable("SHOP_PLANNER_GOLDEN");
        Assert.False(string.IsNullOrEmpty(file), "SHOP_PLANNER_GOLDEN names the file to write");
        var folder = TestShop.NewFolder();
        await using (var shop = await OpenAsync(folder, demo: true))
            await new Use(shop).RunAsync();
        string facts;
        await using (var shop = await OpenAsync(folder, demo: false))
            facts = await ShopFacts.TellAsync(shop);
        using (var zip = ZipFile.Open(file, ZipArchiveMode.Create))
        {
            zip.CreateEntryFromFile(Path.Combine(folder, "shop.db"), "shop.db", CompressionLevel.SmallestSize);
            await using var entry = new StreamWriter(zip.CreateEntry("facts.txt", CompressionLevel.SmallestSize).Open());
            await entry.WriteAsync(facts);
        }

        Directory.Delete(folder, recursive: true);
    }

    private static Task<TestShop> OpenAsync(string folder, bool demo) =>
        TestShop.OpenAsync(demo, folder, services => services.AddSingleton<ICutPlanner, ShopCutPlanner>());

    private sealed class Use(TestShop shop)
    {
        private static CancellationToken Cancel => TestShop.Cancel;

        public async Task RunAsync()
        {
            var projects = (await shop.Projects.ListAsync(cancel: Cancel)).ToDictionary(project => project.Name);
            await EditPartsAsync(projects["Mudroom bench"].Id);
            await KeepWorkingAsync(projects["Mudroom bench"].Id);
            await BuildIdeaAsync();
            await CorrectStockAsync();
            var cut = await PlanAsync(projects["Pantry cupboard"].Id, projects["Plant stand"].Id);
            await CutAsync(cut);
            var withdrawn = await PlanAsync(projects["Mudroom bench"].Id);
            Sure(await shop.Plans.WithdrawAsync(withdrawn, Cancel));
            var ready = await PlanAsync(projects["Mudroom bench"].Id);
            shop.Clock.Advance(TimeSpan.FromDays(1));
            await CorrectPromisedAsync(ready);
        }

        private async Task EditPartsAsync(Guid project)
        {
            var sheet = (await shop.Parts.GetAsync(project, Cancel))!;
            var row = sheet.Rows[0];
            Sure(
                await shop.Parts.SaveAsync(
                    project,
                    [new PartEdit(row.Texts with { Note = "front edge rounded" }, row.Version)],
                    Cancel
                )
            );
            Sure(await shop.Parts.PasteAsync(project, "Z\tPeg\tpoplar-1x2\t6\t\t4", CommandId.New(), Cancel));
            Sure(await shop.Parts.UndoAsync(project, Cancel));
        }

        private async Task KeepWorkingAsync(Guid project) =>
            Sure(
                await shop.Get<IWorkingService>()
                    .KeepAsync(
                        project,
                        "board-feet",
                        new Dictionary<string, string>
                        {
                            ["thickness"] = "1",
                            ["width"] = "6",
                            ["length"] = "8 ft",
                        },
                        Some.Inch,
                        CommandId.New(),
                        Cancel
                    )
            );

        private async Task BuildIdeaAsync()
        {
            var ideas = shop.Get<IIdeaService>();
            var project = Sure(await ideas.BeginAsync("bookcase", "Hall bookcase", CommandId.New(), Cancel));
            foreach (var (name, value) in (IEnumerable<(string, string)>)[("height", "50"), ("width", "30")])
            {
                var view = (await ideas.GetAsync(project.Id, Cancel))!;
                var idea = view.Idea with { Changed = view.Idea.Changed.SetItem(name, value) };
                Sure(await ideas.SaveAsync(project.Id, idea, view.Version, name, Cancel));
            }

            Sure(await ideas.MakePartsAsync(project.Id, false, CommandId.New(), Cancel));
            Sure(await ideas.UndoAsync(project.Id, (await ideas.GetAsync(project.Id, Cancel))!.Version, Cancel));
        }

        private async Task CorrectStockAsync()
        {
            var piece = (await shop.Stock.ListAsync(Cancel)).First(piece => piece.Place == StockPlace.Bin);
            Sure(await shop.Stock.DiscardAsync(piece.Id, piece.Version, "split", Some.Device, Cancel));
            var entry = (await shop.Stock.HistoryAsync(piece.Id, 1, Cancel)).Single();
            Sure(await shop.Stock.UndoAsync(entry.Id, Some.Device, Cancel));
            Sure(
                await shop.Stock.AddAsync(Some.Offcut("31 1/4", quantity: "2"), Some.Inch, Some.Device, CommandId.New(), Cancel)
            );
        }

        private async Task<Guid> PlanAsync(params Guid[] projects)
        {
            var stores = (await shop.Stores.ListAsync(Cancel)).Select(store => store.Id);
            var order = new PlanOrder([.. projects], null, [.. stores], UseRack: true, UseBin: true, Seconds: 2, Replaces: []);
            var job = Sure(await shop.Plans.StartAsync(order, CommandId.New(), Cancel));
            while (shop.Plans.FindJob(job.Id) is { State: PlanJobState.Waiting or PlanJobState.Running })
                await Task.Delay(20, Cancel);
            return shop.Plans.FindJob(job.Id)!.PlanId!.Value;
        }

        // The first is cut and finished, the second finished and opened again, the third begun.
        private async Task CutAsync(Guid plan)
        {
            var layouts = (await shop.Plans.GetAsync(plan, Cancel))!.Plan.Layouts;
            var stocks = (await shop.Bench.GetAsync(plan, Cancel))!
                .Stocks.OrderByDescending(stock => layouts[stock.Layout].Leftovers.Count(leftover => leftover.Keep))
                .ToList();
            await FinishAsync(plan, stocks[0]);
            await FinishAsync(plan, stocks[1]);
            Sure(await shop.Bench.ReopenAsync(plan, stocks[1].Layout, stocks[1].Copy, Some.Device, CommandId.New(), Cancel));
            await TickAsync(plan, stocks[2], stocks[2].Cuts[0].Cut.N);
        }

        private async Task FinishAsync(Guid plan, BenchStock stock)
        {
            foreach (var cut in stock.Cuts)
                await TickAsync(plan, stock, cut.Cut.N);
            var leftovers = (await shop.Plans.GetAsync(plan, Cancel))!.Plan.Layouts[stock.Layout].Leftovers;
            var measured = leftovers
                .Select((leftover, i) => new MeasuredLeftover(i, leftover.Dx.ToString(), leftover.Dy.ToString(), leftover.Keep))
                .ToList();
            Sure(
                await shop.Bench.FinishAsync(
                    plan,
                    new FinishedStock(stock.Layout, stock.Copy, AllCutsMade: true, measured),
                    Some.Device,
                    CommandId.New(),
                    Cancel
                )
            );
        }

        private async Task TickAsync(Guid plan, BenchStock stock, int cut) =>
            Sure(await shop.Bench.SetCutAsync(plan, stock.Layout, stock.Copy, cut, true, Some.Device, CommandId.New(), Cancel));

        // A plan that is out of date, and says why.
        private async Task CorrectPromisedAsync(Guid plan)
        {
            var piece = (await shop.Stock.ListAsync(Cancel)).First(piece => piece.PromisedPlanId == plan);
            Sure(await shop.Stock.CorrectAsync(piece.Id, piece.Version, "12", "", "short", Some.Inch, Some.Device, Cancel));
        }

        private static T Sure<T>(Outcome<T> outcome)
            where T : class
        {
            Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
            return outcome.Value!;
        }
    }
}
