using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Titles and sentences of the steps that put parts together.</summary>
internal sealed class JoinWords(Solids solids, WorkGlue glue)
{
    private readonly Tell tell = new(solids);

    /// <summary>A few words.</summary>
    public string Title(Told told)
    {
        var many = told.Of.Units.Count > 1 && !told.Of.IsPiece;
        var unit = many
            ? $"{Tell.Count(told.Of.Units.Count)} {UnitNames.Plural(told.Of.Name)}"
            : "the " + told.Of.Name.ToLowerInvariant();
        if (told.IsLate)
            return "Fasten the loose ends of " + tell.Short(told.Handled);
        var what = tell.Named(Moving(told).Select(one => one.What));
        return told.Kind switch
        {
            StageKind.Glue when told.Of.IsPiece => "Glue in " + what,
            StageKind.Glue => "Glue up " + unit,
            StageKind.Top => "Fasten the top so that it can move",
            StageKind.Bolt => "Bolt on " + what,
            StageKind.Slip => "Slide in " + what,
            StageKind.Set => "Set in " + what,
            _ when told.Of.IsPiece || told.Number > 0 => "Fasten " + what,
            _ => "Screw together " + unit,
        };
    }

    /// <summary>What to do, a plain sentence each.</summary>
    /// <param name="told">The stage.</param>
    /// <param name="lacksCheck">Whether no diagonals are there to be measured.</param>
    public ImmutableArray<string> Says(Told told, bool lacksCheck) =>
        [.. Units(told), .. InOrder(told), .. Method(told), .. Wet(told, lacksCheck)];

    /// <summary>Where the order rests on more than the piece.</summary>
    public static SourceNote? Source(Told told)
    {
        if (told.IsLate)
            return Sources.ScrewsFirst;
        if (told.Kind == StageKind.Top)
            return Sources.TopMoves;
        return told.Of.Kind switch
        {
            UnitKind.Frame => Sources.EndsFirst,
            UnitKind.Cross => Sources.CrossFirst,
            UnitKind.Door => Sources.FreePanel,
            UnitKind.Drawer => Sources.DrawerFit,
            _ => told.Kind == StageKind.Glue ? Sources.WhileWet : null,
        };
    }

    private static IEnumerable<string> Units(Told told)
    {
        if (told.Of.Units.Count > 1 && !told.Of.IsPiece)
            yield return $"Make {Tell.Count(told.Of.Units.Count)} alike. "
                + "Lay the second beside the first, so that left and right match.";
    }

    // Told once for units alike, with the marks of all.
    private IEnumerable<string> InOrder(Told told)
    {
        if (told.IsLate)
        {
            yield return $"Now fasten {tell.Marked(told.Handled)}: the screws behind them are in.";
            yield break;
        }

        var shutIn = told.Insertions.Where(one => one.IsShutIn).SelectMany(one => one.What.Copies).ToList();
        if (shutIn.Count > 0)
            yield return $"Bring {tell.Marked(shutIn)} together all at once: no order of single moves does it.";
        var first = told.Insertions.Where(one => one.Out is null && !one.IsShutIn).SelectMany(one => one.What.Copies).ToList();
        if (first.Count > 0)
            yield return $"Begin with {tell.Marked(first)}.";
        foreach (var same in Runs(told))
        {
            var copies = tell.Marked(same.SelectMany(one => one.What.Copies));
            yield return $"{(same[0].IsCover ? "Put on" : "Put in")} {copies}, {Tell.From(same[0].Out!.Value)}.";
        }
    }

    // What goes in the same way one after the other is one sentence.
    private List<List<Insertion>> Runs(Told told)
    {
        var moving = told.Insertions.Where(one => one.Out is not null);
        var runs = new List<List<Insertion>>();
        foreach (var one in moving)
            if (runs.Find(run => run[0].Out == one.Out && IsLike(run[0], one)) is { } same)
                same.Add(one);
            else
                runs.Add([one]);
        return runs;
    }

    private bool IsLike(Insertion one, Insertion other) => Stage.Named(solids, one.What) == Stage.Named(solids, other.What);

    private IEnumerable<string> Method(Told told)
    {
        var kinds = told.Links.Select(link => link.Kind).ToHashSet();
        if (told.Kind == StageKind.Glue)
        {
            yield return "Have clamps, pads and a square ready, then spread glue on both faces of each joint. " + glue.Says;
            if (kinds.Contains(JointKind.Rabbet))
                yield return "Hold the rabbets with brads until the glue is hard.";
        }

        if (told.Links.Exists(link => Gluing.IsFree(solids, link)))
            yield return "Give the panel no glue: it must be free to move. Rub wax on its edges.";
        if (kinds.Contains(JointKind.PocketScrew))
            yield return "Clamp each joint flush before you drive its pocket screws. Keep the holes on the side that isn't seen.";
        if (kinds.Contains(JointKind.Screwed))
            yield return "Clamp the parts in place, drill the pilot holes through the clearance holes, then drive the "
                + "screws flush.";
        if (told.Kind == StageKind.Top)
            yield return "Give the screws room across the grain: the top must swell and shrink without splitting.";
        if (kinds.Contains(JointKind.Bolted))
            yield return "Put in the bolts with their washers, and tighten them when all parts sit tight.";
        if (Spacer(told) is { } spacer)
            yield return $"Set the gaps with {spacer}, not by eye.";
    }

    private static IEnumerable<string> Wet(Told told, bool lacksCheck)
    {
        if (told.Kind == StageKind.Glue)
        {
            if (told.Of.Kind is UnitKind.Frame or UnitKind.Door)
                yield return "Sight across the uprights: they must lie in one plane before the glue sets.";
            if (told.Of.Kind == UnitKind.Panel)
                yield return "Put clamps above and below in turn, and check with a straightedge that the panel is flat.";
            else if (told.IsChecked && lacksCheck)
                yield return "Hold a square in each corner before the glue grabs.";
            yield return "Take squeezed-out glue off before it is hard: wipe it with a damp rag, or peel it when it is rubbery.";
        }
    }

    private string? Spacer(Told told)
    {
        var names = Added(told).Select(copy => UnitNames.Plural(solids.All[copy].Name)).Distinct().ToList();
        return solids
            .Piece.Parts.Where(part => part.Purpose == PartPurpose.Spacer)
            .Where(part => names.Exists(name => part.Name.Contains(name, StringComparison.OrdinalIgnoreCase)))
            .Select(part => "the " + part.Name.ToLowerInvariant())
            .FirstOrDefault();
    }

    private static List<int> Added(Told told) => [.. Moving(told).SelectMany(one => one.What.Copies)];

    // What goes in; all of it where nothing stood before.
    private static List<Insertion> Moving(Told told)
    {
        var moved = told.Insertions.Where(one => one.Out is not null).ToList();
        return moved.Count > 0 ? moved : told.Insertions;
    }
}
