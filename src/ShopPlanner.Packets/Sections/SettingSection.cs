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

    /// <summary>Adds the lists; nothing where every setting serves one cut. How to read them is said above the first.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        var isFirst = true;
        foreach (var group in model.Settings.Where(group => group.Runs.Any(run => run.Shared)))
        {
            AddMaterial(flow, group, model, isFirst);
            isFirst = false;
        }
    }

    private static void AddMaterial(PageFlow flow, PacketSettings group, PacketModel model, bool isFirst)
    {
        var table = new Table(
            [
                new("", 0.5),
                new("What to do", 3.6),
                new("Setting", 1.5, Anchor.End),
                new("", 0.1),
                new("Board or sheet: cuts", 5.2),
            ],
            [.. group.Runs.Select(run => Row(run, model))]
        );
        var title = "Cuts by setting: " + TextFit.Clean(group.Material, Weight.Bold);
        flow.Heading(TextFit.Shorten(title, Weight.Bold, 15, flow.Width), table.Beginning(flow.Width) + (isFirst ? 30 : 0));
        if (isFirst)
        {
            flow.Paragraph(Order, 9);
            flow.Space(4);
        }

        table.AddTo(flow);
    }

    private static ImmutableArray<Cell> Row(PacketRun run, PacketModel model) =>
        [
            new TickCell(),
            new TextCell(run.Shimmed.Length > 0 ? $"{run.Way}. {run.Shimmed}." : run.Way),
            new TextCell(Setting(run, model), 12, Weight.Bold),
            Cell.Empty,
            new TextCell(run.Cuts),
        ];

    private static string Setting(PacketRun run, PacketModel model) =>
        run.IsKerfOnly ? "kerf" : Words.Setting(run.Setting, run.TakesOff, run.Unit ?? model.Unit, model.Unit);
}
