using ShopPlanner.Core.Making.Templates;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Templates;

/// <summary>How a template is spread over sheets of paper: upright or lying, whichever takes fewer. All sizes in
/// points.</summary>
/// <param name="Width">Of the paper.</param>
/// <param name="Height">Of the paper.</param>
/// <param name="Columns">Sheets side by side.</param>
/// <param name="Rows">Sheets one below the other.</param>
/// <param name="Area">Where the template is drawn on each sheet.</param>
internal sealed record Tiling(double Width, double Height, int Columns, int Rows, Box Area)
{
    /// <summary>Points of a millimeter.</summary>
    public const double Mm = 72 / 25.4;

    /// <summary>What two neighbors both show.</summary>
    public const double Overlap = 10 * Mm;

    /// <summary>Clear all round: what home printers leave, and as much again (common practice).</summary>
    public const double Margin = 36;

    /// <summary>Room of the words above, and of the ruler below.</summary>
    public const double Head = 84,
        Foot = 40;

    /// <summary>How many sheets.</summary>
    public int Count => Columns * Rows;

    /// <summary>From a sheet to the next one across.</summary>
    public double StepX => Area.Width - Overlap;

    /// <summary>From a sheet to the next one down.</summary>
    public double StepY => Area.Height - Overlap;

    /// <summary>The tiling of a window.</summary>
    public static Tiling Of(FaceWindow window, PaperSize paper)
    {
        var (width, height) = Paper.Of(paper);
        var (upright, lying) = (Of(window, width, height), Of(window, height, width));
        return lying.Count < upright.Count ? lying : upright;
    }

    private static Tiling Of(FaceWindow window, double width, double height)
    {
        var area = new Box(Margin, Margin + Head, width - (2 * Margin), height - (2 * Margin) - Head - Foot);
        return new(width, height, Sheets(window.Wide, area.Width), Sheets(window.High, area.Height), area);
    }

    private static int Sheets(Length length, double room)
    {
        var points = PointsOf(length);
        return points <= room ? 1 : (int)Math.Ceiling((points - Overlap - 1e-6) / (room - Overlap));
    }

    /// <summary>A length in points.</summary>
    public static double PointsOf(Length length) => length.Ticks * 72.0 / Length.TicksPerInch;
}
