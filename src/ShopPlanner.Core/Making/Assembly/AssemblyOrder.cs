using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>
/// Derives the order of assembly from where a piece's parts are and how they are joined: what is put together by itself, what
/// goes in before what shuts it in, what is screwed while its screws can be reached.
/// </summary>
public static class AssemblyOrder
{
    /// <summary>Works it out. The same piece and choices give the same order.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="choices">What the builder decides.</param>
    public static AssemblyPlan Of(Piece piece, WorkChoices choices)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(choices);
        var solids = new Solids(piece);
        if (solids.All.Length == 0)
            return new([], [], []);
        var (blocking, access) = (new Blocking(solids), new Access(solids));
        var sequencer = new Sequencer(solids, blocking, new Contacts(solids), access);
        var whole = new Grouping(solids, choices.CleatsFirst, sequencer).Piece(Bodies.Of(solids));
        var telling = new Telling(solids, whole, choices);
        var told = LateJoints.Of(solids, access, telling.All);
        return new(
            new AssemblySteps(solids, choices, telling.Units, told).Write(),
            [.. telling.Units.Select(one => Subassembly(solids, one))],
            [.. new Findings(solids, blocking, access, whole, told).All()]
        );
    }

    private static Subassembly Subassembly(Solids solids, Made made) =>
        new(made.Id, made.Name, Marks(solids, made.Copies), made.Within?.Id)
        {
            Units = [.. made.Units.Select(unit => Marks(solids, unit.Copies))],
        };

    private static ImmutableArray<string> Marks(Solids solids, IEnumerable<int> copies) =>
        [.. copies.Select(copy => solids.All[copy].Mark)];
}
