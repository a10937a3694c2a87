using System.CommandLine;
using ShopPlanner.Services.Making;

namespace ShopPlanner.Cli.Steps;

/// <summary><c>steps DESIGN.json [--set name=value …] [--finish ID] [--glue ID] [--json] [-o FILE]</c>: how a design is built
/// and finished, step by step.</summary>
internal static class StepsCommand
{
    private static readonly Argument<string> Design = new("DESIGN.json")
    {
        Description = "The design. Use - for standard input.",
    };

    private static readonly Option<string[]> Set = new("--set")
    {
        Description = "A different value for a named dimension: --set width=30 --set \"height=34 1/2\". Can be repeated.",
        HelpName = "name=value",
    };

    private static readonly Option<string?> Finish = new("--finish")
    {
        Description = $"The finish: {Ids(WorkLists.Finishes)}. Default: paint.",
        HelpName = "ID",
    };

    private static readonly Option<string?> Glue = new("--glue")
    {
        Description = $"The glue: {Ids(WorkLists.Glues)}. Default: pva.",
        HelpName = "ID",
    };

    private static readonly Option<bool> Json = new("--json")
    {
        Description = "Writes the steps as JSON for other programs, instead of text.",
    };

    private static readonly Option<string?> Output = new("-o", "--output")
    {
        Description = "Where to write. Default: standard output.",
        HelpName = "FILE",
    };

    public static Command Create()
    {
        var command = new Command(
            "steps",
            "Works out how a design is built and finished: every step from the cut parts on, with settings, fasteners, waits and "
                + "checks. Exit status 0: done; 2: the design or a value has errors, one per line, and nothing was written; or "
                + "the piece can't be put together as it is: each reason on a line beside the steps."
        )
        {
            Design,
            Set,
            Finish,
            Glue,
            Json,
            Output,
        };
        command.SetAction(parsed =>
            StepsRun.Run(
                parsed.GetRequiredValue(Design),
                parsed.GetValue(Set) ?? [],
                new StepsAsked(parsed.GetValue(Finish), parsed.GetValue(Glue), parsed.GetValue(Json)),
                parsed.GetValue(Output)
            )
        );
        return command;
    }

    /// <summary>Ids of a list in a sentence.</summary>
    internal static string Ids(IEnumerable<(string Id, string Name)> list) => string.Join(", ", list.Select(one => one.Id));
}
