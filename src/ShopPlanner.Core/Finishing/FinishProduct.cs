using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Finishing;

/// <summary>What a finish is thinned with while it is wet.</summary>
public enum FinishBase
{
    /// <summary>Water.</summary>
    Water,

    /// <summary>Mineral spirits, or nothing: oils, alkyds, waxes.</summary>
    Oil,

    /// <summary>Denatured alcohol.</summary>
    Spirit,
}

/// <summary>A kind of finish with what a label usually says; the label in hand comes before it.</summary>
/// <param name="Id">Word at the command line.</param>
/// <param name="Name">As shown.</param>
/// <param name="Coverage">Square feet for a gallon, each coat.</param>
/// <param name="CoverageSource">Where that comes from.</param>
/// <param name="Coats">Usual number.</param>
/// <param name="RecoatHours">Between coats.</param>
/// <param name="RecoatSource">Where that comes from.</param>
/// <param name="StopGrit">Grit to stop at before it (common practice).</param>
public sealed record FinishProduct(
    string Id,
    string Name,
    double Coverage,
    SourceNote CoverageSource,
    int Coats,
    double RecoatHours,
    SourceNote RecoatSource,
    int StopGrit
)
{
    /// <summary>Whether some of its kind are made with a drying oil, whose rags can catch fire.</summary>
    public bool MayHoldOil { get; init; }

    /// <summary>What it is thinned with.</summary>
    public FinishBase Base { get; init; }

    /// <summary>Whether it stays on the wood as a film; stain, oil and wax sink in or are wiped off.</summary>
    public bool IsFilm { get; init; } = true;

    /// <summary>Whether it hides the wood.</summary>
    public bool HidesWood { get; init; }

    /// <summary>Whether it only prepares the wood for another one, and is never a finish by itself.</summary>
    public bool OnlyPrepares { get; init; }

    /// <summary>Whether it is put on with a rag and wiped off again.</summary>
    public bool IsWiped { get; init; }

    /// <summary>Grit to rub a coat down with before the next (common practice: 220 to 320); null where none is rubbed.</summary>
    public int? BetweenGrit { get; init; }

    /// <summary>Whether it is sold in a kind for outdoors too (common practice).</summary>
    public bool IsForOutdoors { get; init; }

    /// <summary>Hours until it bears use.</summary>
    public double CureHours { get; init; } = 7 * 24;

    /// <summary>Where that comes from.</summary>
    public SourceNote CureSource { get; init; } = FinishSources.Hardens;
}
