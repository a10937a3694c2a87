using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>What of one copy is finished.</summary>
/// <param name="Part">Letter of its part, or the name of a listed one.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Mark">Of the copy.</param>
/// <param name="Wood">How its material takes a finish.</param>
/// <param name="Area">Of its faces, less where other copies touch them.</param>
/// <param name="Before">Of that, what can't be reached once it is joined.</param>
internal sealed record FinishSurface(string Part, string Name, string Mark, FinishWood Wood, Area Area, Area Before)
{
    /// <summary>Whether it is of a drawer's box, behind the front.</summary>
    public bool IsDrawerBox { get; init; }

    /// <summary>Whether it sits in grooves on its sides, and goes in with the frame.</summary>
    public bool IsPanel { get; init; }

    /// <summary>Whether glue must hold on some of its faces.</summary>
    public bool IsGlued { get; init; }

    /// <summary>Length of a sheet's edges that are seen and that the design leaves without a band.</summary>
    public Length SeenEdges { get; init; }

    /// <summary>Its thickness.</summary>
    public Length Thickness { get; init; }

    /// <summary>Whether its part is finished before it is joined, as far as it can't be reached later.</summary>
    public bool GoesInFinished { get; init; }

    /// <summary>What is finished before assembly.</summary>
    public Area Early => GoesInFinished ? Before : Area.Zero;

    /// <summary>What is finished after assembly.</summary>
    public Area Late => Area - Early;
}
