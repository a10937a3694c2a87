using System.Collections.Immutable;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>Reads the finish that was chosen, and says what of it does not hold.</summary>
internal sealed class RecipeReader(WorkChoices choices, List<WorkFinding> findings)
{
    /// <summary>The finish; bare where it can't be done.</summary>
    public FinishRecipe Read()
    {
        var id = choices.Finish.Trim();
        if (id == FinishChoices.None)
            return FinishRecipe.Bare;
        var words = id.Split('+', StringSplitOptions.TrimEntries);
        if (words.FirstOrDefault(word => Find(word) is null) is { } unknown)
        {
            var known = string.Join(", ", FinishChoices.Products.Select(product => product.Id));
            Fail($"‘{unknown}’ isn't a finish. Use one of {known}, joined by + from the wood outward, or none.");
            return FinishRecipe.Bare;
        }

        if (words.GroupBy(word => word).FirstOrDefault(same => same.Count() > 1) is { } twice)
        {
            Fail($"‘{twice.Key}’ is named more than once. Name it once, and enter the number of coats.");
            return FinishRecipe.Bare;
        }

        ImmutableArray<FinishProduct> products = [.. words.Select(word => Find(word)!)];
        var problems = products.Zip(products.Skip(1), Problem).OfType<WorkFinding>().ToList();
        findings.AddRange(problems);
        Last(products[^1]);
        return problems.Exists(problem => problem.Severity == Severity.Fails)
            ? FinishRecipe.Bare
            : FinishRecipe.Of(id, products, Coats());
    }

    private int? Coats()
    {
        if (choices.Coats is not { } coats)
            return null;
        var most = (int)FinishFigures.MostCoats.Value;
        if (coats >= 1 && coats <= most)
            return coats;
        findings.Add(
            new(
                Severity.Watch,
                FormattableString.Invariant($"{coats} coats can't be planned: enter 1 to {most}. The usual number is used."),
                []
            )
        );
        return null;
    }

    private static FinishProduct? Find(string word) => FinishChoices.Products.FirstOrDefault(product => product.Id == word);

    private void Last(FinishProduct last)
    {
        if (last.Id == "stain")
            findings.Add(new(Severity.Watch, "Stain alone protects nothing: put a clear coat over it, as in stain+clear.", []));
        else if (last.OnlyPrepares)
            findings.Add(new(Severity.Watch, "Primer alone is soft and soils: put paint over it.", []));
    }

    private static WorkFinding? Problem(FinishProduct below, FinishProduct above)
    {
        var (under, over) = (Small(below), above.Name);
        return (below, above) switch
        {
            ({ Id: "wax" }, _) => Refuse($"{over} doesn't hold on wax: wax goes on last. Leave the wax out, or put it on top."),
            (_, { Id: "stain" }) => Refuse($"Stain can't sink in through {under}. Stain bare wood first: stain+{below.Id}."),
            ({ IsFilm: true }, { IsFilm: false, Id: not "wax" }) => Refuse(
                $"{over} needs bare wood: on {under} it stays sticky. Use {under} alone, or {Small(above)} alone."
            ),
            (_, { OnlyPrepares: true }) => Refuse(
                $"Primer goes on bare wood, not on {under}. Use paint alone: it includes primer."
            ),
            ({ Base: FinishBase.Oil, Id: not "stain" }, { Base: FinishBase.Water }) => new(
                Severity.Watch,
                $"{over} is water-based and lets go of fresh {under}. Let the {under} harden as its can says, at least "
                    + $"{FinishFigures.OilUnderWater.Figure.Text(LengthUnit.Inch)}, or use an oil-based coat instead.",
                []
            ),
            _ => null,
        };
    }

    private static WorkFinding Refuse(string text) => new(Severity.Fails, text, []);

    private static string Small(FinishProduct product) => WoodNames.InText(product.Name);

    private void Fail(string text) => findings.Add(Refuse(text));
}
