using System.CommandLine;
using System.CommandLine.Parsing;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Cli.Packet;

/// <summary><c>packet DESIGN-or-REQUEST.json -o FILE.pdf [--plan PLAN.json] [--paper letter|a4] [--sections a,b]</c>: prints a
/// packet.</summary>
internal static class PacketCommand
{
    private static readonly Dictionary<string, PaperSize> Papers = new(StringComparer.Ordinal)
    {
        ["letter"] = PaperSize.Letter,
        ["a4"] = PaperSize.A4,
    };

    private static readonly Argument<string> Document = new("DESIGN-or-REQUEST.json")
    {
        Description =
            "A design (see parts): drawings, cut list and steps, without a plan. Or a cut request (see cut): it is planned "
            + "first. Use - for standard input.",
    };

    private static readonly Option<string?> Output = new("-o", "--output")
    {
        Description = "Where to write the packet. Use - for standard output.",
        HelpName = "FILE.pdf",
        Required = true,
    };

    private static readonly Option<string?> Plan = new("--plan")
    {
        Description = "With a cut request: the plan that was made for it, instead of a new one.",
        HelpName = "PLAN.json",
    };

    private static readonly Option<PaperSize?> Paper = new("--paper")
    {
        Description = "letter (the default) or a4.",
        HelpName = "letter|a4",
        CustomParser = ReadPaper,
    };

    private static readonly Option<PacketSection[]?> Sections = new("--sections")
    {
        Description =
            $"What to print, with commas between: {PacketSections.Write(PacketSections.All.Select(one => one.Section))}. "
            + $"Default: {PacketSections.Write(PacketSections.Usual(1))}.",
        HelpName = "a,b",
        CustomParser = ReadSections,
    };

    public static Command Create()
    {
        var command = new Command(
            "packet",
            "Prints a packet for the store and the shop as PDF. Exit status 0: done; 2: the document has errors, one per line, "
                + "and nothing was written; 3: a packet was written, but its plan does not have every part."
        )
        {
            Document,
            Output,
            Plan,
            Paper,
            Sections,
        };
        command.SetAction(parsed =>
            PacketRun.Run(
                parsed.GetRequiredValue(Document),
                parsed.GetRequiredValue(Output)!,
                parsed.GetValue(Plan),
                parsed.GetValue(Paper) ?? PaperSize.Letter,
                parsed.GetValue(Sections) is { Length: > 0 } sections ? sections : null
            )
        );
        return command;
    }

    private static PaperSize? ReadPaper(ArgumentResult result)
    {
        var text = Text(result);
        if (Papers.TryGetValue(text, out var paper))
            return paper;
        result.AddError($"--paper: '{text}' is not a paper: write letter or a4.");
        return null;
    }

    private static PacketSection[]? ReadSections(ArgumentResult result)
    {
        if (PacketSections.Read(Text(result), out var unknown) is { } sections)
            return [.. sections];
        var known = string.Join(", ", PacketSections.All.Select(one => one.Key));
        result.AddError($"--sections: '{unknown}' is not a section: write some of {known}.");
        return null;
    }

    private static string Text(ArgumentResult result) => result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
}
