using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Projects;

internal sealed class ProjectService(ShopWork work, ShopCommands commands, TimeProvider clock) : IProjectService
{
    public Task<IReadOnlyList<ProjectView>> ListAsync(bool withPutAway = false, CancellationToken cancel = default) =>
        work.ReadAsync(db => ListAsync(db, withPutAway, cancel), cancel);

    public Task<ProjectView?> GetAsync(Guid id, CancellationToken cancel = default) =>
        work.ReadAsync(db => ViewAsync(db, id, cancel), cancel);

    public Task<Outcome<ProjectView>> CreateAsync(
        string name,
        LengthUnit unit,
        CommandId command,
        CancellationToken cancel = default
    ) =>
        TextRules.Name(nameof(ProjectView.Name), name) is { } fault
            ? Task.FromResult(Outcome.Faulty<ProjectView>(fault))
            : commands.RunAsync(
                Begin(command, CommandTexts.Asked("project", name, unit), db => CreateAsync(db, name, unit, cancel), cancel),
                cancel
            );

    public Task<Outcome<ProjectView>> SaveAsync(ProjectView project, CancellationToken cancel = default)
    {
        var faults = Check(project);
        return faults.Count > 0
            ? Task.FromResult(Outcome.Faulty<ProjectView>(faults))
            : work.WriteAsync(db => SaveAsync(db, project, cancel), cancel);
    }

    public Task<Outcome<ProjectView>> MoveAsync(Guid id, ProjectState state, CancellationToken cancel = default) =>
        Enum.IsDefined(state)
            ? work.WriteAsync(db => MoveAsync(db, id, state, cancel), cancel)
            : Task.FromResult(
                Outcome.Faulty<ProjectView>(Fault.Of(nameof(ProjectView.State), state.ToString(), "is not a state"))
            );

    public Task<Outcome<ProjectView>> RestoreAsync(Guid id, CancellationToken cancel = default) =>
        work.WriteAsync(db => ChangeAsync(db, id, project => project.IsArchived = false, cancel), cancel);

    private static async Task<IReadOnlyList<ProjectView>> ListAsync(ShopContext db, bool withPutAway, CancellationToken cancel)
    {
        var materials = await MaterialIndex.LoadAsync(db, cancel);
        var parts = (await db.Parts.ToListAsync(cancel)).ToLookup(part => part.ProjectId);
        var projects = await db
            .Projects.Where(p => withPutAway || !p.IsArchived)
            .OrderByDescending(p => p.Number)
            .ToListAsync(cancel);
        var standings = await ProjectStandings.LoadAsync(db, null, cancel);
        var ideas = (await db.Ideas.Select(idea => idea.ProjectId).ToListAsync(cancel)).ToHashSet();
        return
        [
            .. projects.Select(project =>
                View(project, [.. parts[project.Id]], materials, standings) with
                {
                    HasIdea = ideas.Contains(project.Id),
                }
            ),
        ];
    }

    /// <summary>Returns the making of a project.</summary>
    internal static Making<ProjectView> Begin(
        CommandId command,
        string asked,
        Func<ShopContext, Task<Outcome<ProjectView>>> make,
        CancellationToken cancel
    ) =>
        new(command, asked)
        {
            Make = make,
            Made = project => CommandTexts.Text(project.Id),
            Find = (db, made) => ViewAsync(db, Guid.Parse(made), cancel),
            What = "project",
        };

