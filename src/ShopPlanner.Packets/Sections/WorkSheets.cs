using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Export;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>Makes a packet's step of a step of work.</summary>
public static class WorkSheets
{
    // Little more than the words beside it take.
    private const double PictureHeight = 76;

    /// <summary>The step, its picture drawn for the paper.</summary>
    /// <param name="piece">The piece; null where there is no design.</param>
    /// <param name="step">The step, in the words in force.</param>
    /// <param name="unit">Of its lengths.</param>
    /// <param name="number">In its list.</param>
    /// <param name="note">The builder's; may be empty.</param>
    /// <param name="paper">Size of the pages.</param>
    public static PacketStep Step(Piece? piece, WorkStep step, LengthUnit unit, int number, string note, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(step);
        string?[] facts = [.. step.Fasteners.Select(StepWords.Of), step.Wait is { } wait ? "Wait: " + StepWords.Of(wait) : null];
        string?[] setup = [step.Tool is { } tool ? "Tool: " + tool : null, step.Face is { } face ? "Where: " + face : null];
        var wide = new PageFlow(paper).ColumnWidth(2) * StepBlocks.PictureShare;
        return new(
            number,
            StepWords.Of(step.Phase),
            step.Title,
            step.Handles,
            step.Says,
            [.. step.Settings.Select(figure => StepWords.Of(figure, unit))],
            [.. facts.OfType<string>()],
            step.Check is { } check ? $"{StepWords.Of(check, unit)}. If not: {check.Remedy}" : "",
            [.. step.Cautions.Select(caution => caution.Text)],
            note,
            piece is null || IsFinish(step) ? null : WorkPicture.Draw(piece, step, wide, PictureHeight)
        )
        {
            IsOnParts = step.Phase == WorkPhase.Parts,
            Wait = step.Wait is { } after ? StepWords.Time(after.Minutes) : "",
            Setup = [.. setup.OfType<string>()],
        };
    }

    // A coat goes everywhere: its picture would be that of the whole piece each time.
    private static bool IsFinish(WorkStep step) => step.Phase is WorkPhase.Finish or WorkPhase.FinishBefore;

    /// <summary>The area of a part.</summary>
    /// <param name="area">The area.</param>
    /// <param name="name">The part's; empty where it has none.</param>
    /// <param name="unit">Of lengths.</param>
    public static PacketArea Area(FinishArea area, string name, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(area);
        return new(
            area.Part,
            name,
            StepsText.Of(area.Area, unit),
            area.BeforeAssembly > Core.Measures.Area.Zero ? StepsText.Of(area.BeforeAssembly, unit) : ""
        );
    }
}
