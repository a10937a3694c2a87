using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>What is cut out of parts beside their joints, one kind of it: one step for all copies of a name.</summary>
/// <typeparam name="T">The kind.</typeparam>
internal abstract class FeatureFamily<T> : IOperationFamily
    where T : PartFeature
{
    protected abstract Stage Stage { get; }

    public IEnumerable<Operation> Of(PieceWork work) =>
        work
            .Workpieces.SelectMany(piece => piece.Copy.Features.OfType<T>().Select(one => new Shaped<T>(piece, one)))
            .GroupBy(one => (Word: Word(one), one.Piece.Name))
            .Select(same => new Operation(Stage, Step($"{same.Key.Word}:{PartWords.Slug(same.Key.Name)}", [.. same], work)));

    /// <summary>First word of the id.</summary>
    protected abstract string Word(Shaped<T> one);

    /// <summary>The step for copies of one name.</summary>
    protected abstract WorkStep Step(string id, IReadOnlyList<Shaped<T>> shaped, PieceWork work);

    /// <summary>Marks of the copies.</summary>
    protected static ImmutableArray<string> Marks(IEnumerable<Shaped<T>> shaped) => shaped.Select(one => one.Piece).Marks();

    /// <summary>Names of the copies.</summary>
    protected static string Names(IEnumerable<Shaped<T>> shaped) => PartWords.Names(shaped.Select(one => one.Piece));

    /// <summary>The sides that are worked.</summary>
    protected static string Sides(IEnumerable<Shaped<T>> shaped, Func<T, BoxSide> side, PieceWork work) =>
        WordList.Of(shaped.Select(one => one.Side(side(one.Feature), work)));
}

/// <summary>Something cut out of a copy.</summary>
/// <typeparam name="T">The kind.</typeparam>
/// <param name="Piece">The copy.</param>
/// <param name="Feature">What is cut out.</param>
internal sealed record Shaped<T>(Workpiece Piece, T Feature)
    where T : PartFeature
{
    /// <summary>The room that it takes, in the piece.</summary>
    public Box Room => Feature.Room(Piece.Box);

    /// <summary>A side in words.</summary>
    public string Side(BoxSide side, PieceWork work) => work.Side(Piece, side);

    /// <summary>Adds where it is along an axis: from the nearer side to its nearer wall; nothing where it runs out.</summary>
    public void Place(FigureList figures, string what, Axis axis, PieceWork work)
    {
        var (near, far) = (Room.Start(axis) - Piece.Box.Start(axis), Piece.Box.End(axis) - Room.End(axis));
        var distance = Length.Min(near, far);
        if (distance.IsPositive)
            figures.Add($"{what} from the {Side(BoxSides.Of(axis, far < near), work)}", Piece.Mark, distance);
    }

    /// <summary>Adds how far it reaches along an axis: from the side it is open to, or from wall to wall.</summary>
    public void Reach(FigureList figures, Axis axis, PieceWork work)
    {
        var (isNear, isFar) = (Room.Start(axis) == Piece.Box.Start(axis), Room.End(axis) == Piece.Box.End(axis));
        if (isNear != isFar)
            figures.Add($"From the {Side(BoxSides.Of(axis, isFar), work)}", Piece.Mark, Room.Extent(axis));
        else if (!isNear)
        {
            Place(figures, "Begins", axis, work);
            figures.Add("Length", Piece.Mark, Room.Extent(axis));
        }
    }
}
