using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Export;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Packets.Model;
using ShopPlanner.Packets.Sections;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Stored;

namespace ShopPlanner.Services.Packets;

/// <summary>Packets of documents that no shop keeps: a design, or a cut request with its plan.</summary>
public static class LoosePacket
{
    // A pale wood for whatever the material is.
    private const string Tint = "#EFE3C8";
    private const string AnyStore = "the store";

    /// <summary>The packet of a design: without a plan it has no shopping list of boards and no layouts.</summary>
    /// <param name="piece">The design, worked out.</param>
    /// <param name="work">How it is built.</param>
    /// <param name="paper">Size of the pages.</param>
    /// <param name="day">Printed on every page.</param>
    public static PacketModel Of(Piece piece, WorkPlan work, ShopPlanner.Packets.Model.PaperSize paper, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(work);
        return new([piece.Name], day, paper, piece.Unit, "", null, [], [], [], [], [])
        {
            Pieces = [PieceSheets.Of(piece, paper)],
            Work = [Work(piece, work, paper)],
            Supplies =
            [
                .. piece.Hardware.Select(one => Supply(piece, one.Name, one.Quantity, SupplyAisle.Hardware)),
                .. (work.Finish?.Buy ?? []).Select(one => Supply(piece, one.Name, one.Quantity, SupplyAisle.Finish)),
            ],
            Takes =
            [
                new(
                    piece.Name,
                    PieceSheets.Outside(piece),
                    "",
                    null,
                    work.Steps.Sum(step => step.Minutes),
                    work.Steps.Sum(step => step.Wait?.Minutes ?? 0)
                ),
            ],
        };
    }

    /// <summary>The packet of a request and the plan that answers it. A price of nothing is one that nobody gave.</summary>
    /// <param name="request">The request.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="paper">Size of the pages.</param>
    /// <param name="day">Printed on every page.</param>
    public static PacketModel Of(
        CutRequest request,
        CutPlan plan,
        string name,
        ShopPlanner.Packets.Model.PaperSize paper,
        DateOnly day
    )
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        var view = View(request, plan, name);
        var size = paper == ShopPlanner.Packets.Model.PaperSize.A4 ? Common.PaperSize.A4 : Common.PaperSize.Letter;
        var basis = new PlanBasis(
            name,
            view.Stocks.ToImmutableSortedDictionary(),
            view.Parts.ToImmutableSortedDictionary(),
            ImmutableSortedDictionary<string, Guid>.Empty,
            ImmutableSortedDictionary<string, Guid>.Empty,
            ImmutableSortedDictionary<string, DateOnly>.Empty,
            request.Materials.ToImmutableSortedDictionary(one => one.Id, one => one.Id),
            ImmutableSortedDictionary<Guid, LengthUnit>.Empty
        );
        var model = new PacketBuilder(view, new PacketFacts(day, size, "", 1, basis)).Build();
        return model with
        {
            Stores = [.. model.Stores.Select(Priced)],
            Takes = [.. model.Takes.Select(one => Priced(one, request))],
        };
    }

    private static PacketStore Priced(PacketStore store) =>
        store with
        {
            Purchases = [.. store.Purchases.Select(one => one.Price == Money.Zero ? one with { Price = null } : one)],
        };

    private static PacketTakes Priced(PacketTakes takes, CutRequest request) =>
        request.Stock.All(stock => stock.Price == Money.Zero) ? takes with { WoodCost = null } : takes;

    private static PlanView View(CutRequest request, CutPlan plan, string name)
    {
        var hash = CutDocuments.Hash(CutRequestJson.Write(request));
        var project = new Guid(Encoding.ASCII.GetBytes(hash[..16]));
        var id = new Guid(Convert.FromHexString(hash[..32]));
        var widths = request.Materials.ToDictionary(material => material.Id, material => material.Width);
        var stocks = plan.Layouts.Sum(layout => layout.Copies);
        return new PlanView(
            new PlanSummary(id, name, DateTime.UnixEpoch, PlanState.Ready, plan.Status, plan.Cost, stocks, [project]),
            new PlanOrder([project], null, [], true, true, 1, []),
            request,
            plan,
            request.Stock.ToImmutableDictionary(stock => stock.Id, stock => Name(stock, widths[stock.Material], request.Unit)),
            request.Parts.ToImmutableDictionary(
                part => part.Id,
                part => new PlanPartName(part.Id, part.Id, part.Name, project, name)
            ),
            [],
            hash
        );
    }

    private static PlanStockName Name(CutStock stock, Length? boardWidth, LengthUnit unit) =>
        new(
            stock.Id,
            $"{stock.Material}, {StockWords.Size(stock.Length, stock.Width, boardWidth, unit)}",
            stock.Offcut ? stock.Id : null,
            stock.Offcut ? null : AnyStore,
            Tint
        );

    private static PacketWork Work(Piece piece, WorkPlan plan, ShopPlanner.Packets.Model.PaperSize paper)
    {
        ImmutableArray<PacketStep> Steps(Func<WorkStep, bool> isMeant) =>
            [.. plan.Steps.Where(isMeant).Select((step, i) => WorkSheets.Step(piece, step, plan.Unit, i + 1, "", paper))];
        return new(
            piece.Name,
            [.. InAnyOrder.Of(plan.Subassemblies, plan.Steps).Select(group => InAnyOrder.Sentence(group))],
            Steps(step => step.Phase != WorkPhase.Finish),
            Steps(step => step.Phase == WorkPhase.Finish),
            [.. (plan.Finish?.Areas ?? []).Select(area => WorkSheets.Area(area, NameOf(piece, area.Part), plan.Unit))],
            [.. (plan.Finish?.Buy ?? []).Select(item => new PacketHardware(item.Name, item.Quantity))]
        );
    }

    private static string NameOf(Piece piece, string part) => piece.Parts.FirstOrDefault(one => one.Id == part)?.Name ?? "";

    private static PacketSupply Supply(Piece piece, string name, int quantity, SupplyAisle aisle) =>
        new(piece.Name, name, quantity.ToString(CultureInfo.InvariantCulture), aisle);
}
