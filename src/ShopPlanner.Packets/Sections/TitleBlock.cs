using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>The head of the first page: what it is, the day, the unit and the plan, and whether that plan is up to
/// date.</summary>
internal static class TitleBlock
{
    private const double NameSize = 19,
        LineHeight = 23,
        FieldsHeight = 33;
    private const int MostLines = 4;
    private const string LeftOut =
        "Some names have signs that are not printed: emoji are left out, and a letter that no font here has is shown as □.";

    /// <summary>Adds the block.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        var names = Names(model, flow.Width - 24);
        var height = (names.Count * LineHeight) + 16 + FieldsHeight;
        flow.Add([
            new Block(height, at => Draw(flow, model, names, new(at.X, at.Y, flow.Width, height))) { Role = PageRole.Heading },
        ]);
        flow.Space(6);
        if (model.Plan?.OutOfDate is { } change)
            flow.Add([OutOfDate(flow, change), Block.Gap(5)]);
        flow.Add([
            Blocks.Paragraph(
                model.Plan is { } plan
                    ? $"Before you cut, check that your screen shows plan {plan.Id} too. If it does not, print again."
                    : "Not planned yet: what to buy and how to cut it comes with a cut plan.",
                flow.Width,
                tone: Tone.Faded
            ),
            .. Names(model).Any(TextFit.LeavesOut)
                ? [Blocks.Paragraph(LeftOut, flow.Width, tone: Tone.Pencil)]
                : Array.Empty<Block>(),
        ]);
    }

    private static IEnumerable<string> Names(PacketModel model) =>
        [
            .. model.Projects,
            .. model.Stores.Select(store => store.Name),
            .. model.Layouts.Select(layout => layout.Picture.Title),
            .. model.Parts.SelectMany(part => new[] { part.Name, part.Material }),
            .. model.Supplies.Select(one => one.Name),
            .. model.Work.SelectMany(work => work.Build.Concat(work.Finish)).SelectMany(step => new[] { step.Title, step.Note }),
        ];

    private static IReadOnlyList<string> Names(PacketModel model, double width)
    {
        var all = string.Join(" · ", model.Projects.Select(p => p.Length > 500 ? p[..500] : p));
        return TextFit.Wrap(TextFit.Clean(all, Weight.Bold), Weight.Bold, NameSize, width, MostLines);
    }

    private static IEnumerable<Shape> Draw(PageFlow flow, PacketModel model, IReadOnlyList<string> names, Box box)
    {
        var rule = box.Bottom - FieldsHeight;
        (string Title, string Value)[] fields =
        [
            ("Printed", Words.Of(model.Date)),
            Unit(model),
            ("Plan", model.Plan is { } plan ? $"{Words.Of(plan.Version)} · {TextFit.Clean(plan.Id)}" : "none yet"),
            ("Boards and sheets", model.Plan is null ? "—" : Words.Of(model.Layouts.Sum(l => l.Copies))),
            ("Parts", Words.Of(CutListSection.CountOf(model))),
        ];
        var pitch = flow.Width / fields.Length;
        return
        [
            new Frame(Stroke.Outline, box),
            new Line(Stroke.Thin, new(box.X, rule), new(box.Right, rule)),
            .. names.Select(
                (line, i) =>
                    new Caption(new(box.X + 12, box.Y + 8 + ((i + 0.5) * LineHeight)), line, NameSize, Weight: Weight.Bold)
            ),
            .. fields.SelectMany((f, i) => Field(f.Title, f.Value, new(box.X + (i * pitch), rule, pitch, FieldsHeight), i > 0)),
        ];
    }

    private static (string Title, string Value) Unit(PacketModel model) =>
        model.IsMixed
            ? ("Lengths in", model.Unit == LengthUnit.Inch ? "inches, some mm" : "mm, some inches")
            : ("All lengths in", Words.Of(model.Unit));

    private static IEnumerable<Shape> Field(string title, string value, Box box, bool parted)
    {
        if (parted)
            yield return new Line(Stroke.Thin, new(box.X, box.Y), new(box.X, box.Bottom));
        yield return new Caption(new(box.X + 7, box.Y + 9), title, 7.5, Tone: Tone.Faded);
        var shown = TextFit.Shorten(value, Weight.Medium, 11.5, box.Width - 10);
        yield return new Caption(new(box.X + 7, box.Y + 22), shown, 11.5, Weight: Weight.Medium);
    }

    private static Block OutOfDate(PageFlow flow, string change)
    {
        const double size = 11,
            line = 14;
        var lines = TextFit.Wrap(
            TextFit.Clean("Out of date. " + change, Weight.Bold),
            Weight.Bold,
            size,
            flow.Width - 20,
            MostLines
        );
        var height = (lines.Count * line) + 10;
        return new(
            height,
            at =>
                [
                    new Frame(Stroke.Outline, new(at.X, at.Y, flow.Width, height)),
                    .. lines.Select(
                        (words, i) =>
                            new Caption(
                                new(at.X + 10, at.Y + 5 + ((i + 0.5) * line)),
                                words,
                                size,
                                Weight: Weight.Bold,
                                Tone: Tone.Pencil
                            )
                    ),
                ]
        );
    }
}
