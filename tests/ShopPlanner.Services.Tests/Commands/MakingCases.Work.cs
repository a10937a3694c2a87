using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Weekends;

namespace ShopPlanner.Services.Tests.Commands;

internal static partial class MakingCases
{
    private static IEnumerable<MakingCase> Work() =>
        [
            Of<IWorkService, WorkView>(
                nameof(IWorkService.MarkAsync),
                async given =>
                {
                    var (project, step) = (given.Project.Id, await OwnStepAsync(given, "Glue the frame"));
                    return (shop, id) => shop.Get<IWorkService>().MarkAsync(project, step, StepMark.Done, id, Cancel);
                },
                Say
            ),
            Of<IWorkService, WorkView>(
                nameof(IWorkService.NoteAsync),
                async given =>
                {
                    var (project, step) = (given.Project.Id, await OwnStepAsync(given, "Glue the frame"));
                    return (shop, id) => shop.Get<IWorkService>().NoteAsync(project, step, "Left clamp is stiff.", id, Cancel);
                },
                Say
            ),
            Of<IWorkService, WorkView>(
                nameof(IWorkService.TookAsync),
                async given =>
                {
                    var (project, step) = (given.Project.Id, await OwnStepAsync(given, "Glue the frame"));
                    return (shop, id) => shop.Get<IWorkService>().TookAsync(project, step, "1:30", id, Cancel);
                },
                Say
            ),
            Of<IWorkService, WorkView>(
                nameof(IWorkService.AddCuttingTimeAsync),
                given => (shop, id) => shop.Get<IWorkService>().AddCuttingTimeAsync(given.Project.Id, "50", 40, id, Cancel),
                Say
            ),
            Of<IWeekendFeedService, WeekendFeed>(
                nameof(IWeekendFeedService.MakeAsync),
                _ => (shop, id) => shop.Get<IWeekendFeedService>().MakeAsync(id, Cancel),
                feed => feed.Token
            ),
            Of<IWorkService, WorkView>(
                nameof(IWorkService.MoveAsync),
                async given =>
                {
                    await OwnStepAsync(given, "Glue the frame");
                    var (project, step) = (given.Project.Id, await OwnStepAsync(given, "Wipe off the glue"));
                    return (shop, id) => shop.Get<IWorkService>().MoveAsync(project, step, WorkPage.Build, true, id, Cancel);
                },
                Say
            ),
            Of<IWorkService, WorkView>(
                nameof(IWorkService.AddStepAsync),
                given =>
                    (shop, id) =>
                        shop.Get<IWorkService>().AddStepAsync(given.Project.Id, WorkPage.Build, "Glue the frame", "", id, Cancel),
                Say
            ),
            Of<IWorkService, WorkView>(
                nameof(IWorkService.ListFinishAsync),
                given => (shop, id) => shop.Get<IWorkService>().ListFinishAsync(given.Project.Id, Some.Device, id, Cancel),
                Say
            ),
        ];

    private static IEnumerable<MakingCase> Noted() =>
        [
            Of<IBenchService, Done>(
                nameof(IBenchService.NoteCutAsync),
                async given =>
                {
                    var plan = (await given.PlanAsync()).Summary.Id;
                    return (shop, id) => shop.Bench.NoteCutAsync(plan, 1, 1, true, Some.Device, id, Cancel);
                }
            ),
        ];

    private static async Task<string> OwnStepAsync(PlannedShop given, string title)
    {
        var work = given.Shop.Get<IWorkService>();
        var added = await work.AddStepAsync(given.Project.Id, WorkPage.Build, title, "", CommandId.New(), Cancel);
        return added.Value!.Steps.Single(one => one.Title == title).Step.Id;
    }

    private static string Say(WorkView view) =>
        $"{view.Version} {view.Undo} {string.Join(' ', view.Steps.Select(one => $"{one.Step.Id} {one.Title} {one.Mark}"))}";
}
