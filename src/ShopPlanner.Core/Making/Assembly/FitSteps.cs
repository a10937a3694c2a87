using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Writes the steps of what is fitted to the standing piece: doors, drawers, stops, shelves.</summary>
internal sealed class FitSteps(Solids solids, WorkChoices choices, Supplies supplies, StepList steps)
{
    private readonly Tell tell = new(solids);
    private readonly ClosingSteps closing = new(solids, supplies, steps);
    private readonly List<(string Id, Told Of)> hung = [];
    private readonly List<string> runs = [];
    private int doors;
    private int drawers;

    /// <summary>Whether it is fitted to what stands.</summary>
    public static bool IsFitting(StageKind kind) =>
        kind is StageKind.Hang or StageKind.Stop or StageKind.Drawer or StageKind.Front or StageKind.Loose or StageKind.Wall;

    /// <summary>Counts what shares hinges and slides.</summary>
    public void Count(IReadOnlyList<Told> told)
    {
        doors = told.Where(one => one.Kind == StageKind.Hang).Sum(one => one.Insertions.Count);
        drawers = told.Where(one => one.Kind == StageKind.Drawer).Sum(one => one.Insertions.Count);
    }

    /// <summary>Writes the steps of a stage.</summary>
    /// <param name="told">The stage.</param>
    /// <param name="after">What comes before.</param>
    /// <param name="phase">Fitting; assembly where the piece is closed only afterwards.</param>
    /// <returns>Id of the step that puts it into its place.</returns>
    public string Of(Told told, IReadOnlyList<string> after, WorkPhase phase) =>
        told.Kind switch
        {
            StageKind.Hang => Hang(told, after, phase),
            StageKind.Drawer => Drawer(told, after, phase),
            StageKind.Stop => Stop(told, after, phase),
            StageKind.Front => Front(told, after, phase),
            StageKind.Wall => Add(closing.Wall(told, after)),
            _ => Loose(told, after, phase),
        };

    /// <summary>Cuts a glued panel to size.</summary>
    /// <returns>Id of the step; null where its strips were cut to size.</returns>
    public string? Trim(Told told, string after)
    {
        var cutLong = told
            .Handled.Select(copy => solids.All[copy].Part)
            .Where(part => part.RoughLength > part.Length.Value || part.RoughWidth > part.Width.Value);
        if (!cutLong.Any())
            return null;
        var box = solids.Around(told.Of.Units[0].Copies);
        var sides = Way.Axes.Select(box.Extent).OrderDescending().ToList();
        return Add(
            new(
                steps.Id("trim", told.Of.Id, ""),
                WorkPhase.Assembly,
                WorkAction.TrimToSize,
                $"Cut the {told.Of.Name.ToLowerInvariant()} to size",
                [
                    "Plane or scrape the joints flush when the glue has set.",
                    "Square the ends, and cut the panel to its finished size.",
                ],
                [.. tell.Marks(told.Handled)],
                [after],
                20 * told.Of.Units.Count
            )
            {
                Subassembly = told.Of.Id,
                Tool = "saw with a guide",
                Settings = [new("Finished length", sides[0]), new("Finished width", sides[1])],
                Cautions = [Calculators.Cautions.Guards],
            }
        );
    }

    /// <summary>Writes what closes the work: catches of stops, level feet, glue off, keys, hinges off, the wall, hinges on,
    /// pulls. With the doors off the wall screws are within reach, and no open door can tip the piece.</summary>
    public void Finish(string? standing, IReadOnlyList<Told> told)
    {
        closing.Work(standing, told);
        var off = hung.ConvertAll(one => (one.Of, Id: TakeOff(one.Id, one.Of)));
        var anchored = closing.Anchor();
        foreach (var (of, id) in off)
            PutBack(of, anchored is null ? [id] : [id, anchored]);
        closing.Place();
    }

    private string Add(WorkStep step)
    {
        steps.Add(step);
        return step.Id;
    }

    private string Hang(Told told, IReadOnlyList<string> after, WorkPhase phase)
    {
        var (unit, count) = (told.Insertions[0].What, told.Insertions.Count);
        var name = UnitNames.Of(solids, unit);
        var words = new HangWords(name, count);
        var before = after;
        if (unit.Kind == UnitKind.Door)
            before =
            [
                Add(words.Fit(steps.Id("fit", UnitNames.Slug(name), ""), [.. tell.Marks(told.Handled)], [.. after], phase)),
            ];
        var fasteners = supplies.Take(SupplyUse.Hang, count, doors);
        doors -= count;
        var id = Put(
            told,
            words.Hang(steps.Id("hang", UnitNames.Slug(name), ""), choices.HingesBefore ? phase : WorkPhase.InPlace) with
            {
                After = [.. before],
                Fasteners = fasteners,
            }
        );
        if (choices.HingesBefore)
            hung.Add((id, told));
        return id;
    }

    private string TakeOff(string hang, Told told)
    {
        var (name, words) = Hung(told);
        var id = steps.Id("take-off", UnitNames.Slug(name), "");
        return Add(words.TakeOff(id, [.. tell.Marks(told.Handled)], [hang, .. closing.AfterHanging]));
    }

