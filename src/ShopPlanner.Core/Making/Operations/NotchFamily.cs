using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Corners and pieces of edges that are cut out right through: the toe space of a case, a notch around a post.</summary>
internal sealed class NotchFamily : FeatureFamily<Notch>
{
    private const int SettingMinutes = 10;
    private const double NotchMinutes = 8;

    protected override Stage Stage => Stage.Notch;

    protected override string Word(Shaped<Notch> one) => "notch";

    protected override WorkStep Step(string id, IReadOnlyList<Shaped<Notch>> shaped, PieceWork work)
    {
        var figures = new FigureList();
        foreach (var one in shaped)
        {
            one.Reach(figures, one.Feature.Axes.First, work);
            one.Reach(figures, one.Feature.Axes.Second, work);
        }

        var isToe = shaped.All(one => one.Piece.Copy.ToeNotch is not null);
        return new(
            id,
            WorkPhase.Parts,
            WorkAction.Notch,
            isToe ? $"Notch the {Names(shaped)} for the toe space" : $"Notch the {Names(shaped)}",
            [
                isToe
                    ? "Mark the lower front corner on each part, left and right ones as a pair."
                    : "Mark the notch on each part, mirrored on left and right ones.",
                "Saw both lines up to the corner and clean it with a chisel.",
            ],
            Marks(shaped),
            [],
            WorkEffort.Minutes(SettingMinutes, NotchMinutes, shaped.Count)
        )
        {
            Tool = "Jigsaw along a straightedge, finished with a handsaw",
            Settings = figures.Figures,
            Face = isToe ? "lower front corner" : null,
            Cautions = [ShopCautions.CurvedCuts],
            Source = OperationSources.NotchThenGlue,
        };
    }
}
