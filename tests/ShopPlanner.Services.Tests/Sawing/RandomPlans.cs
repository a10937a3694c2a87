using System.Collections.Immutable;
using CsCheck;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Tests.Sawing;

/// <summary>Plans of a few parts from one sheet size, at a saw that reaches only so far. Sizes are in eighths of an inch, and often leave
/// just what a kerf takes, or less.</summary>
internal static class RandomPlans
{
    private const int Kerf = 1;
    private static readonly Guid Project = Guid.Parse("019de805-fdc0-7466-ab67-362924ffdb06");

    /// <summary>A plan that places at least one piece.</summary>
    public static readonly Gen<PlanView> All = Gen.Select(
            Gen.Int[200, 400],
            Gen.Int[100, 300],
            Gen.Int[0, 2],
            Gen.Int[40, 200],
            Gen.Int[80, 400],
            Gen.Select(Gen.Int[8, 300], Gen.Int[8, 300], Gen.Int[0, 5], Gen.Int[1, 3]).Array[1, 4]
        )
        .Select(one => View(Request(one.Item1, one.Item2, one.Item3, one.Item4, one.Item5, one.Item6)))
        .Where(view => !view.Plan.Layouts.IsEmpty);

    private static CutRequest Request(
        int length,
        int width,
        int trim,
        int rip,
        int crosscut,
        (int Long, int Wide, int Fit, int Count)[] parts
    ) =>
        new(
            LengthUnit.Inch,
            new SawSettings(Eighths(Kerf), Length.Zero, Eighths(trim))
            {
                WidestRip = Eighths(rip),
                LongestCrosscut = Eighths(crosscut),
            },
            new KeepRule(null, null, null),
            [new CutMaterial("ply", StockForm.Sheet, null, null)],
            [new CutStock("S", "ply", Eighths(length), Eighths(width), Money.From(50), null, Offcut: false)],
            [
                .. parts.Select(
                    (part, i) =>
                        new CutPart(
                            $"P{i}",
                            "Panel",
                            "ply",
                            Eighths(Math.Min(part.Long, length - (2 * trim))),
                            Eighths(Wide(part, width - (2 * trim))),
                            Grain.Length,
                            part.Count
                        )
                ),
            ],
            new CutLimits(1)
        );

    // Every second part leaves a kerf, less than a kerf or nothing beside it.
    private static int Wide((int Long, int Wide, int Fit, int Count) part, int room) =>
        part.Fit <= 2 ? room - Math.Min(part.Fit, Kerf) : Math.Min(part.Wide, room);

    private static Length Eighths(int count) => Length.FromInches(0, count, 8);

    private static PlanView View(CutRequest request)
    {
        var plan = CutPlanner.Plan(request, new SearchControl { Iterations = 5, Workers = 1 });
        var summary = new PlanSummary(
            Guid.Empty,
            "Case",
            DateTime.UnixEpoch,
            PlanState.Ready,
            plan.Status,
            plan.Cost,
            plan.Layouts.Sum(layout => layout.Copies),
            [Project]
        );
        return new PlanView(
            summary,
            new PlanOrder([Project], null, [], UseRack: true, UseBin: true, Seconds: 1, Replaces: []),
            request,
            plan,
            request.Stock.ToImmutableDictionary(
                stock => stock.Id,
                stock => new PlanStockName(stock.Id, "Plywood", null, "Store", "#eee")
            ),
            request.Parts.ToImmutableDictionary(
                part => part.Id,
                part => new PlanPartName(part.Id, part.Id, part.Name, Project, "Case")
            ),
            [],
            ""
        );
    }
}
