using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>What makes bare wood ready for its first coat.</summary>
internal sealed class GroundSteps(FinishWork work)
{
    private readonly ImmutableArray<int> grits = FinishGrits.Of(work);

    /// <summary>Single parts: edges banded, faces sanded.</summary>
    public void Parts(StepChain chain)
    {
        if (work.IronsEdges)
            chain.Add(Banding());
        chain.Add(
            new(
                WorkAction.Sand,
                "sand",
                "Sand the parts",
                [
                    Sanding(grits),
                    "Keep off faces that will be glued or let in: rounded, they leave the joint open.",
                    "Ease sharp edges lightly: a finish is thin on a sharp edge, and wears through there first.",
                ],
                FinishPace.Sand(grits.Length)
            )
            {
                Cautions = [Cautions.Dust],
                Source = FinishSources.SandedFirst.And(Grits.Rule),
                Tool = "random orbit sander, sanding block",
            }
        );
    }

    /// <summary>The piece as it was put together, its glue scraped off: edges and grain filled, sanded once more.</summary>
    public void Assembled(StepChain chain)
    {
        if (work.HasHardware && chain.Lot is { Id: FinishLots.Piece, Recipe.IsBare: false })
            chain.Add(Hardware());
        if (chain.Lot.Recipe.HidesWood && work.Edges == FinishChoices.Filler)
            chain.Add(EdgesFilled());
        Filled(chain);
        var last = grits.TakeLast(2).ToImmutableArray();
        chain.Add(
            new(
                WorkAction.Sand,
                "sand",
                "Sand once more",
                [
                    "Sand joints and filler flush, then all faces that are still bare. " + Sanding(last),
                    "Feel with your hand and look along the light: what you feel now shows in the finish.",
                ],
                FinishPace.Sand(last.Length)
            )
            {
                Cautions = [Cautions.Dust],
                Source = chain.Lot.Recipe.HidesWood ? FinishSources.OpaqueOrder : FinishSources.ClearOrder,
                Tool = "random orbit sander, sanding block",
            }
        );
    }

    /// <summary>What can't be reached later: glue faces masked.</summary>
    public void Single(StepChain chain)
    {
        chain.Add(
            new(
                WorkAction.Mask,
                "mask",
                "Mask where glue must hold",
                [
                    "Cover every place where glue must hold with tape: glue doesn't hold on a finish. Leave the edges of panels "
                        + "that sit in grooves uncovered: no glue goes there.",
                ],
                FinishPace.Spots
            )
            {
                On = one => one.IsGlued,
                Source = FinishSources.Masked,
                Tool = "painter's tape",
            }
        );
        Filled(chain);
    }

    /// <summary>Dust off, knots sealed, grain raised, conditioner on.</summary>
    public void Ready(StepChain chain)
    {
        var recipe = chain.Lot.Recipe;
        if (recipe.WetsBareWood || FinishGrits.ScuffsOutdoors(work))
            Raise(chain);
        chain.Add(
            new(
                WorkAction.Dust,
                "dust",
                "Take the dust off",
                [
                    "Vacuum all faces, corners and grooves, then wipe them with a lint-free cloth, damp with water or with "
                        + "the thinner of the first coat.",
                ],
                FinishPace.Wipe
            )
            {
                Cautions = [Cautions.Dust],
                Source = recipe.HidesWood ? FinishSources.OpaqueOrder : FinishSources.ClearOrder,
            }
        );
        if (recipe.HidesWood)
            chain.Add(Knots());
        if (recipe.HasStain)
            chain.Add(Conditioner());
    }

    private static string Sanding(ImmutableArray<int> grits) =>
        grits.Length == 1
            ? FormattableString.Invariant($"Sand with {grits[0]} grit, with the grain.")
            : $"Sand with {string.Join(", ", grits)} grit in this order and with the grain, each until the scratches of the one "
                + "before are gone.";

    private static FinishTask Banding() =>
        new(
            WorkAction.BandEdges,
            "band-edges",
            "Iron edging on",
            [
                "Iron the edging on the sheet edges that show, and press it down with a block of wood while it cools.",
                "Trim its ends, then its edges, flush with the faces, and sand them lightly: a thin veneer is soon sanded "
                    + "through.",
                "Grooves and dadoes that come out at an edge stay open: cut the edging away where it crosses them.",
            ],
            FinishPace.Edges
        )
        {
            On = one => one.SeenEdges > Length.Zero,
            Cautions = [ShopCautions.HotIron],
            Source = FinishSources.Habit,
            Tool = "iron, edge trimmer",
        };

