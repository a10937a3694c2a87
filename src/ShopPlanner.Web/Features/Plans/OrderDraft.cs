using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Web.Features.Plans;

/// <summary>What a person has ticked so far for a plan.</summary>
public sealed class OrderDraft
{
    private readonly HashSet<Guid> projects = [];
    private readonly HashSet<Guid> leftOut = [];
    private readonly HashSet<Guid> stores = [];
    private readonly HashSet<Guid> kept = [];
    private readonly HashSet<Guid> first = [];
    private readonly Dictionary<Guid, string> spares = [];

    /// <summary>Whether boards and sheets of the rack may be cut.</summary>
    public bool UseRack { get; set; } = true;

    /// <summary>Whether offcuts may be cut.</summary>
    public bool UseBin { get; set; } = true;

    /// <summary>Whether pieces that are cut already are planned once more.</summary>
    public bool CutAgain { get; set; }

    /// <summary>Whether a trip to a store counts as a cost.</summary>
    public bool CountTrips { get; set; }

    /// <summary>Whether everything is bought at one store.</summary>
    public bool OneStore { get; set; }

    /// <summary>How long to keep searching, as typed.</summary>
    public string Seconds { get; set; } = "10";

    /// <summary>Begins as an earlier plan was ordered, with what there still is of it.</summary>
    /// <param name="order">The earlier order.</param>
    /// <param name="sheets">The parts lists that can be chosen from: rows that the order did not name are left out.</param>
    /// <param name="sellers">The stores that there are.</param>
    public void Begin(PlanOrder order, IReadOnlyDictionary<Guid, PartSheet> sheets, IEnumerable<Guid> sellers)
    {
        ArgumentNullException.ThrowIfNull(order);
        projects.UnionWith(order.Projects.Where(sheets.ContainsKey));
        stores.UnionWith(order.Stores.Intersect(sellers));
        first.UnionWith(order.FromHand.Where(sheets.ContainsKey));
        foreach (var (row, worth) in order.Spares)
            spares[row] = worth == 0 ? "" : Money.From(worth).ToString();
        (UseRack, UseBin, CutAgain) = (order.UseRack, order.UseBin, order.CutAgain);
        (CountTrips, OneStore) = (order.CountTrips, order.OneStore);
        Seconds = order.Seconds.ToString(CultureInfo.InvariantCulture);
        if (order.Parts is { } wanted)
            leftOut.UnionWith(projects.SelectMany(id => sheets[id].Rows).Select(row => row.Texts.Id).Except(wanted));
    }

    /// <summary>Whether a project, a row or a store is ticked.</summary>
    public bool HasProject(Guid id) => projects.Contains(id);

    /// <inheritdoc cref="HasProject" />
    public bool HasRow(Guid id) => !leftOut.Contains(id);

    /// <inheritdoc cref="HasProject" />
    public bool HasStore(Guid id) => stores.Contains(id);

    /// <summary>Whether a project is cut first, from what is on hand.</summary>
    public bool IsFirst(Guid project) => first.Contains(project);

    /// <summary>Whether a row is wanted only if it comes free.</summary>
    public bool IsSpare(Guid row) => spares.ContainsKey(row);

    /// <summary>What a spare piece of a row is worth, as typed; empty for nothing.</summary>
    public string WorthOf(Guid row) => spares.GetValueOrDefault(row, "");

    /// <summary>What is wrong with what was typed as a row's worth; null where nothing is.</summary>
    public Fault? FaultOf(Guid row)
    {
        if (WorthOf(row).Trim().Length == 0)
            return null;
        var worth = MoneyText.Parse(WorthOf(row));
        return worth.Ok ? null : worth.Fault.At("Worth each");
    }

    /// <summary>What is wrong with what was typed; empty where nothing is.</summary>
    public IEnumerable<Fault> Faults => spares.Keys.Select(FaultOf).OfType<Fault>();

    /// <summary>Stores that are ticked.</summary>
    public int Stores => stores.Count;

    /// <summary>Projects that are ticked.</summary>
    public int Projects => projects.Count;

    /// <summary>Whether an earlier plan is kept beside the new one.</summary>
    public bool IsKept(Guid plan) => kept.Contains(plan);

