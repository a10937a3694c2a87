using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Trenches of one kind: all that parts of one material and unit are let into are cut together, cutter and depth once
/// set, whatever parts they are in.</summary>
internal abstract class TrenchFamily : IOperationFamily
{
    private const int SettingMinutes = 15;
    private const double CutMinutes = 4;

    protected abstract TrenchKind Kind { get; }

    protected abstract WorkAction Action { get; }

    /// <summary>What it is called: <c>groove</c>.</summary>
    protected abstract string Word { get; }

    /// <summary>The title's verb: <c>Groove the rails for the panel</c>.</summary>
    protected abstract string Verb { get; }

    protected abstract string Tool { get; }

    protected abstract SourceNote Source { get; }

    /// <summary>How it is cut.</summary>
    protected abstract IEnumerable<string> Says(IReadOnlyList<Trench> trenches);

    public IEnumerable<Operation> Of(PieceWork work) =>
        work
            .Trenches.Where(one => one.Kind == Kind)
            .GroupBy(one => (one.Primary.From.Part.Assembly, one.Primary.From.Part.Material.Role))
            .Select(same => new Operation(Stage.Trench, Step(same.Key, [.. same], work)));

    private WorkStep Step((string Assembly, string Role) key, List<Trench> trenches, PieceWork work)
    {
        var (into, goesIn) = (
            trenches.ConvertAll(one => one.Into),
            trenches.SelectMany(one => one.Joints).Select(one => one.From).ToList()
        );
        return new(
            $"{Word}:{PartWords.Slug(key.Assembly)}:{PartWords.Slug(key.Role)}",
            WorkPhase.Parts,
            Action,
            $"{Verb} {PartWords.Names(into)} for the {PartWords.Names(trenches.Select(one => one.Primary.From))}",
            [.. Says(trenches), .. Stopped(trenches, work), WorkEffort.TryFirst(work, [.. into, .. goesIn])],
            [.. into.Select(one => one.Mark).Distinct(StringComparer.Ordinal)],
            [],
            WorkEffort.Minutes(SettingMinutes, CutMinutes, trenches.Count)
        )
        {
            Tool = Tool,
            Settings = Settings(trenches, work),
            Face = PartWords.Join([.. trenches.Select(one => FaceOf(one, work)).Distinct(StringComparer.Ordinal)]),
            Joints = [.. trenches.SelectMany(one => one.Joints).Select(one => one.Index).Distinct().Order()],
            Cautions = WorkEffort.Cautions(into, Cautions.GrooveWithoutGuard, ShopCautions.Router),
            Source = Source,
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
                    $"Stops before the {SideWords.Of(one.Into, one.Run, atEnd, work.UnitBox(one.Into))}",
                    $"{PartWords.Lower(one.Primary.From.Name)} {one.Primary.From.Mark}",
                    stop
                );
        return figures.Figures;
    }

    private static string FenceName(int setting) =>
        setting == 0 ? "Fence to blade" : FormattableString.Invariant($"Fence to blade, setting {setting + 1}");

    private static string FaceOf(Trench one, PieceWork work)
    {
        var face = SideWords.Of(one.Into, one.Along, one.AtEnd, work.UnitBox(one.Into));
        return one.Kind == TrenchKind.Rabbet ? $"{face} at the {SideOf(one, work)}" : face;
    }

    private static string SideOf(Trench one, PieceWork work) =>
        SideWords.Of(one.Into, one.Across, one.IsFromEnd, work.UnitBox(one.Into));

    private static IEnumerable<string> Stopped(List<Trench> trenches, PieceWork work)
    {
        if (trenches.Exists(one => one.Stop(false, work).IsPositive || one.Stop(true, work).IsPositive))
            yield return "Stop the cut short of the ends as far as the settings say, or let it run out where the end is hidden.";
    }
}

/// <summary>Grooves, along the grain.</summary>
internal sealed class GrooveFamily : TrenchFamily
{
    protected override TrenchKind Kind => TrenchKind.Groove;

    protected override WorkAction Action => WorkAction.Groove;

    protected override string Word => "groove";

    protected override string Verb => "Groove the";

    protected override string Tool => "Table saw, or router table with a straight bit";

    protected override SourceNote Source => OperationSources.GrooveThenGlue;

    protected override IEnumerable<string> Says(IReadOnlyList<Trench> trenches)
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

/// <summary>Dadoes, across the grain.</summary>
internal sealed class DadoFamily : TrenchFamily
{
    protected override TrenchKind Kind => TrenchKind.Dado;

    protected override WorkAction Action => WorkAction.Dado;

    protected override string Word => "dado";

    protected override string Verb => "Cut the dadoes in the";

    protected override string Tool => "Router with a straight bit along a clamped straightedge, or table saw with a dado set";

    protected override SourceNote Source => OperationSources.GrooveThenGlue;

    protected override IEnumerable<string> Says(IReadOnlyList<Trench> trenches)
    {
        yield return "Lay parts that face each other edge to edge and mark each dado across both at once.";
        yield return "Set width and depth once and cut all of them. Back up the edge where the bit comes out.";
    }
}

/// <summary>Rabbets, along edges and ends.</summary>
internal sealed class RabbetFamily : TrenchFamily
{
    protected override TrenchKind Kind => TrenchKind.Rabbet;

    protected override WorkAction Action => WorkAction.Rabbet;

    protected override string Word => "rabbet";

    protected override string Verb => "Rabbet the";

    protected override string Tool => "Router with a rabbeting bit, or table saw with a dado set and a sacrificial fence";

    protected override SourceNote Source => OperationSources.GrooveThenGlue;

    protected override IEnumerable<string> Says(IReadOnlyList<Trench> trenches)
    {
        yield return "Mark the face and the edge or end that each rabbet opens to before you cut: left and right parts are "
            + "mirrored.";
    }
}

/// <summary>Laps: a whole part lies in the cut.</summary>
internal sealed class LapFamily : TrenchFamily
{
    protected override TrenchKind Kind => TrenchKind.Lap;

    protected override WorkAction Action => WorkAction.Lap;

    protected override string Word => "lap";

    protected override string Verb => "Cut the laps in the";

    protected override string Tool => "Table saw with a dado set and a miter gauge, or router along a straightedge";

    protected override SourceNote Source => Joinery.LetIn.LapRule;

    protected override IEnumerable<string> Says(IReadOnlyList<Trench> trenches)
    {
        yield return "Mark the width from the part that goes in, and cut inside the lines.";
    }
}
