using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Planning;

/// <summary>What the panels of a stock have to keep to, measured in ticks along the way in which the store parts it.</summary>
/// <param name="job">The job.</param>
/// <param name="stock">What is cut.</param>
/// <param name="alongX">True for crosscuts.</param>
internal sealed class StoreSides(Job job, CutStock stock, bool alongX)
{
    /// <summary>Of the stock as bought.</summary>
    public long Whole { get; } = alongX ? stock.Length.Ticks : stock.Width.Ticks;

    /// <summary>Of the largest panel that goes into the car.</summary>
    public long Most { get; } = job.MostCarried(alongX ? stock.Width.Ticks : stock.Length.Ticks, alongX);

    /// <summary>Margin where the stock begins.</summary>
    public long Start { get; } = alongX ? job.StartX(stock) : job.StartY(stock);

    /// <summary>Margin where it ends.</summary>
    public long End { get; } =
        alongX
            ? stock.Length.Ticks - job.StartX(stock) - job.UsableX(stock)
            : stock.Width.Ticks - job.StartY(stock) - job.UsableY(stock);

    /// <summary>Left on beside each cut by the store.</summary>
    public long Tolerance { get; } = job.Store!.Tolerance.Ticks;

    public long Kerf => job.Kerf;

    /// <summary>The least that a panel can measure. One that holds nothing takes the margin in, so that its neighbor need
    /// not.</summary>
    public long Least(StorePanel panel) =>
        panel.Rows.Count > 0
            ? panel.With(panel.Content)
            : Math.Min(Most, Math.Max(1, Math.Max(panel.Lead, panel.Trail) - Kerf - Tolerance));

    /// <summary>True when what the panel holds keeps off the margins of the stock, which may be larger than the panels beside
    /// it.</summary>
    public bool KeepsMargins(StorePanel panel) => panel.Rows.Count == 0 || (panel.From >= Start && panel.To <= Whole - End);

    /// <summary>More cuts than this gain nothing: a panel for each row, and what is over parted for the car.</summary>
    public long MostCuts(int rows) => Most == 0 ? 0 : rows + (Whole / Most);

    public long Size(LayoutNode row) => (alongX ? row.Dx : row.Dy) - job.Kerf;

    /// <summary>True for a row that the saw at home cannot part from another: too high for a crosscut, or a rip with more than
    /// the fence's width on both sides.</summary>
    public bool IsLarge(LayoutNode row) =>
        row.Dy - job.Kerf > ((alongX ? job.Saw.LongestCrosscut : job.Saw.WidestRip)?.Ticks ?? long.MaxValue);

    /// <summary>True when nothing at all may lie in a panel with such a row.</summary>
    public bool LargeIsAlone => alongX;
}

/// <summary>One panel and what lies in it.</summary>
internal sealed class StorePanel(long lead, long trail)
{
    public List<LayoutNode> Rows { get; } = [];

    /// <summary>Taken off at home before the first row.</summary>
    public long Lead => lead;

    /// <summary>Taken off at home behind the last row.</summary>
    public long Trail => trail;

    /// <summary>Of the rows, the kerfs between them included.</summary>
    public long Content { get; set; }

    public bool HasLarge { get; set; }

    /// <summary>Of the wood, as the store gives it.</summary>
    public long Wood { get; set; }

    /// <summary>What it would measure with so much in it.</summary>
    public long With(long content) => lead + content + trail;

    /// <summary>Where what is left after trimming begins, from the start of the stock.</summary>
    public long From { get; set; }

    /// <summary>Where it ends; before <see cref="From"/> for a strip of waste narrower than its rough edges.</summary>
    public long To => From + Wood - lead - trail;
}

/// <summary>
/// Shares the rows of a layout out among the panels that so many cuts by the store give: the largest first, each into the first
/// panel that takes it, so that whole panels stay free, which are left over in one piece. Something remains beyond the last cut:
/// a cut whose kerf runs off the end is not thought of.
/// </summary>
internal sealed class StorePanels
{
    private readonly StoreSides sides;
    private readonly StorePanel[] panels;

    public StorePanels(StoreSides sides, int cuts)
    {
        this.sides = sides;
        panels =
        [
            .. Enumerable
                .Range(0, cuts + 1)
                .Select(i => new StorePanel(i == 0 ? sides.Start : sides.Tolerance, i == cuts ? sides.End : sides.Tolerance)),
        ];
    }

    /// <summary>The panels in their order along the stock; null when the rows do not go into them.</summary>
    public IReadOnlyList<StorePanel>? Share(IReadOnlyList<LayoutNode> rows)
    {
        foreach (var row in rows.OrderByDescending(sides.IsLarge).ThenByDescending(sides.Size))
            if (!Put(row))
                return null;
        if (!Stretch())
            return null;
        Place();
        return Array.TrueForAll(panels, sides.KeepsMargins) ? panels : null;
    }

    private bool Put(LayoutNode row)
    {
        var panel = Array.Find(panels, panel => Takes(panel, row));
        if (panel is null)
            return false;
        panel.Content = With(panel, row);
        panel.HasLarge |= sides.IsLarge(row);
        panel.Rows.Add(row);
        return true;
    }

    private bool Takes(StorePanel panel, LayoutNode row)
    {
        if (panel.HasLarge && (sides.LargeIsAlone || sides.IsLarge(row)))
            return false;
        return panel.With(With(panel, row)) <= sides.Most;
    }

    private long With(StorePanel panel, LayoutNode row) =>
        panel.Rows.Count == 0 ? sides.Size(row) : panel.Content + sides.Kerf + sides.Size(row);

    // Wood that is not wanted goes to panels that hold nothing, as far as the car takes them, and only then beside rows.
    private bool Stretch()
    {
        foreach (var panel in panels)
            panel.Wood = sides.Least(panel);
        var free = sides.Whole - (sides.Kerf * (panels.Length - 1)) - panels.Sum(panel => panel.Wood);
        if (free < 0 || panels.Any(panel => panel.Wood > sides.Most))
            return false;
        var empty = panels.Where(panel => panel.Rows.Count == 0);
        foreach (var panel in empty.Concat(panels.Reverse().Where(panel => panel.Rows.Count > 0)))
        {
            var more = Math.Min(free, sides.Most - panel.Wood);
            panel.Wood += more;
            free -= more;
        }

        return free == 0;
    }

    private void Place()
    {
        var start = 0L;
        foreach (var panel in panels)
        {
            panel.From = start + panel.Lead;
            start += panel.Wood + sides.Kerf;
        }
    }
}
