using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>How far parts are drawn from their places, each against the move that brings it in. What comes from one side after
/// something else stands farther out.</summary>
internal sealed class StepMoves
{
    // Share of the drawn parts' size in the direction of the move, and what shows at least, millimetres.
    private const double Share = 0.3,
        Least = 60;

    private readonly Dictionary<string, (double X, double Y, double Z)> shifts;

    private StepMoves(Dictionary<string, (double X, double Y, double Z)> shifts) => this.shifts = shifts;

    /// <summary>Reads the moves of a step; null where nothing moves straight.</summary>
    /// <param name="parts">The parts that are drawn.</param>
    /// <param name="moves">In order.</param>
    public static StepMoves? Of(ImmutableArray<ShownPart> parts, ImmutableArray<WorkMove> moves)
    {
        if (parts.IsEmpty || !moves.Any(move => move.Along is not null))
            return null;
        var around = parts.Select(part => part.Box).Aggregate((sum, box) => sum.Around(box));
        var before = new Dictionary<(Axis Along, bool Forward), int>();
        var shifts = new Dictionary<string, (double, double, double)>(StringComparer.Ordinal);
        foreach (var move in moves)
            if (move.Along is { } along)
            {
                var steps = before[(along, move.Forward)] = before.GetValueOrDefault((along, move.Forward)) + 1;
                var far = steps * Math.Max(Least, Share * PieceScale.Mm(around.Extent(along))) * (move.Forward ? -1 : 1);
                foreach (var mark in move.Marks)
                    shifts[mark] = (On(along, Axis.X, far), On(along, Axis.Y, far), On(along, Axis.Z, far));
            }

        return new(shifts);
    }

    /// <summary>How far a copy is drawn from its place, millimetres.</summary>
    public (double X, double Y, double Z) Shift(string mark) => shifts.GetValueOrDefault(mark);

    private static double On(Axis along, Axis axis, double far) => along == axis ? far : 0;
}
