using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Totals;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>Plans the finish: what is done to which parts before and after assembly, how long it waits, what to buy. Pure: the
/// same piece and choices give the same plan.</summary>
public static class FinishPlanner
{
    /// <summary>The finish of a piece that was worked out.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="choices">What the builder decided.</param>
    public static FinishPlan Of(Piece piece, WorkChoices choices)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(choices);
        return Of(
            new FinishWork(piece.Name, piece.Unit, PieceSurfaces.Of(piece, choices.PanelEdgesBefore), choices)
            {
                HasHoles = piece.Joints.Any(joint => joint.Kind is JointKind.Rabbet or JointKind.Screwed),
                HasHardware = piece.Joints.Any(joint => joint.Kind is JointKind.Hinged or JointKind.Sliding),
                IsBanded = piece.Hardware.Any(item => EdgeSummary.IsBand(item.Name)),
            }
        );
    }

    /// <summary>The finish of listed parts, without a design that says how they touch: all faces are finished, after
    /// assembly.</summary>
    /// <param name="name">Of the piece.</param>
    /// <param name="unit">Of lengths in texts.</param>
    /// <param name="parts">Sizes, counts and materials; each name is one part.</param>
    /// <param name="choices">What the builder decided.</param>
    public static FinishPlan Of(string name, LengthUnit unit, IReadOnlyList<CountedPart> parts, WorkChoices choices)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(choices);
        return Of(new FinishWork(name, unit, [.. parts.Select(Listed)], choices));
    }

    private static FinishSurface Listed(CountedPart part)
    {
        var isSheet = !part.Material.IsSolid;
        return new(
            part.Name,
            part.Name,
            part.Name,
            FinishWood.Of(null, part.Material.Name, part.Material.Properties, isSheet),
            FinishFaces.All.Of(part.Length, part.Width, part.Thickness) * part.Quantity,
            Area.Zero
        )
        {
            SeenEdges = isSheet ? (part.Length + part.Width) * 2 * part.Quantity : Length.Zero,
            Thickness = part.Thickness,
        };
    }

    private static FinishPlan Of(FinishWork asked)
    {
        var findings = new List<WorkFinding>();
        var recipe = new RecipeReader(asked.Choices, findings).Read();
        var work = asked with { Recipe = recipe.For(asked.IsOutdoors, asked.Surfaces.Any(one => one.Wood.HasOpenPores)) };
        findings.AddRange(MaterialRules.Of(work));
        findings.AddRange(FinishGrits.Findings(work));
        findings.AddRange(FinishWaits.Findings(work.Choices));
        var lots = FinishLots.Of(work);
        var buying = new FinishBuying(work, lots);
        return new(Steps(work, lots), work.Recipe.IsBare ? null : new(work.Recipe.Id, Areas(work), buying.Items()), [.. findings])
        {
            Volumes = work.Recipe.IsBare ? [] : buying.Volumes(),
        };
    }

    private static ImmutableArray<WorkStep> Steps(FinishWork work, FinishLots lots)
    {
        var (ground, coats) = (new GroundSteps(work), new CoatSteps(work));
        var parts = new StepChain(lots.All, []);
        ground.Parts(parts);
        var before = new[] { lots.Before, lots.DrawersBefore }.Select(lot => Coated(lot, parts.Last, ground.Single)).ToList();
        ImmutableArray<string> joined = [.. parts.Last.Concat(before.SelectMany(chain => chain.Last)).Distinct()];
        var after = new[] { lots.Whole, lots.Drawers }.Select(lot => Coated(lot, joined, ground.Assembled)).ToList();
        ImmutableArray<string> coated = [.. after.SelectMany(chain => chain.Last).Distinct()];
        var cure = new StepChain(lots.All with { Id = "all", Stage = FinishStage.After }, coated);
        if (!work.Recipe.IsBare)
            cure.Add(Cure(work));
        return [.. new[] { parts }.Concat(before).Concat(after).Append(cure).SelectMany(chain => chain.Steps)];

        StepChain Coated(FinishLot lot, ImmutableArray<string> first, Action<StepChain> prepare)
        {
            var chain = new StepChain(lot, first);
            prepare(chain);
            ground.Ready(chain);
            coats.Add(chain);
            return chain;
        }
    }

    private static FinishTask Cure(FinishWork work)
    {
        var slowest = work.Recipe.Layers.Select(layer => layer.Product).MaxBy(product => product.CureHours)!;
        return new(
            WorkAction.Cure,
            "cure",
            "Let the finish harden",
            [
                "Leave it open to dry air. Dry to the touch is not hard: what stands on it now sticks.",
                "Wait that long before you load it, leave its doors closed, or set it against a wall and anchor it.",
            ],
            FinishPace.None
        )
        {
            Wait = FinishWaits.Of(work.Choices, "cure", "the finish hardens", slowest.CureHours, slowest.CureSource),
            Cautions = [.. Cautions(work)],
            Source = slowest.CureSource,
        };
    }

    private static IEnumerable<Caution> Cautions(FinishWork work)
    {
        if (work.Uses.Contains(FinishUse.Children))
            yield return ShopCautions.ToyFinish;
        if (work.Uses.Contains(FinishUse.Food))
            yield return ShopCautions.FoodFinish;
    }

    private static ImmutableArray<FinishArea> Areas(FinishWork work) =>
        [
            .. work
                .Surfaces.GroupBy(one => one.Part)
                .Select(part =>
                {
                    var coated = part.Where(one => one.Wood.Face != FinishFace.Plastic).ToList();
                    return new FinishArea(
                        part.Key,
                        coated.Aggregate(Area.Zero, (sum, one) => sum + one.Area),
                        coated.Aggregate(Area.Zero, (sum, one) => sum + one.Before)
                    );
                }),
        ];
}
