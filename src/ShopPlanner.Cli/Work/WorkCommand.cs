using System.CommandLine;
using System.CommandLine.Parsing;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Totals;

namespace ShopPlanner.Cli.Work;

/// <summary><c>work [NAME] [KEY=VALUE …] [--from FILE [--set name=value …]] [--unit in|mm] [--keys] [--json]</c>: lists the
/// workings, or works one out.</summary>
internal static class WorkCommand
{
    private static readonly Argument<string?> Named = new("NAME")
    {
        Description = "Which calculation. Without a name, all are listed.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private static readonly Argument<string[]> Pairs = new("KEY=VALUE")
    {
        Description = "Its inputs: \"width=34 1/2\", span=8ft, weight=75lb.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private static readonly Option<LengthUnit> Unit = new("--unit")
    {
        Description = "Unit of the output, and of lengths typed without one: in (inches, pounds) or mm (metric). Default: in.",
        HelpName = "in|mm",
        CustomParser = ReadUnit,
    };

    private static readonly Option<string?> From = new("--from")
    {
        Description =
            $"Add up the parts of a design or a cut request, for {string.Join(", ", PartTotals.Forms)}. Use - for standard input. "
            + "Inputs that you give come before what the parts say.",
        HelpName = "FILE",
    };

    private static readonly Option<string[]> Set = new("--set")
    {
        Description = "With --from and a design: a different value for a named dimension. Can be repeated.",
        HelpName = "name=value",
    };

    private static readonly Option<bool> Keys = new("--keys") { Description = "List the inputs instead of working it out." };

    private static readonly Option<bool> Workings = new("--workings")
    {
        Description = "Show how each figure was worked out: formula, inputs, source.",
    };

    private static readonly Option<bool> Json = new("--json") { Description = "Print JSON." };

    public static Command Create()
    {
        var command = new Command(
            "work",
            "Works out a figure. With --workings it shows the formula, the inputs and the source. "
                + "Exit status 0: done; 2: an input is wrong or missing, one error per line, and nothing was printed."
        )
        {
            Named,
            Pairs,
            From,
            Set,
            Unit,
            Keys,
            Workings,
            Json,
        };
        command.SetAction(parsed =>
            WorkRun.Run(
                parsed.GetValue(Named),
                parsed.GetValue(Pairs) ?? [],
                new WorkSource(parsed.GetValue(From), parsed.GetValue(Set) ?? []),
                parsed.GetValue(Unit),
                parsed.GetValue(Keys),
                new WorkOutput(parsed.GetValue(Workings), parsed.GetValue(Json))
            )
        );
        return command;
    }

    private static LengthUnit ReadUnit(ArgumentResult result)
    {
        var text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
        if (text is "in" or "mm")
            return text == "in" ? LengthUnit.Inch : LengthUnit.Millimetre;
        result.AddError($"--unit: '{text}' is not a unit: write in or mm.");
        return LengthUnit.Inch;
    }
}
