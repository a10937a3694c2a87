using System.Collections.Immutable;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>What a material or a use does not take, why, and what would be right.</summary>
internal static class MaterialRules
{
    // Finishes without oil, whose smell stays in what is closed.
    private static readonly string[] WithoutSmell = ["clear", "shellac"];

    public static IEnumerable<WorkFinding> Of(FinishWork work) =>
        work.Recipe.IsBare ? [] : [.. Faces(work), .. Edges(work), .. Uses(work), .. Drawers(work)];

    private static IEnumerable<WorkFinding> Faces(FinishWork work)
    {
        var recipe = work.Recipe;
        if (recipe.HasStain)
            foreach (var same in Same(work, one => !one.Wood.TakesStain))
                yield return new(
                    Severity.Fails,
                    $"Stain lies on top of {WoodNames.InText(same.Key)} and looks muddy: there is no grain for it to sink into. "
                        + $"It stays without stain on {Names(same)}. Paint them, or make them of plywood or solid wood.",
                    Marks(same)
                );
        foreach (var same in Same(work, one => one.Wood.Face == FinishFace.Plastic))
            yield return new(
                Severity.Watch,
                $"{same.Key} has a plastic face that takes no finish. It stays as it is on {Names(same)}. To paint it, scuff "
                    + "it and use a bonding primer that its label calls fit for plastic faces.",
                Marks(same)
            );
        if (recipe.HasStain && Same(work, one => one.Wood.Blotches).ToList() is { Count: > 0 } blotchy)
            yield return new(
                Severity.Tip,
                $"{WordList.Of(blotchy.Select(same => same.Key))} can turn blotchy under stain: "
                    + "the steps have a conditioner first. "
                    + "Try all of it on scrap.",
                [.. blotchy.SelectMany(same => Marks(same))]
            );
        foreach (var same in Same(work, one => one.Wood.IsOily && recipe.Layers.Any(layer => layer.Product.IsFilm)))
            yield return new(
                Severity.Watch,
                $"The oil in {WoodNames.InText(same.Key)} keeps a film from holding. Use an oil finish, or wipe the wood with "
                    + "the solvent that the can names just before the first coat.",
                Marks(same)
            );
    }

    private static IEnumerable<WorkFinding> Edges(FinishWork work)
    {
        if (work.Choices.Edges is not { } chosen)
            yield break;
        var seen = work.Surfaces.Where(one => one.SeenEdges > Length.Zero).ToList();
        if (FinishChoices.Edges.All(one => one.Id != chosen))
            yield return new(
                Severity.Watch,
                $"‘{chosen}’ isn't a treatment of edges: use "
                    + $"{WordList.Of(FinishChoices.Edges.Select(one => one.Id), "or")}. The usual one is planned.",
                []
            );
        else if (chosen == FinishChoices.IronOn && work.Surfaces.All(one => one.Wood.Face == FinishFace.Solid))
            yield return new(
                Severity.Watch,
                "Iron-on edging is for the edges of sheets. Solid wood has no plies to hide, and edging on it peels off as "
                    + "the wood moves: ease its edges and finish them.",
                Marks(work.Surfaces)
            );
        else if (chosen == FinishChoices.IronOn && work.Recipe.HidesWood)
            yield return new(
                Severity.Watch,
                "The seam of iron-on edging shows through paint. Fill the edges and sand them, or glue on solid lipping.",
                Marks(seen)
            );
        else if (chosen == FinishChoices.Filler && !work.Recipe.HidesWood)
            yield return new(
                Severity.Fails,
                "Filler shows as smears under a clear finish and takes stain badly. Use iron-on edging or solid lipping on the "
                    + "edges.",
                Marks(seen)
            );
    }

    private static IEnumerable<WorkFinding> Uses(FinishWork work)
    {
        if (work.IsOutdoors)
            foreach (var layer in work.Recipe.Coats.Where(layer => !layer.Product.IsForOutdoors))
                yield return new(
                    Severity.Fails,
                    $"{layer.Product.Name} doesn't stand rain and sun. Use exterior paint over primer, an exterior oil, or an "
                        + "exterior varnish.",
                    []
                );
        if (work.IsOutdoors && work.Surfaces.Any(one => one.Wood.Face == FinishFace.Composite))
            yield return new(
                Severity.Fails,
                "MDF and particleboard swell outdoors under any finish. Use solid wood, or plywood with exterior glue.",
                Marks(work.Surfaces.Where(one => one.Wood.Face == FinishFace.Composite))
            );
        if (work.Uses.Contains(FinishUse.Children))
            yield return new(
                Severity.Safety,
                "Children put what they reach in their mouths. Use only a finish whose maker states that it is fit for toys or "
                    + "children's furniture, and let it harden as long as the label says.",
                []
            );
        if (work.Uses.Contains(FinishUse.Food))
            yield return new(
                Severity.Safety,
                "Use only a finish whose maker states that it is fit for contact with food, and let it harden as long as the "
                    + "label says. These steps make no claim about that.",
                []
            );
    }

    private static IEnumerable<WorkFinding> Drawers(FinishWork work)
    {
        var boxes = work.Surfaces.Where(one => one.IsDrawerBox).ToList();
        if (boxes.Count > 0 && ForDrawers(work.Recipe) != work.Recipe)
            yield return new(
                Severity.Tip,
                "Drawer boxes get shellac: oil smells for months in a closed drawer, and paint on their sides binds.",
                Marks(boxes)
            );
    }

    /// <summary>What drawer boxes get: the same where it is clear and has no smell, else shellac.</summary>
    public static FinishRecipe ForDrawers(FinishRecipe recipe) =>
        recipe.IsBare || recipe.Layers.All(layer => WithoutSmell.Contains(layer.Product.Id))
            ? recipe
            : FinishRecipe.Of("shellac", [Finishing.Coats.Product("shellac")], 2);

    private static IEnumerable<IGrouping<string, FinishSurface>> Same(FinishWork work, Func<FinishSurface, bool> are) =>
        work.Surfaces.Where(are).GroupBy(one => one.Wood.Name);

    private static ImmutableArray<string> Marks(IEnumerable<FinishSurface> surfaces) => [.. surfaces.Select(one => one.Mark)];

    private static string Names(IEnumerable<FinishSurface> surfaces) =>
        WordList.Of(surfaces.Select(one => WoodNames.InText(one.Name)));
}
