using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Making.Stored;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Tests.Making;

/// <summary>A shop with a project that has an order of work.</summary>
internal sealed class WorkProjects(TestShop shop, Guid project) : IAsyncDisposable
{
    public TestShop Shop => shop;

    public Guid Project => project;

    public IWorkService Work => shop.Get<IWorkService>();

    public static CancellationToken Cancel => TestShop.Cancel;

    /// <summary>Begun from a built-in design.</summary>
    public static async Task<WorkProjects> OfDesignAsync(string design = "bookcase")
    {
        var shop = await TestShop.OpenAsync();
        var begun = await shop.Get<IIdeaService>().BeginAsync(design, "", CommandId.New(), Cancel);
        Assert.True(begun.Ok, string.Join("; ", begun.Faults));
        return new(shop, begun.Value.Id);
    }

    /// <summary>Parts typed by hand, without a design.</summary>
    public static async Task<WorkProjects> OfPartsAsync(params string[] lengths)
    {
        var shop = await TestShop.OpenAsync();
        var project = (await Some.ProjectAsync(shop)).Id;
        foreach (var length in lengths)
            Assert.True((await shop.Parts.SaveAsync(project, [Some.New(Some.Part(length))], Cancel)).Ok);
        return new(shop, project);
    }

    public async Task<WorkView> ReadAsync() => (await Work.GetAsync(project, Cancel))!;

    public async Task<WorkView> MarkAsync(string step, StepMark mark) =>
        Value(await Work.MarkAsync(project, step, mark, CommandId.New(), Cancel));

    public async Task<WorkView> AddAsync(string title, string says = "", WorkPage page = WorkPage.Build) =>
        Value(await Work.AddStepAsync(project, page, title, says, CommandId.New(), Cancel));

    public async Task<StepTexts> WriteAsync(string step, Func<StepTexts, StepTexts> change) =>
        Value(await Work.SaveTextsAsync(change((await Work.TextsAsync(project, step, Cancel))!), Cancel));

    /// <summary>Changes a size of the design.</summary>
    public async Task ResizeAsync(string dimension, string text)
    {
        var ideas = shop.Get<IIdeaService>();
        var view = (await ideas.GetAsync(project, Cancel))!;
        var idea = view.Idea with { Changed = view.Idea.Changed.SetItem(dimension, text) };
        Value(await ideas.SaveAsync(project, idea, view.Version, dimension, Cancel));
    }

    /// <summary>Puts a document in the place of what is kept.</summary>
    public Task StoreAsync(WorkDocument document) =>
        shop.Work.WriteAsync<Done>(
            async db =>
            {
                if (await db.Works.FindAsync([project], Cancel) is { } row)
                    row.Document = document.Write();
                else
                    db.Works.Add(new StoredWork { ProjectId = project, Document = document.Write() });
                return Done.Value;
            },
            Cancel
        );

    public static T Value<T>(Outcome<T> outcome)
        where T : class
    {
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value;
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();
}
