namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// The mean of many best dual points, each best for demands a hair off. A pattern that only some best points shut out is shut
/// out by the mean as well, so the further the mean lies in the midst of the best points, the fewer patterns and arcs are left.
/// </summary>
internal sealed class DualMidst(Relaxation relaxation, Random random)
{
    private double[] _sum = [];
    private int _points;

    /// <summary>The mean of so many points, those of earlier calls among them; null when time ran out.</summary>
    public DualPoint? Of(int points)
    {
        for (; _points < points; _points++)
        {
            if (relaxation.NudgedDuals(random) is not { } duals)
                return null;
            _sum = _points == 0 ? duals : [.. _sum.Zip(duals, (sum, dual) => sum + dual)];
        }

        return relaxation.PointOf([.. _sum.Select(sum => sum / points)]);
    }
}
