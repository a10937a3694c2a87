using System.Collections.Immutable;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.TradeBooks;

namespace ShopPlanner.Core.Finishing;

/// <summary>Grits of sandpaper, and how much of it is used up.</summary>
public static class Grits
{
    /// <summary>Coarsest grit that anything is sanded with here.</summary>
    public const int Coarsest = 36;

    /// <summary>Finest grit that bare wood is sanded with here.</summary>
    public const int Finest = 400;

    /// <summary>Square feet that a sheet lasts on bare wood.</summary>
    public const int FeetPerSheet = 10;

    /// <summary>Square feet that a sheet lasts between coats, where it only scuffs.</summary>
    public const int ScuffedFeetPerSheet = 50;

    /// <summary>Where the steps come from.</summary>
    public static readonly SourceNote Rule = new(
        $"Common practice: no step of more than half again the grit; with the grain, {Handwork}",
        Certainty.CommonPractice
    );

    /// <summary>How long a sheet lasts.</summary>
    public static readonly SourceNote SheetRule = new("Common practice: one sheet per 10 ft² and grit", Certainty.CommonPractice);

    /// <summary>Grits that stores carry, each at most half again the one before.</summary>
    public static readonly ImmutableArray<int> Ladder = [40, 60, 80, 120, 150, 180, 220, 280, 320, 400];

    /// <summary>Returns the grits from one to another, with those of the ladder between them; one grit where they are the
    /// same.</summary>
    /// <param name="start">From <see cref="Coarsest"/>.</param>
    /// <param name="end">No coarser than <paramref name="start"/>, up to <see cref="Finest"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">They are outside these limits.</exception>
    public static ImmutableArray<int> From(int start, int end)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(start, Coarsest);
        ArgumentOutOfRangeException.ThrowIfLessThan(end, start);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(end, Finest);
        return [.. Ladder.Where(grit => grit > start && grit < end).Prepend(start).Append(end).Distinct()];
    }

    /// <summary>Returns how many sheets of a grit an area takes, one at least.</summary>
    /// <param name="squareFeet">Sanded once.</param>
    /// <param name="feetPerSheet">How far a sheet goes.</param>
    public static int Sheets(double squareFeet, int feetPerSheet) => Math.Max(1, (int)Math.Ceiling(squareFeet / feetPerSheet));
}
