using System.Collections.Immutable;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Designs;

/// <summary>A shop with a project that was begun from a built-in design.</summary>
internal sealed class Ideas(TestShop shop, ProjectView project) : IAsyncDisposable
{
    public TestShop Shop => shop;

    public Guid Project => project.Id;

    public ProjectView View => project;

    public IIdeaService Service => shop.Get<IIdeaService>();

    public IPieceService Pieces => shop.Get<IPieceService>();

    public static CancellationToken Cancel => TestShop.Cancel;

    public static async Task<Ideas> BeginAsync(
        string design = "bookcase",
        Action<Microsoft.Extensions.DependencyInjection.IServiceCollection>? change = null
    )
    {
        var shop = await TestShop.OpenAsync(change: change);
        var begun = await shop.Get<IIdeaService>().BeginAsync(design, "", CommandId.New(), Cancel);
        Assert.True(begun.Ok, string.Join("; ", begun.Faults));
        return new(shop, begun.Value);
    }

    public async Task<IdeaView> ReadAsync() => (await Service.GetAsync(Project, Cancel))!;

    /// <summary>Sets a value as a page does: on what was read last.</summary>
    public async Task<IdeaView> SetAsync(string name, string text)
    {
        var view = await ReadAsync();
        var saved = await Service.SaveAsync(
            Project,
            view.Idea with
            {
                Changed = view.Idea.Changed.SetItem(name, text),
            },
            view.Version,
            name,
            Cancel
        );
        Assert.True(saved.Ok, string.Join("; ", saved.Faults));
        return saved.Value;
    }

    /// <summary>Leaves the material of a role to whoever builds the piece.</summary>
    public async Task LeaveOpenAsync(string role)
    {
        var view = await ReadAsync();
        var materials = view.Idea.Document.Materials.Select(one =>
            one.Role == role ? one with { Id = null, Name = "To be chosen" } : one
        );
        var saved = await Service.SaveAsync(
            Project,
            view.Idea with
            {
                Document = view.Idea.Document with { Materials = [.. materials] },
            },
            view.Version,
            role,
            Cancel
        );
        Assert.True(saved.Ok, string.Join("; ", saved.Faults));
    }

    public async Task<MadeParts> MakeAsync(bool mayLetter = false)
    {
        var made = await Service.MakePartsAsync(Project, mayLetter, CommandId.New(), Cancel);
        Assert.True(made.Ok, string.Join("; ", made.Faults));
        return made.Value;
    }

    public async Task<PartsUpdate> CompareAsync() => (await Service.CompareAsync(Project, Cancel))!;

    public async Task<ImmutableArray<PartRow>> RowsAsync() => (await shop.Parts.GetAsync(Project, Cancel))!.Rows;

    public ValueTask DisposeAsync() => shop.DisposeAsync();
}
