using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Stores;

/// <summary>The first cuts that a store makes, as text and as the planner takes them.</summary>
internal static class StoreSaw
{
    /// <summary>Most first cuts on one sheet: more is a slip, and no store's counter makes them.</summary>
    public const int MostCuts = 20;

    private static readonly Length MostTolerance = Length.FromInches(2);

    /// <summary>Empty where the store makes none.</summary>
    public static string CutsText(StoredStore store) =>
        store.FirstCuts == 0 ? "" : store.FirstCuts.ToString(CultureInfo.InvariantCulture);

    /// <summary>Empty where there is neither a cut nor a tolerance.</summary>
    public static string ToleranceText(StoredStore store) =>
        store.FirstCuts == 0 && store.CutTolerance == Length.Zero ? "" : LengthFormat.Exact(store.CutTolerance, store.Unit);

    /// <summary>What a page typed; wrong texts add a fault. A tolerance left alone means what it meant, whatever the unit is
    /// now.</summary>
    public static (int Cuts, Length Tolerance) Read(StoreView wanted, StoredStore stored, List<Fault> faults)
    {
        var cuts = Cuts(wanted.FirstCuts, faults);
        var tolerance = wanted.CutTolerance == ToleranceText(stored) ? stored.CutTolerance : Tolerance(wanted, faults);
        var isBlank = wanted.CutTolerance.Trim().Length == 0;
        return (cuts, cuts > 0 && isBlank ? Usual(wanted.Unit) : tolerance);
    }

    /// <summary>What all stores that cut at all can do: as few cuts as the least of them makes, as far off as the worst. Stock of
    /// the others is marked as sold uncut.</summary>
    /// <returns>Null where none of them cuts.</returns>
    public static StoreCuts? Of(IEnumerable<StoredStore> selling)
    {
        var cutting = selling.Where(store => store.FirstCuts > 0).ToList();
        return cutting.Count == 0
            ? null
            : new StoreCuts(cutting.Min(store => store.FirstCuts), cutting.Max(store => store.CutTolerance));
    }

    // Common practice: the panel saw of a store is good to an eighth of an inch.
    private static Length Usual(LengthUnit unit) =>
        unit == LengthUnit.Inch ? Length.FromInches(0, 1, 8) : Length.FromMillimetres(3);

    private static int Cuts(string typed, List<Fault> faults)
    {
        var text = typed.Trim();
        if (text.Length == 0)
            return 0;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var cuts) && cuts <= MostCuts)
            return cuts;
        faults.Add(
            Fault.Of(
                nameof(StoreView.FirstCuts),
                typed,
                $"isn't a number of cuts: write a whole number up to {MostCuts}, or leave it blank"
            )
        );
        return 0;
    }

    private static Length Tolerance(StoreView wanted, List<Fault> faults)
    {
        if (wanted.CutTolerance.Trim().Length == 0)
            return Length.Zero;
        var parsed = LengthText.Parse(wanted.CutTolerance, wanted.Unit);
        if (!parsed.Ok)
            faults.Add(parsed.Fault.At(nameof(wanted.CutTolerance)));
        else if (parsed.Value > MostTolerance)
            faults.Add(
                Fault.Of(
                    nameof(wanted.CutTolerance),
                    wanted.CutTolerance,
                    $"is more than {LengthFormat.WithUnit(MostTolerance, wanted.Unit)}, which can't be right"
                )
            );
        else
            return parsed.Value;
        return Length.Zero;
    }
}
