using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>The layers of a finish, coat by coat.</summary>
internal sealed class CoatSteps(FinishWork work)
{
    /// <summary>Words for the coats, by which their ids are told apart.</summary>
    public static readonly ImmutableArray<string> Ordinals =
    [
        "first",
        "second",
        "third",
        "fourth",
        "fifth",
        "sixth",
        "seventh",
        "eighth",
        "ninth",
        "tenth",
    ];

    /// <summary>Adds all layers of the chain's finish.</summary>
    public void Add(StepChain chain)
    {
        var layers = chain.Lot.Recipe.Layers;
        if (layers.IsEmpty)
            return;
        var fillsGrain = chain.Lot.Recipe.HasClearFilm;
        if (fillsGrain && layers[0].Role != LayerRole.Stain)
            chain.Add(GrainFiller(work, FilledClear));
        for (var i = 0; i < layers.Length; i++)
        {
            Layer(chain, layers[i], i + 1 < layers.Length ? layers[i + 1] : null);
            if (fillsGrain && layers[i].Role == LayerRole.Stain)
                chain.Add(GrainFiller(work, FilledClear));
        }
    }

    private const string FilledClear =
        "Sand it lightly when it is dry, with the grain. Some finishers put a thin coat of shellac between stain and filler, "
        + "which keeps the light places light.";

    /// <summary>Grain filler, on woods whose pores are open.</summary>
    /// <param name="work">What is finished.</param>
    /// <param name="last">The last sentence.</param>
    public static FinishTask GrainFiller(FinishWork work, string last)
    {
        var product = Coats.Product("filler");
        return new(
            WorkAction.Fill,
            "fill-grain",
            "Fill the grain",
            [
                "Rub paste grain filler into the pores. When it turns dull, wipe it off across the grain, then lightly along it.",
                last,
            ],
            FinishPace.Coat
        )
        {
            On = one => one.Wood.HasOpenPores,
            Wait = FinishWaits.Of(work.Choices, "filler", "grain filler dries", product),
            Cautions = [Cautions.Solvents, Cautions.OilyRags],
            Source = FinishSources.FillerWiped.And(FinishSources.Filled),
            Tool = "stiff brush, burlap or rags",
        };
    }

    private void Layer(StepChain chain, FinishLayer layer, FinishLayer? next)
    {
        // Putty goes on the primer, else after the first coat, so that its color can be matched; on a single coat there is no
        // after.
        var coats = layer.Role == LayerRole.Coat ? layer.Coats : 1;
        var isFirstCoat = chain.Lot.Recipe.Coats.FirstOrDefault() == layer;
        var takesPutty = chain.Lot is { Stage: FinishStage.After, Id: FinishLots.Piece } && work.HasHoles;
        var puttyAfter = layer.Role == LayerRole.Prime || (isFirstCoat && !chain.Lot.Recipe.HidesWood && coats > 1);
        if (takesPutty && isFirstCoat && !chain.Lot.Recipe.HidesWood && coats == 1)
            chain.Add(Putty(false));
        for (var coat = 0; coat < coats; coat++)
        {
            chain.Add(Coat(chain.Lot, layer, coat, coat + 1 < coats ? layer : next));
            if (takesPutty && puttyAfter && coat == 0)
                chain.Add(Putty(chain.Lot.Recipe.HidesWood));
        }
    }

    private FinishTask Coat(FinishLot lot, FinishLayer layer, int coat, FinishLayer? next)
    {
        var (product, name) = (layer.Product, WoodNames.InText(work.Called(layer.Product)));
        var (action, what, title) = layer.Role switch
        {
            LayerRole.Stain => (WorkAction.Stain, "stain", "Stain"),
            LayerRole.Seal => (WorkAction.Prime, "seal", "Seal with thin shellac"),
            LayerRole.Prime => (WorkAction.Prime, "prime", "Prime"),
            _ => (
                product.Id == "wax" ? WorkAction.Rub : WorkAction.Coat,
                $"{product.Id}:{Ordinals[coat]}",
                $"{char.ToUpperInvariant(Ordinals[coat][0])}{Ordinals[coat][1..]} coat of {name}"
            ),
        };
        return new(action, what, title, [.. Says(lot, layer, coat)], product.IsWiped ? FinishPace.Edges : FinishPace.Coat)
        {
            On = layer.Role == LayerRole.Stain ? one => one.Wood.TakesStain : null,
            Wait = Wait(layer, next),
            Cautions = product.MayHoldOil ? [Cautions.Solvents, Cautions.OilyRags] : [Cautions.Solvents],
            Source = Source(lot, layer, coat),
            Tool = FinishTools.For(product),
        };
    }

