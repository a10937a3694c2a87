using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Totals;

/// <summary>Movement and glue-ups, asked for each panel of solid wood.</summary>
internal static class PanelTotals
{
    // Narrower wood hardly moves (our choice: at 4 in the widest mover in the table moves about 1/16 in over the seasons).
    private static readonly Length Wide = Length.FromInches(4);

    public static PartTotal Moving(TotalAsked asked)
    {
        var wide = asked.Parts.Panels.Where(panel => panel.Width >= Wide).ToList();
        if (wide.Count == 0)
            return asked.None($"No part of solid wood is {asked.Say(Wide)} wide or more: narrower ones hardly move.");
        var known = wide.Where(panel => Shrinks(panel.Material)).ToList();
        return new(
            asked.Form,
            [.. known.GroupBy(panel => (panel.Material.Properties, panel.Width)).Select(alike => Move(asked, [.. alike]))],
            [
                .. Unknown(wide.Except(known)),
                $"Parts of solid wood narrower than {asked.Say(Wide)} aren't listed. Sheets hardly move.",
            ]
        );
    }

    public static PartTotal Glued(TotalAsked asked)
    {
        var glued = asked.Parts.Panels.Where(panel => panel is { IsGlued: true, Material.Board: not null }).ToList();
        var open = asked.Parts.Panels.Where(panel => panel is { IsGlued: true, Material.Board: null });
        return glued.Count == 0
            ? asked.None("No panel is wider than its boards: there is nothing to glue up.")
            : new(
                asked.Form,
                [.. glued.Select(panel => Glue(asked, panel))],
                [
                    .. open.Select(panel => $"Not worked out: {panel.Called}. The width of its boards isn't known."),
                    .. glued.Where(panel => !IsWood(panel.Material)).Select(NoWood),
                    .. glued.Any(panel => panel.Quantity > 1)
                        ? ["Each answer is for one panel: add glue and clamps for each one more."]
                        : (string[])[],
                ]
            );
    }

    private static PartQuestion Move(TotalAsked asked, IReadOnlyList<SolidPanel> alike) =>
        asked.Ask(
            WordList.Of(alike.Select(panel => panel.Called)),
            [new("species", alike[0].Material.Properties!), new("width", asked.Enter(alike[0].Width))],
            Across(alike[0])
        );

    private static PartQuestion Glue(TotalAsked asked, SolidPanel panel)
    {
        var said = new Dictionary<string, string>
        {
            ["width"] = asked.Enter(panel.Width),
            ["length"] = asked.Enter(panel.Length),
            ["thickness"] = asked.Enter(panel.Thickness),
            ["board"] = asked.Enter(panel.Material.Board!.Value),
        };
        if (IsWood(panel.Material))
            said["species"] = panel.Material.Properties!;
        return asked.Ask(panel.Called, said, Across(panel));
    }

    // The strips of the drawing side by side, or the width of the one part.
    private static PartAdded Across(SolidPanel panel) =>
        new(
            "width",
            "Width across the grain",
            new EnteredFigure(panel.Width),
            [
                .. panel
                    .Strips.GroupBy(width => width)
                    .Select(strips => new PartShare(
                        CountedPart.Told(panel.Strips.Length > 1 ? "Strip" : panel.Name, strips.Count()),
                        panel.Material.Name,
                        new EnteredFigure(strips.Key * strips.Count())
                    )),
            ]
        );

    private static bool Shrinks(CountedMaterial material) =>
        material.Properties is { } properties && ShrinkageTable.All.Any(row => row.SpeciesId == properties);

    private static bool IsWood(CountedMaterial material) =>
        material.Properties is { } properties && MaterialCatalogue.TryFindSpecies(properties, out _);

    private static IEnumerable<string> Unknown(IEnumerable<SolidPanel> panels)
    {
        var unknown = panels.ToList();
        if (unknown.Count > 0)
            yield return $"Not worked out: {WordList.Of(unknown.Select(panel => panel.Called))}. No shrinkage is "
                + "on record for "
                + $"{WordList.Of(unknown.Select(panel => panel.Material.Name))}.";
    }

    private static string NoWood(SolidPanel panel) =>
        $"{panel.Called} counts as any softwood: choose its wood for the force of the clamps.";
}
