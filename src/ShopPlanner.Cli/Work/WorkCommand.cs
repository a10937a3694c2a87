using System.CommandLine;
using System.CommandLine.Parsing;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cli.Work;

/// <summary><c>work [NAME] [KEY=VALUE …] [--unit in|mm] [--keys] [--json]</c>: lists the workings, or works one out.</summary>
internal static class WorkCommand
{
    private static readonly Argument<string?> Named = new("NAME")
    {
        Description = "Which working; without it all are listed.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private static readonly Argument<string[]> Pairs = new("KEY=VALUE")
    {
        Description = "What it is worked out from: \"width=34 1/2\", span=8ft, weight=75lb.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private static readonly Option<LengthUnit> Unit = new("--unit")
    {
        Description = "Unit of lengths without a suffix, and of what is printed: in (inches, pounds) or mm (metric). Usually in.",
        HelpName = "in|mm",
        DefaultValueFactory = _ => LengthUnit.Inch,
        CustomParser = ReadUnit,
    };

    private static readonly Option<bool> Keys = new("--keys")
    {
        Description = "Say what the working takes instead of working it out.",
    };

    private static readonly Option<bool> Json = new("--json") { Description = "Print a document for a program to read." };

    public static Command Create()
    {
        var command = new Command(
            "work",
            "Works a figure out and shows how: formula, inputs, source. "
                + "Exit status 0: worked out; 2: something given is wrong or missing, one line for each fault, nothing printed."
        )
        {
            Named,
            Pairs,
            Unit,
            Keys,
            Json,
        };
        command.SetAction(parsed =>
            WorkRun.Run(
                parsed.GetValue(Named),
                parsed.GetValue(Pairs) ?? [],
                parsed.GetValue(Unit),
                parsed.GetValue(Keys),
                parsed.GetValue(Json)
            )
        );
        return command;
    }

    private static LengthUnit ReadUnit(ArgumentResult result)
    {
        var text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
        if (text is "in" or "mm")
            return text == "in" ? LengthUnit.Inch : LengthUnit.Millimetre;
        result.AddError($"--unit: '{text}' is no unit: write in or mm.");
        return LengthUnit.Inch;
    }
}
