using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Kinds of work on a part, in the order in which a builder comes to them.</summary>
internal enum Stage
{
    /// <summary>Strips or layers become one panel.</summary>
    GlueUp,

    /// <summary>The panel is made flat.</summary>
    Flatten,

    /// <summary>What was cut long or wide comes to its size.</summary>
    Size,

    /// <summary>A part is ripped at an angle.</summary>
    Bevel,

    /// <summary>Edges get a band or solid edging.</summary>
    Band,

    /// <summary>Grooves, dadoes, rabbets, laps: what takes another part.</summary>
    Trench,

    /// <summary>Mortises.</summary>
    Mortise,

    /// <summary>Tongues and tenons: what goes in.</summary>
    Tenon,

    /// <summary>Holes of fasteners.</summary>
    Bore,

    /// <summary>Rows of holes for shelf pins.</summary>
    Pins,

    /// <summary>Cups and gains of hinges.</summary>
    Hinges,

    /// <summary>Corners and edges are cut out.</summary>
    Notch,

    /// <summary>Tapers, arcs, rounds: what takes away the straight edges that fences need.</summary>
    Shape,

    /// <summary>Edges are eased.</summary>
    Ease,
}

/// <summary>One operation on parts: a step that does not know yet what it comes after.</summary>
/// <param name="Stage">What kind of work it is.</param>
/// <param name="Step">The step, its <c>After</c> empty.</param>
internal sealed record Operation(Stage Stage, WorkStep Step);

/// <summary>A family of operations: all that one way of working wood asks for in a piece. Each is a class and a line in
/// <see cref="OperationList"/>.</summary>
internal interface IOperationFamily
{
    /// <summary>Its operations on a piece; none where the piece asks for none.</summary>
    IEnumerable<Operation> Of(PieceWork work);
}
