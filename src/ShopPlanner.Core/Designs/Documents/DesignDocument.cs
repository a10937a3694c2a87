using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Documents;

/// <summary>A design as it is written down: named dimensions, materials by role, a frame, a tree of bays with what fills them,
/// free parts. Values are texts here, numbers or arithmetic on names; <see cref="DesignEvaluator"/> works them out.
/// Immutable.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Says">One plain sentence about it.</param>
/// <param name="Unit">Unit of numbers without one, and of what is shown.</param>
/// <param name="Dimensions">What can be changed; <c>width</c>, <c>depth</c> and <c>height</c> are the outside size.</param>
/// <param name="Materials">By role.</param>
/// <param name="Frame">What holds the piece up.</param>
/// <param name="Bays">What fills the space within; null where nothing does.</param>
/// <param name="Top">What lies on top; null where the frame has its own or none.</param>
/// <param name="Parts">Parts that no frame or fill makes.</param>
/// <param name="Hardware">Hardware beside what frame and fills bring.</param>
/// <param name="Steps">What is to be done beside the order of work, which follows from boxes and joints.</param>
public sealed record DesignDocument(
    string Name,
    string Says,
    LengthUnit Unit,
    ImmutableArray<DesignDimension> Dimensions,
    ImmutableArray<RoleMaterial> Materials,
    DesignNode Frame,
    BayNode? Bays,
    DesignNode? Top,
    ImmutableArray<FreePart> Parts,
    ImmutableArray<HardwareEntry> Hardware,
    ImmutableArray<string> Steps
)
{
    /// <summary>What is cut out of parts that the frame, a fill or the top makes.</summary>
    public ImmutableArray<AppliedShape> Shapes { get; init; } = [];
}

/// <summary>A shape cut out of all copies of a part.</summary>
/// <param name="Of">Name of the part.</param>
/// <param name="Shape">What is cut out of it: a kind of shape with its members.</param>
public sealed record AppliedShape(string Of, DesignNode Shape);

/// <summary>A named dimension.</summary>
/// <param name="Name">As expressions use it: lower-case letters, digits and underscores.</param>
/// <param name="Label">As shown.</param>
/// <param name="IsCount">True for a whole number, false for a length.</param>
/// <param name="Value">Text: a length, a whole number, or arithmetic on other names (then it follows them until it is
/// set).</param>
/// <param name="Least">Least value, text; null for none.</param>
/// <param name="Most">Greatest value, text; null for none.</param>
public sealed record DesignDimension(string Name, string Label, bool IsCount, string Value, string? Least, string? Most);

/// <summary>A frame, a fill, a top, a shape or an edge: its kind, and its members as texts.</summary>
/// <param name="Kind">Name of a kind that is known: <c>sheet-carcass</c>, <c>doors</c>.</param>
/// <param name="Members">Texts by name: arithmetic, roles, choices.</param>
/// <param name="Path">Place in the document, for faults: <c>bays.0.fills.1</c>.</param>
public sealed record DesignNode(string Kind, ImmutableDictionary<string, string> Members, string Path);

/// <summary>A bay: fills that take it whole, and how it is split into smaller bays.</summary>
/// <param name="Fills">What fills or closes the bay as a whole.</param>
/// <param name="Split">The part that splits it (<c>divider</c>: side by side, <c>fixed-shelf</c>: one above the other); null
/// where it is not split.</param>
/// <param name="Sizes">Clear size of each smaller bay, from the left or from below: arithmetic, or <c>*</c> for an equal share of
/// the rest. As many as there are bays.</param>
/// <param name="Bays">The smaller bays.</param>
/// <param name="Path">Place in the document: <c>bays</c>, <c>bays.0</c>.</param>
public sealed record BayNode(
    ImmutableArray<DesignNode> Fills,
    DesignNode? Split,
    ImmutableArray<string> Sizes,
    ImmutableArray<BayNode> Bays,
    string Path
);

/// <summary>A part that stands by itself in the document.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Role">Its material.</param>
/// <param name="Length">Along the grain: arithmetic.</param>
/// <param name="Width">Across: arithmetic; null for a board's width or a sheet part that has none.</param>
/// <param name="Along">Direction of its length.</param>
/// <param name="Flat">Direction of its thickness.</param>
/// <param name="At">Corner nearest the origin of each copy: three texts of arithmetic each.</param>
/// <param name="Path">Place in the document.</param>
public sealed record FreePart(
    string Name,
    string Role,
    string Length,
    string? Width,
    Axis Along,
    Axis Flat,
    ImmutableArray<ImmutableArray<string>> At,
    string Path
)
{
    /// <summary>How each copy is repeated; null where it is not.</summary>
    public PartRepeat? Repeat { get; init; }

    /// <summary>True where it may be turned on its sheet.</summary>
    public bool AnyGrain { get; init; }

    /// <summary>What its copies are joined to.</summary>
    public ImmutableArray<PartJoint> Joints { get; init; } = [];

    /// <summary>What is cut out of each copy.</summary>
    public ImmutableArray<DesignNode> Shapes { get; init; } = [];

    /// <summary>How the edges of each copy are treated.</summary>
    public ImmutableArray<DesignNode> Edges { get; init; } = [];
}

/// <summary>Copies of a part one after another.</summary>
/// <param name="Count">How many there are in all: arithmetic that gives a whole number.</param>
/// <param name="Step">From one to the next along x, y and z: three texts of arithmetic.</param>
public sealed record PartRepeat(string Count, ImmutableArray<string> Step);

/// <summary>A joint that a part has with the copies of another one that it touches.</summary>
/// <param name="With">Name of the other part, be it a free one or one that the frame or a fill makes.</param>
/// <param name="Kind">How they are joined.</param>
/// <param name="Along">Direction in which the part meets the other one, or is let into it.</param>
/// <param name="Depth">How far it is let in: arithmetic; null for a butt joint.</param>
/// <param name="Path">Place in the document.</param>
public sealed record PartJoint(string With, JointKind Kind, Axis Along, string? Depth, string Path);

/// <summary>Hardware that the document names.</summary>
/// <param name="Name">As asked for in a store.</param>
/// <param name="Quantity">Arithmetic that gives a whole number.</param>
/// <param name="Path">Place in the document.</param>
public sealed record HardwareEntry(string Name, string Quantity, string Path);
