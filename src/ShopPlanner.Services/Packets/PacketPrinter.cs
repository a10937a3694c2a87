using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Packets;
using ShopPlanner.Packets.Model;
using ShopPlanner.Packets.Sections;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Packets;

/// <summary>Prints the packet of a stored plan.</summary>
internal sealed class PacketPrinter(
    ShopWork work,
    PlanReading reading,
    WorkReading making,
    ListReading buying,
    CostlyWork costly,
    TimeProvider clock
)
{
    /// <summary>A PDF; null when the plan is gone.</summary>
    /// <param name="planId">The plan.</param>
    /// <param name="paper">Size of the pages.</param>
    /// <param name="sections">What is printed; null for what the shop chose, or else the usual ones.</param>
    /// <param name="cancel">Stops asking.</param>
    public Task<byte[]?> PrintAsync(
        Guid planId,
        Common.PaperSize paper,
        ImmutableArray<PacketSection>? sections,
        CancellationToken cancel
    ) => costly.RunAsync(() => WriteAsync(planId, paper, sections, cancel), cancel);

    private async Task<byte[]?> WriteAsync(
        Guid planId,
        Common.PaperSize paper,
        ImmutableArray<PacketSection>? sections,
        CancellationToken cancel
    )
    {
        var model = await work.ReadAsync(db => ModelAsync(db, planId, paper, cancel), cancel);
        if (model is null)
            return null;
        var chosen = sections ?? await work.ReadAsync(db => PacketChoice.ReadAsync(db, cancel), cancel);
        using var file = new MemoryStream();
        PacketWriter.Write(chosen is { } some ? model with { Sections = some } : model, file);
        return file.ToArray();
    }

    private async Task<PacketModel?> ModelAsync(ShopContext db, Guid planId, Common.PaperSize paper, CancellationToken cancel)
    {
        if (await reading.FindAsync(db, planId, cancel) is not { } plan)
            return null;
        var stored = await db.Plans.AsNoTracking().SingleAsync(p => p.Id == planId, cancel);
        var version = await PlanHeaders.VersionAsync(db, stored.Number, plan.Order.Projects, cancel);
        var settings = await ShopService.ReadAsync(db, cancel);
        var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        var list = (await buying.OfPlanAsync(db, planId, cancel))!;
        var facts = new PacketFacts(today, paper, settings.CurrencySign, version, PlanNamesDocument.Read(stored.NamesJson))
        {
            Bought = PacketSupplies.Bought(list),
        };
        var model = new PacketBuilder(plan, facts).Build();
        return With(model, await ReadAsync(db, plan, cancel), list);
    }

    private async Task<List<PacketProject>> ReadAsync(ShopContext db, PlanView plan, CancellationToken cancel)
    {
        var names = plan
            .Parts.Values.GroupBy(part => part.ProjectId)
            .ToDictionary(same => same.Key, same => same.First().Project);
        var wanted = plan.Order.Projects.Where(names.ContainsKey).Distinct().ToList();
        var pieces = await PacketPieces.ReadAsync(db, wanted, cancel);
        var projects = new List<PacketProject>();
        foreach (var id in wanted)
            projects.Add(new(id, names[id], pieces.GetValueOrDefault(id), await making.ViewAsync(db, id, cancel)));
        return projects;
    }

    private static PacketModel With(PacketModel model, List<PacketProject> projects, ShoppingList list) =>
        model with
        {
            Takes = [.. model.Takes.Zip(projects, (takes, project) => PacketSteps.Timed(takes, project.Piece, project.Work))],
            Pieces =
            [
                .. projects
                    .Where(project => project.Piece is not null)
                    .Select(project =>
                        PieceSheets.Of(project.Piece!, model.Paper, projects.Count == 1) with
                        {
                            Name = project.Name,
                        }
                    ),
            ],
            Work =
            [
                .. projects
                    .Where(project => project.Work is { Steps.IsEmpty: false })
                    .Select(project => PacketSteps.Of(project.Name, project.Work!, model.Paper)),
            ],
            Supplies =
            [
                .. projects.SelectMany(project =>
                    list.Supplies.Where(one => one.Project == project.Id)
                        .SelectMany(one => PacketSupplies.Of(one, project.Name, project.Work))
                ),
            ],
        };

    private sealed record PacketProject(Guid Id, string Name, Piece? Piece, WorkView? Work);
}
