using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Rows of holes for shelf pins, all with one template.</summary>
internal sealed class PinFamily : IOperationFamily
{
    private const int SettingMinutes = 10;
    private const double HoleMinutes = 0.5;

    public IEnumerable<Operation> Of(PieceWork work)
    {
        var rows = PinRows.Of(work);
        return rows.IsEmpty ? [] : [new Operation(Stage.Pins, Step(rows, work))];
    }

    private static WorkStep Step(ImmutableArray<PinRow> rows, PieceWork work)
    {
        var pieces = rows.Select(one => one.Piece).DistinctBy(one => one.Mark).ToList();
        return new(
            "shelf-pins",
            work.Choices.PinsBefore ? WorkPhase.Parts : WorkPhase.Fitting,
            WorkAction.DrillPins,
            $"Drill the shelf pin holes in the {PartWords.Names(pieces)}",
            [.. Says(rows, work)],
            pieces.Marks(),
            [],
            WorkEffort.Minutes(SettingMinutes, HoleMinutes, rows.Sum(one => Heights(one).Length))
        )
        {
            Tool = "Drill with a 5 mm bit, a stop and a template of holes",
            Settings = Settings(rows),
            Face = "faces beside the shelves",
            Cautions = WorkEffort.Cautions(pieces, Cautions.Drilling),
            Source = OperationSources.PinsThenGlue,
        };
    }

    private static IEnumerable<string> Says(ImmutableArray<PinRow> rows, PieceWork work)
    {
        yield return "Mark one end of the template, keep that end down, and set it at one height on all parts, so that the "
            + "shelves lie level.";
        if (rows.Any(one => one.IsShifted))
            yield return "Where a part has holes on both faces, its rows are 1 in (25 mm) apart from front to back, so that the "
                + "holes do not meet.";
        yield return work.Choices.PinsBefore
            ? "Drill them while the parts lie flat: one book does. A trade page drills after the case is together, which works "
                + "where drill and template still go in."
            : "Drill them in the closed case, as you chose: check that drill and template go in at the lowest and highest hole.";
    }

    private static ImmutableArray<WorkFigure> Settings(ImmutableArray<PinRow> rows)
    {
        var figures = new FigureList();
        figures.Add("From hole to hole", "", ShelfPins.SystemPitch);
        foreach (var one in rows)
        {
            var of = PartWords.Lower(one.Piece.Name);
            figures.Add("Depth of the holes", of, ShelfPins.Depth(Working.Given("side", one.Piece.Box.Dx)).Value);
            figures.Add("Lowest hole from the lower end", $"{of} {one.Piece.Mark}", one.Low + First(one) - one.Piece.Box.Z);
            if (one.IsFront)
                figures.Add("Front row from the front", $"{of} {one.Piece.Mark}", one.Y - one.Piece.Box.Y);
            else
                figures.Add("Back row from the back", $"{of} {one.Piece.Mark}", one.Piece.Box.EndY - one.Y);
        }

        return figures.Figures;
    }

    // The form for pins proposes 6 in; a low bay takes a third.
    private static Length First(PinRow row) => Length.Min(Length.FromInches(6), Length.FromTicks((row.High - row.Low).Ticks / 3));

    private static ImmutableArray<Length> Heights(PinRow row) =>
        ShelfPins
            .Heights(
                Working.Given("height", row.High - row.Low),
                Working.Given("first", First(row)),
                Working.Given("pitch", ShelfPins.SystemPitch),
                Working.Given("clear", First(row))
            )
            .Value;
}

/// <summary>A row of holes.</summary>
/// <param name="Piece">The copy that is drilled.</param>
/// <param name="AtEnd">Whether its right face is drilled.</param>
/// <param name="Y">Where the row is, from front to back.</param>
/// <param name="IsFront">Whether it holds the shelves in front.</param>
/// <param name="Bay">The bay of the shelves.</param>
internal sealed record PinRow(Workpiece Piece, bool AtEnd, Length Y, bool IsFront, Box Bay)
{
    /// <summary>Bottom of the bay.</summary>
    public Length Low => Bay.Z;

