using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets.Exact;
using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Sheets.Polishing;
using ShopPlanner.Cutting.Sheets.Search;
using ShopPlanner.Cutting.Sheets.Writing;
using ShopPlanner.Cutting.Steering;

namespace ShopPlanner.Cutting.Sheets;

/// <summary>
/// The phases of a search: first packings; when stock is short, as much as possible placed, and from there on only what has
/// a place is planned; then cost against bound; then leftovers.
/// </summary>
internal sealed class Portfolio
{
    // Share of the time after which pieces that have no place are given up.
    private const double PlacingShare = 0.5;

    // Share of the time after which the cost is no longer worked on when leftovers count.
    private const double CostShare = 0.92;

    private const double CostShareAlone = 0.98;

    private readonly SheetModel whole;
    private readonly SearchControl control;
    private readonly SearchClock clock;
    private readonly SearchLimits limits;
    private SheetModel model;

    public Portfolio(SheetModel model, SearchControl control, SearchClock clock)
    {
        (whole, this.model) = (model, model);
        (this.control, this.clock) = (control, clock);
        limits = new SearchLimits(control, clock);
    }

    public SheetSolution Run()
    {
        var best = new Constructor(model).Run(() => clock.IsOver, TellFirst);
        if (control.Time <= TimeSpan.Zero)
            return new SolutionWriter(whole).Write(best, 0);
        if (!best.IsComplete)
            best = Narrow(PlaceMost(best));
        using var proof = new Proof(model, clock);
        best = proof.Begin(best);
        clock.Tell(Told(best), proof.Cost);
        var polisher = new Polisher(model, control.Seed);
        var search = new CostSearch(model, control, limits);
        best = search.Lower(
            best,
            proof,
            polisher.MindsLeftovers ? CostShare : CostShareAlone,
            p => clock.Tell(Told(p), proof.Cost)
        );
        var met = search.Met();
        best = new Repeats(model, limits).Run(polisher.Run(best, met, limits), met);
        return new SolutionWriter(whole).Write(best, proof.Cost);
    }

    private Packing PlaceMost(Packing best)
    {
        using var proof = new Proof(model, clock);
        return proof.PlaceMost(best) is { IsProven: true } answer
            ? answer.Packing
            : new CostSearch(model, control, limits).PlaceMost(best, PlacingShare);
    }

    private void TellFirst(Packing packing) => clock.Tell(packing.IsComplete ? packing.Cost : null, 0);

    private long? Told(Packing packing) => ReferenceEquals(model, whole) ? packing.Cost : null;

    // Goes on with the pieces that have a place only.
    private Packing Narrow(Packing packing)
    {
        if (packing.IsComplete)
            return packing;
        model = model.WithDemand(packing.Placed());
        return packing.MovedTo(model);
    }
}
