using System.Collections.Immutable;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>Another order for the same cuts: those of all boards and sheets of a material at one setting of fence or stop
/// together.</summary>
internal static class SettingSection
{
    private const string Order =
        "The same cuts as on the drawings, in an order with fewer fence and stop changes. Stack the pieces by name: you need "
        + "all pieces of a line before you cut it. Boards and sheets are numbered as on their drawings.";

    /// <summary>Adds the lists of the materials of which a setting serves more than one cut.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        var width = flow.ColumnWidth(2);
        flow.Section(
            "Cuts by setting",
            [
                Blocks.Paragraph(Order, width),
                .. model.Settings.Where(group => group.Runs.Any(run => run.Shared)).SelectMany(group => Of(group, model, width)),
            ],
            2
        );
    }

    private static IEnumerable<Block> Of(PacketSettings group, PacketModel model, double width)
    {
        var table = new Table(
            [new("", 0.5), new("Setting", 2.1, Anchor.End), new("What to do", 4), new("Board or sheet: cuts", 3.4)],
            [.. group.Runs.Select(run => Row(run, model))]
        );
        return [Blocks.Subheading("Cuts by setting: " + group.Material, width), .. table.Blocks(width)];
    }

    private static ImmutableArray<Cell> Row(PacketRun run, PacketModel model) =>
        [
            new TickCell(),
            new TextCell(Setting(run, model), 11, Weight.Bold),
            new TextCell(run.Shimmed.Length > 0 ? $"{run.Way}. {run.Shimmed}." : run.Way),
            new TextCell(run.Cuts),
        ];

    private static string Setting(PacketRun run, PacketModel model) =>
        run.IsKerfOnly ? "kerf" : Words.Setting(run.Setting, run.TakesOff, run.Unit ?? model.Unit, model.Unit);
}
