using Google.OrTools.LinearSolver;

namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// How the solvers are set. A misspelt setting may end the process without a word, so those handed over as text stand
/// here, constant, and tests bring each of them to use.
/// </summary>
internal static class SolverParameters
{
    /// <summary>For the relaxation: it is solved again after every few columns, starting from where it was.</summary>
    public const string Linear = "use_preprocessing: false use_dual_simplex: false";

    /// <summary>Ends an integer program after so many nodes of its tree, where no clock does.</summary>
    public const string Steps = "limits/totalnodes = 2000";

    /// <summary>Ends an integer program that is only to find something better soon.</summary>
    public const string FewSteps = "limits/totalnodes = 300";

    /// <summary>Left to itself the solver answers Ctrl-C while it works, and the program never hears of it.</summary>
    public const string KeepsInterrupt = "misc/catchctrlc = FALSE";

    // Share of the time left that one integer program may take; the rest is for dives.
    private const double Share = 0.7;

    /// <summary>A solver of integer programs.</summary>
    public static Solver IntegerSolver()
    {
        var solver =
            Solver.CreateSolver("SCIP") ?? throw new InvalidOperationException("The integer solver is not part of this build.");
        Set(solver, KeepsInterrupt);
        return solver;
    }

    /// <summary>Hands a setting over and makes sure that it was understood.</summary>
    public static void Set(Solver solver, string text)
    {
        if (!solver.SetSolverSpecificParametersAsString(text))
            throw new InvalidOperationException($"The solver does not understand '{text}'.");
    }

    /// <summary>Solves to the end, without the gap that the solver would allow itself, or until the search's time is
    /// up.</summary>
    /// <param name="solver">Holds the program.</param>
    /// <param name="search">Has the time left and may be cancelled.</param>
    /// <param name="plan">Reads the plan off the solver's variables.</param>
    /// <param name="briefly">True to end after a number of steps even where there is a clock.</param>
    public static ProgramResult Solve(Solver solver, Search search, Func<Plan> plan, bool briefly = false)
    {
        using var parameters = new MPSolverParameters();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        solver.SetTimeLimit((long)Math.Clamp(search.Left.TotalMilliseconds * Share, 1, int.MaxValue));
        if (briefly || search.ByIterations)
            Set(solver, briefly ? FewSteps : Steps);
        using var stop = search.Cancel.Register(() => solver.InterruptSolve());
        return solver.Solve(parameters) switch
        {
            Solver.ResultStatus.INFEASIBLE => new(null, true),
            Solver.ResultStatus.OPTIMAL => new(plan(), true),
            Solver.ResultStatus.FEASIBLE => new(plan(), false),
            _ => new(null, false),
        };
    }
}

/// <summary>Answer of an integer program.</summary>
/// <param name="Plan">The best found, if any.</param>
/// <param name="Settled">True when there is none better, or none at all.</param>
internal sealed record ProgramResult(Plan? Plan, bool Settled);
