using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Sequence;

namespace ShopPlanner.Cutting.Planning;

/// <summary>
/// What a plan comes to beyond its cost, in the order in which plans of equal cost are preferred: more of the bin used up and
/// less new stock opened, leftovers large and few, few settings.
/// </summary>
/// <param name="FromBin">Pieces of rack and bin that are cut.</param>
/// <param name="NewStock">New boards and sheets that are cut.</param>
/// <param name="Kept">Leftovers that are worth keeping, over all copies.</param>
/// <param name="Settings">Different settings of fence or stop at home: a rip and a crosscut at the same figure are two, and so
/// are two materials at the same figure, since the saw is set anew between them.</param>
/// <param name="Cuts">Cuts to make, those by the store too, over all copies.</param>
/// <param name="Turned">Pieces that lie across the sheet's length, over all copies.</param>
public sealed record PlanMeasures(int FromBin, int NewStock, int Kept, int Settings, int Cuts, int Turned)
{
    /// <summary>How often fence or stop are set at home, the first time included, when like cuts of all boards and sheets of a
    /// material are made together, in the order of <see cref="SharedSettings"/>. At least <see cref="Settings"/>.</summary>
    public int SettingChanges { get; init; }

    /// <summary>Rips at home, over all copies, of pieces whose edge is short for a fence (<see cref="FenceEdge"/>): those are cut
    /// with a gauge, a sled or a straightedge.</summary>
    public int ShortRips { get; init; }

    /// <summary>Strips of waste narrower than half an inch that cuts at home take off, over all copies; squaring cuts are among
    /// them.</summary>
    public int Slivers { get; init; }

    /// <summary>Quarter turns of pieces in hand, over all copies: one for each cut at home that runs the other way than the cut
    /// at home which gave its piece. Stock as bought, and a panel from the store, are laid on the saw as their first cut wants
    /// them.</summary>
    public int Turns { get; init; }

    /// <summary>Measures a plan.</summary>
    /// <param name="request">The request that it answers.</param>
    /// <param name="plan">The plan; its stock is the request's.</param>
    public static PlanMeasures Of(CutRequest request, CutPlan plan)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        var stock = request.Stock.ToDictionary(one => one.Id);
        int Count(Func<Layout, int> each) => plan.Layouts.Sum(layout => layout.Copies * each(layout));
        return new(
            Count(layout => stock[layout.Stock].Offcut ? 1 : 0),
            Count(layout => stock[layout.Stock].Offcut ? 0 : 1),
            Count(layout => layout.Leftovers.Count(left => left.Keep)),
            plan.Layouts.SelectMany(layout =>
                    layout.Cuts.Where(cut => !cut.ByStore).Select(cut => Setting(stock[layout.Stock], cut))
                )
                .Distinct()
                .Count(),
            Count(layout => layout.Cuts.Length),
            Count(layout => layout.Pieces.Count(piece => piece.Turned))
        )
        {
            SettingChanges = SharedSettings.Of(request, plan).Sum(material => material.Changes),
            ShortRips = Count(layout => CutSizes.Of(request.Saw.Kerf.Ticks, stock[layout.Stock], layout).Count(IsShortAtHome)),
            Slivers = Count(layout => SliversOf(request, stock[layout.Stock], layout)),
            Turns = Count(TurnsOf),
        };
    }

    private static bool IsShortAtHome(SizedCut cut) => !cut.Cut.ByStore && cut.IsShortRip;

    // Strips that nobody cuts further, uses or keeps.
    private static int SliversOf(CutRequest request, CutStock stock, Layout layout)
    {
        var cuts = CutSizes.Of(request.Saw.Kerf.Ticks, stock, layout).Where(cut => !cut.Cut.ByStore).ToList();
        var used = cuts.Select(cut => cut.Cut.Piece).ToHashSet();
        bool IsSliver(string? name, string? part, (long Along, long Across)? size) =>
            name is not null && part is null && !used.Contains(name) && size is { } strip && IsThin(strip);
        return cuts.Sum(cut =>
            (IsSliver(cut.Cut.First, cut.Cut.FirstPart, cut.First) ? 1 : 0)
            + (IsSliver(cut.Cut.Second, cut.Cut.SecondPart, cut.Second) ? 1 : 0)
        );
    }

    private static bool IsThin((long Along, long Across) strip) =>
        Math.Min(strip.Along, strip.Across) is > 0 and < Length.TicksPerInch / 2;

    private static int TurnsOf(Layout layout)
    {
        var given = new Dictionary<string, CutKind>();
        var turns = 0;
        foreach (var cut in layout.Cuts.Where(cut => !cut.ByStore))
        {
            if (given.TryGetValue(cut.Piece, out var kind) && kind != cut.Kind)
                turns++;
            given[cut.First] = cut.Kind;
            if (cut.Second is { } second)
                given[second] = cut.Kind;
        }

        return turns;
    }

    private static (string Material, CutKind Kind, Length At) Setting(CutStock stock, Cut cut) =>
        (stock.Material, cut.Kind, cut.At);
}
