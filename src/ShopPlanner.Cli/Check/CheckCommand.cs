using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using ShopPlanner.Cli.Care;

namespace ShopPlanner.Cli.Check;

/// <summary><c>check DESIGN.json [--set name=value …] [--random N] [--corners] [--seed N] [--json]</c>: lists everything that is
/// to be said of a design, at its own values and at others within its limits. <c>check [--data DIR]</c>, without a design: says
/// whether a shop's data folder is sound.</summary>
internal static class CheckCommand
{
    private const int MostAtRandom = 100_000;

    private static readonly Argument<string?> Design = new("DESIGN.json")
    {
        Description = "The design. Use - for standard input. Without one, the shop's data folder is checked.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private static readonly Option<string?> Data = CareOptions.Data();

    private static readonly Option<string[]> Set = new("--set")
    {
        Description = "A value that stays the same throughout: --set width=30. Can be repeated.",
        HelpName = "name=value",
    };

    private static readonly Option<int?> AtRandom = new("--random")
    {
        Description = "How many random sets of values within the limits are tried. Default: none, only the design as it is.",
        HelpName = "N",
        CustomParser = result => Whole(result, "--random", 0, MostAtRandom),
    };

    private static readonly Option<bool> Corners = new("--corners")
    {
        Description = "Also tries every combination of least and greatest values.",
    };

    private static readonly Option<int?> Seed = new("--seed")
    {
        Description = "Start of the random values: the same number tries the same values. Default: 1.",
        HelpName = "N",
        CustomParser = result => Whole(result, "--seed", 0, int.MaxValue),
    };

    private static readonly Option<bool> Json = new("--json") { Description = "Writes the findings as JSON." };

    public static Command Create()
    {
        var command = new Command(
            "check",
            "Checks a design: what can't be built, tips, sags or needs care. Exit status 0: it can be built at every "
                + "value tried; "
                + "2: it can't at some of them, or the design has errors. Without a design, checks the shop's data folder: every "
                + "page of its database, its version, its backups. Exit status 0: sound; 2: not sound; 3: sound, but the newest "
                + "good backup is more than 3 days old, or there is none."
        )
        {
            Design,
            Set,
            AtRandom,
            Corners,
            Seed,
            Json,
            Data,
        };
        command.SetAction(
            (parsed, _) =>
                parsed.GetValue(Design) is { } design
                    ? Task.FromResult(Run(parsed, design))
                    : FolderCheckRun.RunAsync(parsed.GetValue(Data))
        );
        return command;
    }

    private static int Run(ParseResult parsed, string design) =>
        CheckRun.Run(
            design,
            parsed.GetValue(Set) ?? [],
            new(parsed.GetValue(AtRandom) ?? 0, parsed.GetValue(Corners), parsed.GetValue(Seed) ?? 1, parsed.GetValue(Json))
        );

    private static int? Whole(ArgumentResult result, string option, int least, int most)
    {
        var text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
        if (
            int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && number >= least
            && number <= most
        )
            return number;
        result.AddError($"{option}: '{text}' is not a whole number from {least} to {most}.");
        return null;
    }
}
