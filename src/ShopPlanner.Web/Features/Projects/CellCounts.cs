namespace ShopPlanner.Web.Features.Projects;

/// <summary>
/// For each cell of a row, the newest text of the browser that came in, the newest that was answered, and the one sent before.
/// </summary>
public sealed class CellCounts
{
    private readonly Dictionary<string, (long Heard, long Answered, string? Own)> cells = [];

    /// <summary>The newest text that came in.</summary>
    public long Heard(string cell) => cells.GetValueOrDefault(cell).Heard;

    /// <summary>The newest text that was answered.</summary>
    public long Answered(string cell) => cells.GetValueOrDefault(cell).Answered;

    /// <summary>The last text that this page stored.</summary>
    public string? Own(string cell) => cells.GetValueOrDefault(cell).Own;

    /// <summary>Notes that a text came in; returns whether it is new.</summary>
    public bool Hear(string cell, long seq)
    {
        var now = cells.GetValueOrDefault(cell);
        if (seq <= now.Heard)
            return false;
        cells[cell] = now with { Heard = seq };
        return true;
    }

    /// <summary>Notes that a text was answered.</summary>
    public void Answer(string cell, long seq, string kept)
    {
        var now = cells.GetValueOrDefault(cell);
        if (seq > now.Answered)
            cells[cell] = now with { Answered = seq, Own = kept };
    }
}