    private IEnumerable<string> Says(FinishLot lot, FinishLayer layer, int coat)
    {
        var product = layer.Product;
        if (coat > 0 && product.BetweenGrit is { } grit)
            yield return FormattableString.Invariant(
                $"Rub the coat below lightly with {grit} grit once it is hard, and take all the dust off."
            );
        yield return FinishTools.Method(product);
        if (coat == 0 && layer.Role == LayerRole.Coat && lot.Surfaces.Any(one => one.IsPanel) && lot.Stage == FinishStage.Before)
            yield return "Wipe the edges of panels thin: a thick film keeps a panel out of its groove.";
        if (coat == 0 && layer.Role is LayerRole.Coat or LayerRole.Prime)
            yield return "Give both faces of a wide part the same coats, or it cups.";
        yield return Warmth(product);
    }

    private string Warmth(FinishProduct product) =>
        product.Base switch
        {
            FinishBase.Water => $"The can comes first. Work at {Told(FinishFigures.WarmForWater)} or warmer, and keep it so for "
                + $"{Told(FinishFigures.StaysWarm)}.",
            FinishBase.Oil => $"The can comes first. Work at {Told(FinishFigures.WarmForOil)} or warmer, with a window open.",
            _ => "The can comes first. Work where it is dry, with a window open: damp air clouds it.",
        };

    private string Told(Working figure) => figure.Figure.Text(work.Unit);

    private WorkWait Wait(FinishLayer layer, FinishLayer? next)
    {
        var product = layer.Product;
        var what = $"{WoodNames.InText(product.Name)} dries";
        if (product.Base == FinishBase.Oil && layer.Role == LayerRole.Coat && next is { Product.Base: not FinishBase.Oil })
        {
            var least = next.Product.Base == FinishBase.Water ? FinishFigures.OilUnderWater : FinishFigures.OilUnderShellac;
            return FinishWaits.Of(work.Choices, "oil", what, Math.Max(least.Value, product.RecoatHours), least.Source);
        }

        var key = layer.Role switch
        {
            LayerRole.Stain => "stain",
            LayerRole.Seal => "sealer",
            LayerRole.Prime => "primer",
            _ => "recoat",
        };
        return FinishWaits.Of(work.Choices, key, what, product);
    }

    private SourceNote Source(FinishLot lot, FinishLayer layer, int coat) =>
        layer.Role switch
        {
            _ when coat > 0 => FinishSources.HardFirst,
            LayerRole.Coat when layer.Product.Id == "wax" => FinishSources.WaxLast,
            LayerRole.Coat when lot.Stage == FinishStage.Before && lot.Surfaces.Any(one => one.IsPanel) =>
                FinishSources.PanelsFirst,
            _ when lot.Recipe.HidesWood => work.IsOutdoors ? FinishSources.Outdoors : FinishSources.OpaqueOrder,
            _ => FinishSources.ClearOrder,
        };

    private FinishTask Putty(bool isPainted) =>
        new(
            WorkAction.Fill,
            "putty",
            "Fill the holes",
            [
                "Set brads and nails below the surface, and see that screw heads lie below it too.",
                isPainted
                    ? "Fill the holes with putty on the primer, a little proud, and sand it flush when it is dry. Touch up "
                        + "the primer."
                    : "Fill the holes with putty in the color of the finished wood, and wipe off what lies beside them.",
            ],
            FinishPace.Spots
        )
        {
            Wait = FinishWaits.Of(work.Choices, "putty", "putty dries", FinishFigures.PuttyDries),
            Source = FinishSources.Putty,
            Tool = "nail set, putty knife",
        };
}
