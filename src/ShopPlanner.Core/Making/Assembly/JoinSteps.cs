using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Writes the steps that put parts together.</summary>
internal sealed class JoinSteps(Solids solids, WorkGlue glue, Supplies supplies)
{
    // Common practice, minutes: to set up, for each joint that is glued, for each part that is not glued, for each screw or brad.
    private const int Setup = 5;
    private const int EachGlued = 3;
    private const int EachPart = 2;
    private const double EachFastener = 0.5;

    private readonly Tell tell = new(solids);
    private readonly JoinWords words = new(solids, glue);
    private bool isGlueTaken;

    /// <summary>Returns the step of a stage, without what it comes after.</summary>
    public WorkStep Of(Told told, string id, WorkPhase phase)
    {
        var fasteners = Fasteners(told);
        var isGlued = told.Kind == StageKind.Glue;
        var check =
            told.IsChecked && told.Of.Kind is not (UnitKind.Panel or UnitKind.Cross or UnitKind.Fitted)
                ? Check(told, isGlued)
                : null;
        var step = new WorkStep(
            id,
            phase,
            told.Kind == StageKind.Top ? WorkAction.FastenTop : WorkAction.Join,
            words.Title(told),
            words.Says(told, check is null),
            [],
            [],
            Minutes(told, fasteners)
        )
        {
            Present = [.. tell.Marks(told.Present.Distinct())],
            Fasteners = fasteners,
            Tool = Tool(told),
            Wait = isGlued ? Wait(told) : null,
            Check = check,
            Cautions = Cautions(told),
            Source = JoinWords.Source(told),
        };
        return tell.With(told, step);
    }

    private int Minutes(Told told, ImmutableArray<WorkItem> fasteners)
    {
        var glued = told.Links.Where(link => Gluing.IsGlued(solids, link)).ToList();
        var wet = glued.SelectMany(link => new[] { link.From, link.Into }).ToHashSet();
        var dry = told.IsLate ? told.Handled.Count() : told.Insertions.Count(one => !wet.Overlaps(one.What.Copies));
        var driven = (int)Math.Ceiling(EachFastener * fasteners.Sum(one => one.Quantity));
        return Setup + (EachGlued * glued.Count) + (EachPart * dry) + driven;
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

    private WorkWait Wait(Told told) =>
        new("glue sets before the joints are loaded", glue.SetMinutes, glue.Source)
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
        var strips = told.Insertions.SelectMany(one => one.What.Copies).Select(copy => solids.All[copy].Copy);
        var narrowest = strips.Min(copy => copy.Box.Extent(copy.Across).Ticks);
        return told.Of.Units.Count * Math.Max(2, (int)Math.Ceiling((double)longest.Ticks / (2 * Math.Max(1, narrowest))));
    }

    private WorkCheck? Check(Told told, bool isGlued)
    {
        var unit = told.Of.Units[0];
        var standing = told.Present.Concat(told.Handled).Where(unit.Copies.Contains).Distinct().ToList();
        return SquareChecks.Of(solids, standing, isGlued);
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
