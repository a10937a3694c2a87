using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Making.Labels;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Packets.Labels;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Sawing;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Paper;

/// <summary>Labels of what is asked for, with its name.</summary>
internal sealed record ReadLabels(string Title, IReadOnlyList<PlacedLabel> Labels, bool OutOfDate);

/// <summary>Finds what goes on the labels of a plan, a project, the bin.</summary>
internal sealed class LabelReading(PlanReading plans)
{
    private static readonly StockEntryKind[] Measured =
    [
        StockEntryKind.Bought,
        StockEntryKind.Logged,
        StockEntryKind.Binned,
        StockEntryKind.Corrected,
        StockEntryKind.Returned,
    ];

    /// <summary>Null where there is no such thing.</summary>
    public Task<ReadLabels?> ReadAsync(ShopContext db, LabelSource source, CancellationToken cancel) =>
        source switch
        {
            { Plan: { } plan } => OfPlanAsync(db, plan, cancel),
            { Project: { } project } => OfProjectAsync(db, project, cancel),
            _ => OfBinAsync(db, cancel),
        };

    // A canceled plan's boards are free for others: nobody is to cut by it.
    private async Task<ReadLabels?> OfPlanAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await plans.FindAsync(db, id, cancel) is not { Summary.State: not PlanState.Withdrawn } plan)
            return null;
        var known = await KnownParts.ReadAsync(db, [.. plan.Parts.Values.Select(part => part.ProjectId).Distinct()], cancel);
        var marks = new PlanMarks(plan);
        return new(
            plan.Summary.Name,
            [
                .. plan.Request.Parts.SelectMany(part =>
                    marks.Placed(part.Id).Select((mark, i) => Of(plan, part, mark, i + 1, known))
                ),
            ],
            plan.OutOfDate && plan.Summary.State != PlanState.Cut
        );
    }

    private static PlacedLabel Of(PlanView plan, CutPart part, string mark, int number, KnownParts known)
    {
        var name = plan.Parts[part.Id];
        var letter = PartIds.MarkOf(part.Id);
        var copy = part.PracticeFor is null
            ? known.Find(name.ProjectId, letter, name.Name, number + plan.CutBefore.GetValueOrDefault(part.Id))
            : null;
        var thick = plan.Request.Materials.Single(material => material.Id == part.Material).Thickness;
        var label = Of(part, mark, thick, plan.UnitOfPart(part.Id), name.Project, copy);
        return new(part.PracticeFor is null ? label : label with { Note = "test piece" }, letter, name.ProjectId);
    }

    private static async Task<ReadLabels?> OfProjectAsync(ShopContext db, Guid id, CancellationToken cancel)
    {
        if (await PartRows.SheetAsync(db, id, cancel) is not { } sheet)
            return null;
        var project = await db.Projects.AsNoTracking().SingleAsync(one => one.Id == id, cancel);
        var rows = sheet.Rows.Where(row => row.Part is not null).Select(row => row.Part!).ToList();
        if (rows.Count == 0 && await KnownParts.PieceAsync(db, id, cancel) is { } piece)
            return new(
                project.Name,
                [
                    .. PartLabels
                        .Of(piece)
                        .Select(one => new PlacedLabel(Label.For(one, project.Unit, project.Name), one.Part.Id, id)),
                ],
                false
            );
        var (known, materials) = (await KnownParts.ReadAsync(db, [id], cancel), await MaterialIndex.LoadAsync(db, cancel));
        return new(
            project.Name,
            [
                .. rows.SelectMany(part =>
                    Enumerable
                        .Range(1, part.Quantity)
                        .Select(n => new PlacedLabel(
                            Of(
                                part,
                                part.Quantity == 1 ? part.Id : part.Id + n.ToString(CultureInfo.InvariantCulture),
                                materials[part.Material].Thickness,
                                sheet.Unit,
                                project.Name,
                                known.Find(id, part.Id, part.Name, n)
                            ),
                            part.Id,
                            id
                        ))
                ),
            ],
            false
        );
    }

    // A copy of a mirrored pair is called by its hand, as on the drawings.
    private static Label Of(CutPart part, string mark, Length? thick, LengthUnit unit, string project, PartLabel? copy)
    {
        var (length, width) = (part.FinishedLength ?? part.Length, part.FinishedWidth ?? part.Width);
        var size = thick is { } deep ? Label.SizeOf(unit, length, width, deep) : Label.SizeOf(unit, length, width);
        if (copy is null)
            return new(mark, part.Name, size, project);
        var whole = mark[..(mark.LastIndexOf(' ') + 1)] + copy.Mark;
        return Label.For(copy, unit, project) with { Mark = whole, Name = part.Name, Size = size };
    }

    private static string Day(DateTime when) => when.ToLocalTime().ToString("MMM d, yyyy", CultureInfo.InvariantCulture);

    private static async Task<ReadLabels?> OfBinAsync(ShopContext db, CancellationToken cancel)
    {
        var (materials, unit) = (await MaterialIndex.LoadAsync(db, cancel), (await ShopService.ReadAsync(db, cancel)).Unit);
        var pieces = (await StockNow.OnHandAsync(db, cancel)).Where(piece => piece.Piece.Place == StockPlace.Bin).ToList();
        var days = await db
            .Entries.AsNoTracking()
            .Where(entry => Measured.Contains(entry.Kind))
            .GroupBy(entry => entry.PieceId)
            .Select(same => new { same.Key, When = same.Max(entry => entry.WhenUtc) })
            .ToDictionaryAsync(one => one.Key, one => one.When, cancel);
        return new(
            "",
            [
                .. pieces
                    .OrderBy(piece => piece.Piece.Tag.Length)
                    .ThenBy(piece => piece.Piece.Tag, StringComparer.Ordinal)
                    .Select(piece =>
                    {
                        var material = materials[piece.Piece.MaterialId];
                        return new PlacedLabel(
                            new(
                                piece.Piece.Tag,
                                material.Name,
                                Label.SizeOf(unit, piece.Length, piece.Width, material.Thickness),
                                days.TryGetValue(piece.Piece.Id, out var when) ? Day(when) : ""
                            )
                            {
                                Note = piece.Note,
                            },
                            piece.Piece.Tag,
                            null
                        );
                    }),
            ],
            false
        );
    }
}
