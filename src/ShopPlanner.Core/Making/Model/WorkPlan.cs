using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Model;

/// <summary>How a piece is made and finished, from cut parts to its place. Immutable.</summary>
/// <param name="Name">Of the piece.</param>
/// <param name="Unit">Unit of its lengths.</param>
/// <param name="Steps">In an order that can be followed as it stands: each after all that its <c>After</c> names.</param>
/// <param name="Subassemblies">Units that are put together by themselves; those without precedence between them in any
/// order.</param>
/// <param name="Finish">What the finish takes; null where the piece stays bare.</param>
/// <param name="Findings">What cannot be put together, or only with care.</param>
public sealed record WorkPlan(
    string Name,
    LengthUnit Unit,
    ImmutableArray<WorkStep> Steps,
    ImmutableArray<Subassembly> Subassemblies,
    FinishAmounts? Finish,
    ImmutableArray<WorkFinding> Findings
);

/// <summary>A unit that is put together by itself, or several alike, which are told once.</summary>
/// <param name="Id">From what it holds: <c>end</c>, <c>door</c>; stays while sizes change.</param>
/// <param name="Name">What people call it: <c>End</c>.</param>
/// <param name="Marks">Copies in it, of all that are alike.</param>
/// <param name="Within">Id of the subassembly that it becomes part of; null for the whole piece.</param>
public sealed record Subassembly(string Id, string Name, ImmutableArray<string> Marks, string? Within)
{
    /// <summary>The copies in each one of those alike: as many as are made.</summary>
    public ImmutableArray<ImmutableArray<string>> Units { get; init; } = [];
}

/// <summary>A statement about the order of work.</summary>
/// <param name="Severity">How severe it is; <see cref="Severity.Fails"/> where there is no order.</param>
/// <param name="Text">A plain sentence that names the parts, and what would be right.</param>
/// <param name="Marks">Copies that it is about.</param>
public sealed record WorkFinding(Severity Severity, string Text, ImmutableArray<string> Marks);

/// <summary>What a finish takes.</summary>
/// <param name="Finish">Id of the finish chosen.</param>
/// <param name="Areas">To be finished, part by part.</param>
/// <param name="Buy">Cans, brushes, paper, as sold.</param>
public sealed record FinishAmounts(string Finish, ImmutableArray<FinishArea> Areas, ImmutableArray<WorkItem> Buy);

/// <summary>The area of one part's copies that is finished: its faces less where other parts touch them.</summary>
/// <param name="Part">Its letter.</param>
/// <param name="Area">Of all copies.</param>
/// <param name="BeforeAssembly">Of that, what cannot be reached once it is joined.</param>
public sealed record FinishArea(string Part, Area Area, Area BeforeAssembly);
