using System.Diagnostics;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Together;

/// <summary>A part that is wanted only if it comes free.</summary>
/// <param name="Part">The part, with the most pieces wanted; its id is not in the request.</param>
/// <param name="Worth">Of one piece, zero or more: so much of an offcut to keep may be given up for it. At zero it is cut from
/// scrap alone.</param>
public sealed record SparePart(CutPart Part, Money Worth);

/// <summary>A plan with spare parts.</summary>
/// <param name="Request">The request, with the spare pieces that found room.</param>
/// <param name="Plan">The plan that cuts them too.</param>
public sealed record SparedPlan(CutRequest Request, CutPlan Plan);

/// <summary>
/// Cuts spare parts from what a plan leaves, the most valuable first and as many of each as find room. The rule: the plan costs
/// no more than before, everything that it placed is placed still, and the offcuts to keep lose no more of their worth than the
/// spare pieces are worth. An offcut is worth its share by area of the cheapest new stock of its material; where there is none,
/// none of its area may be lost.
/// </summary>
public sealed class SpareFilling
{
    // Long enough to find room in a few boards, short enough to ask several times.
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(300);

    private readonly CutRequest request;
    private readonly CutPlan before;
    private readonly Func<CutRequest, EarlierPlan, TimeSpan?, CutPlan> plan;
    private readonly TimeSpan? time;
    private readonly Stopwatch watch = Stopwatch.StartNew();
    private readonly Dictionary<string, decimal?> rates;
    private SparedPlan best;
    private Money worth;

    private SpareFilling(
        CutRequest request,
        CutPlan before,
        TimeSpan? time,
        Func<CutRequest, EarlierPlan, TimeSpan?, CutPlan> plan
    )
    {
        (this.request, this.before, this.time, this.plan) = (request, before, time, plan);
        best = new(request, before);
        rates = request.Materials.ToDictionary(material => material.Id, RateOf);
    }

    /// <summary>Returns the plan with the spare parts that found room; the plan itself where none did.</summary>
    /// <param name="request">What was planned.</param>
    /// <param name="before">Its plan.</param>
    /// <param name="spares">What is wanted only if it comes free; parts of a material that is not cut find no room.</param>
    /// <param name="time">For all of it; null for no clock.</param>
    /// <param name="plan">Plans a request, beginning with an earlier plan, within a time.</param>
    public static SparedPlan Fill(
        CutRequest request,
        CutPlan before,
        IReadOnlyList<SparePart> spares,
        TimeSpan? time,
        Func<CutRequest, EarlierPlan, TimeSpan?, CutPlan> plan
    )
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(spares);
        ArgumentNullException.ThrowIfNull(plan);
        var filling = new SpareFilling(request, before, time, plan);
        foreach (var spare in spares.OrderByDescending(spare => spare.Worth).ThenByDescending(spare => AreaOf(spare.Part)))
            filling.Add(spare);
        return filling.best;
    }

    private bool IsOver => time is { } allowed && watch.Elapsed >= allowed;

    // Wanted parts without a place go first; of a material that is not cut nothing is left.
    private bool HasRoom(CutPart part) =>
        rates.ContainsKey(part.Material)
        && before.Unplaced.All(left => request.Parts.Single(one => one.Id == left.Part).Material != part.Material);

    // The most pieces that find room: all of them, else by halves.
    private void Add(SparePart spare)
    {
        if (!HasRoom(spare.Part))
            return;
        var (fits, over) = (0, spare.Part.Quantity + 1);
        for (var count = spare.Part.Quantity; count > fits && !IsOver; count = (fits + over) / 2)
            if (AreaOf(spare.Part) * (count - fits) <= LeftOf(spare.Part.Material) && Try(spare, count))
                fits = count;
            else
                over = count;
    }

    private bool Try(SparePart spare, int count)
    {
        var asked = best.Request with
        {
            Parts = [.. best.Request.Parts.Where(part => part.Id != spare.Part.Id), spare.Part with { Quantity = count }],
        };
        var has = best.Request.Parts.FirstOrDefault(part => part.Id == spare.Part.Id)?.Quantity ?? 0;
        var gained = worth + (spare.Worth * (count - has));
        var found = plan(asked, new EarlierPlan(best.Request, best.Plan), time is null ? null : Look);
        if (!IsFree(found, gained))
            return false;
        (best, worth) = (new(asked, Bounded(found)), gained);
        return true;
    }

    private bool IsFree(CutPlan found, Money gained) =>
        found.Cost <= before.Cost
        && found.Unplaced.Sum(left => left.Quantity) <= before.Unplaced.Sum(left => left.Quantity)
        && request.Materials.All(material =>
            rates[material.Id] is not null || KeptOf(found, material.Id) >= KeptOf(before, material.Id)
        )
        && WorthOf(before) - WorthOf(found) <= gained.Amount;

    // What is wanted is placed for as much as before, so what was proven of it holds.
    private CutPlan Bounded(CutPlan found) =>
        found.Cost == before.Cost ? found with { CostLowerBound = before.CostLowerBound, Status = before.Status } : found;

    private decimal WorthOf(CutPlan of) =>
        request.Materials.Sum(material => (rates[material.Id] ?? 0) * KeptOf(of, material.Id).ToSquareMetres());

    private Area KeptOf(CutPlan of, string material) => Sum(of, material, layout => layout.Leftovers.Where(left => left.Keep));

    private Area LeftOf(string material) => Sum(best.Plan, material, layout => layout.Leftovers);

    private Area Sum(CutPlan of, string material, Func<Layout, IEnumerable<Leftover>> which)
    {
        var own = request.Stock.Where(stock => stock.Material == material).Select(stock => stock.Id).ToHashSet();
        return of
            .Layouts.Where(layout => own.Contains(layout.Stock))
            .Aggregate(
                Area.Zero,
                (sum, layout) =>
                    sum + (which(layout).Aggregate(Area.Zero, (all, left) => all + Area.Of(left.Dx, left.Dy)) * layout.Copies)
            );
    }

    // Money for a square metre of new stock; null where none has a price.
    private decimal? RateOf(CutMaterial material) =>
        request
            .Stock.Where(stock => stock.Material == material.Id && !stock.Offcut && stock.Price > Money.Zero)
            .Select(stock => (decimal?)(stock.Price.Amount / Area.Of(stock.Length, stock.Width).ToSquareMetres()))
            .Min();

    private static Area AreaOf(CutPart part) => Area.Of(part.Length, part.Width);
}
