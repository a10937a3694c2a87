using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Labels;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Templates;

/// <summary>The templates at full size that a piece's drilled and shaped parts ask for.</summary>
public static class PartTemplates
{
    /// <summary>From hole to hole of a drawer pull where nothing else is said (from memory: 96 mm is sold most).</summary>
    public static readonly Length UsualPull = Length.FromMillimetres(96);

    // A mirrored part comes first: turned over, the sheet still lies on the same end of it.
    private static readonly SheetTurn[] Turns =
    [
        SheetTurn.AsPrinted,
        SheetTurn.OverUpward,
        SheetTurn.OverSideways,
        SheetTurn.HalfTurn,
    ];

    /// <summary>Returns them in the order of the parts, each once for all copies that it serves.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="pull">From hole to hole of the pulls of drawers; nothing for knobs.</param>
    public static ImmutableArray<PartTemplate> Of(Piece piece, Length pull)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var work = new PieceWork(piece, WorkChoices.Usual);
        var shared = new List<(Sheet First, string Key, List<TemplateUse> Uses)>();
        var words = new TemplateWords(work);
        foreach (var sheet in Drilled(work, pull).Concat(Shaped(work)).OrderBy(one => Order(one, work)))
            Share(sheet, shared, words);
        return [.. shared.Select((one, i) => words.Template(one.First, i + 1, [.. one.Uses]))];
    }

    private static int Order(Sheet sheet, PieceWork work) => work.Workpieces.IndexOf(sheet.Piece);

    // The first one that lies the same way, or turned, takes it in.
    private static void Share(Sheet sheet, List<(Sheet First, string Key, List<TemplateUse> Uses)> shared, TemplateWords words)
    {
        foreach (var turn in Turns)
        {
            var key = sheet.Key(turn);
            var found = shared.FindIndex(one =>
                one.Key == key && one.First.Kind == sheet.Kind && one.First.Piece.Name == sheet.Piece.Name
            );
            if (found < 0)
                continue;
            shared[found].Uses.Add(words.Use(sheet, turn));
            return;
        }

        shared.Add((sheet, sheet.Key(SheetTurn.AsPrinted), [words.Use(sheet, SheetTurn.AsPrinted)]));
    }

    private static IEnumerable<Sheet> Drilled(PieceWork work, Length pull) =>
        Drilling
            .Of(work, pull)
            .GroupBy(one => (one.Piece.Mark, one.Face, one.Kind, one.Group))
            .SelectMany(same =>
            {
                var first = same.First();
                var view = new FaceView(first.Piece.Copy, first.Face);
                var holes = same.Select(one => Hole(one, view));
                return (
                    first.Kind == TemplateKind.Pins
                        ?
                        [
                            [.. holes],
                        ]
                        : Windows.Clusters(holes)
                ).Select(cluster => new Sheet(
                    first.Piece,
                    view,
                    first.Kind,
                    first.Group,
                    first.Kind == TemplateKind.Pull
                        ? Windows.Alone(cluster, view.Wide, view.High)
                        : Windows.OfHoles(cluster, view.Wide, view.High),
                    [.. cluster],
                    FaceOutline.Of(view)
                ));
            });

    private static TemplateHole Hole(Drilled one, FaceView view)
    {
        var (along, across) = (one.Piece.Copy.Along, one.Piece.Copy.Across);
        return new(
            new(one.At(along) - one.Piece.Box.Start(along), view.FromTop(one.At(across) - one.Piece.Box.Start(across))),
            one.Diameter,
            one.Depth
        );
    }

    // What is cut out of an outline; cuts that lie together are one template.
    private static IEnumerable<Sheet> Shaped(PieceWork work)
    {
        foreach (var piece in work.Workpieces.Where(one => !PartOutline.Steps(one.Copy).IsEmpty))
        {
            var view = new FaceView(piece.Copy, BoxSides.Of(piece.Copy.Flat, piece.Copy.Flat != Axis.Y));
            var windows = new List<(FaceWindow Window, ImmutableArray<string> Words)>();
            foreach (var feature in piece.Copy.Features.Where(one => PartOutline.IsCut(piece.Copy with { Features = [one] })))
            {
                var (window, words) = (Windows.OfCut(Room(feature, view), view.Wide, view.High), TemplateWords.Of(feature));
                foreach (var met in windows.Where(one => Windows.Meet(one.Window, window)).ToList())
                {
                    (window, words) = (Windows.Together(window, met.Window), [.. met.Words, .. words]);
                    windows.Remove(met);
                }

                windows.Add((window, words));
            }

            foreach (var (window, words) in windows)
                yield return new(piece, view, TemplateKind.Shape, WordList.Of(words), window, [], FaceOutline.Of(view));
        }
    }

    private static FaceWindow Room(PartFeature feature, FaceView view)
    {
        var (room, box, copy) = (feature.Room(view.Copy.Box), view.Copy.Box, view.Copy);
        var (one, other) = (
            view.FromTop(room.Start(copy.Across) - box.Start(copy.Across)),
            view.FromTop(room.End(copy.Across) - box.Start(copy.Across))
        );
        return new(
            room.Start(copy.Along) - box.Start(copy.Along),
            Length.Min(one, other),
            room.End(copy.Along) - box.Start(copy.Along),
            Length.Max(one, other)
        );
    }
}
