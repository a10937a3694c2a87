using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>What each piece costs: its share of boards and sheets, and what else is bought for it, as far as prices are
/// known.</summary>
internal static class CostSection
{
    private const string Rule =
        "The price of a board or sheet is shared by the face area of the parts cut from it: who uses more of it bears more of "
        + "its waste. What is on hand costs its keeping value, usually nothing.";

    /// <summary>Whether any cost is known.</summary>
    public static bool Has(PacketModel model) =>
        model.Takes.Any(takes => takes.WoodCost is not null) || model.Supplies.Any(one => one.Price is not null);

    /// <summary>Adds the sheet.</summary>
    public static void Add(PageFlow flow, PacketModel model, string title)
    {
        var rows = model.Takes.Select(takes => Row(takes, model)).ToList();
        var unknown = model.Supplies.Count(one => one.Price is null);
        var table = new Table(
            [
                new("Piece", 5),
                new("Boards and sheets", 2.4, Anchor.End),
                new("Everything else", 2.4, Anchor.End),
                new("Total", 2, Anchor.End),
            ],
            [.. rows, Total(model)]
        );
        flow.Section(
            title,
            [
                .. table.Blocks(flow.Width),
                Blocks.Paragraph(Rule, flow.Width, 4, tone: Tone.Faded),
                .. unknown == 0 ? Array.Empty<Block>() : [Blocks.Paragraph(Unpriced(unknown), flow.Width, 2, tone: Tone.Pencil)],
            ]
        );
    }

    private static string Unpriced(int lines) =>
        lines == 1
            ? "1 line of hardware and supplies has no price and is left out."
            : $"{Words.Of(lines)} lines of hardware and supplies have no price and are left out.";

    private static ImmutableArray<Cell> Row(PacketTakes takes, PacketModel model)
    {
        var other = Other(model.Supplies.Where(one => one.Project == takes.Name));
        var wood = takes.WoodCost ?? Money.Zero;
        return
        [
            new TextCell(takes.Name, Weight: Weight.Medium),
            new TextCell(Words.Of(takes.WoodCost, model.Currency)),
            new TextCell(Words.Of(other, model.Currency)),
            new TextCell(Words.Of(wood + other, model.Currency), Weight: Weight.Bold),
        ];
    }

    private static ImmutableArray<Cell> Total(PacketModel model)
    {
        var wood = model.Takes.Aggregate(Money.Zero, (sum, takes) => sum + (takes.WoodCost ?? Money.Zero));
        var other = Other(model.Supplies);
        return
        [
            new TextCell("All", Weight: Weight.Bold),
            new TextCell(Words.Of(wood, model.Currency), Weight: Weight.Bold),
            new TextCell(Words.Of(other, model.Currency), Weight: Weight.Bold),
            new TextCell(Words.Of(wood + other, model.Currency), 10.5, Weight.Bold),
        ];
    }

    private static Money Other(IEnumerable<PacketSupply> supplies) =>
        supplies.Aggregate(Money.Zero, (sum, one) => sum + (one.Price ?? Money.Zero));
}
