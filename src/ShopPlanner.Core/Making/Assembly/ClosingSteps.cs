using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Writes what closes the work: level feet, glue off, keys, catches, pulls, the wall.</summary>
internal sealed class ClosingSteps(Solids solids, Supplies supplies, StepList steps)
{
    private readonly Tell tell = new(solids);
    private string? work;
    private bool isOnWall;

    /// <summary>Steps on doors that hang already.</summary>
    public List<string> AfterHanging { get; } = [];

    /// <summary>Keys and wedges: they go in when the glue is off.</summary>
    public List<WorkStep> Keys { get; } = [];

    /// <summary>Before the finish.</summary>
    /// <param name="standing">The last step of the assembly.</param>
    /// <param name="told">All stages.</param>
    public void Work(string? standing, IReadOnlyList<Told> told)
    {
        work = standing;
        var isApart = told.Any(one => one.Of.IsPiece && one.Kind == StageKind.Bolt);
        var feet = Feet();
        if (feet.Count >= 4 && !isApart && !solids.Piece.IsFixedToWall)
            work = Add(Level(feet));
        if (told.Any(one => one.Kind == StageKind.Glue))
            work = Add(Clean(told));
        foreach (var key in Keys)
            Add(key with { After = [.. key.After.Concat(After()).Distinct()] });
        if (supplies.Take(SupplyUse.Catch, 1, 1) is { IsEmpty: false } catches)
            AfterHanging.Add(Add(Catches(catches)));
    }

    /// <summary>Fixes the piece to the wall where it is to stand; null where it stands freely or hangs already.</summary>
    public string? Anchor()
    {
        var wall = supplies.Take(SupplyUse.Wall, 1, 1);
        return !isOnWall && (solids.Piece.IsFixedToWall || !wall.IsEmpty) ? Add(FixToWall("fix:piece", [], wall)) : null;
    }

    /// <summary>After the finish, where the piece is to stand.</summary>
    public void Place()
    {
        if (supplies.Take(SupplyUse.Pull, 1, 1) is { IsEmpty: false } pulls)
            Add(Pulls(pulls));
        if (supplies.TakeRest() is { IsEmpty: false } rest)
            Add(Rest(rest));
    }

    /// <summary>The cleat that the piece hangs on.</summary>
    public WorkStep Wall(Told told, IReadOnlyList<string> after)
    {
        isOnWall = true;
        return tell.With(told, FixToWall("fix:wall-cleat", after, supplies.Take(SupplyUse.Wall, 1, 1))) with
        {
            Says =
            [
                "Find the studs. Screw the wall cleat to them, level, its bevel up and toward the wall.",
                "Lift the piece over the cleat, and let it down until the bevels hold.",
                "Drive one screw from below through the wall cleat into the cleat on the piece, so nobody can lift it off by "
                    + "accident.",
            ],
        };
    }

    private string Add(WorkStep step)
    {
        steps.Add(step);
        return step.Id;
    }

    private ImmutableArray<string> After() => work is null ? [] : [work];

    // Posts that stand on the floor.
    private List<int> Feet() =>
        [
            .. Enumerable
                .Range(0, solids.All.Length)
                .Where(copy => solids.All[copy].Copy is { Along: Axis.Z } leg && leg.Box.Z == Length.Zero && IsSlender(leg.Box)),
        ];

    private static bool IsSlender(Box box) => Length.Max(box.Dx, box.Dy) * 3 <= box.Dz;

    private WorkStep Level(List<int> feet) =>
        new(
            "level:feet",
            WorkPhase.Fitting,
            WorkAction.TrimToSize,
            "Level the feet",
            [
                "Stand the piece on a flat surface, and shim the short leg until nothing rocks.",
                "Run a pencil on a block around all legs, and cut or plane them to that line.",
            ],
            [.. tell.Marks(feet)],
            After(),
            15
        )
        {
            Tool = "pencil on a block, saw, plane",
            Source = Sources.Feet,
        };

    private WorkStep Clean(IReadOnlyList<Told> told) =>
        new(
            "clean:glue",
            WorkPhase.Fitting,
            WorkAction.CleanGlue,
            "Take off what glue is left",
            ["Scrape hard glue off all faces, and look along them against the light: stain and clear finish don't take on glue."],
            [.. tell.Marks(told.Where(one => one.Kind == StageKind.Glue).SelectMany(one => one.Handled).Distinct())],
            After(),
            15
        )
        {
            Tool = "scraper or sharp chisel",
            Source = Sources.GlueOff,
        };

    private WorkStep Catches(ImmutableArray<WorkItem> catches) =>
        new(
            "fit:catch",
            WorkPhase.Fitting,
            WorkAction.PutIn,
            "Fit the catches",
            ["Close the door flush, mark both halves of each catch, and screw them on."],
            [],
            [.. After(), .. AfterHanging],
            10
        )
        {
            Fasteners = catches,
            Source = SourceNote.CommonPractice,
        };

    private WorkStep Pulls(ImmutableArray<WorkItem> pulls) =>
        new(
            "put-on:pull",
            WorkPhase.InPlace,
            WorkAction.PutIn,
            "Put on the pulls",
            ["Drill the holes with one template, from the face that is seen, with a scrap block behind.", "Screw the pulls on."],
            [],
            After(),
            5 * pulls.Sum(one => one.Quantity)
        )
        {
            Fasteners = pulls,
            Tool = "drill, template",
            Cautions = [Calculators.Cautions.Drilling],
            Source = Sources.Pulls,
        };

    private WorkStep FixToWall(string id, IReadOnlyList<string> after, ImmutableArray<WorkItem> with) =>
        new(
            id,
            WorkPhase.InPlace,
            WorkAction.FixToWall,
            "Anchor it to the wall",
            [
                "Set the piece in its place, level and plumb, with shims under it where the floor is uneven.",
                "Find the studs, and fix it to them before you load it. Leave no drawer or door open meanwhile.",
            ],
            [],
            [.. after, .. After().Except(after)],
            20
        )
        {
            Fasteners = with,
            Tool = "stud finder, level, drill and driver",
            Cautions = [Calculators.Cautions.Tipping, Calculators.Cautions.WallFixing],
            Source = SourceNote.CommonPractice,
        };

    private WorkStep Rest(ImmutableArray<WorkItem> rest) =>
        new(
            "put-on:hardware",
            WorkPhase.InPlace,
            WorkAction.PutIn,
            "Put on the rest of the hardware",
            ["Fit what is left on the list of hardware, as its maker says."],
            [],
            After(),
            5 * rest.Length
        )
        {
            Fasteners = rest,
        };
}
