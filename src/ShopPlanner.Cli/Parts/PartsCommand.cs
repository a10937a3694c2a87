using System.CommandLine;
using System.CommandLine.Parsing;

namespace ShopPlanner.Cli.Parts;

/// <summary>How the parts are written.</summary>
internal enum PartsFormat
{
    /// <summary>Every part with where each copy is, joints, hardware, warnings.</summary>
    Json,

    /// <summary>A table, a row for each part.</summary>
    Csv,

    /// <summary>A cut request, for the command that plans one.</summary>
    CutRequest,
}

/// <summary><c>parts DESIGN.json [--set name=value …] [--format csv|json|cut-request] [-o FILE]</c>: works a design out.
/// <c>parts --kinds [--json] [-o FILE]</c>: lists what a design can name.</summary>
internal static class PartsCommand
{
    private static readonly Dictionary<string, PartsFormat> Formats = new(StringComparer.Ordinal)
    {
        ["json"] = PartsFormat.Json,
        ["csv"] = PartsFormat.Csv,
        ["cut-request"] = PartsFormat.CutRequest,
    };

    private static readonly Argument<string?> Design = new("DESIGN.json")
    {
        Description = "The design. Use - for standard input.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private static readonly Option<string[]> Set = new("--set")
    {
        Description = "A different value for a named dimension: --set width=30 --set \"height=34 1/2\". Can be repeated.",
        HelpName = "name=value",
    };

    private static readonly Option<PartsFormat?> Format = new("--format")
    {
        Description =
            "json (the default): parts with the place of each copy, joints, hardware, warnings; "
            + "csv: a table of parts; cut-request: input for the cut command, with the lengths and sheets that stores "
            + "usually sell, without prices.",
        HelpName = "csv|json|cut-request",
        CustomParser = ReadFormat,
    };

    private static readonly Option<bool> Kinds = new("--kinds")
    {
        Description =
            "Takes no design: lists every kind of frame, split, fill, top, shape and edge with its members and an example, as "
            + "Markdown.",
    };

    private static readonly Option<bool> Json = new("--json") { Description = "With --kinds: the list as JSON." };

    private static readonly Option<string?> Output = new("-o", "--output")
    {
        Description = "Where to write. Default: standard output.",
        HelpName = "FILE",
    };

    public static Command Create()
    {
        var command = new Command(
            "parts",
            "Works out a design: every part with its size. Exit status 0: done; "
                + "2: the design or a value has errors, one per line, and nothing was written; or the piece can't be built as it "
                + "is: each reason on a line beside the list."
        )
        {
            Design,
            Set,
            Format,
            Kinds,
            Json,
            Output,
        };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult parsed)
    {
        var design = parsed.GetValue(Design);
        if (parsed.GetValue(Kinds))
            return design is null
                ? KindsRun.Run(parsed.GetValue(Json), parsed.GetValue(Output))
                : throw new Complaint($"parts: --kinds takes no design: leave out '{design}'");
        return PartsRun.Run(
            design ?? throw new Complaint("parts: name a design, or list what one can hold with --kinds"),
            parsed.GetValue(Set) ?? [],
            parsed.GetValue(Format) ?? PartsFormat.Json,
            parsed.GetValue(Output)
        );
    }

    private static PartsFormat? ReadFormat(ArgumentResult result)
    {
        var text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
        if (Formats.TryGetValue(text, out var format))
            return format;
        result.AddError($"--format: '{text}' is not a format: write one of {string.Join(", ", Formats.Keys)}.");
        return null;
    }
}
