using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>What stands on every page: whose it is, which plan, page x of y; and on pages with drawings a bar of known
/// length.</summary>
internal static class PageFrame
{
    private const double Size = 8.5;

    /// <summary>Finishes the pages.</summary>
    public static ImmutableArray<Page> Finish(PageFlow flow, PacketModel model)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (index, leaf) in flow.Leaves.Index())
        foreach (var mark in leaf.Bookmarks)
            places.TryAdd(mark.Title, index + 1);
        return [.. flow.Leaves.Select((leaf, i) => Finish(flow, model, leaf, i, places))];
    }

    private static Page Finish(PageFlow flow, PacketModel model, Leaf leaf, int index, Dictionary<string, int> places)
    {
        var shapes = Foot(flow, model, $"page {Words.Of(index + 1)} of {Words.Of(flow.Leaves.Count)}");
        if (index > 0)
            shapes = shapes.Concat(Head(flow, model));
        if (leaf.HasDrawing)
            shapes = shapes.Concat(KnownLength(flow, model.Unit));
        return new(
            flow.PageWidth,
            flow.PageHeight,
            [.. leaf.Groups(places), new PageGroup(PageRole.Frame, [.. shapes])],
            [.. leaf.Bookmarks]
        );
    }

    private static IEnumerable<Shape> Head(PageFlow flow, PacketModel model)
    {
        var names = string.Join(" · ", model.Projects);
        var clean = TextFit.Clean(names.Length > 300 ? names[..300] : names, Weight.Medium);
        var unit = "lengths in " + Words.Units(model);
        var room = flow.Width - Typeface.Width(unit, Weight.Regular, Size) - 16;
        return
        [
            new Caption(
                new(flow.Left, Paper.Margin + 4),
                TextFit.Shorten(clean, Weight.Medium, Size, room),
                Size,
                Weight: Weight.Medium
            ),
            new Caption(new(flow.Left + flow.Width, Paper.Margin + 4), unit, Size, Anchor.End, Tone: Tone.Faded),
            new Line(Stroke.Thin, new(flow.Left, Paper.Margin + 12), new(flow.Left + flow.Width, Paper.Margin + 12)),
        ];
    }

    private static IEnumerable<Shape> Foot(PageFlow flow, PacketModel model, string page)
    {
        var y = flow.PageHeight - Paper.Margin - 5;
        var which = model.Plan is { } plan ? $"plan {Words.Of(plan.Version)} · {TextFit.Clean(plan.Id)}" : "no cut plan";
        var outOfDate = model.Plan?.OutOfDate is null ? "" : "OUT OF DATE";
        return
        [
            new Line(Stroke.Thin, new(flow.Left, y - 8), new(flow.Left + flow.Width, y - 8)),
            new Caption(new(flow.Left, y), $"{which} · printed {Words.Of(model.Date)}", Size, Tone: Tone.Faded),
            new Caption(new(flow.Left + (flow.Width / 2), y), outOfDate, Size, Anchor.Middle, Weight.Bold, Tone.Pencil),
            new Caption(new(flow.Left + flow.Width, y), page, Size, Anchor.End, Weight.Medium),
        ];
    }

    // Four inches or a hundred millimetres, whichever the reader's rule shows, with a tick at each inch or ten millimetres.
    private static IEnumerable<Shape> KnownLength(PageFlow flow, LengthUnit unit)
    {
        var (length, ticks, name) = unit == LengthUnit.Inch ? (4 * 72.0, 4, "4 in") : (100 * 72 / 25.4, 10, "100 mm");
        var y = flow.PageHeight - Paper.Margin - 22;
        var words = $"{name} on paper. If your ruler disagrees, print at 100%.";
        return
        [
            new Line(Stroke.Outline, new(flow.Left, y), new(flow.Left + length, y)),
            .. Enumerable
                .Range(0, ticks + 1)
                .Select(i => flow.Left + (length * i / ticks))
                .Select((x, i) => new Line(Stroke.Thin, new(x, y - (i == 0 || i == ticks ? 5 : 3)), new(x, y + 3))),
            new Caption(
                new(flow.Left + length + 8, y),
                TextFit.Shorten(words, Weight.Regular, Size, flow.Width - length - 8),
                Size
            ),
        ];
    }
}
