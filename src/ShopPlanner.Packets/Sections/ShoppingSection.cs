using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>What to buy, store by store, and what to take from the rack and the bin.</summary>
internal static class ShoppingSection
{
    /// <summary>Adds the lists; nothing where nothing is bought or taken.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        foreach (var store in model.Stores.Where(s => s.Purchases.Length > 0))
            AddStore(flow, model, store);
        AddTotal(flow, model);
        AddOnHand(flow, model);
    }

    private static void AddStore(PageFlow flow, PacketModel model, PacketStore store)
    {
        var name = TextFit.Shorten("Buy at " + TextFit.Clean(store.Name, Weight.Bold), Weight.Bold, 15, flow.Width);
        var rows = store.Purchases.Select(p => Row(p, model.Currency)).Append(Total("Total", store.Total, model.Currency));
        var table = new Table(
            [
                new("", 0.5),
                new("Item", 5),
                new("Size", 2.5),
                new("Quantity", 1.2, Anchor.End),
                new("Each", 1.6, Anchor.End),
                new("Total", 1.6, Anchor.End),
            ],
            [.. rows]
        );
        flow.Heading(name, table.Beginning(flow.Width));
        table.AddTo(flow);
        flow.Space(3);
        if (store.PricesSeen is { } day)
            flow.Paragraph($"Prices checked {Words.Of(day)} or later.", 8.5, tone: Tone.Faded);
        if (store.Purchases.Any(p => p.Price is null))
            flow.Paragraph("A dash means that no price is known. The total leaves it out.", 8.5, tone: Tone.Pencil);
    }

    private static ImmutableArray<Cell> Row(PacketPurchase purchase, string currency) =>
        [
            new TickCell(),
            new TextCell(purchase.Item, Weight: Weight.Medium),
            new TextCell(purchase.Size),
            new TextCell(Words.Of(purchase.Quantity), 11, Weight.Bold),
            new TextCell(Words.Of(purchase.Price, currency)),
            new TextCell(Words.Of(purchase.Cost, currency)),
        ];

    private static ImmutableArray<Cell> Total(string words, Money amount, string currency) =>
        [
            Cell.Empty,
            new TextCell(words, Weight: Weight.Medium),
            Cell.Empty,
            Cell.Empty,
            Cell.Empty,
            new TextCell(Words.Of(amount, currency), Weight: Weight.Bold),
        ];

    private static void AddTotal(PageFlow flow, PacketModel model)
    {
        if (model.Stores.Count(s => s.Purchases.Length > 0) < 2)
            return;
        var total = model.Stores.Aggregate(Money.Zero, (sum, s) => sum + s.Total);
        flow.Space(6);
        flow.Paragraph("Total at all stores: " + Words.Of(total, model.Currency), 11, Weight.Bold);
    }

    private static void AddOnHand(PageFlow flow, PacketModel model)
    {
        if (model.OnHand.IsEmpty)
            return;
        var table = new Table(
            [new("", 0.5), new("Tag", 1.2), new("Material", 5), new("Size", 3, Anchor.End)],
            [
                .. model.OnHand.Select(o =>
                    ImmutableArray.Create<Cell>(
                        new TickCell(),
                        new TextCell(o.Tag, Weight: Weight.Bold),
                        new TextCell(o.Note.Length > 0 ? $"{o.Material}: {o.Note}" : o.Material),
                        new TextCell(o.Size, 10.5, Weight.Bold)
                    )
                ),
            ]
        );
        flow.Heading("Take from the rack and the bin", table.Beginning(flow.Width));
        table.AddTo(flow);
    }
}
