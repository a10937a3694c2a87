namespace ShopPlanner.Drawing.Layouts;

/// <summary>How much room a drawing has and how small its text may be.</summary>
/// <param name="Width">Of the drawing, in page units; all of it is used.</param>
/// <param name="Height">The stock itself is drawn no higher than this; notes and keys come on top.</param>
/// <param name="LeastText">The smallest type that is set.</param>
/// <param name="LargestText">The largest type that is set.</param>
/// <param name="WholeScale">True to draw at a whole-number scale, 1 : 12, for paper; false to fill the width.</param>
public sealed record DrawingRoom(double Width, double Height, double LeastText, double LargestText, bool WholeScale)
{
    /// <summary>A phone held upright; one unit is one CSS pixel.</summary>
    public static DrawingRoom Phone { get; } = new(360, 420, 9, 15, WholeScale: false);

    /// <summary>A tablet or a computer; one unit is one CSS pixel.</summary>
    public static DrawingRoom Screen { get; } = new(920, 560, 11, 22, WholeScale: false);

    /// <summary>A piece on a phone's page of 390 px; one unit is one CSS pixel, so that no letter is smaller than it can be
    /// read.</summary>
    public static DrawingRoom PieceOnPhone { get; } = new(348, 520, 11.5, 12.5, WholeScale: false);

    /// <summary>A piece on a page of a tablet or a computer.</summary>
    public static DrawingRoom PieceOnScreen { get; } = new(720, 620, 12, 13, WholeScale: false);

    /// <summary>A piece that fills a phone's screen.</summary>
    public static DrawingRoom PieceFillsPhone { get; } = new(390, 740, 11.5, 12.5, WholeScale: false);

    /// <summary>A piece that fills the screen of a tablet or a computer.</summary>
    public static DrawingRoom PieceFillsScreen { get; } = new(1080, 720, 12, 13, WholeScale: false);

    /// <summary>A printed page; one unit is 1/72 in.</summary>
    public static DrawingRoom Paper(double width, double height) => new(width, height, 6.5, 13, WholeScale: true);

    /// <summary>The whole-number scale to draw at, 12 for 1 : 12, so that several drawings share one; null for the largest that
    /// fits. It fits where it is that of <see cref="LayoutDrawing.ScaleOf"/> or smaller.</summary>
    public int? Scale { get; init; }

    /// <summary>Whether the scale and the unit of boards are told elsewhere, so that no note below the drawing says
    /// them.</summary>
    public bool IsScaleTold { get; init; }

    /// <summary>The size of the numbers of cuts: they are looked for from the saw.</summary>
    public double CutText => LeastText * 1.25;

    /// <summary>The size of notes and dimensions.</summary>
    public double NoteText => Math.Min(LeastText * 1.3, LargestText);
}
