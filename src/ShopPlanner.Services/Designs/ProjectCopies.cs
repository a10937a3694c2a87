using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making.Stored;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Designs;

internal sealed partial class ProjectCopies(ShopCommands commands, TimeProvider clock) : IProjectCopies
{
    private const string Suffix = " copy";

    public Task<Outcome<ProjectView>> DuplicateAsync(Guid projectId, CommandId command, CancellationToken cancel = default) =>
        commands.RunAsync(
            ProjectService.Begin(
                command,
                CommandTexts.Asked("duplicate", projectId),
                db => DuplicateAsync(db, projectId, cancel),
                cancel
            ),
            cancel
        );

    private async Task<Outcome<ProjectView>> DuplicateAsync(ShopContext db, Guid projectId, CancellationToken cancel)
    {
        if (await db.Projects.AsNoTracking().SingleOrDefaultAsync(one => one.Id == projectId, cancel) is not { } source)
            return Outcome.Missing<ProjectView>("project");
        var names = (await db.Projects.Select(one => one.Name).ToListAsync(cancel)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var copy = await ProjectService.AddAsync(db, NameOf(source.Name, names), source.Unit, clock, cancel);
        copy.Note = source.Note;
        var rows = await CopyPartsAsync(db, projectId, copy.Id, cancel);
        await CopyIdeaAsync(db, projectId, copy.Id, rows, cancel);
        await CopyWorkingsAsync(db, projectId, copy.Id, cancel);
        await CopyWorkAsync(db, projectId, copy.Id, cancel);
        await db.SaveChangesAsync(cancel);
        return (await ProjectService.ViewAsync(db, copy.Id, cancel))!;
    }

    // Hall bench, Hall bench copy, Hall bench copy 2.
    private static string NameOf(string name, HashSet<string> taken)
    {
        var stem = CopyOf().Replace(name, "");
        return Enumerable
            .Range(1, taken.Count + 1)
            .Select(n => n == 1 ? Suffix : $"{Suffix} {n}")
            .Select(end => stem[..Math.Min(stem.Length, TextRules.NameCharacters - end.Length)].TrimEnd() + end)
            .First(one => !taken.Contains(one));
    }

    // Answers with the new row of each old one.
    private static async Task<Dictionary<Guid, Guid>> CopyPartsAsync(ShopContext db, Guid from, Guid to, CancellationToken cancel)
    {
        var rows = new Dictionary<Guid, Guid>();
        foreach (var part in await PartRows.Of(db, from).AsNoTracking().ToListAsync(cancel))
        {
            var copy = new StoredPart
            {
                Id = Guid.CreateVersion7(),
                ProjectId = to,
                Position = part.Position,
            };
            copy.Take(part.Texts);
            db.Parts.Add(copy);
            rows.Add(part.Id, copy.Id);
        }

        return rows;
    }

    private static async Task CopyIdeaAsync(
        ShopContext db,
        Guid from,
        Guid to,
        Dictionary<Guid, Guid> rows,
        CancellationToken cancel
    )
    {
        if (await db.Ideas.AsNoTracking().SingleOrDefaultAsync(idea => idea.ProjectId == from, cancel) is not { } source)
            return;
        db.Ideas.Add(
            new StoredIdea
            {
                ProjectId = to,
                Document = source.Document,
                Changed = source.Changed,
                Made = MadeRowsDocument.Write(MadeRowsDocument.Read(source.Made).Select(one => Copy(one, rows))),
            }
        );
        var steps = await db
            .IdeaSteps.AsNoTracking()
            .Where(step => step.ProjectId == from)
            .OrderBy(step => step.Number)
            .ToListAsync(cancel);
        foreach (var step in steps)
            db.IdeaSteps.Add(Copy(step, to, await db.NextAsync(Counters.IdeaSteps, cancel)));
    }

    // A row that was made and then deleted by hand is remembered, so that it does not come back.
    private static MadeRow Copy(MadeRow made, Dictionary<Guid, Guid> rows) =>
        made with
        {
            Row = rows.GetValueOrDefault(made.Row, made.Row),
        };

    private static StoredIdeaStep Copy(StoredIdeaStep step, Guid to, long number) =>
        new()
        {
            Id = Guid.CreateVersion7(),
            ProjectId = to,
            Number = number,
            Title = step.Title,
            // A change that follows in the copy is a step of its own, though it has the same title.
            WhenUtc = DateTime.UnixEpoch,
            DocumentBefore = step.DocumentBefore,
            ChangedBefore = step.ChangedBefore,
            DocumentAfter = step.DocumentAfter,
            ChangedAfter = step.ChangedAfter,
            Undone = step.Undone,
        };

    private static async Task CopyWorkingsAsync(ShopContext db, Guid from, Guid to, CancellationToken cancel)
    {
        foreach (var working in await db.Workings.AsNoTracking().Where(one => one.ProjectId == from).ToListAsync(cancel))
            db.Workings.Add(
                new StoredWorking
                {
                    Id = Guid.CreateVersion7(),
                    ProjectId = to,
                    Form = working.Form,
                    Given = working.Given,
                    Unit = working.Unit,
                    Result = working.Result,
                    KeptUtc = working.KeptUtc,
                }
            );
    }

    private static async Task CopyWorkAsync(ShopContext db, Guid from, Guid to, CancellationToken cancel)
    {
        if (await db.Works.AsNoTracking().SingleOrDefaultAsync(one => one.ProjectId == from, cancel) is { } source)
            db.Works.Add(new StoredWork { ProjectId = to, Document = WorkDocument.Read(source.Document).ForCopy().Write() });
    }

    [GeneratedRegex(@" copy(?: \d{1,4})?$", RegexOptions.IgnoreCase)]
    private static partial Regex CopyOf();
}
