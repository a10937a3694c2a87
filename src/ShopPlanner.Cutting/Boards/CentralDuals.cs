namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// The mean of many best dual points, each best for slightly perturbed demands. A pattern that only some best points shut out is
/// shut out by the mean as well, so the further the mean lies in the midst of the best points, the fewer patterns and arcs are
/// left.
/// </summary>
internal sealed class CentralDuals(Relaxation relaxation, Random random)
{
    private double[] sum = [];
    private int points;

    /// <summary>The mean of so many points, those of earlier calls among them; null when time ran out.</summary>
    public DualPoint? Of(int points)
    {
        for (; this.points < points; this.points++)
        {
            if (relaxation.PerturbedDuals(random) is not { } duals)
                return null;
            this.sum = this.points == 0 ? duals : [.. this.sum.Zip(duals, (sum, dual) => sum + dual)];
        }

        return relaxation.PointOf([.. this.sum.Select(sum => sum / points)]);
    }
}
