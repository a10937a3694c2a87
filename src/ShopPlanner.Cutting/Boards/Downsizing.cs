namespace ShopPlanner.Cutting.Boards;

/// <summary>Moves patterns to cheaper stock that takes them and is still to be had. Never makes a plan dearer.</summary>
internal static class Downsizing
{
    public static List<(Pattern Pattern, int Times)> Apply(CuttingModel model, List<(Pattern Pattern, int Times)> cuts)
    {
        var left = model.Kinds.Select(kind => kind.Unlimited ? int.MaxValue : kind.Limit).ToArray();
        foreach (var (pattern, times) in cuts)
            if (!model.Kinds[pattern.Kind].Unlimited)
                left[pattern.Kind] -= times;
        var moved = new List<(Pattern, int)>();
        foreach (var (pattern, times) in cuts.OrderByDescending(cut => model.Kinds[cut.Pattern.Kind].Cost))
            Move(model, pattern, times, left, moved);
        return moved;
    }

    private static void Move(CuttingModel model, Pattern pattern, int times, int[] left, List<(Pattern, int)> to)
    {
        var used = pattern.Used(model);
        while (times > 0 && Cheaper(model, pattern.Kind, used, left) is { } kind)
        {
            var now = Math.Min(times, left[kind]);
            if (!model.Kinds[kind].Unlimited)
                left[kind] -= now;
            if (!model.Kinds[pattern.Kind].Unlimited)
                left[pattern.Kind] += now;
            to.Add((pattern.On(kind), now));
            times -= now;
        }

        if (times > 0)
            to.Add((pattern, times));
    }

    private static int? Cheaper(CuttingModel model, int than, long used, int[] left)
    {
        int? best = null;
        for (var kind = 0; kind < left.Length; kind++)
        {
            var stock = model.Kinds[kind];
            if (left[kind] > 0 && stock.Capacity >= used && stock.Cost < model.Kinds[best ?? than].Cost)
                best = kind;
        }

        return best;
    }
}
