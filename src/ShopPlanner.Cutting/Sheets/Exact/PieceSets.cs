using ShopPlanner.Cutting.Sheets.Model;

namespace ShopPlanner.Cutting.Sheets.Exact;

/// <summary>Numbers the sets of pieces, counting alike ones: in mixed radix, so that separate sets add up.</summary>
internal sealed class PieceSets
{
    public PieceSets(SheetModel model)
    {
        Types = [.. Enumerable.Range(0, model.Types.Length).Where(t => model.Types[t].Demand > 0)];
        Most = [.. Types.Select(t => model.Types[t].Demand)];
        Steps = new int[Types.Length];
        Count = 1;
        for (var i = 0; i < Steps.Length; i++)
        {
            Steps[i] = (int)Count;
            Count *= Most[i] + 1;
        }
    }

    /// <summary>Number of the sets a model has; infinite ones are simply very many.</summary>
    public static double CountFor(SheetModel model) => model.Types.Aggregate(1.0, (n, t) => n * (t.Demand + 1));

    /// <summary>Indices of the model's types that are wanted.</summary>
    public int[] Types { get; }

    /// <summary>Pieces of each.</summary>
    public int[] Most { get; }

    /// <summary>What one more of each adds to a set's number.</summary>
    public int[] Steps { get; }

    /// <summary>Of all sets, the empty one included.</summary>
    public long Count { get; }

    /// <summary>Pieces of a type, told by its place among the wanted, in a set.</summary>
    public int Has(int set, int place) => set / Steps[place] % (Most[place] + 1);

    /// <summary>Splits of a set in two, each once, neither part empty: the first part.</summary>
    public IEnumerable<int> Parts(int set)
    {
        var has = new int[Steps.Length];
        for (var i = 0; i < has.Length; i++)
            has[i] = Has(set, i);
        var now = new int[has.Length];
        for (var part = Next(now, has, 0); part != 0; part = Next(now, has, part))
        {
            if (part <= set - part)
                yield return part;
        }
    }

    // Counts up; zero once all are done.
    private int Next(int[] now, int[] has, int part)
    {
        for (var i = 0; i < now.Length; i++)
        {
            if (now[i] < has[i])
            {
                now[i]++;
                return part + Steps[i];
            }
            part -= now[i] * Steps[i];
            now[i] = 0;
        }
        return 0;
    }
}
