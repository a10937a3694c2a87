using System.Collections.Immutable;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>How each piece is built and finished: a step with its picture, its figures large, and a box to check off.</summary>
internal static class WorkSection
{
    private const double HeadingSize = 15,
        PhaseSize = 10,
        PhaseHeight = 16;

    /// <summary>Adds the work of every project, building and finish each from a new page on.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        foreach (var work in model.Work)
        {
            AddSteps(flow, "Build: " + work.Name, work.AnyOrder, work.Build);
            AddSteps(flow, "Finish: " + work.Name, [], work.Finish);
            AddAmounts(flow, work);
        }
    }

    private static void AddSteps(PageFlow flow, string title, ImmutableArray<string> before, ImmutableArray<PacketStep> steps)
    {
        if (steps.IsEmpty)
            return;
        flow.Break();
        flow.Heading(Fit(flow, title), PhaseHeight + StepBlock.HeightOf(flow, steps[0]));
        foreach (var sentence in before)
            flow.Paragraph(TextFit.Clean(sentence), PhaseSize, Weight.Medium);
        var (phase, said) = ("", new Dictionary<string, int>(StringComparer.Ordinal));
        foreach (var step in steps)
        {
            var block = new StepBlock(flow, step, said);
            if (step.Phase != phase)
                AddPhase(flow, step.Phase, block.Height);
            phase = step.Phase;
            block.Add();
        }
    }

    private static void AddPhase(PageFlow flow, string words, double following)
    {
        flow.Space(6);
        flow.Need(PhaseHeight + following);
        flow.Add(
            PhaseHeight,
            y => [new Caption(new(flow.Left, y + 6), words, PhaseSize, Weight: Weight.Medium, Tone: Tone.Faded)]
        );
    }

    private static void AddAmounts(PageFlow flow, PacketWork work)
    {
        AddAreas(flow, work.Areas);
        if (work.Buy.IsEmpty)
            return;
        var table = new Table(
            [new("", 0.5), new("For the finish", 9), new("Quantity", 1.5, Anchor.End)],
            [
                .. work.Buy.Select(one =>
                    ImmutableArray.Create<Cell>(
                        new TickCell(),
                        new TextCell(one.Name),
                        new TextCell(Words.Of(one.Quantity), 10.5, Weight.Bold)
                    )
                ),
            ]
        );
        flow.Heading("What the finish takes", table.Beginning(flow.Width));
        table.AddTo(flow);
    }

    private static void AddAreas(PageFlow flow, ImmutableArray<PacketArea> areas)
    {
        if (areas.IsEmpty)
            return;
        var table = new Table(
            [new("Mark", 1), new("Part", 5), new("Area", 2, Anchor.End), new("Before assembly", 2.5, Anchor.End)],
            [
                .. areas.Select(area =>
                    ImmutableArray.Create<Cell>(
                        new MarkCell(area.Part),
                        new TextCell(area.Name),
                        new TextCell(area.Area, Weight: Weight.Medium),
                        new TextCell(area.BeforeAssembly.Length > 0 ? area.BeforeAssembly : "—")
                    )
                ),
            ]
        );
        flow.Heading("Areas to finish", table.Beginning(flow.Width));
        table.AddTo(flow);
    }

    private static string Fit(PageFlow flow, string words) =>
        TextFit.Shorten(TextFit.Clean(words, Weight.Bold), Weight.Bold, HeadingSize, flow.Width);
}
