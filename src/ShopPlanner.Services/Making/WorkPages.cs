using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Services.Making;

/// <summary>Which steps stand on which page.</summary>
internal static class WorkPages
{
    /// <summary>Whether a page has steps of a phase. What is finished before assembly stands on both: it is part of the way to
    /// the glue, and of the finish.</summary>
    public static bool Has(WorkPage page, WorkPhase phase) =>
        page == WorkPage.Finish ? phase is WorkPhase.Finish or WorkPhase.FinishBefore : phase != WorkPhase.Finish;
}
