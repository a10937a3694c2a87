using System.Collections.Immutable;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>Another order for the same cuts: like ones over all boards and sheets of a material at one setting of fence or
/// stop.</summary>
internal static class SettingSection
{
    private const string Order =
        "The same cuts as on the drawings, in an order that sets fence and stop as seldom as can be. Stack the pieces by "
        + "name: each line wants its pieces in hand. Figures stand for the boards and sheets as they are numbered "
        + "on their drawings.";

    /// <summary>Adds the lists; nothing where every setting serves one cut.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        foreach (var group in model.Settings.Where(group => group.Runs.Any(run => run.Shared)))
            AddMaterial(flow, group, model);
    }

    private static void AddMaterial(PageFlow flow, PacketSettings group, PacketModel model)
    {
        var table = new Table(
            [
                new("", 0.5),
                new("Way", 1.8),
                new("At", 1.5, Anchor.End),
                new("", 0.1),
                new("Cuts: board or sheet, number of the cut", 7),
            ],
            [.. group.Runs.Select(run => Row(run, model))]
        );
        var title = "Cuts at one setting: " + TextFit.Clean(group.Material, Weight.Bold);
        flow.Heading(TextFit.Shorten(title, Weight.Bold, 15, flow.Width), table.Beginning(flow.Width) + 30);
        flow.Paragraph(Order, 9);
        flow.Space(4);
        table.AddTo(flow);
    }

    private static string Way(PacketRun run) =>
        run.Way switch
        {
            CutWay.SquareEnd => "square end, off",
            CutWay.TrimEdge or CutWay.TrimByGuide => "trim edge, off",
            CutWay.Crosscut => "crosscut",
            CutWay.RipByGuide => "rip, guide",
            _ => run.FromFarSide ? "rip, far side" : "rip",
        };

    private static ImmutableArray<Cell> Row(PacketRun run, PacketModel model) =>
        [
            new TickCell(),
            new TextCell(Way(run)),
            new TextCell(Words.Of(run.Setting, run.Unit ?? model.Unit, model.Unit), 12, Weight.Bold),
            Cell.Empty,
            new TextCell(run.Cuts),
        ];
}