    /// <summary>Ticks a project, a row or a store, or clears it.</summary>
    public void SetProject(Guid id, bool wanted) => Set(projects, id, wanted);

    /// <inheritdoc cref="SetProject" />
    public void SetRow(Guid id, bool wanted) => Set(leftOut, id, !wanted);

    /// <inheritdoc cref="SetProject" />
    public void SetStore(Guid id, bool wanted) => Set(stores, id, wanted);

    /// <summary>Cuts a project first, from what is on hand, or as any other.</summary>
    public void SetFirst(Guid project, bool wanted) => Set(first, project, wanted);

    /// <summary>Wants a row only if it comes free, or as any other.</summary>
    public void SetSpare(Guid row, bool wanted)
    {
        if (wanted)
            spares.TryAdd(row, "");
        else
            spares.Remove(row);
    }

    /// <summary>Says what a spare piece of a row is worth, as typed.</summary>
    public void SetWorth(Guid row, string worth) => spares[row] = worth;

    /// <summary>Keeps an earlier plan beside the new one, or lets the new one take its place.</summary>
    public void SetKept(Guid plan, bool wanted) => Set(kept, plan, wanted);

    /// <summary>The order. Rows are named only when some are left out, so that rows added later belong to it too.</summary>
    /// <param name="sheets">The parts lists of the projects.</param>
    /// <param name="replaced">The plans that the new one takes the place of.</param>
    public PlanOrder ToOrder(IReadOnlyDictionary<Guid, PartSheet> sheets, IEnumerable<Guid> replaced)
    {
        var rows = projects.Where(sheets.ContainsKey).SelectMany(id => sheets[id].Rows).Select(row => row.Texts.Id).ToList();
        ImmutableArray<Guid>? named = rows.Any(leftOut.Contains) ? [.. rows.Where(HasRow)] : null;
        var seconds = int.TryParse(Seconds.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
        return new PlanOrder([.. projects], named, [.. stores], UseRack, UseBin, seconds, [.. replaced])
        {
            CutAgain = CutAgain,
            FromHand = [.. projects.Where(first.Contains)],
            Spares = rows.Where(row => HasRow(row) && IsSpare(row))
                .ToImmutableSortedDictionary(
                    row => row,
                    row => MoneyText.Parse(WorthOf(row)) is { Ok: true } worth ? worth.Value.Amount : 0
                ),
            CountTrips = CountTrips && stores.Count > 1,
            OneStore = OneStore && stores.Count > 1,
        };
    }

    /// <summary>What a request comes to, in a sentence.</summary>
    public static string Contents(CutRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var parts = request.Parts.Where(part => part.PracticeFor is null).ToList();
        var practice = request.Parts.Where(part => part.PracticeFor is not null).Sum(part => part.Quantity);
        return $"{Shared.Words.Count(parts.Sum(part => part.Quantity), "piece")} of {Shared.Words.Count(parts.Count, "part")}"
            + (practice > 0 ? $" and {Shared.Words.Count(practice, "test piece")}" : "")
            + $" from {Shared.Words.Count(request.Materials.Length, "material")}.";
    }

    /// <summary>Returns the limits of saw, store and car, each as a phrase; empty where nothing is limited.</summary>
    public static IReadOnlyList<string> Limits(CutRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        string Say(Length length) => LengthFormat.WithUnit(length, request.Unit);
        List<string> limits = [];
        if (request.Saw.WidestRip is { } rip)
            limits.Add($"rips up to {Say(rip)} wide");
        if (request.Saw.LongestCrosscut is { } crosscut)
            limits.Add($"crosscuts up to {Say(crosscut)}");
        if (request.Carry is { } carry && carry.Longest < LengthText.Longest)
            limits.Add($"pieces up to {Say(carry.Longest)} long in the car");
        if (request.Carry is { } car && car.Widest < LengthText.Longest)
            limits.Add($"sheets up to {Say(car.Widest)} wide in the car");
        if (request.Store is { } store)
            limits.Add($"{Shared.Words.Count(store.Most, "store cut")} per board or sheet");
        return limits;
    }

    private static void Set(HashSet<Guid> set, Guid id, bool wanted)
    {
        if (wanted)
            set.Add(id);
        else
            set.Remove(id);
    }
}
