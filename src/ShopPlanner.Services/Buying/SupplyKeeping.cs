using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Buying;

/// <summary>Keeps what else a project needs bought: the lines of its design, and the builder's own.</summary>
internal sealed class SupplyKeeping(DesignSupplies designs, TimeProvider clock)
{
    private const int MostOwn = 200;

    /// <summary>Returns a project's lines: the design's first, then the builder's own in the order they were added. A line that
    /// the design no longer asks for stays while it is bought.</summary>
    public async Task<ImmutableArray<SupplyLine>> ListAsync(ShopContext db, Guid project, CancellationToken cancel)
    {
        var said = await db.Supplies.AsNoTracking().Where(row => row.ProjectId == project).ToListAsync(cancel);
        var rows = said.ToDictionary(row => row.Key, StringComparer.Ordinal);
        var idea = await db.Ideas.AsNoTracking().SingleOrDefaultAsync(row => row.ProjectId == project, cancel);
        var needed = idea is null
            ? []
            : designs.Of(idea).Select(one => View(project, one, rows.GetValueOrDefault(KeyOf(one.Name)))).ToList();
        var keys = needed.Select(line => line.Key).ToHashSet(StringComparer.Ordinal);
        var others = said.Where(row => !keys.Contains(row.Key) && (row.Own || row.Bought));
        return
        [
            .. needed,
            .. others
                .OrderBy(row => row.Own)
                .ThenBy(row => row.Number)
                .ThenBy(row => row.Key, StringComparer.Ordinal)
                .Select(View),
        ];
    }

    /// <summary>Returns one line, or null.</summary>
    public async Task<SupplyLine?> FindAsync(ShopContext db, Guid project, string key, CancellationToken cancel) =>
        (await ListAsync(db, project, cancel)).FirstOrDefault(line => line.Key == key);

    /// <summary>Ticks a line, or says what it costs.</summary>
    public async Task<Outcome<SupplyLine>> SetAsync(
        ShopContext db,
        (Guid Project, string Key) at,
        SupplyEdit edit,
        string device,
        CancellationToken cancel
    )
    {
        var faults = Check(device);
        var price = Price(edit.Price, faults);
        if (faults.Count > 0)
            return Outcome.Faulty<SupplyLine>(faults);
        if (await FindAsync(db, at.Project, at.Key, cancel) is not { } line)
            return Outcome.Missing<SupplyLine>("line");
        var row =
            await db.Supplies.FindAsync([at.Project, at.Key], cancel)
            ?? db.Supplies.Add(
                new StoredSupply
                {
                    ProjectId = at.Project,
                    Key = at.Key,
                    Name = line.Name,
                }
            ).Entity;
        row.Bought = edit.Bought ?? row.Bought;
        if (edit.Price is not null)
            row.Price = price;
        (row.WhenUtc, row.Device) = (clock.GetUtcNow().UtcDateTime, device);
        await db.SaveChangesAsync(cancel);
        return line with { Bought = row.Bought, Price = row.Price };
    }

    /// <summary>Adds a line of the builder's own.</summary>
    public async Task<Outcome<SupplyLine>> AddAsync(
        ShopContext db,
        Guid project,
        (string Name, string Amount) typed,
        string device,
        CancellationToken cancel
    )
    {
        var faults = Check(device);
        Fault?[] found = [TextRules.Name("name", typed.Name), TextRules.Line("amount", typed.Amount, TextRules.NameCharacters)];
        faults.AddRange(found.OfType<Fault>());
        if (faults.Count > 0)
            return Outcome.Faulty<SupplyLine>(faults);
        if (!await db.Projects.AnyAsync(one => one.Id == project, cancel))
            return Outcome.Missing<SupplyLine>("project");
        var lines = await ListAsync(db, project, cancel);
        var key = KeyOf(typed.Name);
        if (lines.FirstOrDefault(line => line.Key == key) is { } same)
            return Outcome.Faulty<SupplyLine>(Fault.Of("name", same.Name, "is on the list already"));
        if (lines.Count(line => line.Own) >= MostOwn)
            return Outcome.Faulty<SupplyLine>(Fault.Of("name", typed.Name, $"is one too many: a project has at most {MostOwn}"));
        var row = await NewAsync(db, project, typed, cancel);
        (row.WhenUtc, row.Device) = (clock.GetUtcNow().UtcDateTime, device);
        await db.SaveChangesAsync(cancel);
        return View(row);
    }

