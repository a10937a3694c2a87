using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Trenches, kind by kind: all that parts of one material and unit are let into are cut together, cutter and depth once
/// set, whatever parts they are in.</summary>
internal sealed class TrenchFamily : IOperationFamily
{
    private const int SettingMinutes = 15;
    private const double CutMinutes = 4;

    public IEnumerable<Operation> Of(PieceWork work) =>
        from way in TrenchWay.All
        from same in work
            .Trenches.Where(one => one.Kind == way.Kind)
            .GroupBy(one => (one.Primary.From.Part.Assembly, one.Primary.From.Part.Material.Role))
        select new Operation(Stage.Trench, Step(way, same.Key, [.. same], work));

    private static WorkStep Step(TrenchWay way, (string Assembly, string Role) key, List<Trench> trenches, PieceWork work)
    {
        var (into, goesIn) = (
            trenches.ConvertAll(one => one.Into),
            trenches.SelectMany(one => one.Joints).Select(one => one.From).ToList()
        );
        return new(
            $"{way.Word}:{PartWords.Slug(key.Assembly)}:{PartWords.Slug(key.Role)}",
            WorkPhase.Parts,
            way.Action,
            $"{way.Verb} {PartWords.Names(into)} for the {PartWords.Names(trenches.Select(one => one.Primary.From))}",
            [.. way.Says(trenches), .. Stopped(trenches, work), WorkEffort.TryFirst(work, [.. into, .. goesIn])],
            into.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, CutMinutes, trenches.Count)
        )
        {
            Tool = way.Tool,
            Settings = Settings(trenches, work),
            Face = WordList.Of(trenches.Select(one => FaceOf(one, work))),
            Joints = trenches.SelectMany(one => one.Joints).Indexes(),
            Cautions = WorkEffort.Cautions(into, Cautions.GrooveWithoutGuard, ShopCautions.Router),
            Source = way.Source,
        };
    }

    private static ImmutableArray<WorkFigure> Settings(List<Trench> trenches, PieceWork work)
    {
        var figures = new FigureList();
        foreach (var one in trenches)
        {
            var of = $"{PartWords.Lower(one.Primary.From.Name)} {one.Primary.From.Mark}";
            figures.Add("Depth", of, one.Depth);
            figures.Add("Width of the cut", of, one.Width.Value);
            if (one.IsCentred)
                foreach (var (fence, i) in one.Centred.Settings.Value.Select((fence, i) => (fence, i)))
                    figures.Add(FenceName(i), of, fence);
            else if (one.Distance.IsPositive)
                figures.Add($"From the {SideOf(one, work)} to the cut", of, one.Distance);
        }

        foreach (var one in trenches)
        foreach (var atEnd in new[] { false, true })
            if (one.Stop(atEnd, work) is { IsPositive: true } stop)
                figures.Add(
                    $"Stops before the {work.Side(one.Into, one.Run, atEnd)}",
                    $"{PartWords.Lower(one.Primary.From.Name)} {one.Primary.From.Mark}",
                    stop
                );
        return figures.Figures;
    }

    private static string FenceName(int setting) =>
        setting == 0 ? "Fence to blade" : FormattableString.Invariant($"Fence to blade, setting {setting + 1}");

    private static string FaceOf(Trench one, PieceWork work)
    {
        var face = work.Side(one.Into, one.Along, one.AtEnd);
        return one.Kind == TrenchKind.Rabbet ? $"{face} at the {SideOf(one, work)}" : face;
    }

    private static string SideOf(Trench one, PieceWork work) => work.Side(one.Into, one.Across, one.IsFromEnd);

    private static IEnumerable<string> Stopped(List<Trench> trenches, PieceWork work)
    {
        if (trenches.Exists(one => one.Stop(false, work).IsPositive || one.Stop(true, work).IsPositive))
            yield return "Stop the cut short of the ends as far as the settings say, or let it run out where the end is hidden.";
    }
}

/// <summary>How trenches of a kind are cut.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Action">What is done.</param>
/// <param name="Word">First word of the id.</param>
/// <param name="Verb">Begins the title: <c>Groove the</c>.</param>
/// <param name="Tool">By its trade name.</param>
/// <param name="Source">Where the order or the method rests on.</param>
/// <param name="Says">What to do.</param>
internal sealed record TrenchWay(
    TrenchKind Kind,
    WorkAction Action,
    string Word,
    string Verb,
    string Tool,
    SourceNote Source,
    Func<IReadOnlyList<Trench>, IEnumerable<string>> Says
)
{
    /// <summary>The way of each kind.</summary>
    public static readonly ImmutableArray<TrenchWay> All =
    [
        new(
            TrenchKind.Groove,
            WorkAction.Groove,
            "groove",
            "Groove the",
            "Table saw, or router table with a straight bit",
            OperationSources.GrooveThenGlue,
            Grooves
        ),
        new(
            TrenchKind.Dado,
            WorkAction.Dado,
            "dado",
            "Cut the dadoes in the",
            "Router with a straight bit along a clamped straightedge, or table saw with a dado set",
            OperationSources.GrooveThenGlue,
            _ =>
                [
                    "Lay parts that face each other edge to edge and mark each dado across both at once.",
                    "Set width and depth once and cut all of them. Back up the edge where the bit comes out.",
                ]
        ),
        new(
            TrenchKind.Rabbet,
            WorkAction.Rabbet,
            "rabbet",
            "Rabbet the",
            "Router with a rabbeting bit, or table saw with a dado set and a sacrificial fence",
            OperationSources.GrooveThenGlue,
            _ =>
                ["Mark the face and the edge or end that each rabbet opens to before you cut: left and right parts are mirrored."]
        ),
        new(
            TrenchKind.Lap,
            WorkAction.Lap,
            "lap",
            "Cut the laps in the",
            "Table saw with a dado set and a miter gauge, or router along a straightedge",
            LetIn.LapRule,
            _ => ["Mark the width from the part that goes in, and cut inside the lines."]
        ),
    ];

    private static IEnumerable<string> Grooves(IReadOnlyList<Trench> trenches)
    {
        yield return "Measure what goes in: sheets differ. Set the depth, and leave it for all parts.";
        if (trenches.Any(one => one.IsCentred))
        {
            yield return "At each fence setting, run every part once with each face to the fence, so that the groove lies in the "
                + "middle.";
            yield return "Cut it up to 1/32 in (1 mm) deeper where a tongue goes in, so that the shoulders close.";
        }

        if (trenches.Any(one => !one.IsCentred))
            yield return "Keep the same edge of every part on the fence, and mark it. Widen the cut away from the fence.";
    }
}