    /// <summary>Top of the bay.</summary>
    public Length High => Bay.EndZ;

    /// <summary>Whether it stands aside for the rows on the other face.</summary>
    public bool IsShifted { get; init; }
}

/// <summary>Finds where rows of pins go: in what stands beside loose shelves, four rows a bay.</summary>
internal static class PinRows
{
    // The 32 mm system's distance, from the shelf's front and back; a quarter of a shelf that is not so deep.
    private static readonly Length Setback = Length.FromMillimetres(37);
    private static readonly Length Aside = Length.FromInches(1);

    public static ImmutableArray<PinRow> Of(PieceWork work)
    {
        var rows = work
            .Piece.Openings.Where(one => one.Fills.Contains("adjustable-shelves"))
            .SelectMany(one => InBay(one.Box, work))
            .Distinct()
            .ToList();
        return [.. rows.Select(one => Apart(one, rows))];
    }

    private static IEnumerable<PinRow> InBay(Box bay, PieceWork work)
    {
        if (work.Workpieces.FirstOrDefault(one => IsLoose(one, bay)) is not { } shelf)
            yield break;
        var back = Length.Min(Setback, Length.FromTicks(shelf.Box.Dy.Ticks / 4));
        var beside = shelf.Box.With(Axis.Z, bay.Z, bay.EndZ);
        foreach (var isRight in new[] { false, true })
        {
            var met = work
                .Workpieces.Where(one => one.Part.Assembly is not ("Door" or "Drawer") && Bounds(one.Box, bay, beside, isRight))
                .ToList();
            foreach (var (y, isFront) in new[] { (shelf.Box.Y + back, true), (shelf.Box.EndY - back, false) })
                if (Carrier(met, y, beside) is { } found)
                    yield return new(found.Piece, !isRight, found.Y, isFront, bay);
        }
    }

    /// <summary>Whether a copy is a loose shelf of a bay.</summary>
    public static bool IsLoose(Workpiece one, Box bay) =>
        one is { Name: "Shelf", Part.Assembly: "Shelves" }
        && one.Box.X >= bay.X
        && one.Box.EndX <= bay.EndX
        && one.Box.Z >= bay.Z
        && one.Box.EndZ <= bay.EndZ;

    // What touches the bay at one side, over the shelves' depth.
    private static bool Bounds(Box one, Box bay, Box beside, bool isRight) =>
        (isRight ? one.X == bay.EndX : one.EndX == bay.X) && one.With(Axis.X, beside.X, beside.EndX).Shared(beside) is not null;

    // What stands where the row is to be; where nothing does, the nearest part, in the middle of what it has beside the shelf.
    private static (Workpiece Piece, Length Y)? Carrier(List<Workpiece> met, Length y, Box beside)
    {
        if (met.Count == 0)
            return null;
        if (met.Where(one => one.Box.Y < y && one.Box.EndY > y).MaxBy(one => one.Box.Dz.Ticks) is { } there)
            return (there, y);
        var near = met.MinBy(one => Length.Max(one.Box.Y - y, y - one.Box.EndY).Ticks)!;
        var (from, to) = (Length.Max(near.Box.Y, beside.Y), Length.Min(near.Box.EndY, beside.EndY));
        return (near, from + Length.FromTicks((to - from).Ticks / 2));
    }

    // Holes from both faces would meet: the right face's rows move toward the middle, where the part is deep enough.
    private static PinRow Apart(PinRow row, List<PinRow> all)
    {
        var y = row.IsFront ? row.Y + Aside : row.Y - Aside;
        var meets =
            row.AtEnd
            && all.Exists(one => one.Piece == row.Piece && !one.AtEnd && Length.Max(one.Y - row.Y, row.Y - one.Y) < Aside);
        return meets && row.Piece.Box.Y < y && row.Piece.Box.EndY > y ? row with { Y = y, IsShifted = true } : row;
    }
}
