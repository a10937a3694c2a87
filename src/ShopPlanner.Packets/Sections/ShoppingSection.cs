using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>What to buy, by store and aisle, and what to take from the rack and the bin.</summary>
internal static class ShoppingSection
{
    private static readonly (SupplyAisle Aisle, string Title)[] Aisles =
    [
        (SupplyAisle.Hardware, "Hardware and glue"),
        (SupplyAisle.Finish, "Paint, sandpaper, brushes"),
    ];

    /// <summary>Whether anything is bought or taken.</summary>
    public static bool Has(PacketModel model) =>
        model.Stores.Any(store => !store.Purchases.IsEmpty) || !model.OnHand.IsEmpty || !model.Supplies.IsEmpty;

    /// <summary>Adds the lists.</summary>
    public static void Add(PageFlow flow, PacketModel model, string title)
    {
        var width = flow.ColumnWidth(2);
        flow.Section(
            title,
            [
                .. model.Stores.Where(store => !store.Purchases.IsEmpty).SelectMany(store => Store(store, model, width)),
                .. Total(model, width),
                .. Aisles.SelectMany(aisle => Supplies(aisle.Aisle, aisle.Title, model, width)),
                .. OnHand(model, width),
            ],
            2
        );
    }

    private static IEnumerable<Block> Store(PacketStore store, PacketModel model, double width)
    {
        yield return Blocks.Subheading("Buy at " + store.Name, width);
        foreach (var block in Purchases(store, model).Blocks(width))
            yield return block;
        if (store.PricesSeen is { } day)
            yield return Blocks.Paragraph($"Prices checked {Words.Of(day)} or later.", width, 2, tone: Tone.Faded);
        if (store.Purchases.Any(purchase => purchase.Price is null))
            yield return Blocks.Paragraph(
                "A dash means that no price is known. The total leaves it out.",
                width,
                2,
                tone: Tone.Pencil
            );
    }

    private static Table Purchases(PacketStore store, PacketModel model)
    {
        var rows = store
            .Purchases.GroupBy(purchase => purchase.IsBoard)
            .OrderByDescending(same => same.Key)
            .SelectMany(same => same.Select(purchase => Row(purchase, model.Currency)).Prepend(Aisle(same.Key)));
        return new(
            [
                new("", 0.5),
                new("Number", 1.4, Anchor.End),
                new("Item", 5),
                new("Each", 1.5, Anchor.End),
                new("Total", 1.7, Anchor.End),
            ],
            [.. rows, TotalRow("Total", store.Total, model.Currency)]
        );
    }

    private static ImmutableArray<Cell> Aisle(bool isBoard) =>
        [
            Cell.Empty,
            Cell.Empty,
            new TextCell(isBoard ? "Boards" : "Sheets", Weight: Weight.Medium, Tone: Tone.Faded),
            Cell.Empty,
            Cell.Empty,
        ];

    private static ImmutableArray<Cell> Row(PacketPurchase purchase, string currency) =>
        [
            new TickCell(),
            new TextCell(Words.Of(purchase.Quantity), 11, Weight.Bold),
            new TextCell($"{purchase.Item}, {purchase.Size}{Bought(purchase)}", Weight: Weight.Medium),
            new TextCell(Words.Of(purchase.Price, currency)),
            new TextCell(Words.Of(purchase.Cost, currency)),
        ];

    private static string Bought(PacketPurchase purchase) =>
        purchase.Bought == 0 ? ""
        : purchase.Bought >= purchase.Quantity ? " (bought)"
        : $" ({Words.Of(purchase.Bought)} bought)";

    private static ImmutableArray<Cell> TotalRow(string words, Money amount, string currency) =>
        [
            Cell.Empty,
            Cell.Empty,
            new TextCell(words, Weight: Weight.Medium),
            Cell.Empty,
            new TextCell(Words.Of(amount, currency), Weight: Weight.Bold),
        ];

    private static IEnumerable<Block> Total(PacketModel model, double width)
    {
        if (model.Stores.Count(store => !store.Purchases.IsEmpty) < 2)
            yield break;
        var total = model.Stores.Aggregate(Money.Zero, (sum, store) => sum + store.Total);
        yield return Blocks.Paragraph("Total at all stores: " + Words.Of(total, model.Currency), width, 6, 10.5, Weight.Bold);
    }

    private static IEnumerable<Block> Supplies(SupplyAisle aisle, string title, PacketModel model, double width)
    {
        var lines = model.Supplies.Where(one => one.Aisle == aisle).GroupBy(one => one.Name).ToList();
        if (lines.Count == 0)
            return [];
        var table = new Table(
            [new("", 0.5), new("Number", 1.4, Anchor.End), new("Item", 8.5)],
            [.. lines.Select(same => Supply([.. same], model.Projects.Length))]
        );
        return [Blocks.Subheading(title, width), .. table.Blocks(width)];
    }

    // One line of the store's shelf for all pieces; for which of them stands behind it.
    private static ImmutableArray<Cell> Supply(List<PacketSupply> same, int projects)
    {
        var counts = same.Select(one => int.TryParse(one.Amount, out var count) ? count : (int?)null).ToList();
        var amount = counts.All(one => one is not null) ? Words.Of(counts.Sum(one => one!.Value)) : Sum(same);
        var owners = same.Select(one => one.Project).Distinct().ToList();
        var whose = owners.Count < projects ? ", " + string.Join(", ", owners) : "";
        var bought = same.All(one => one.IsBought) ? " (bought)" : "";
        return [new TickCell(), new TextCell(amount, 10, Weight.Bold), new TextCell(same[0].Name + whose + bought)];
    }

    private static string Sum(List<PacketSupply> same) =>
        string.Join(" + ", same.Select(one => one.Amount).Where(amount => amount.Length > 0));

    private static IEnumerable<Block> OnHand(PacketModel model, double width)
    {
        if (model.OnHand.IsEmpty)
            return [];
        var table = new Table(
            [new("", 0.5), new("Tag", 1.4), new("Material", 5), new("Size", 3, Anchor.End)],
            [
                .. model.OnHand.Select(o =>
                    ImmutableArray.Create<Cell>(
                        new TickCell(),
                        new TextCell(o.Tag, Weight: Weight.Bold),
                        new TextCell(o.Note.Length > 0 ? $"{o.Material}: {o.Note}" : o.Material),
                        new TextCell(o.Size, Weight: Weight.Bold)
                    )
                ),
            ]
        );
        return [Blocks.Subheading("Take from the rack and the bin", width), .. table.Blocks(width)];
    }
}
