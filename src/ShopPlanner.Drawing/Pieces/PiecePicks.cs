using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>What can be chosen in a drawing on a page: each kind of part that is seen, and bays.</summary>
/// <param name="Part">Letter of the chosen part; null for none.</param>
/// <param name="Bay">Path of the chosen bay; null for none.</param>
/// <param name="Bays">Paths of the bays that can be chosen, with the names that are read aloud.</param>
public sealed record PiecePicks(string? Part, string? Bay, IReadOnlyDictionary<string, string> Bays)
{
    /// <summary>The wood of a copy at which the keyboard stops.</summary>
    /// <param name="wood">As it is drawn.</param>
    /// <param name="part">Of the copy.</param>
    internal Marked Stop(Marked wood, PiecePart part) =>
        wood with
        {
            Name = $"{part.Id}, {part.Name}",
            IsChosen = part.Id == Part,
        };

    /// <summary>Where a bay can be pressed.</summary>
    /// <param name="bay">One of those that can be chosen.</param>
    /// <param name="area">What can be pressed.</param>
    /// <param name="edge">What shows that it is chosen.</param>
    internal Marked Area(Opening bay, Shape area, Shape edge)
    {
        var isChosen = bay.Path == Bay;
        return new(bay.Path, isChosen ? [area, edge] : [area])
        {
            IsBay = true,
            Name = Bays[bay.Path],
            IsChosen = isChosen,
        };
    }
}
