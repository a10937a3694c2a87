using System.Collections.Immutable;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Designs;

/// <summary>What making parts did, as it is noted beside the command.</summary>
/// <param name="Rows">See <see cref="MadeParts.Rows"/>.</param>
/// <param name="From">Marks before.</param>
/// <param name="To">Marks since, in the same order.</param>
/// <param name="Step">See <see cref="MadeParts.Step"/>.</param>
internal sealed record MadePartsNote(int Rows, ImmutableArray<string> From, ImmutableArray<string> To, Guid? Step)
{
    /// <summary>Writes the note.</summary>
    public static string Write(MadeParts made) =>
        ShopJson.Write(
            new MadePartsNote(
                made.Rows,
                [.. made.Lettered.Select(one => one.From)],
                [.. made.Lettered.Select(one => one.To)],
                made.Step
            )
        );

    /// <summary>Returns what the note says, with the parts list as it is now; null when the project is gone.</summary>
    public static async Task<MadeParts?> FindAsync(ShopContext db, Guid projectId, string text, CancellationToken cancel)
    {
        if (await PartRows.SheetAsync(db, projectId, cancel) is not { } sheet)
            return null;
        var note = ShopJson.Read<MadePartsNote>(text);
        return new MadeParts(sheet, note.Rows, [.. note.From.Zip(note.To)], note.Step);
    }
}
