using System.Collections.Immutable;
using ShopPlanner.Cutting;
using ShopPlanner.Packets.Model;
using ShopPlanner.Services.Pictures;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Sawing;

namespace ShopPlanner.Services.Packets;

/// <summary>What a packet says beyond its plan.</summary>
internal sealed record PacketFacts(DateOnly Printed, Common.PaperSize Paper, string Currency, int Version, PlanBasis Basis)
{
    /// <summary>How many are bought already, by stock id.</summary>
    public ImmutableDictionary<string, int> Bought { get; init; } = ImmutableDictionary<string, int>.Empty;
}

/// <summary>Makes the packet of a plan.</summary>
internal sealed class PacketBuilder(PlanView plan, PacketFacts facts)
{
    private const int ChangesTold = 3;

    private readonly PlanMarks marks = new(plan);
    private readonly Dictionary<int, ImmutableArray<CutStep>> steps = [];

    public PacketModel Build() =>
        new(
            [
                .. plan
                    .Parts.Values.GroupBy(part => part.ProjectId)
                    .OrderBy(same => plan.Order.Projects.IndexOf(same.Key))
                    .Select(same => same.First().Project),
            ],
            facts.Printed,
            facts.Paper == Common.PaperSize.A4
                ? ShopPlanner.Packets.Model.PaperSize.A4
                : ShopPlanner.Packets.Model.PaperSize.Letter,
            plan.Request.Unit,
            facts.Currency,
            new PacketPlan(facts.Version, plan.ShortId, OutOfDate()),
            Stores(),
            OnHand(),
            [.. Enumerable.Range(0, plan.Plan.Layouts.Length).Select(Layout)],
            Parts(),
            Unplaced()
        )
        {
            StoreTolerance = plan.Request.Store?.Tolerance,
            Settings = [.. SettingList.Of(plan).Select(Settings)],
            Takes = PacketSums.Of(plan),
        };

    private ImmutableArray<CutStep> Steps(int layout)
    {
        if (!steps.TryGetValue(layout, out var known))
            steps.Add(layout, known = CutTexts.Steps(plan, layout));
        return known;
    }

    private PacketSettings Settings(MaterialSettings settings) =>
        new(facts.Basis.Materials[settings.Material], [.. settings.Steps.Where(step => !step.ByStore).Select(Run)]);

    private PacketRun Run(SettingStep setting) =>
        new(
            CutSentences.Way(setting.Like),
            setting.Like.Setting,
            string.Join(
                "; ",
                setting
                    .Cuts.GroupBy(cut => cut.Layout)
                    .Select(same =>
                        $"{PlanLayouts.Number(plan, same.Key)}: {string.Join(", ", same.Select(cut => cut.Step.Cut.N))}"
                    )
            ),
            setting.Cuts.Sum(cut => cut.Copies) > 1
        )
        {
            Unit = setting.Unit,
            TakesOff = setting.Like.TakesOff,
            Shimmed = CutSentences.Shimmed(setting.Like, setting.Unit),
            IsKerfOnly = setting.Like.IsKerfOnly,
        };

    private string? OutOfDate()
    {
        if (plan.Changes.IsEmpty)
            return null;
        var told = string.Join("; ", plan.Changes.Take(ChangesTold));
        return plan.Changes.Length > ChangesTold ? $"{told}; and {plan.Changes.Length - ChangesTold} more" : told;
    }

    private ImmutableArray<PacketStore> Stores() =>
        [
            .. plan
                .Plan.Buy.GroupBy(buy => plan.Stocks[buy.Stock].Store ?? "")
                .OrderBy(same => same.Key, StringComparer.OrdinalIgnoreCase)
                .Select(same => new PacketStore(same.Key, Oldest(same), [.. same.Select(Purchase)])),
        ];

    private DateOnly? Oldest(IEnumerable<Purchase> purchases) =>
        purchases.Select(buy => facts.Basis.Seen.TryGetValue(buy.Stock, out var day) ? day : (DateOnly?)null).Min();

    private PacketPurchase Purchase(Purchase buy)
    {
        var stock = plan.Request.Stock.Single(stock => stock.Id == buy.Stock);
        return new(facts.Basis.Materials[stock.Material], Size(stock), buy.Quantity, stock.Price)
        {
            IsBoard = PlanLayouts.MaterialOf(plan, stock).Form == StockForm.Board,
            Bought = facts.Bought.GetValueOrDefault(buy.Stock),
        };
    }

    private string Size(CutStock stock) =>
        StockWords.Size(stock.Length, stock.Width, PlanLayouts.MaterialOf(plan, stock).Width, plan.Request.Unit);

    private ImmutableArray<PacketOnHand> OnHand()
    {
        var used = plan.Plan.Layouts.Select(layout => layout.Stock).ToHashSet();
        return
        [
            .. plan
                .Request.Stock.Where(stock => stock.Offcut && used.Contains(stock.Id))
                .Select(stock => new PacketOnHand(stock.Id, facts.Basis.Materials[stock.Material], Size(stock))
                {
                    Note = StockNotes.Of(plan, stock.Id),
                }),
        ];
    }

    private PacketLayout Layout(int index)
    {
        var sizes = StoreCutTexts.Of(plan, index).ToDictionary(asked => asked.Cut.N, asked => asked.Sizes);
        var shimmed = CutSentences.Shimmed(Steps(index), plan.UnitOfLayout(index));
        return new(
            PlanPictures.ForLayout(plan, index),
            PlanLayouts.IsBoard(plan, index),
            plan.Plan.Layouts[index].Copies,
            [.. Steps(index).Select((step, i) => Cut(step, sizes.GetValueOrDefault(step.Cut.N, ""), shimmed[i]))]
        )
        {
            Store = plan.Stocks[plan.Plan.Layouts[index].Stock].Store,
        };
    }

    private static PacketCut Cut(CutStep step, string sizes, string shimmed) =>
        new(
            step.Cut.N,
            step.Cut.Piece,
            step.Cut.Kind == CutKind.Rip ? CutWay.Rip : CutWay.Crosscut,
            step.Setting,
            CutSentences.Doing(step),
            step.Gives,
            step.Cut.ByStore
        )
        {
            IsKerfOnly = step.IsKerfOnly,
            TakesOff = step.TakesOff,
            Shimmed = shimmed,
            Caution = step.Caution,
            Alike = CutSentences.Way(step),
            Sizes = sizes,
        };

    private ImmutableArray<PacketPart> Parts() =>
        [
            .. plan
                .Request.Parts.Select(part => (part, placed: marks.Placed(part.Id).ToImmutableArray()))
                .Where(row => row.placed.Length > 0)
                .Select(row => Part(row.part, row.placed)),
        ];

    private PacketPart Part(CutPart part, ImmutableArray<string> placed)
    {
        var material = plan.Request.Materials.Single(material => material.Id == part.Material);
        var ripped = material.Width is not { } full || part.Width < full;
        return new(placed, part.Name, facts.Basis.Materials[material.Id], part.Length, part.Width, material.Thickness, ripped)
        {
            Unit = plan.UnitOfPart(part.Id),
            Trim = TrimWords.Of(part, plan.UnitOfPart(part.Id)),
            FinishedLength = part.FinishedLength,
            FinishedWidth = part.FinishedWidth,
            IsPractice = part.PracticeFor is not null,
        };
    }

    private ImmutableArray<PacketUnplaced> Unplaced() =>
        [
            .. plan.Plan.Unplaced.Select(missed => new PacketUnplaced(
                [.. marks.Unplaced(missed.Part, missed.Quantity)],
                plan.Parts[missed.Part].Name,
                missed.Reason
            )),
        ];
}
