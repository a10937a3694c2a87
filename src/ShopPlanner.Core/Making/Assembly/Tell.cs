using System.Globalization;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Words for copies and places.</summary>
internal sealed class Tell(Solids solids)
{
    /// <summary>Names with marks, like parts together: <c>the rails B1 and B2, the panel C1</c>.</summary>
    public string Marked(IEnumerable<int> copies) =>
        string.Join(
            ", ",
            ByName(copies).Select(same => $"the {Named(same)} {WordList.AsGiven(same.Select(copy => solids.All[copy].Mark))}")
        );

    /// <summary>Names alone: <c>the rails and the panel</c>; the first few where there are many.</summary>
    public string Short(IEnumerable<int> copies) => Few([.. ByName(copies).Select(Named)]);

    /// <summary>Names of units: <c>the end and the rails</c>; the first few where there are many.</summary>
    public string Named(IEnumerable<Unit> units) =>
        Few([
            .. units
                .GroupBy(unit => UnitNames.Of(solids, unit))
                .Select(same => same.Count() == 1 ? same.Key.ToLowerInvariant() : UnitNames.Plural(same.Key)),
        ]);

    /// <summary>Marks in order.</summary>
    public IEnumerable<string> Marks(IEnumerable<int> copies) => copies.Order().Select(copy => solids.All[copy].Mark);

    /// <summary>A step with what a stage handles, how each part goes in, and the joints that it closes.</summary>
    public WorkStep With(Told told, WorkStep step) =>
        step with
        {
            Handles = [.. Marks(told.Handled)],
            Joints = [.. told.Links.Select(link => link.Index).Order()],
            Moves = [.. told.Insertions.Select(Move)],
        };

    /// <summary>A count in words where it is small.</summary>
    public static string Count(int count) =>
        count switch
        {
            1 => "one",
            2 => "two",
            3 => "three",
            4 => "four",
            _ => count.ToString(CultureInfo.InvariantCulture),
        };

    /// <summary>Where something comes from when it goes in: <c>from the right</c>.</summary>
    public static string From(Way way) =>
        (way.Axis, way.Forward) switch
        {
            (Axis.X, true) => "from the right",
            (Axis.X, false) => "from the left",
            (Axis.Y, true) => "from behind",
            (Axis.Y, false) => "from the front",
            (Axis.Z, true) => "from above",
            _ => "from below",
        };

    private static string Few(List<string> names) =>
        "the " + (names.Count > 3 ? WordList.AsGiven(names.Take(2)) + " and other parts" : WordList.AsGiven(names));

    private WorkMove Move(Insertion one) => new([.. Marks(one.What.Copies)], one.Out?.Axis, one.Out is { Forward: false });

    private List<List<int>> ByName(IEnumerable<int> copies) =>
        [.. copies.GroupBy(copy => solids.All[copy].Name).Select(same => same.Order().ToList())];

    private string Named(List<int> same)
    {
        var name = solids.All[same[0]].Name;
        return same.Count == 1 ? name.ToLowerInvariant() : UnitNames.Plural(name);
    }
}
