using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Planning;

/// <summary>Says which limit keeps a part that would fit its stock from being cut.</summary>
internal static class LimitReasons
{
    public static string Of(Job job, CutPart part, LengthUnit unit)
    {
        if (job.Carry is { } car && CanCut(job with { Carry = null }, part))
            return Carried(job, part, car, unit);
        if (job.Saw.LongestCrosscut is { } crosscut && CanCut(job with { Saw = job.Saw with { LongestCrosscut = null } }, part))
            return $"needs a longer crosscut than the saw makes, {Text(crosscut, unit)} at most";
        if (job.Saw.WidestRip is { } rip && CanCut(job with { Saw = job.Saw with { WidestRip = null } }, part))
            return $"needs a wider rip than the saw makes, {Text(rip, unit)} at most";
        return "cannot be cut within these limits together: " + string.Join(", ", All(job, unit));
    }

    private static bool CanCut(Job job, CutPart part)
    {
        var layouts = new PracticableLayouts(job);
        return Enumerable.Range(0, job.Stock.Length).Any(stock => layouts.CanCut(part, stock));
    }

    private static string Carried(Job job, CutPart part, CarryLimit car, LengthUnit unit)
    {
        var (longer, shorter) = (Length.Max(part.Length, part.Width), Length.Min(part.Length, part.Width));
        if (longer > car.Longest)
            return $"longer than can be carried home: {Text(longer, unit)} wanted, {Text(car.Longest, unit)} at most";
        if (!job.IsBoard && shorter > car.Widest)
            return $"wider than can be carried home: {Text(shorter, unit)} wanted, {Text(car.Widest, unit)} at most";
        var cuts = job.Store switch
        {
            null => "without a cut by the store",
            { Most: 1 } => "with 1 cut by the store",
            var store => $"with {store.Most} cuts by the store",
        };
        return $"its stock cannot be carried home {cuts}: {Most(job, car, unit)} at most";
    }

    private static IEnumerable<string> All(Job job, LengthUnit unit)
    {
        if (job.Carry is { } car)
            yield return $"carried home {Most(job, car, unit)} at most";
        if (job.Store is { } store)
            yield return $"cuts by the store {store.Most} at most, {Text(store.Tolerance, unit)} left on beside each";
        if (job.Saw.LongestCrosscut is { } crosscut)
            yield return $"crosscut {Text(crosscut, unit)} at most";
        if (job.Saw.WidestRip is { } rip)
            yield return $"rip {Text(rip, unit)} at most";
    }

    private static string Most(Job job, CarryLimit car, LengthUnit unit) =>
        Text(car.Longest, unit) + (job.IsBoard ? "" : " × " + Text(car.Widest, unit));

    private static string Text(Length length, LengthUnit unit) => Fitting.Text(length, unit);
}