    /// <summary>Sees that a line is on the list: adds it where it is missing. A line that another part of the program put there
    /// takes the new amount while it is not bought; all others stay as they are.</summary>
    /// <param name="db">The database.</param>
    /// <param name="project">The project.</param>
    /// <param name="wanted">The line's name and amount.</param>
    /// <param name="put">The amount with which it was put there before; null where it was not.</param>
    /// <param name="device">Which device asks.</param>
    /// <param name="cancel">Stops asking.</param>
    public async Task<Outcome<SupplyLine>> PutAsync(
        ShopContext db,
        Guid project,
        (string Name, string Amount) wanted,
        string? put,
        string device,
        CancellationToken cancel
    )
    {
        var key = KeyOf(wanted.Name);
        if (await FindAsync(db, project, key, cancel) is not { } line)
            return await AddAsync(db, project, wanted, device, cancel);
        if (line is not { Own: true, Bought: false } || line.Amount != put || line.Amount == wanted.Amount)
            return line;
        var row = (await db.Supplies.FindAsync([project, key], cancel))!;
        (row.Amount, row.WhenUtc, row.Device) = (wanted.Amount, clock.GetUtcNow().UtcDateTime, device);
        await db.SaveChangesAsync(cancel);
        return View(row);
    }

    /// <summary>Removes a line of the builder's own.</summary>
    public static async Task<Outcome<Done>> RemoveAsync(ShopContext db, Guid project, string key, CancellationToken cancel)
    {
        if (await db.Supplies.FindAsync([project, key], cancel) is not { Own: true } row)
            return Outcome.Missing<Done>("line");
        db.Supplies.Remove(row);
        return Done.Value;
    }

    // A line of the design that was ticked once and is asked for no more becomes the builder's own.
    private static async Task<StoredSupply> NewAsync(
        ShopContext db,
        Guid project,
        (string Name, string Amount) typed,
        CancellationToken cancel
    )
    {
        if (await db.Supplies.FindAsync([project, KeyOf(typed.Name)], cancel) is { } old)
            db.Supplies.Remove(old);
        await db.SaveChangesAsync(cancel);
        return db
            .Supplies.Add(
                new StoredSupply
                {
                    ProjectId = project,
                    Key = KeyOf(typed.Name),
                    Number = await db.NextAsync(Counters.Supplies, cancel),
                    Name = TextRules.Tidy(typed.Name),
                    Amount = TextRules.Tidy(typed.Amount),
                    Own = true,
                }
            )
            .Entity;
    }

    private static string KeyOf(string name) => TextRules.Key(name);

    private static List<Fault> Check(string device) =>
        TextRules.Line("device", device, TextRules.NameCharacters) is { } fault ? [fault] : [];

    private static Money? Price(string? text, List<Fault> faults)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        var read = MoneyText.Parse(text);
        if (!read.Ok)
            faults.Add(read.Fault.At("price"));
        return read.Ok ? read.Value : null;
    }

    private static SupplyLine View(Guid project, DesignSupply one, StoredSupply? said) =>
        new(project, KeyOf(one.Name), one.Name, one.Amount, false, true, said?.Bought ?? false, said?.Price);

    private static SupplyLine View(StoredSupply row) =>
        new(row.ProjectId, row.Key, row.Name, row.Amount, row.Own, row.Own, row.Bought, row.Price);
}