    private FinishTask Hardware() =>
        new(
            WorkAction.Mask,
            "mask-hardware",
            "Clear the hardware",
            [
                work.Choices.HingesBefore
                    ? "Check that hinges, slides and pulls are off again, each with its own screws; mask what must stay."
                    : "Leave hinges, slides and pulls off until the finish is hard; mask what must stay bare.",
                "Keep finish out of hinge recesses and pin holes: it makes them tight.",
            ],
            FinishPace.Spots
        )
        {
            Source = FinishSources.Hinges,
            Tool = "painter's tape",
        };

    private FinishTask EdgesFilled() =>
        new(
            WorkAction.Fill,
            "fill-edges",
            "Fill the edges of sheets",
            [
                "Press wood filler into the plies of every edge that shows, or rub filler on edges of MDF, which drink paint.",
                "Fill once more where it sank.",
                "Solid lipping, glued on before the parts were cut to size, needs no filler.",
            ],
            FinishPace.Edges
        )
        {
            On = one => one.SeenEdges > Length.Zero,
            Wait = FinishWaits.Of(work.Choices, "putty", "filler dries", FinishFigures.PuttyDries),
            Source = FinishSources.OpaqueOrder,
            Tool = "putty knife",
        };

    // Under paint the pores are filled first; under a clear finish after the stain.
    private void Filled(StepChain chain)
    {
        if (chain.Lot.Recipe.HidesWood)
            chain.Add(CoatSteps.GrainFiller(work, "Sand it lightly when it is dry, so that only the pores are full."));
    }

    // Wetted first and smoothed when it is dry again.
    private void Raise(StepChain chain)
    {
        var recipe = chain.Lot.Recipe;
        Func<FinishSurface, bool> on = recipe.HidesWood ? one => one.Wood.IsSoftwood : one => one.Wood.TakesStain;
        var source = recipe.HidesWood ? FinishSources.Outdoors : FinishSources.Wetted;
        chain.Add(
            new(
                WorkAction.Condition,
                "raise-grain",
                "Raise the grain",
                ["Wipe the wood with a damp cloth: the fibers stand up now, and not under the first coat."],
                FinishPace.Wipe
            )
            {
                On = on,
                Wait = FinishWaits.Of(work.Choices, "damp", "the wood dries", FinishFigures.Wetted),
                Source = source,
            }
        );
        chain.Add(
            new(
                WorkAction.Sand,
                "smooth",
                "Smooth the raised grain",
                [FormattableString.Invariant($"Take off the fuzz with {grits[^1]} grit, by hand and lightly.")],
                FinishPace.Wipe
            )
            {
                On = on,
                Cautions = [Cautions.Dust],
                Source = source,
            }
        );
    }

    private FinishTask Knots() =>
        new(
            WorkAction.SealKnots,
            "seal-knots",
            "Seal the knots",
            ["Dab dewaxed shellac on every knot and pitch streak, a little past its edge: resin bleeds through paint for years."],
            FinishPace.Spots
        )
        {
            On = one => one.Wood.IsSoftwood,
            Wait = FinishWaits.Of(work.Choices, "knots", "shellac on the knots dries", FinishFigures.KnotsDry),
            Cautions = [Cautions.Solvents],
            Source = FinishSources.Knots,
            Tool = "small brush",
        };

    private FinishTask Conditioner()
    {
        var product = Coats.Product("conditioner");
        return new(
            WorkAction.Condition,
            "condition",
            "Brush on conditioner",
            [
                "Brush or wipe wood conditioner on, keep it wet as long as the can says, and wipe it off: the wood then takes "
                    + "stain evenly.",
                "Try conditioner, stain and clear coat on scrap of the same wood first.",
            ],
            FinishPace.Coat
        )
        {
            On = one => one.Wood is { TakesStain: true, Blotches: true },
            Wait = FinishWaits.Of(work.Choices, "conditioner", "conditioner dries", product),
            Cautions = [Cautions.Solvents, Cautions.OilyRags],
            Source = FinishSources.Habit,
            Tool = "lint-free rags",
        };
    }
}
