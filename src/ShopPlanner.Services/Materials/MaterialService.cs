using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Materials;

internal sealed partial class MaterialService(ShopWork work, ShopCommands commands) : IMaterialService
{
    private const string OwnTint = "#EFE4D0",
        OwnSource = "measured by you";

    public Task<IReadOnlyList<MaterialView>> ListAsync(CancellationToken cancel = default) =>
        work.ReadAsync<IReadOnlyList<MaterialView>>(
            async db => [.. (await db.Materials.OrderBy(m => m.Form).ThenBy(m => m.NameKey).ToListAsync(cancel)).Select(View)],
            cancel
        );

    public Task<Outcome<MaterialView>> SaveAsync(
        MaterialEdit edit,
        LengthUnit unit,
        CommandId command,
        CancellationToken cancel = default
    )
    {
        var read = Read(edit, unit);
        return read.Faults.Count > 0
            ? Task.FromResult(Outcome.Faulty<MaterialView>(read.Faults))
            : commands.RunAsync(
                new Making<MaterialView>(command, CommandTexts.Asked("material", edit, unit))
                {
                    Make = db => SaveAsync(db, edit, read, cancel),
                    Made = material => material.Id,
                    Find = (db, id) => FindAsync(db, id, cancel),
                    What = "material",
                },
                cancel
            );
    }

    private static async Task<MaterialView?> FindAsync(ShopContext db, string id, CancellationToken cancel) =>
        await db.Materials.FindAsync([id], cancel) is { } stored ? View(stored) : null;

    private static async Task<Outcome<MaterialView>> SaveAsync(
        ShopContext db,
        MaterialEdit edit,
        Sizes read,
        CancellationToken cancel
    )
    {
        var key = TextRules.Key(edit.Name);
        if (await db.Materials.AnyAsync(m => m.NameKey == key && m.Id != edit.Id, cancel))
            return Outcome.Faulty<MaterialView>(
                Fault.Of(nameof(edit.Name), edit.Name, "is the name of another material: choose a different one")
            );
        var stored = edit.Id is null
            ? Add(db, await FreeIdAsync(db, edit.Name, cancel), edit)
            : await db.Materials.FindAsync([edit.Id], cancel);
        if (stored is null)
            return Outcome.Missing<MaterialView>("material");
        if (!stored.Own)
            return Outcome.Faulty<MaterialView>(
                Fault.Of(
                    nameof(edit.Id),
                    stored.Name,
                    "comes with the program and can't be changed: add your own with your sizes"
                )
            );
        (stored.Name, stored.NameKey, stored.Form) = (TextRules.Tidy(edit.Name), key, edit.Form);
        (stored.Thickness, stored.Width) = (read.Thickness, read.Width);
        await db.SaveChangesAsync(cancel);
        return View(stored);
    }

    private static Sizes Read(MaterialEdit edit, LengthUnit unit)
    {
        var faults = new List<Fault>();
        if (TextRules.Name(nameof(edit.Name), edit.Name) is { } fault)
            faults.Add(fault);
        var thickness = Size(nameof(edit.Thickness), edit.Thickness, unit, faults);
        var width = edit.Form == StockForm.Board ? Size(nameof(edit.Width), edit.Width, unit, faults) : (Length?)null;
        return new Sizes(thickness, width, faults);
    }

    private static Length Size(string field, string text, LengthUnit unit, List<Fault> faults)
    {
        var parsed = LengthText.ParsePositive(text, unit);
        if (parsed.Ok)
            return parsed.Value;
        faults.Add(parsed.Fault.At(field));
        return Length.Zero;
    }

    private static StoredMaterial Add(ShopContext db, string id, MaterialEdit edit) =>
        db
            .Materials.Add(
                new StoredMaterial
                {
                    Id = id,
                    Name = edit.Name,
                    NameKey = "",
                    Tint = OwnTint,
                    Source = OwnSource,
                    Own = true,
                }
            )
            .Entity;

    private static async Task<string> FreeIdAsync(ShopContext db, string name, CancellationToken cancel)
    {
        var stem = "own-" + NotPlain().Replace(name.ToLowerInvariant(), "-").Trim('-');
        var taken = (await db.Materials.Where(m => m.Id.StartsWith(stem)).Select(m => m.Id).ToListAsync(cancel)).ToHashSet();
        return Enumerable.Range(1, taken.Count + 1).Select(n => n == 1 ? stem : $"{stem}-{n}").First(id => !taken.Contains(id));
    }

    private static MaterialView View(StoredMaterial material) =>
        new(
            material.Id,
            material.Name,
            material.Form,
            material.Thickness,
            material.Width,
            material.Tint,
            material.Source,
            material.Own
        );

    private sealed record Sizes(Length Thickness, Length? Width, List<Fault> Faults);

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NotPlain();
}
