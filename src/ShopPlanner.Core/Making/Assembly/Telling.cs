using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Tells the stages of all units in the order of work, units alike once.</summary>
internal sealed class Telling
{
    private readonly Solids solids;
    private readonly WorkChoices choices;
    private readonly Dictionary<Unit, List<Stage>> stages = [];
    private readonly Dictionary<Unit, Made> madeOf = [];
    private readonly HashSet<string> ids = [];

    public Telling(Solids solids, Unit piece, WorkChoices choices)
    {
        (this.solids, this.choices) = (solids, choices);
        var whole = new Made("piece", solids.Piece.Name, [piece], null);
        ids.Add(whole.Id);
        Tell(whole);
    }

    /// <summary>Stages in order.</summary>
    public List<Told> All { get; } = [];

    /// <summary>Units that are put together by themselves, in the order of their making.</summary>
    public List<Made> Units { get; } = [];

    // Panels are glued up first of all; what is fitted is made when the piece stands, or before it.
    private void Tell(Made made)
    {
        var within = Alike(made);
        foreach (var panel in within.Where(one => one.Kind == UnitKind.Panel))
            Make(panel);
        if (!choices.DoorsAfterCase)
            MakeFitted(within);
        foreach (var unit in within.Where(one => one.Kind != UnitKind.Panel && !one.Units[0].IsFitted))
            Make(unit);
        var own = Own(made);
        var standing = own.TakeWhile(one => !FitSteps.IsFitting(one.Kind)).Count();
        All.AddRange(own.Take(standing));
        if (choices.DoorsAfterCase)
            MakeFitted(within);
        All.AddRange(own.Skip(standing));
    }

    private void MakeFitted(List<Made> within)
    {
        foreach (var unit in within.Where(one => one.Units[0].IsFitted))
            Make(unit);
    }

    private void Make(Made made)
    {
        Tell(made);
        Units.Add(made);
    }

    private List<Made> Alike(Made made)
    {
        var found = new List<Made>();
        var composites = made.Units.SelectMany(unit => unit.Insertions.Select(one => one.What)).Where(unit => unit.IsComposite);
        foreach (var alike in composites.GroupBy(Signature))
        {
            var units = alike.ToList();
            var name = UnitNames.Of(solids, units[0]);
            found.Add(new(Id(name), name, units, made.IsPiece ? null : made));
            foreach (var unit in units)
                madeOf[unit] = found[^1];
        }

        return found;
    }

    private string Signature(Unit unit) =>
        Stage.Named(solids, unit) + ";" + string.Join(';', Of(unit).Select(stage => stage.Signature(solids)));

    private List<Stage> Of(Unit unit)
    {
        if (!stages.TryGetValue(unit, out var known))
            stages[unit] = known = Stages.Of(solids, unit);
        return known;
    }

    private string Id(string name)
    {
        var slug = UnitNames.Slug(name);
        var id = slug;
        for (var number = 2; !ids.Add(id); number++)
            id = FormattableString.Invariant($"{slug}-{number}");
        return id;
    }

    private List<Told> Own(Made made)
    {
        var told = Of(made.Units[0]).Select((stage, i) => new Told(made, stage.Kind, i)).ToList();
        foreach (var unit in made.Units)
        {
            var placed = new List<int>();
            for (var i = 0; i < told.Count; i++)
            {
                var insertions = Of(unit)[i].Insertions;
                told[i].Insertions.AddRange(insertions);
                told[i].Links.AddRange(insertions.SelectMany(one => one.Links));
                told[i].Present.AddRange(placed);
                told[i].Parts.AddRange(Before(insertions).Except(told[i].Parts));
                placed.AddRange(insertions.SelectMany(one => one.What.Copies));
            }
        }

        if (Checked(told) is { } rigid)
            rigid.IsChecked = true;
        return told;
    }

    private IEnumerable<Made> Before(List<Insertion> insertions) =>
        insertions.Select(one => madeOf.GetValueOrDefault(one.What)).OfType<Made>().Distinct();

    // The stage that closes most joints makes it rigid, a glued one rather than a screwed one. A cover goes on what is square
    // already.
    private static Told? Checked(List<Told> told)
    {
        var rigid = told.Where(one =>
                one.Kind is StageKind.Glue or StageKind.Screw or StageKind.Bolt && !one.Insertions[^1].IsCover
            )
            .ToList();
        var glued = rigid.Where(one => one.Kind == StageKind.Glue).ToList();
        return (glued.Count > 0 ? glued : rigid).OrderBy(one => one.Links.Count).ThenBy(one => one.Number).LastOrDefault()
            ?? told.Find(one => !FitSteps.IsFitting(one.Kind));
    }
}