    /// <summary>Returns a project as it is stored, or null.</summary>
    internal static async Task<ProjectView?> ViewAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await db.Projects.AsNoTracking().SingleOrDefaultAsync(p => p.Id == id, cancel) is not { } project)
            return null;
        var parts = await PartRows.Of(db, id).AsNoTracking().ToListAsync(cancel);
        var standings = await ProjectStandings.LoadAsync(db, [id], cancel);
        return View(project, parts, await MaterialIndex.LoadAsync(db, cancel), standings) with
        {
            HasIdea = await db.Ideas.AnyAsync(idea => idea.ProjectId == id, cancel),
        };
    }

    private async Task<Outcome<ProjectView>> CreateAsync(ShopContext db, string name, LengthUnit unit, CancellationToken cancel)
    {
        var project = await AddAsync(db, name, unit, clock, cancel);
        await db.SaveChangesAsync(cancel);
        return (await ViewAsync(db, project.Id, cancel))!;
    }

    /// <summary>Adds a project with a code of its own.</summary>
    internal static async Task<StoredProject> AddAsync(
        ShopContext db,
        string name,
        LengthUnit unit,
        TimeProvider clock,
        CancellationToken cancel
    )
    {
        // Those in the trash may come back, with their codes.
        var taken = (await db.Projects.IgnoreQueryFilters().Select(p => p.Code).ToListAsync(cancel)).ToHashSet();
        return db
            .Projects.Add(
                new StoredProject
                {
                    Id = Guid.CreateVersion7(clock.GetUtcNow()),
                    Name = TextRules.Tidy(name),
                    Code = ProjectCodes.Make(TextRules.Tidy(name), taken),
                    Unit = unit,
                    Number = await db.NextAsync(Counters.Projects, cancel),
                    MadeUtc = clock.GetUtcNow().UtcDateTime,
                }
            )
            .Entity;
    }

    private static async Task<Outcome<ProjectView>> SaveAsync(ShopContext db, ProjectView wanted, CancellationToken cancel)
    {
        if (await db.Projects.FindAsync([wanted.Id], cancel) is not { } stored)
            return Outcome.Missing<ProjectView>("project");
        if (stored.Version != wanted.Version)
            return Outcome.Conflict<ProjectView>(
                Fault.Of(nameof(wanted.Name), stored.Name, "is the project now: another device changed it")
            );
        if (
            await db
                .Projects.IgnoreQueryFilters()
                .SingleOrDefaultAsync(p => p.Code == wanted.Code && p.Id != wanted.Id, cancel) is
            { } other
        )
            return Outcome.Faulty<ProjectView>(
                new Fault(
                    nameof(wanted.Code),
                    wanted.Code,
                    other.DeletedUtc is null
                        ? "is the label prefix of another project: choose other letters"
                        : $"is the label prefix of {other.Name}, which is in the trash: choose other letters"
                )
            );
        if (stored.Unit != wanted.Unit)
            await UnitChange.RewritePartsAsync(db, stored.Id, stored.Unit, wanted.Unit, cancel);
        (stored.Name, stored.Code, stored.Unit) = (TextRules.Tidy(wanted.Name), wanted.Code, wanted.Unit);
        stored.Note = wanted.Note;
        await db.SaveChangesAsync(cancel);
        return (await ViewAsync(db, stored.Id, cancel))!;
    }

    private static async Task<Outcome<ProjectView>> MoveAsync(
        ShopContext db,
        Guid id,
        ProjectState state,
        CancellationToken cancel
    )
    {
        if (state == ProjectState.PutAway)
            return await ChangeAsync(db, id, project => project.IsArchived = true, cancel);
        if (await ViewAsync(db, id, cancel) is not { Standing: var now })
            return Outcome.Missing<ProjectView>("project");
        return await ChangeAsync(
            db,
            id,
            project =>
            {
                project.IsArchived = false;
                HandState.Put(project, state == now.Told ? null : new HandState(state, now.Told, now.Build));
            },
            cancel
        );
    }

    private static async Task<Outcome<ProjectView>> ChangeAsync(
        ShopContext db,
        Guid id,
        Action<StoredProject> change,
        CancellationToken cancel
    )
    {
        if (await db.Projects.FindAsync([id], cancel) is not { } stored)
            return Outcome.Missing<ProjectView>("project");
        change(stored);
        await db.SaveChangesAsync(cancel);
        return (await ViewAsync(db, id, cancel))!;
    }

    private static List<Fault> Check(ProjectView project)
    {
        Fault?[] faults =
        [
            TextRules.Name(nameof(project.Name), project.Name),
            ProjectCodes.IsCode(project.Code)
                ? null
                : Fault.Of(
                    nameof(project.Code),
                    project.Code,
                    "is not a label prefix: write one to three capital letters from A to Z"
                ),
            TextRules.Free(nameof(project.Note), project.Note, TextRules.NoteCharacters),
            Enum.IsDefined(project.Unit) ? null : Fault.Of(nameof(project.Unit), project.Unit.ToString(), "is not a unit"),
        ];
        return [.. faults.OfType<Fault>()];
    }

    private static ProjectView View(
        StoredProject project,
        IReadOnlyList<StoredPart> parts,
        MaterialIndex materials,
        ProjectStandings standings
    )
    {
        var rows = PartRows.Read(project, parts, materials);
        return new ProjectView(
            project.Id,
            project.Name,
            project.Code,
            project.Unit,
            project.Note,
            rows.Length,
            rows.Sum(row => row.Part?.Quantity ?? 0),
            rows.Count(row => row.Part is null),
            project.Version
        )
        {
            Standing = standings.Of(project, rows),
        };
    }
}
