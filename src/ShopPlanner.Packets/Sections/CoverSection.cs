using System.Globalization;
using ShopPlanner.Core.Making.Export;
using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>The cover: what each piece looks like, its outside size, what it takes in money, wood and hours; the contents;
/// cautions.</summary>
internal static class CoverSection
{
    private const int MostBeside = 3;

    /// <summary>Adds the cover below the title.</summary>
    /// <param name="flow">The pages.</param>
    /// <param name="model">The packet.</param>
    /// <param name="sections">What the contents list.</param>
    public static void Add(PageFlow flow, PacketModel model, IReadOnlyList<Printed> sections)
    {
        flow.Space(8);
        foreach (var row in Faces(model).Chunk(MostBeside))
            flow.Add([Row(row, flow, model)]);
        flow.Section("Contents", Contents(sections, flow.ColumnWidth(2)), 2);
        AddChecks(flow, model);
        CautionSection.Add(flow, model);
    }

    private static IEnumerable<(PacketTakes Takes, LineDrawing? Face)> Faces(PacketModel model)
    {
        var pieces = model.Pieces.GroupBy(piece => piece.Name).ToDictionary(same => same.Key, same => same.First());
        return model.Takes.Select(takes => (takes, pieces.GetValueOrDefault(takes.Name)?.Isometric));
    }

    private static Block Row((PacketTakes Takes, LineDrawing? Face)[] row, PageFlow flow, PacketModel model)
    {
        var width = flow.ColumnWidth(MostBeside);
        // One piece alone: its facts stand beside the picture.
        if (row.Length == 1 && row[0].Face is { } alone)
            return Blocks.Beside(
                PageFlow.Gutter,
                [(Blocks.Figure(alone), alone.Width), (Facts(row[0].Takes, width * 1.5, model), width * 1.5)]
            ) with
            {
                Before = 6,
            };
        return Blocks.Beside(
            PageFlow.Gutter,
            [
                .. row.Select(one =>
                    (
                        Blocks.Stack([
                            .. one.Face is { } face ? new[] { Blocks.Figure(face) } : [],
                            Facts(one.Takes, width, model),
                        ]),
                        width
                    )
                ),
            ]
        ) with
        {
            Before = 6,
        };
    }

    private static Block Facts(PacketTakes takes, double width, PacketModel model)
    {
        string[] facts =
        [
            takes.Outside.Length > 0 ? $"Outside: {takes.Outside}" : "",
            takes.Wood,
            takes.WoodCost is { } cost ? $"Boards and sheets: {Words.Of(cost, model.Currency)}" : "",
            takes.WorkMinutes > 0 ? $"Work after cutting: about {Hours(takes.WorkMinutes)}, an estimate" : "",
            takes.WaitMinutes > 0
                ? $"Glue and finish: {StepWords.Time(takes.WaitMinutes)} of waiting, if one after the other"
                : "",
        ];
        return Blocks.Stack([
            Blocks.Paragraph(takes.Name.Length > 100 ? takes.Name[..100] : takes.Name, width, size: 10.5, weight: Weight.Bold),
            .. facts.Where(fact => fact.Length > 0).Select(fact => Blocks.Paragraph(fact, width)),
        ]);
    }

    // To the next half hour: an estimate to the minute would promise too much.
    private static string Hours(int minutes) =>
        (Math.Ceiling(minutes / 30.0) / 2).ToString("0.#", CultureInfo.InvariantCulture) + " h";

    private static List<Block> Contents(IReadOnlyList<Printed> sections, double width) =>
        [.. sections.Select(section => Line(section, width))];

    private static Block Line(Printed section, double width)
    {
        const double size = Blocks.TextSize,
            height = 13,
            figures = 24;
        var isPrinted = section.Add is not null;
        var words = isPrinted ? section.Title : $"{section.Title}: {section.Missing}";
        var shown = TextFit.Shorten(words, Weight.Regular, size, width - (isPrinted ? figures : 0));
        return new(
            height,
            at =>
                [
                    new Caption(at with { Y = at.Y + 6 }, shown, size, Tone: isPrinted ? Tone.Ink : Tone.Faded),
                    new Line(Stroke.Grain, at with { Y = at.Y + 12 }, new(at.X + width, at.Y + 12)),
                ]
        )
        {
            Target = isPrinted ? section.Title : "",
            Later = isPrinted
                ? (at, pages) =>
                    pages.TryGetValue(section.Title, out var page)
                        ? [new Caption(new(at.X + width, at.Y + 6), Words.Of(page), size, Anchor.End, Weight.Medium)]
                        : []
                : null,
        };
    }

    private static void AddChecks(PageFlow flow, PacketModel model)
    {
        var several = model.Pieces.Length > 1;
        var warnings = model
            .Pieces.SelectMany(piece => piece.Warnings.Select(words => several ? $"{piece.Name}: {words}" : words))
            .ToList();
        if (warnings.Count > 0)
            flow.Section("Check this first", [.. warnings.Select(words => Blocks.Item(words, flow.ColumnWidth(2)))], 2);
    }
}
