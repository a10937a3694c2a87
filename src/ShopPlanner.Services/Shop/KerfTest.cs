using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Shop;

/// <summary>A kerf measured by test cuts: what a few cuts took from a scrap, shared among them.</summary>
public static class KerfTest
{
    /// <summary>The most cuts of one test.</summary>
    public const int MostCuts = 50;

    private static readonly SourceNote Source = new("Geometry; several cuts average out reading errors", Certainty.Derived);
    private static readonly Length MostKerf = Length.FromInches(1, 0, 1);

    /// <summary>Returns the kerf, rounded up to the tick so that a plan never counts on wood that is gone.</summary>
    /// <param name="before">The scrap's size before the first cut, measured across the cuts.</param>
    /// <param name="after">All its pieces together after the last cut, pushed tight.</param>
    /// <param name="cuts">How many cuts were made.</param>
    public static Outcome<Working<Length>> Of(Length before, Length after, int cuts)
    {
        if (cuts is < 1 or > MostCuts)
            return Outcome.Faulty<Working<Length>>(
                Fault.Of("cuts", $"{cuts}", $"is not a number of cuts: write a whole number from 1 to {MostCuts}")
            );
        var taken = (before - after).Ticks;
        var kerf = Length.FromTicks((taken + cuts - 1) / cuts);
        if (taken <= 0)
            return Wrong("is not less than the size before the cuts: measure both again");
        if (kerf > MostKerf)
            return Wrong("leaves more than 1 in for each cut: check the sizes and the number of cuts");
        return Working.Of(
            "Kerf",
            kerf,
            "({before} − {after}) ÷ {cuts}",
            Source,
            ("before", Working.Given("Size before the cuts", before)),
            ("after", Working.Given("Pieces together after the cuts", after)),
            ("cuts", Working.Given("Cuts", cuts, QuantityKind.Bare, 0))
        );
    }

    private static Outcome<Working<Length>> Wrong(string message) =>
        Outcome.Faulty<Working<Length>>(new Fault("after", "", message));
}
