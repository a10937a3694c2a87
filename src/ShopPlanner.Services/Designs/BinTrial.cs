using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Shop;

namespace ShopPlanner.Services.Designs;

/// <summary>Tries a count from the most down: can what it makes be cut from the bin alone?</summary>
internal sealed class BinTrial(Snapshot shop, ICutPlanner planner, Idea idea, DimensionRange count, CancellationToken cancel)
{
    private const int MostWithoutLimit = 50;

    // Long enough for the few pieces of a row of slats; the button answers within a few seconds.
    private static readonly TimeSpan EachTrial = TimeSpan.FromMilliseconds(400);

    public Outcome<BinAllows> Run()
    {
        var (least, most) = ((int)(count.Least ?? 0), (int)Math.Min(count.Most ?? MostWithoutLimit, MostWithoutLimit));
        var pieces = Enumerable
            .Range(least, Math.Max(0, most - least + 1))
            .Select(n => (Count: n, Evaluation: Evaluate(n)))
            .Where(one => one.Evaluation.Piece is not null)
            .ToList();
        if (pieces.Count == 0)
            return Outcome.Faulty<BinAllows>(Evaluate(least).Faults);
        var made = Names(pieces[0].Evaluation.Piece!, pieces[^1].Evaluation.Piece!);
        if (made.IsEmpty)
            return Outcome.Faulty<BinAllows>(
                Fault.Of(count.Dimension.Name, count.Text, "makes no parts at any count: there is nothing to cut")
            );
        var faults = new List<Fault>();
        var (saw, keep, _) = SawReader.Read(shop.Shop, faults);
        if (faults.Count > 0)
            return Outcome.Faulty<BinAllows>(faults);
        foreach (var (n, evaluation) in pieces.OrderByDescending(one => one.Count))
            if (Fits(evaluation.Piece!, made, saw, keep))
                return new BinAllows(n, made);
        return new BinAllows(null, made);
    }

    private Evaluation Evaluate(int n) =>
        DesignEvaluator.Evaluate(
            idea.Document,
            idea.Changed.SetItem(count.Dimension.Name, n.ToString(CultureInfo.InvariantCulture))
        );

    // What the count makes is what there is more of at its greatest value than at its least.
    private static ImmutableArray<string> Names(Piece least, Piece most) =>
        [
            .. Members(most)
                .GroupBy(part => part.Name)
                .Where(group =>
                    group.Sum(part => part.Quantity)
                    > Members(least).Where(part => part.Name == group.Key).Sum(part => part.Quantity)
                )
                .Select(group => group.Key),
        ];

    private static IEnumerable<PiecePart> Members(Piece piece) => piece.Parts.Where(part => part.Purpose == PartPurpose.Member);

    private bool Fits(Piece piece, ImmutableArray<string> made, SawSettings saw, KeepRule keep)
    {
        cancel.ThrowIfCancellationRequested();
        var wanted = Members(piece).Where(part => made.Contains(part.Name)).ToList();
        if (wanted.Count == 0)
            return true;
        if (wanted.Any(part => part.Material.Id is not { } id || !shop.Materials.TryFind(id, out _)))
            return false;
        var stock = Stock(wanted.Select(part => part.Material.Id!).ToHashSet());
        if (stock.IsEmpty)
            return false;
        var request = new CutRequest(
            piece.Unit,
            saw,
            keep,
            Materials(wanted),
            stock,
            [.. wanted.Select(Part)],
            new CutLimits(EachTrial.TotalSeconds)
        );
        var plan = planner.Plan(
            request,
            new SearchControl
            {
                Time = EachTrial,
                Cancel = cancel,
                Workers = 1,
            }
        );
        return plan.Unplaced.IsEmpty && planner.Check(request, plan).IsEmpty;
    }

    private ImmutableArray<CutMaterial> Materials(IEnumerable<PiecePart> wanted) =>
        [
            .. wanted
                .Select(part => shop.Materials[part.Material.Id!])
                .Distinct()
                .Select(one => new CutMaterial(one.Id, one.Form, one.Thickness, one.Width)),
        ];

    private ImmutableArray<CutStock> Stock(HashSet<string> materials) =>
        [
            .. shop
                .OnHand.Values.Where(piece =>
                    piece.Piece.Place == StockPlace.Bin
                    && piece.PromisedPlanId is null
                    && materials.Contains(piece.Piece.MaterialId)
                )
                .OrderBy(piece => piece.Piece.Tag, StringComparer.Ordinal)
                .Select(RequestStock.StockOf),
        ];

    private static CutPart Part(PiecePart part) =>
        new(
            part.Id,
            part.Name,
            part.Material.Id!,
            part.RoughLength,
            part.RoughWidth,
            !part.GrainMatters && part.Material.Form == Core.Materials.MaterialForm.Sheet ? Grain.Any : Grain.Length,
            part.Quantity
        );
}
