using System.Collections.Immutable;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>What is finished together: before and after assembly, the piece and the boxes of its drawers. A plastic face is
/// neither sanded nor coated.</summary>
/// <param name="All">All single parts, to be made ready.</param>
/// <param name="Before">What can't be reached after assembly.</param>
/// <param name="DrawersBefore">The same of drawer boxes that get another finish.</param>
/// <param name="Whole">The piece after assembly.</param>
/// <param name="Drawers">Drawer boxes that get another finish, after they are put together.</param>
internal sealed record FinishLots(FinishLot All, FinishLot Before, FinishLot DrawersBefore, FinishLot Whole, FinishLot Drawers)
{
    public const string Piece = "piece";

    public static FinishLots Of(FinishWork work)
    {
        var surfaces = work.Surfaces.Where(one => one.Wood.Face != FinishFace.Plastic).ToImmutableArray();
        var drawers = MaterialRules.ForDrawers(work.Recipe);
        var isApart = drawers != work.Recipe;
        return new(
            new("parts", "", FinishStage.Parts, work.Recipe, surfaces),
            new(
                "before",
                "before assembly",
                FinishStage.Before,
                work.Recipe,
                work.Recipe.IsBare ? [] : [.. surfaces.Where(one => !Other(one) && one.GoesInFinished)]
            ),
            new(
                "drawers-before",
                "drawers, before assembly",
                FinishStage.Before,
                drawers,
                [.. surfaces.Where(one => Other(one) && one.GoesInFinished)]
            ),
            new(
                Piece,
                "",
                FinishStage.After,
                work.Recipe,
                [.. surfaces.Where(one => !Other(one) && (one.Late > Area.Zero || work.Recipe.IsBare))]
            ),
            new("drawers", "drawers", FinishStage.After, drawers, [.. surfaces.Where(one => Other(one) && one.Late > Area.Zero)])
        );

        bool Other(FinishSurface one) => isApart && one.IsDrawerBox;
    }

    /// <summary>Those that are coated.</summary>
    public IEnumerable<FinishLot> Coated => [Before, DrawersBefore, Whole, Drawers];
}
