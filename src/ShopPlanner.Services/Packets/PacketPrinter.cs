using Microsoft.EntityFrameworkCore;
using ShopPlanner.Packets;
using ShopPlanner.Packets.Model;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Packets;

/// <summary>Prints the packet of a stored plan.</summary>
internal sealed class PacketPrinter(ShopWork work, PlanReading reading, WorkReading making, TimeProvider clock)
{
    /// <summary>A PDF; null when the plan is gone.</summary>
    public async Task<byte[]?> PrintAsync(Guid planId, Common.PaperSize paper, CancellationToken cancel)
    {
        var model = await work.ReadAsync(db => ModelAsync(db, planId, paper, cancel), cancel);
        if (model is null)
            return null;
        using var file = new MemoryStream();
        PacketWriter.Write(model, file);
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
        var facts = new PacketFacts(today, paper, settings.CurrencySign, version, PlanNamesDocument.Read(stored.NamesJson));
        var model = new PacketBuilder(plan, facts).Build();
        return model with
        {
            Pieces = await PacketPieces.ReadAsync(db, plan, model.Paper, cancel),
            Work = await PacketSteps.ReadAsync(db, making, plan, model.Paper, cancel),
        };
    }
}
