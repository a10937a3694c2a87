using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Joining;

/// <summary>The hinges of a door in a piece.</summary>
internal static class DoorHinges
{
    /// <summary>How many: by the door's height, and by its weight where its wood is known.</summary>
    /// <param name="width">Of the door.</param>
    /// <param name="height">Of the door.</param>
    /// <param name="thickness">Of the door.</param>
    /// <param name="species">Id of its wood; null where unknown.</param>
    public static Working<int> Count(Working<Length> width, Working<Length> height, Length thickness, string? species)
    {
        if (StrengthTable.Find(species ?? "") is not { } row)
            return Hinges.ByHeight(height);
        var density = Weight.Density(row, Weight.Indoors);
        return Hinges.Count(height, Weight.Of(Area.Of(width.Value, height.Value) * thickness, density));
    }
}