    private void PutBack(Told told, ImmutableArray<string> after)
    {
        var (name, words) = Hung(told);
        Add(words.PutBack(steps.Id("put-back", UnitNames.Slug(name), ""), [.. tell.Marks(told.Handled)], after));
    }

    private (string Name, HangWords Words) Hung(Told told)
    {
        var name = UnitNames.Of(solids, told.Insertions[0].What);
        return (name, new HangWords(name, told.Insertions.Count));
    }

    private string Drawer(Told told, IReadOnlyList<string> after, WorkPhase phase)
    {
        var count = told.Insertions.Count;
        var fasteners = supplies.Take(SupplyUse.Drawer, count, drawers);
        drawers -= count;
        var id = steps.Id("fit", "drawer", "");
        runs.Add(id);
        return Put(
            told,
            new(
                id,
                phase,
                WorkAction.FitDrawer,
                count > 1 ? "Fit the drawers" : "Fit the drawer",
                [
                    "Mount the case halves of the slides level and square to the front, as their maker says. A spacer from scrap "
                        + "sets both sides at one height.",
                    "Mount the box halves, slide each box in, and adjust until it runs freely and stops even with the front.",
                ],
                [],
                [.. after],
                20 * count
            )
            {
                Fasteners = fasteners,
                Tool = "drill and driver, spacer",
                Cautions = [Calculators.Cautions.Drilling],
                Source = Sources.DrawerFit,
            }
        );
    }

    private string Front(Told told, IReadOnlyList<string> after, WorkPhase phase) =>
        Put(
            told,
            new(
                steps.Id("set", UnitNames.Slug(solids.All[told.Handled.First()].Name), ""),
                phase,
                WorkAction.Join,
                "Set " + tell.Short(told.Handled),
                [
                    "Hold each front on its closed box with double-sided tape, its gaps set by shims all around.",
                    "Open the drawer, clamp the front, drill pilot holes, and screw it on from inside the box.",
                ],
                [],
                [.. after, .. runs],
                10 * told.Insertions.Count
            )
            {
                Fasteners = supplies.For(told.Links),
                Tool = "drill and driver, shims",
                Cautions = [Calculators.Cautions.Drilling],
                Source = SourceNote.CommonPractice,
            }
        );

    private string Stop(Told told, IReadOnlyList<string> after, WorkPhase phase)
    {
        var doorsHung = hung.Select(one => one.Id).ToList();
        var id = Put(
            told,
            new(
                steps.Id("join", UnitNames.Slug(solids.All[told.Handled.First()].Name), ""),
                phase,
                WorkAction.Join,
                "Glue in " + tell.Short(told.Handled),
                [
                    "Close the door with its gaps set by shims, flush with the frame.",
                    "Glue each strip on behind the closed door, so that it just touches, and hold it with spring clamps.",
                ],
                [],
                [.. after, .. doorsHung],
                10 * told.Insertions.Count
            )
            {
                Fasteners = [.. supplies.For(told.Links), .. supplies.Take(SupplyUse.Catch, 1, 1)],
                Source = SourceNote.CommonPractice,
            }
        );
        closing.AfterHanging.Add(id);
        return id;
    }

    // A shelf is put in when the piece is finished; a key, a wedge or a button when the glue is scraped off.
    private string Loose(Told told, IReadOnlyList<string> after, WorkPhase phase)
    {
        var isShelf = told.Handled.All(copy => solids.All[copy].Copy.Flat == Axis.Z);
        var isSliding = told.Links.Any(link => link.Kind == JointKind.SlidingGroove);
        var step = Placed(
            told,
            new(
                steps.Id("put-in", UnitNames.Slug(UnitNames.Of(solids, told.Insertions[0].What)), ""),
                phase == WorkPhase.Assembly ? phase
                    : isShelf || isSliding ? WorkPhase.InPlace
                    : WorkPhase.Fitting,
                WorkAction.PutIn,
                $"Put in {tell.Short(told.Handled)}",
                [
                    isSliding
                        ? "Lift each into the deep groove above, swing its foot in, and set it down in the groove below: "
                            + "the rear one first."
                    : isShelf ? $"Set {tell.Marked(told.Handled)} on the pins or cleats that carry them."
                    : $"Push {tell.Marked(told.Handled)} home, and check that nothing rocks.",
                ],
                [],
                [.. after],
                5 * told.Insertions.Count
            )
            {
                Fasteners = isShelf ? supplies.Take(SupplyUse.Pin, 1, 1) : [],
            }
        );
        if (step.Phase == WorkPhase.Fitting)
        {
            closing.Keys.Add(step);
            return step.Id;
        }

        return Add(step);
    }

    private WorkStep Placed(Told told, WorkStep step) => tell.With(told, step) with { Present = [.. tell.Marks(told.Taking)] };

    private string Put(Told told, WorkStep step) => Add(Placed(told, step));
}
