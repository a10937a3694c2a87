using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Writes the steps that put parts together.</summary>
internal sealed class JoinSteps(Solids solids, WorkGlue glue, Supplies supplies)
{
    // Common practice, minutes: to set up, for each joint, for each screw or brad.
    private const int Setup = 5;
    private const int EachJoint = 3;
    private const int EachFastener = 1;

    private readonly Tell tell = new(solids);
    private readonly JoinWords words = new(solids, glue);
    private bool isGlueTaken;

    /// <summary>Returns the step of a stage, without what it comes after.</summary>
    public WorkStep Of(Told told, string id, WorkPhase phase)
    {
        var links = told.Links;
        var fasteners = Fasteners(told);
        var isGlued = told.Kind == StageKind.Glue;
        var check =
            told.IsChecked && told.Of.Kind is not (UnitKind.Panel or UnitKind.Cross or UnitKind.Fitted)
                ? Check(told, isGlued)
                : null;
        return new(
            id,
            phase,
            told.Kind == StageKind.Top ? WorkAction.FastenTop : WorkAction.Join,
            words.Title(told),
            words.Says(told, check is null),
            [.. tell.Marks(told.Handled)],
            [],
            Setup + (EachJoint * links.Count) + (EachFastener * fasteners.Sum(one => one.Quantity))
        )
        {
            Present = [.. tell.Marks(told.Present.Distinct())],
            Joints = [.. links.Select(link => link.Index).Order()],
            Moves = [.. told.Insertions.Select(Move)],
            Fasteners = fasteners,
            Face = Face(links),
            Tool = Tool(told),
            Wait = isGlued ? Wait(told) : null,
            Check = check,
            Cautions = Cautions(told),
            Source = JoinWords.Source(told),
        };
    }

    // The bottle is counted where it is opened.
    private ImmutableArray<WorkItem> Fasteners(Told told)
    {
        var more = ImmutableArray<WorkItem>.Empty;
        if (told.Kind == StageKind.Glue && !isGlueTaken)
            (more, isGlueTaken) = (supplies.Take(SupplyUse.Glue, 1, 1), true);
        else if (told.Kind == StageKind.Bolt)
            more = supplies.TakeBolts([.. told.Links.Where(link => link.Kind == JointKind.Bolted)]);
        else if (told.Kind == StageKind.Top)
            more = supplies.Take(SupplyUse.Top, 1, 1);
        return [.. more, .. supplies.For(told.Links)];
    }

    private WorkMove Move(Insertion one) => new([.. tell.Marks(one.What.Copies)], one.Out?.Axis, one.Out is { Forward: false });

    private WorkWait Wait(Told told) =>
        new("Glue sets before the joints are loaded", glue.SetMinutes, glue.Source)
        {
            Clamps = Clamps(told),
            ClampMinutes = Math.Min(glue.ClampMinutes, glue.SetMinutes),
        };

    // Edge joints: clamps as far apart as two strips are wide (common practice, the 45° rule). Elsewhere one a rail.
    private int Clamps(Told told)
    {
        var glued = told.Links.Where(link => Gluing.IsGlued(solids, link)).ToList();
        if (told.Of.Kind != UnitKind.Panel || glued.Count == 0)
            return Math.Max(2, glued.Select(link => link.From).Distinct().Count());
        var longest = glued.Max(link => link.Fit.Long);
        var narrowest = told.Insertions.SelectMany(one => one.What.Copies).Min(copy => Width(solids.All[copy].Copy));
        return told.Of.Units.Count * Math.Max(2, (int)Math.Ceiling((double)longest.Ticks / (2 * Math.Max(1, narrowest))));
    }

    private static long Width(PartCopy copy) =>
        Way.Axes.Where(axis => axis != copy.Along && axis != copy.Flat).Select(axis => copy.Box.Extent(axis).Ticks).First();

    private WorkCheck? Check(Told told, bool isGlued)
    {
        var unit = told.Of.Units[0];
        var standing = told.Present.Concat(told.Handled).Where(unit.Copies.Contains).Distinct().ToList();
        return SquareChecks.Of(solids, standing, isGlued);
    }

    // Pocket holes are on the face toward the middle of the piece, where they are seen least.
    private string? Face(List<Link> links)
    {
        if (links.Find(link => link.Kind == JointKind.PocketScrew) is not { } pocket)
            return null;
        var copy = solids.All[pocket.From].Copy;
        return copy.Flat switch
        {
            Axis.Z => "underside",
            Axis.Y when copy.Box.Y + copy.Box.EndY <= solids.Piece.Outside.Y + solids.Piece.Outside.EndY => "back face",
            _ => "inside face",
        };
    }

    private static string? Tool(Told told) =>
        told.Kind switch
        {
            StageKind.Glue => "clamps",
            StageKind.Screw or StageKind.Top => "drill and driver",
            StageKind.Bolt => "drill and wrench",
            _ => null,
        };

    private ImmutableArray<Caution> Cautions(Told told) =>
        [
            .. told.Links.Exists(link =>
                link.Kind is JointKind.Screwed or JointKind.PocketScrew or JointKind.Slotted or JointKind.Bolted
            )
                ? [Calculators.Cautions.Drilling]
                : ImmutableArray<Caution>.Empty,
            .. told.Kind == StageKind.Glue && glue.Id is "epoxy" or "polyurethane"
                ? [Calculators.Cautions.Solvents]
                : ImmutableArray<Caution>.Empty,
        ];
}
