using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Planning;

/// <summary>Says which limit, or that a bad place, keeps a part that would fit its stock from being cut.</summary>
internal static class LimitReasons
{
    public static string Of(Job job, CutPart part, LengthUnit unit)
    {
        if (job.HasBadPlaces && CanCut(job with { Stock = [.. job.Stock.Select(Sound)] }, part))
            return "every piece of this material that is large enough has a bad place in the way";
        if (job.Carry is { } car && CanCut(job with { Carry = null }, part))
            return Carried(job, part, car, unit);
        if (job.Saw.LongestCrosscut is { } crosscut && CanCut(job with { Saw = job.Saw with { LongestCrosscut = null } }, part))
            return $"needs a longer crosscut than your saw makes, {Text(crosscut, unit)}";
        if (job.Saw.WidestRip is { } rip && CanCut(job with { Saw = job.Saw with { WidestRip = null } }, part))
            return $"needs a wider rip than your saw makes, {Text(rip, unit)}";
        return "cannot be cut within these limits: " + string.Join(", ", All(job, unit));
    }

    private static CutStock Sound(CutStock stock) => stock with { BadPlaces = BadPlaces.None };

    private static bool CanCut(Job job, CutPart part)
    {
        var layouts = new PracticableLayouts(job);
        return Enumerable.Range(0, job.Stock.Length).Any(stock => layouts.CanCut(part, stock));
    }

    private static string Carried(Job job, CutPart part, CarryLimit car, LengthUnit unit)
    {
        var (longer, shorter) = (Length.Max(part.Length, part.Width), Length.Min(part.Length, part.Width));
        if (longer > car.Longest)
            return $"too long for the car: {Text(longer, unit)}, and the limit is {Text(car.Longest, unit)}";
        if (!job.IsBoard && shorter > car.Widest)
            return $"too wide for the car: {Text(shorter, unit)}, and the limit is {Text(car.Widest, unit)}";
        var cuts = job.Store switch
        {
            null => "without store cuts",
            { Most: 1 } => "with 1 store cut",
            var store => $"with {store.Most} store cuts",
        };
        return $"its stock does not fit the car {cuts}: the limit is {Most(job, car, unit)}";
    }

    private static IEnumerable<string> All(Job job, LengthUnit unit)
    {
        if (job.Carry is { } car)
            yield return $"car {Most(job, car, unit)}";
        if (job.Store is { } store)
            yield return $"store cuts {store.Most}, each {Text(store.Tolerance, unit)} oversize";
        if (job.Saw.LongestCrosscut is { } crosscut)
            yield return $"longest crosscut {Text(crosscut, unit)}";
        if (job.Saw.WidestRip is { } rip)
            yield return $"widest rip {Text(rip, unit)}";
    }

    private static string Most(Job job, CarryLimit car, LengthUnit unit) =>
        Text(car.Longest, unit) + (job.IsBoard ? "" : " × " + Text(car.Widest, unit));

    private static string Text(Length length, LengthUnit unit) => Fitting.Text(length, unit);
}
