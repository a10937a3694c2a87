using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Demo;

/// <summary>Begins the demo's projects from built-in designs and makes their parts.</summary>
internal sealed class DemoProjects(BuiltInDesigns designs, TimeProvider clock)
{
    private const string File = "projects.json";

    /// <summary>Adds a project with its idea and its parts; returns its id.</summary>
    /// <exception cref="ShopStartException">It names no design, or its parts cannot be made.</exception>
    public async Task<Guid> AddAsync(ShopContext db, DemoProject demo, CancellationToken cancel)
    {
        if (designs.All.FirstOrDefault(one => one.Key == demo.Design) is not { Document: var design })
            throw Wrong(Fault.Of("design", demo.Design, "is not a built-in design"));
        var project = await ProjectService.AddAsync(db, design.Name, design.Unit, clock, cancel);
        project.Note = demo.Note;
        var idea = IdeaService.Row(project.Id, design);
        idea.Changed = TextsDocument.Write(demo.Sizes);
        db.Ideas.Add(idea);
        await db.SaveChangesAsync(cancel);
        var made = await PartMaking.RunAsync(db, project.Id, mayLetter: false, cancel);
        DemoSeed.Refuse(File, made.Faults);
        return project.Id;
    }

    private static ShopStartException Wrong(Fault fault) =>
        new($"The demo file {File} is wrong: {fault}. Correct it, or start without the demo.");
}
