using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Planning;

/// <summary>Splits a request into one job for each material, and says why a part fits no stock of its material.</summary>
internal static class Fitting
{
    public static (ImmutableArray<Job> Jobs, ImmutableArray<UnplacedPart> Unplaced) Split(CutRequest request)
    {
        var jobs = ImmutableArray.CreateBuilder<Job>();
        var unplaced = new Dictionary<string, UnplacedPart>();
        foreach (var material in request.Materials)
        {
            var whole = new Job(
                material,
                request.Saw,
                request.Keep,
                [.. request.Stock.Where(stock => stock.Material == material.Id && stock.Quantity != 0)],
                [.. request.Parts.Where(part => part.Material == material.Id)]
            )
            {
                Store = request.Store,
                Carry = request.Carry,
            };
            var fit = new Fit(whole);
            foreach (var part in whole.Parts)
                if ((Reason(whole, part, request.Unit) ?? Limit(fit, part, request.Unit)) is { } reason)
                    unplaced.Add(part.Id, new(part.Id, part.Quantity, reason));
            if (Placeable(fit, unplaced) is { Parts.Length: > 0 } job)
                jobs.Add(job);
        }

        return (
            jobs.ToImmutable(),
            [.. request.Parts.Where(part => unplaced.ContainsKey(part.Id)).Select(part => unplaced[part.Id])]
        );
    }

    // Stock too small for every part would only be in the solver's way.
    private static Job Placeable(Fit fit, Dictionary<string, UnplacedPart> unplaced)
    {
        var whole = fit.Whole;
        ImmutableArray<CutPart> parts = [.. whole.Parts.Where(part => !unplaced.ContainsKey(part.Id))];
        ImmutableArray<CutStock> stock = [.. whole.Stock.Where((_, i) => parts.Any(part => fit.Fits(part, i)))];
        var job = whole with { Parts = parts, Stock = stock };
        if (!IsUnpriced(stock))
            return job;
        if (parts.All(fit.FitsEndless))
            job = job with { Stock = [.. stock.Where(one => one.Price == Money.Zero)] };
        return job with { Wood = Wood(job.Stock) };
    }

    private static bool IsUnpriced(ImmutableArray<CutStock> stock) =>
        stock.Any(one => !one.Offcut) && stock.All(one => one.Offcut || one.Price == Money.Zero);

    // Without a price a whole board would be as good as a short one: then the largest counts a million, others by their size, and
    // an offcut that has a price counts more than any of them.
    private static ImmutableDictionary<string, long> Wood(ImmutableArray<CutStock> stock)
    {
        const long largest = 1_000_000;
        var most = stock.Where(one => !one.Offcut).Max(Size);
        return stock.ToImmutableDictionary(
            one => one.Id,
            one =>
                !one.Offcut ? (long)Math.Ceiling(Size(one) / most * largest)
                : one.Price == Money.Zero ? 0
                : largest + one.Price.Count
        );
    }

    private static double Size(CutStock stock) => (double)stock.Length.Ticks * stock.Width.Ticks;

    private static string? Limit(Fit fit, CutPart part, LengthUnit unit) =>
        Enumerable.Range(0, fit.Whole.Stock.Length).Any(stock => fit.Fits(part, stock))
            ? null
            : LimitReasons.Of(fit.Whole, part, unit);

    // Fitting is a matter of size, and of the limits where there are any.
    private sealed class Fit(Job whole)
    {
        private readonly PracticableLayouts? layouts = whole.IsLimited || whole.HasBadPlaces ? new(whole) : null;

        public Job Whole => whole;

        /// <summary>True when new stock without end takes the part.</summary>
        public bool FitsEndless(CutPart part) =>
            Enumerable
                .Range(0, whole.Stock.Length)
                .Any(i => whole.Stock[i] is { Offcut: false, Quantity: null } && Fits(part, i));

        public bool Fits(CutPart part, int stock) =>
            whole.Fits(part, whole.Stock[stock]) && (layouts is null || !layouts.Binds(stock) || layouts.CanCut(part, stock));
    }

    private static string? Reason(Job job, CutPart part, LengthUnit unit)
    {
        if (job.Stock.IsEmpty)
            return "no stock of this material to cut from";
        if (job.Stock.Any(stock => job.Fits(part, stock)))
            return null;
        var (longest, widest) = (job.Stock.Max(job.UsableX), job.Stock.Max(job.UsableY));
        if (job.CanTurn(part) && part.Length < part.Width)
            return Reason(job, part with { Length = part.Width, Width = part.Length }, unit);
        if (job.Stock.Any(stock => !job.IsBoard && job.Fits(part with { Length = part.Width, Width = part.Length }, stock)))
            return "fits only across the grain, which this part does not allow";
        if (part.Length.Ticks > longest)
            return Too("longer", part.Length, longest, unit);
        if (part.Width.Ticks > widest)
            return Too("wider", part.Width, widest, unit) + ": glue it up from strips";
        return "no board or sheet of this material is both long and wide enough";
    }

    private static string Too(string how, Length wanted, long usable, LengthUnit unit) =>
        $"{how} than any stock of this material: needs {Text(wanted, unit)}, "
        + $"{Text(Length.FromTicks(Math.Max(0, usable)), unit)} usable";

    /// <summary>A length as reasons give it.</summary>
    public static string Text(Length length, LengthUnit unit) =>
        LengthFormat.Plain(length, unit).WithSign + (unit == LengthUnit.Inch ? " in" : " mm");
}
