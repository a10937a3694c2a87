namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Settings handed to the solvers as text. A misspelt one ends the process without a word, so they stand here, constant, and a
/// test reads each of them.
/// </summary>
internal static class SolverText
{
    /// <summary>For the relaxation: it is solved again after every few columns, starting from where it was.</summary>
    public const string Linear = "use_preprocessing: false use_dual_simplex: false";
}
